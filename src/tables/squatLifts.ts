import type { ChainLink, Lift } from '../mechanics/lift.ts';

/** Squats and their one-legged relatives. Statements under `assumed` are printed in the report. */

/** Standing: shank up from the ankle, thigh up from the knee, trunk up from the hip. */
export const standingLegs: readonly ChainLink[] = [
  { segment: 'shank', joint: 'ankle', near: 'distal', turn: 1 },
  { segment: 'thigh', joint: 'knee', near: 'distal', turn: -1 },
  { segment: 'trunk, head and arms', joint: 'hip', near: 'distal', turn: 1 },
];

const squat = {
  chain: standingLegs,
  supportDirectionDeg: 0,
  support: 'feet',
  sides: 2,
  leading: 'knee',
  rangeDeg: [0, 150],
} as const;

const oneLegged = { ...squat, sides: 1, rangeDeg: [0, 120] } as const;

const planar =
  'Seen from the side only, feet about hip-wide: wider stances load the knee more than drawn here (Escamilla 2001).';
const leaning =
  'The shank leans forward with the knee, at first by 0.35 degree for each degree of knee flexion, leveling off, about 30° with the thigh level, and never beyond the athlete’s ankle limit (a common description, not a measurement of this athlete).';
const lessLean =
  'The shank leans forward with the knee as in the back squat, but less, at first by 0.26 degree for each degree of knee flexion, leveling off (a guess).';
const balanced = 'Statics; balance over the middle of the foot (common practice).';

/** The two-legged squats with a bar, in the order in which the catalogue began. */
export const barSquats: readonly Lift[] = [
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
      'Sitting back keeps the shank nearer upright, at about 22° of lean with the thigh level, which takes two fifths of the torque off the knee there; kept behind the toes, knees were relieved by 22 % (Fry 2003), so this is a box squat with a marked sit back (a guess).',
      'The bar lies 5 cm behind the shoulder joint (a guess). The box itself carries no load: the lifter touches it and does not rest on it.',
    ],
    source: 'Statics; direction from Fry, Smith and Schilling 2003.',
  },
];

export const otherSquats: readonly Lift[] = [
  {
    ...squat,
    name: 'low-bar squat',
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.26, mostDeg: 30 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 0.93, across: -0.09 },
    assumed: [
      planar,
      lessLean,
      'Below the level thigh it takes a bar of about a third of body mass to balance this posture.',
      'The bar lies below the top of the shoulder blades, 9 cm behind the trunk’s line and 7 % of the trunk’s length below the shoulder joint (a guess). That a low bar moves torque from knee to hip is published (Wretenberg 1996).',
    ],
    source: 'Statics; direction from Wretenberg, Feng and Arborelius 1996.',
  },
  {
    ...squat,
    name: 'goblet squat',
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.42, mostDeg: 50 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 0.85, across: 0.18 },
    assumed: [
      planar,
      'The knees travel forward as in the front squat (a guess).',
      'The weight is held 18 cm in front of the chest (a guess).',
    ],
    source: balanced,
  },
  {
    ...squat,
    name: 'belt squat',
    rangeDeg: [0, 125],
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.35, mostDeg: 44 },
      { joint: 'hip', rule: 'linear', fromDeg: 0, perLeading: 0.88 },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 0, across: 0.08, below: 0.35 },
    contact: { on: 'trunk, head and arms', along: 0.8, across: 0.3, deg: 90 },
    assumed: [
      planar,
      leaning,
      'The weight hangs straight down from a point 8 cm in front of the hip joint (a guess).',
      'The hips bend by 0.88 degree for each degree at the knee, which keeps the trunk 5° to 15° from upright (a guess).',
      'Feet and hands are both supported: the hands hold a rail that only pulls or pushes level, at four fifths of the trunk’s height, as much as keeps the pressure under the middle of the foot. Without a rail a heavy belt squat cannot be balanced in this posture.',
    ],
    source: balanced,
  },
  {
    ...oneLegged,
    name: 'split squat',
    workingShare: 0.7,
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.35, mostDeg: 44 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [
      'The front leg carries 70 % of trunk and bar, at every depth, and that share stands over the middle of the front foot (a guess). The rear leg carries itself and the rest.',
      leaning,
    ],
    source: balanced,
  },
  {
    ...oneLegged,
    name: 'rear-foot raised split squat',
    workingShare: 0.8,
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.35, mostDeg: 44 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [
      'The front leg carries 80 % of trunk and bar, at every depth, and that share stands over the middle of the front foot (a guess). The rear leg carries itself and the rest.',
      leaning,
    ],
    source: 'Statics; that the hip leads is published (Mackey and Riemann 2021).',
  },
  {
    ...oneLegged,
    name: 'step-up',
    aboveFloor: { metres: 0.4, assumed: 'the box is 40 cm high (a guess)' },
    freeLeg: true,
    rangeDeg: [0, 110],
    follow: [
      { joint: 'ankle', rule: 'leveling off', perLeading: 0.42, mostDeg: 50 },
      { joint: 'hip', rule: 'balance' },
    ],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.05 },
    assumed: [
      'The lower leg does not push off: it hangs from the hip, straight down, and the upper leg carries everything over the middle of its foot (a guess; a push from below makes it easier).',
      'The shank leans forward as in the front squat, at first by 0.42 degree for each degree of knee flexion (a guess; with less, a step-up without a push or a weight cannot be balanced).',
    ],
    source: balanced,
  },
];
