import type { ChainLink, Lift } from '../mechanics/lift.ts';
import { benchLifts } from './benchLifts.ts';
import { onBench, standing } from './footing.ts';

/** Lifts of the arms, seen from the side; those on a bench have a file of their own. */

/** From a trunk that is held still: the upper arm hangs along it, the forearm goes on straight. */
const arm: readonly ChainLink[] = [
  { segment: 'upper arm', joint: 'shoulder', near: 'proximal', turn: -1, offsetDeg: 180 },
  { segment: 'forearm and hand', joint: 'elbow', near: 'proximal', turn: -1 },
];

const upright = { chain: arm, supportDirectionDeg: 0, support: 'seat', sides: 2 } as const;
const inHand = { kind: 'mass', on: 'forearm and hand', along: 1, across: 0 } as const;

const curl = { ...upright, leading: 'elbow', rangeDeg: [10, 135] } as const;
const stillTrunk = 'The trunk stays still and the wrist straight.';

const elbowFlexion: readonly Lift[] = [
  {
    ...curl,
    name: 'standing curl',
    aboveFloor: standing,
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: 0, perLeading: 0 }],
    resistance: inHand,
    assumed: [stillTrunk, 'The upper arm hangs straight down (a simplification).'],
    source: 'Statics.',
  },
  {
    ...curl,
    name: 'incline curl',
    supportDirectionDeg: -40,
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: -40, perLeading: 0 }],
    resistance: inHand,
    assumed: [
      stillTrunk,
      'The back lies 40° from upright and the upper arm hangs straight down (a guess).',
    ],
    source: 'Statics.',
  },
  {
    ...curl,
    name: 'preacher curl',
    chain: [{ segment: 'forearm and hand', joint: 'elbow', near: 'proximal', turn: -1 }],
    // The upper arm lies on the pad and points forward and down.
    supportDirectionDeg: 135,
    follow: [],
    resistance: inHand,
    assumed: ['The upper arm lies on a pad that slopes 45° (a guess: measure yours).'],
    source: 'Statics.',
  },
  {
    ...curl,
    name: 'cable curl',
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: 0, perLeading: 0 }],
    resistance: { ...inHand, kind: 'cable', x: 0.5, y: -1.35 },
    assumed: [
      stillTrunk,
      'The upper arm hangs straight down (a simplification).',
      'The pulley stands 50 cm in front of and 135 cm below the shoulder joint (a guess: measure yours).',
    ],
    source: 'Statics.',
  },
  {
    name: 'chin-up',
    aboveFloor: { metres: 2.3, assumed: 'the bar hangs 2.3 m above the floor (a guess)' },
    // From the hands down: forearm to the elbow, upper arm to the shoulder, then trunk and legs.
    chain: [
      { segment: 'forearm and hand', joint: 'hinge', near: 'distal', turn: -1 },
      { segment: 'upper arm', joint: 'elbow', near: 'distal', turn: 1 },
      {
        segment: 'trunk and head',
        joint: 'shoulder',
        near: 'proximal',
        turn: 1,
        offsetDeg: 180,
      },
      { segment: 'thigh', joint: 'hip', near: 'proximal', turn: -1 },
      { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
    ],
    supportDirectionDeg: 180,
    support: 'bar',
    sides: 2,
    leading: 'elbow',
    rangeDeg: [10, 130],
    follow: [
      { joint: 'hinge', rule: 'linear', fromDeg: 0, perLeading: 0.48 },
      { joint: 'shoulder', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk and head', along: 1, across: 0, below: 0.3 },
    assumed: [
      'Read as an elbow lift: what the muscles that pull the upper arm down can do is not known here and never limits it.',
      'The forearm tilts by 0.48 degree for each degree at the elbow, which keeps the shoulder about under the bar (geometry of nearly equal arm lengths); the body hangs balanced under the hands with hips and knees straight.',
      'An added weight hangs from a belt at the hip joint.',
    ],
    source: 'Statics.',
  },
];

const elbowExtension: readonly Lift[] = [
  {
    ...upright,
    name: 'overhead triceps extension',
    aboveFloor: standing,
    leading: 'elbow',
    rangeDeg: [0, 125],
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: 180, perLeading: 0 }],
    resistance: inHand,
    assumed: [stillTrunk, 'The upper arm points straight up (a simplification).'],
    source: 'Statics.',
  },
  {
    ...upright,
    name: 'triceps pushdown',
    leading: 'elbow',
    rangeDeg: [0, 110],
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: 5, perLeading: 0 }],
    resistance: { ...inHand, kind: 'cable', x: 0.35, y: 0.6 },
    assumed: [
      stillTrunk,
      'The upper arm hangs 5° in front of straight down (a guess).',
      'The pulley stands 35 cm in front of and 60 cm above the shoulder joint (a guess: measure yours).',
    ],
    source: 'Statics.',
  },
  {
    ...upright,
    name: 'lying triceps extension',
    aboveFloor: onBench,
    // Face up, the trunk points level from the hip back to the head.
    supportDirectionDeg: -90,
    leading: 'elbow',
    rangeDeg: [0, 125],
    follow: [{ joint: 'shoulder', rule: 'linear', fromDeg: 100, perLeading: 0 }],
    resistance: inHand,
    assumed: ['The upper arm leans 10° from straight up toward the head (a guess).'],
    source: 'Statics.',
  },
];

const shoulder: readonly Lift[] = [
  {
    ...upright,
    name: 'overhead press',
    aboveFloor: standing,
    leading: 'elbow',
    rangeDeg: [0, 130],
    follow: [{ joint: 'shoulder', rule: 'end on line', deg: 0, across: 0.08 }],
    resistance: inHand,
    assumed: [
      stillTrunk,
      'Seen from the side, elbows forward: the bar rises straight, 8 cm in front of the shoulder joint (a guess). Elbows out to the sides are not drawn.',
    ],
    source: 'Statics.',
  },
  {
    ...upright,
    name: 'front raise',
    aboveFloor: standing,
    leading: 'shoulder',
    rangeDeg: [5, 95],
    follow: [{ joint: 'elbow', rule: 'linear', fromDeg: 10, perLeading: 0 }],
    resistance: inHand,
    assumed: [stillTrunk, 'The elbow stays bent 10° (a guess).'],
    source: 'Statics.',
  },
  {
    ...upright,
    name: 'lateral raise',
    aboveFloor: standing,
    leading: 'shoulder',
    rangeDeg: [5, 95],
    follow: [{ joint: 'elbow', rule: 'linear', fromDeg: 15, perLeading: 0 }],
    resistance: inHand,
    assumed: [
      stillTrunk,
      'The arms rise to the side but are treated as if they rose forward: the torque is the same, the strength is that of shoulder flexion (a simplification).',
      'The elbow stays bent 15° (a guess).',
    ],
    source: 'Statics.',
  },
];

export const armLifts: readonly Lift[] = [
  ...elbowFlexion,
  ...elbowExtension,
  ...benchLifts,
  ...shoulder,
];
