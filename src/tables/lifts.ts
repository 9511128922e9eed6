import type { ChainLink, Lift } from '../mechanics/lift.ts';

/**
 * The lift catalogue. Adding a lift means adding one value here (and, if it is new, its follow
 * rule in mechanics). Statements under `assumed` are printed in the report.
 */

const standingLegs: readonly ChainLink[] = [
  { segment: 'shank', joint: 'ankle', near: 'distal', turn: 1 },
  { segment: 'thigh', joint: 'knee', near: 'distal', turn: -1 },
  { segment: 'trunk, head and arms', joint: 'hip', near: 'distal', turn: 1 },
];

const seatedLeg: readonly ChainLink[] = [
  { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
];

const squat = {
  chain: standingLegs,
  supportDirectionDeg: 0,
  support: 'feet',
  sides: 2,
  leading: 'knee',
  rangeDeg: [0, 150],
} as const;

const seatedExtension = {
  chain: seatedLeg,
  supportDirectionDeg: 90,
  support: 'seat',
  leading: 'knee',
  follow: [],
} as const;

const planar =
  'Seen from the side only, feet about hip-wide: wider stances load the knee more than drawn here (Escamilla 2001).';
const leaning =
  'The shank leans forward with the knee, at first by 0.35 degree for each degree of knee flexion, leveling off, about 30° with the thigh level, and never beyond the athlete’s ankle limit (a common description, not a measurement of this athlete).';

export const lifts: readonly Lift[] = [
  {
    ...squat,
    name: 'back squat',
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.35, mostDeg: 44 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [planar, leaning, 'The bar lies 5 cm behind the shoulder joint (a guess).'],
    source: 'Statics; balance over the middle of the foot (common practice).',
  },
  {
    ...squat,
    name: 'front squat',
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.42, mostDeg: 50 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0.08 },
    assumed: [
      planar,
      'The knees travel further forward than in the back squat, to about 33° of shank lean with the thigh level (a guess; that the same bar loads the knee more in front is published, Journal of Sports Sciences 2020, 38:2005).',
      'The bar lies 8 cm in front of the shoulder joint (a guess).',
    ],
    source:
      'Statics; balance over the middle of the foot (common practice); direction from J Sports Sci 2020, 38:2005–2012.',
  },
  {
    ...squat,
    name: 'box squat',
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.26, mostDeg: 28 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [
      planar,
      'Sitting back keeps the shank nearer upright, at about 22° of lean with the thigh level, set so that the knee torque at depth falls by about a fifth, as when the knees are kept behind the toes (Fry 2003: −22 %).',
      'The bar lies 5 cm behind the shoulder joint (a guess). The box itself carries no load: the lifter touches it and does not rest on it.',
    ],
    source: 'Statics; direction from Fry, Smith and Schilling 2003.',
  },
  {
    ...seatedExtension,
    name: 'machine knee extension',
    sides: 2,
    rangeDeg: [10, 120],
    resistance: { kind: 'machine torque', arm: 0.2 },
    assumed: [
      'Without a measured machine table the machine resists with the same torque at every angle, 0.2 m times the weight on the stack: machines differ, measure yours. Gravity on the shank is added.',
    ],
    source: 'Statics.',
  },
  {
    ...seatedExtension,
    name: 'hung-weight knee extension',
    sides: 1,
    rangeDeg: [10, 120],
    resistance: { kind: 'mass', on: 'shank and foot', along: 1, across: 0 },
    assumed: ['The thigh is level and the weight hangs at the ankle.'],
    source: 'Statics.',
  },
];
