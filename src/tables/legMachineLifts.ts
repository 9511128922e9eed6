import type { ChainLink, Lift } from '../mechanics/lift.ts';

/** Leg lifts on a seat, a sled or the knees, and calf raises. */

const seatedLeg: readonly ChainLink[] = [
  { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
];

/** Hips that are no part of the chain: they say how long the muscles over hip and knee are. */
const hipsAt = (deg: number) =>
  ({ joint: 'hip', rule: 'linear', fromDeg: deg, perLeading: 0 }) as const;
const seatedHips = 'The lifter sits upright, hips bent 85° (a guess).';

const seatedExtension = {
  chain: seatedLeg,
  supportDirectionDeg: 90,
  support: 'seat',
  leading: 'knee',
  follow: [hipsAt(85)],
} as const;

export const kneeExtensions: readonly Lift[] = [
  {
    ...seatedExtension,
    name: 'machine knee extension',
    sides: 2,
    rangeDeg: [10, 120],
    resistance: { kind: 'machine torque', arm: 0.2 },
    assumed: [
      'Without a measured machine table the machine resists with the same torque at every angle, 0.2 m times the weight on the stack: machines differ, measure yours. Gravity on the shank is added.',
      seatedHips,
    ],
    source: 'Statics.',
  },
  {
    ...seatedExtension,
    name: 'hung-weight knee extension',
    sides: 1,
    rangeDeg: [10, 120],
    resistance: { kind: 'mass', on: 'shank and foot', along: 1, across: 0 },
    assumed: ['The thigh is level and the weight hangs at the ankle.', seatedHips],
    source: 'Statics.',
  },
];

const curl = {
  chain: seatedLeg,
  support: 'seat',
  sides: 2,
  leading: 'knee',
  resistance: { kind: 'machine torque', arm: -0.2 },
} as const;

const curlMachine =
  'Without a measured machine table the machine resists bending with the same torque at every angle, 0.2 m times the weight on the stack: machines differ, measure yours. Gravity on the shank is added.';

/** From shanks held down: thigh up from the knee, trunk from the hip, both as one piece. */
const nordic = {
  chain: [
    { segment: 'thigh', joint: 'knee', near: 'distal', turn: -1 },
    { segment: 'trunk, head and arms', joint: 'hip', near: 'distal', turn: 1 },
  ],
  support: 'seat',
  sides: 2,
  leading: 'knee',
  follow: [],
  resistance: { kind: 'mass', on: 'trunk, head and arms', along: 0.85, across: 0.12 },
} as const;

const straightHips = 'Trunk and thighs stay in one line, hips straight.';
const chestWeight =
  'An added weight is held at the chest, 12 cm in front of the trunk’s line (a guess); with a load of 0 kg only body weight counts.';

/**
 * Line from the ball up to the ankle joint when the foot is flat, degrees back from straight up:
 * atan(0.47 · 0.152 / 0.039), the foot's and the ankle's shares of stature.
 */
const soleDeg = 61.4;

/** Standing on the balls of the feet: foot, shank, thigh and trunk, knees and hips straight. */
const onToes: readonly ChainLink[] = [
  { segment: 'foot', joint: 'hinge', near: 'distal', turn: 1, offsetDeg: -soleDeg },
  { segment: 'shank', joint: 'ankle', near: 'distal', turn: 1, offsetDeg: soleDeg },
  { segment: 'thigh', joint: 'knee', near: 'distal', turn: -1 },
  { segment: 'trunk, head and arms', joint: 'hip', near: 'distal', turn: 1 },
];

const calfRaise = {
  chain: onToes,
  supportDirectionDeg: 0,
  support: 'ball of foot',
  leading: 'ankle',
  rangeDeg: [-30, 15],
  follow: [{ joint: 'hinge', rule: 'balance' }],
  resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0 },
  aboveFloor: { metres: 0.1, assumed: 'the step is 10 cm high (a guess)' },
} as const;

const ballOfFoot =
  'The whole load rests on the ball of the foot, at 72 % of the foot’s length from the heel (a guess), and the foot does not bend at the toes.';
const lockedKnee =
  'The load’s line passes in front of the straight knee: the knee flexors are asked to hold it, though ligaments would carry part.';
const shoulderPads = 'The load rests on the shoulders, over the shoulder joint (a guess).';

/** Share of a sled's weight that acts along rails at 45°: sin 45°. */
const slopeShare = Math.SQRT1_2;

const sled =
  'The sled slides at 45° without friction, so that 71 % of its weight counts. Add the empty sled to the load.';

export const legMachineLifts: readonly Lift[] = [
  {
    name: 'leg press',
    chain: [
      { segment: 'thigh', joint: 'hip', near: 'proximal', turn: -1 },
      { segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 },
    ],
    // The trunk points from the shoulder down to the hip, 20° below level.
    supportDirectionDeg: 110,
    support: 'seat',
    sides: 2,
    leading: 'knee',
    rangeDeg: [5, 105],
    follow: [{ joint: 'hip', rule: 'end on line', deg: 45, across: -0.1 }],
    resistance: {
      kind: 'force',
      on: 'shank and foot',
      along: 1,
      across: 0,
      deg: 225,
      gain: slopeShare,
    },
    assumed: [
      sled,
      'Back and feet are both supported: the plate is taken to push straight down the sled, without friction along the plate, on a line through the ankle that passes 10 cm above the hip joint (a guess). Feet higher on the plate move torque to the hip, lower to the knee.',
      'The back lies 20° above level, so the hip is bent about 65° with the legs straight (a guess: measure yours).',
    ],
    source: 'Statics.',
  },
  {
    ...curl,
    name: 'seated leg curl',
    supportDirectionDeg: 90,
    rangeDeg: [5, 110],
    follow: [hipsAt(85)],
    assumed: [curlMachine, 'The thigh is level and held down.', seatedHips],
    source: 'Statics.',
  },
  {
    ...curl,
    name: 'lying leg curl',
    // Face down, the thigh points level from the hip back to the knee.
    supportDirectionDeg: -90,
    rangeDeg: [5, 120],
    follow: [hipsAt(0)],
    assumed: [curlMachine, 'The lifter lies face down with the thigh level, hips straight.'],
    source: 'Statics.',
  },
  {
    ...nordic,
    name: 'Nordic lowering',
    // The shanks lie on the floor and point forward from the ankle to the knee.
    supportDirectionDeg: 90,
    rangeDeg: [15, 90],
    assumed: [straightHips, chestWeight, 'The shanks are level and held down at the ankles.'],
    source: 'Statics.',
  },
  {
    ...nordic,
    name: 'Nordic lowering on a slope',
    supportDirectionDeg: 60,
    rangeDeg: [15, 60],
    assumed: [
      straightHips,
      chestWeight,
      'The shanks lie on a board that rises 30° toward the knees (a guess: measure yours).',
    ],
    source: 'Statics.',
  },
  {
    ...calfRaise,
    name: 'standing calf raise',
    sides: 2,
    assumed: [
      ballOfFoot,
      shoulderPads,
      lockedKnee,
      'Knees, hips and back are straight and the body balances.',
    ],
    source: 'Statics.',
  },
  {
    ...calfRaise,
    name: 'single-leg calf raise',
    sides: 1,
    freeLeg: true,
    assumed: [
      ballOfFoot,
      shoulderPads,
      lockedKnee,
      'Knee, hip and back are straight, the other leg hangs from the hip, and the body balances.',
    ],
    source: 'Statics.',
  },
  {
    name: 'seated calf raise',
    chain: [
      { segment: 'foot', joint: 'hinge', near: 'distal', turn: 1, offsetDeg: -soleDeg },
      { segment: 'shank', joint: 'ankle', near: 'distal', turn: 1, offsetDeg: soleDeg },
    ],
    supportDirectionDeg: 0,
    support: 'ball of foot',
    sides: 2,
    leading: 'ankle',
    rangeDeg: [-30, 15],
    follow: [
      { joint: 'hinge', rule: 'end on line', deg: 0, across: -0.1 },
      // The thigh is no part of the chain; the bent knee says what the calf can give.
      { joint: 'knee', rule: 'linear', fromDeg: 90, perLeading: 0 },
    ],
    resistance: { kind: 'mass', on: 'shank', along: 1, across: 0 },
    contact: { on: 'shank', along: 1, across: 0, deg: 90 },
    assumed: [
      ballOfFoot,
      'The load presses straight down on the knee, which moves up and down on a line 10 cm behind the ball of the foot (a guess).',
      'Seat and foot are both supported: the level thigh only pushes or pulls along itself, and its weight is left out.',
      'The knee is bent 90°, which leaves the calf three quarters of the torque it has with a straight knee (0.60 to 0.94 in three studies).',
    ],
    source: 'Statics.',
  },
  {
    name: 'leg-press calf raise',
    chain: [{ segment: 'foot', joint: 'ankle', near: 'proximal', turn: -1, offsetDeg: -soleDeg }],
    // The straight leg points up the sled.
    supportDirectionDeg: 45,
    support: 'seat',
    sides: 2,
    leading: 'ankle',
    rangeDeg: [-30, 15],
    follow: [],
    resistance: { kind: 'force', on: 'foot', along: 1, across: 0, deg: 225, gain: slopeShare },
    assumed: [
      sled,
      ballOfFoot,
      'The leg is straight and points up the sled; the plate pushes straight down the sled, without friction along the plate.',
    ],
    source: 'Statics.',
  },
];
