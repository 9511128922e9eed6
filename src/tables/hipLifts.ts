import type { ChainLink, Lift } from '../mechanics/lift.ts';
import { onFloor } from './footing.ts';
import { standingLegs } from './squatLifts.ts';

/** Lifts led by the hip: bends, bridges, back extensions and raises of the thigh. */

/** Standing, bending at the hip; the ankle leans the whole body so that it stays balanced. */
const bend = {
  chain: standingLegs,
  supportDirectionDeg: 0,
  support: 'feet',
  sides: 2,
  leading: 'hip',
} as const;

/** Lying face up from the shoulder blades: trunk out to the hip, thigh to the knee, shank to the floor. */
const bridgeChain: readonly ChainLink[] = [
  { segment: 'trunk, head and arms', joint: 'hinge', near: 'proximal', turn: 1 },
  { segment: 'thigh', joint: 'hip', near: 'proximal', turn: -1 },
  { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
];

const bridge = {
  chain: bridgeChain,
  // The trunk points level from the shoulder toward the feet.
  supportDirectionDeg: 90,
  support: 'seat',
  sides: 2,
  leading: 'hip',
  contact: { on: 'shank and foot', along: 1, across: 0, deg: 0 },
} as const;

const onPad = {
  chain: [{ segment: 'trunk, head and arms', joint: 'hip', near: 'distal', turn: 1 }],
  support: 'seat',
  sides: 2,
  leading: 'hip',
  follow: [],
  resistance: { kind: 'mass', on: 'trunk, head and arms', along: 0.85, across: 0.12 },
} as const;

/** One leg raised forward from a trunk that stands still. */
const raise = {
  chain: [
    { segment: 'thigh', joint: 'hip', near: 'proximal', turn: -1, offsetDeg: 180 },
    { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
  ],
  supportDirectionDeg: 0,
  support: 'seat',
  sides: 1,
  leading: 'hip',
} as const;

const hangingArms =
  'The arms hang straight down, so the bar pulls at the shoulder joint and no shoulder torque holds it back against the legs (real bars are drawn back by a few centimetres).';
const straightBack = 'The back is one straight piece: bending it is not drawn.';
const leanBack =
  'The whole body leans at the ankle so that body and bar stay over the middle of the foot: bending forward sends the hips back.';
const floorOnly =
  'Back and feet are both supported: the floor is taken to push the feet straight up, without friction, and the bench to carry the rest. Pushing the feet forward or pulling them back would shift torque between hip and knee.';
const chestWeight =
  'A weight is held at the chest, 12 cm in front of the trunk’s line and 15 % of its length below the shoulder (a guess).';

/** Near upright and turning to upright, so that knee and ankle torque come out about equal. */
const uprightShank = { joint: 'ankle', rule: 'linear', fromDeg: 4, perLeading: -0.04 } as const;
const softKnee =
  'The shank stays near upright and the knee bends as far as balance over the foot asks (set so that knee and ankle torque are about equal, as measured: −0.28 and −0.29 in the units of PMC6323186).';

export const hipLifts: readonly Lift[] = [
  {
    ...bend,
    name: 'deadlift',
    rangeDeg: [0, 125],
    follow: [
      { joint: 'knee', rule: 'linear', fromDeg: 0, perLeading: 0.65 },
      { joint: 'ankle', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0, below: 0.69 },
    assumed: [
      hangingArms,
      straightBack,
      'The knee bends by 0.65 degree for each degree at the hip all the way down (a guess: lifters straighten the knee sooner than the hip). At 125° at the hip the bar of a man of 1.80 m is 26 cm above the floor, about where it starts.',
      leanBack,
    ],
    source: 'Statics; knee sign from J Exerc Sci Fit 2018 (PMC6323186).',
  },
  {
    ...bend,
    name: 'hex-bar deadlift',
    rangeDeg: [0, 118],
    follow: [
      { joint: 'knee', rule: 'linear', fromDeg: 0, perLeading: 0.8 },
      { joint: 'ankle', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0, below: 0.69 },
    assumed: [
      hangingArms,
      straightBack,
      'The knee bends by 0.8 degree for each degree at the hip (a guess; that a hex bar asks more of the knee and less of the hip is published, Swinton 2011).',
      leanBack,
    ],
    source: 'Statics; direction from Swinton 2011.',
  },
  {
    ...bend,
    name: 'Romanian deadlift',
    rangeDeg: [0, 100],
    follow: [uprightShank, { joint: 'knee', rule: 'balance' }],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0, below: 0.69 },
    assumed: [hangingArms, straightBack, softKnee],
    source: 'Statics; knee and ankle torque about equal in J Exerc Sci Fit 2018 (PMC6323186).',
  },
  {
    ...bend,
    name: 'single-leg Romanian deadlift',
    sides: 1,
    freeLeg: true,
    rangeDeg: [0, 90],
    follow: [uprightShank, { joint: 'knee', rule: 'balance' }],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0, below: 0.69 },
    assumed: [
      hangingArms,
      straightBack,
      'The free leg hangs from the hip; swung back it would balance part of the trunk (a simplification).',
      softKnee,
    ],
    source: 'Statics; balance over the middle of the foot (common practice).',
  },
  {
    ...bend,
    name: 'good morning',
    rangeDeg: [0, 90],
    follow: [
      { joint: 'knee', rule: 'linear', fromDeg: 5, perLeading: 0.05 },
      { joint: 'ankle', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [
      straightBack,
      'The knee stays nearly straight, 5° to 10° (5 ± 7° measured, Schellenberg 2013).',
      'The bar lies 5 cm behind the shoulder joint (a guess).',
      leanBack,
    ],
    source: 'Statics; knee angle and sign from Schellenberg 2013 (PMC3878967).',
  },
  {
    ...bridge,
    name: 'hip thrust',
    aboveFloor: { metres: 0.4, assumed: 'the bench is 40 cm high (a guess)' },
    rangeDeg: [0, 90],
    follow: [
      { joint: 'knee', rule: 'linear', fromDeg: 104, perLeading: 0 },
      { joint: 'hinge', rule: 'end on line', deg: 90, across: 0.33 },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.08 },
    assumed: [
      floorOnly,
      'The upper back turns on a bench 40 cm high, at the level of the shoulder joint (a guess).',
      'The knee stays bent 104° (a guess), which keeps the feet in place within about 6 cm.',
      'The bar lies 8 cm in front of the hip joint (a guess).',
    ],
    source: 'Statics; compare Brazil 2021 and ISBS 2017, 35:184.',
  },
  {
    ...bridge,
    name: 'glute bridge',
    aboveFloor: onFloor,
    rangeDeg: [0, 55],
    follow: [
      { joint: 'knee', rule: 'linear', fromDeg: 95, perLeading: 0.1 },
      { joint: 'hinge', rule: 'end on line', deg: 90, across: 0.02 },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.08 },
    assumed: [
      floorOnly,
      'The upper back turns on the floor, the shoulder joint 9 cm above it (a guess).',
      'The knee is bent 95° at the top and 0.1 degree more for each degree at the hip (a guess).',
      'The bar lies 8 cm in front of the hip joint (a guess).',
    ],
    source: 'Statics.',
  },
  {
    ...onPad,
    name: '45-degree back extension',
    supportDirectionDeg: 45,
    rangeDeg: [0, 90],
    assumed: [
      'The legs lie still at 45° and the pad ends at the hip joint.',
      straightBack,
      chestWeight,
      'What the knee flexors do to hold the legs on the pad is not counted.',
    ],
    source: 'Statics.',
  },
  {
    ...onPad,
    name: 'horizontal back extension',
    supportDirectionDeg: 90,
    rangeDeg: [0, 90],
    assumed: [
      'The legs lie still and level and the pad ends at the hip joint.',
      straightBack,
      chestWeight,
      'What the knee flexors do to hold the legs on the pad is not counted.',
    ],
    source: 'Statics.',
  },
  {
    ...raise,
    name: 'hip flexor raise',
    rangeDeg: [0, 110],
    follow: [{ joint: 'knee', rule: 'direction', deg: 180 }],
    resistance: { kind: 'mass', on: 'shank and foot', along: 1, across: 0 },
    assumed: [
      'The trunk and the other leg stand still.',
      'The shank hangs straight down and the weight hangs at the ankle.',
    ],
    source: 'Statics.',
  },
  {
    ...raise,
    name: 'cable hip flexor raise',
    rangeDeg: [0, 90],
    follow: [{ joint: 'knee', rule: 'direction', deg: 180 }],
    resistance: { kind: 'cable', on: 'shank and foot', along: 1, across: 0, x: -1, y: -0.85 },
    assumed: [
      'The trunk and the other leg stand still.',
      'The cable runs from the ankle to a pulley near the floor, 1 m behind and 85 cm below the hip joint (a guess: measure yours).',
      'The shank hangs straight down; the pull that would bend or straighten the knee is counted.',
    ],
    source: 'Statics.',
  },
];
