import type { Lift } from '../mechanics/lift.ts';
import { onBench, onFloor } from './footing.ts';

/** Presses and the fly on the back, in the plane across the body. */

/** Across the body, one arm of two: straight out to the side at 0°, straight up at 90°. */
const across = {
  chain: [
    { segment: 'upper arm', joint: 'shoulder across', near: 'proximal', turn: -1 },
    { segment: 'forearm and hand', joint: 'elbow', near: 'proximal', turn: -1 },
  ],
  supportDirectionDeg: 90,
  support: 'seat',
  sides: 2,
  leading: 'shoulder across',
  resistance: { kind: 'mass', on: 'forearm and hand', along: 1, across: 0 },
  aboveFloor: onBench,
} as const;

const acrossPlane =
  'Both arms move in one upright plane across the shoulders (elbows out to the sides); tucked elbows are not drawn. The shoulder blades stay still.';
const handsMeet =
  'The hands draw together on the way up, as dumbbells do; on a bar they cannot, and push sideways instead.';

export const benchLifts: readonly Lift[] = [
  {
    ...across,
    name: 'bench press',
    rangeDeg: [-15, 80],
    follow: [{ joint: 'elbow', rule: 'direction', deg: -6 }],
    assumed: [
      acrossPlane,
      handsMeet,
      'The forearm leans 6° inward all the way, so that the elbow extensors take a share (a guess: with a bar the hands can also push outward or inward, which is not seen from outside).',
    ],
    source: 'Statics; direction with grip width from Mausehund 2022.',
  },
  {
    ...across,
    name: 'close-grip bench press',
    rangeDeg: [-10, 70],
    follow: [{ joint: 'elbow', rule: 'direction', deg: -18 }],
    assumed: [
      acrossPlane,
      handsMeet,
      'The forearm leans 18° inward all the way (a guess; that a narrow grip moves torque from shoulder to elbow is published, Mausehund 2022).',
    ],
    source: 'Statics; direction with grip width from Mausehund 2022.',
  },
  {
    ...across,
    name: 'floor press',
    aboveFloor: onFloor,
    rangeDeg: [0, 80],
    follow: [{ joint: 'elbow', rule: 'direction', deg: -6 }],
    assumed: [
      acrossPlane,
      handsMeet,
      'The upper arm stops level, on the floor; it touches and does not rest.',
      'The forearm leans 6° inward all the way (a guess).',
    ],
    source: 'Statics.',
  },
  {
    ...across,
    name: 'dumbbell fly',
    rangeDeg: [-10, 80],
    follow: [{ joint: 'elbow', rule: 'linear', fromDeg: 20, perLeading: 0 }],
    assumed: [acrossPlane, 'The elbow stays bent 20° (a guess).'],
    source: 'Statics.',
  },
];
