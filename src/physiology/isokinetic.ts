import { atAngle, gridAngles } from '../mechanics/angleGrid.ts';
import type { ActionName } from '../tables/actions.ts';
import type { Moment } from './dose.ts';
import { torqueWhileMoving, type Way } from './forceVelocity.ts';
import { rangeAngles } from './heaviestLoad.ts';
import type { Capacity } from './jointEfforts.ts';

/** Work of one action against a machine that turns at a set speed, however hard it is pushed. */
export interface IsokineticExercise {
  readonly kind: 'isokinetic';
  readonly action: ActionName;
  /** Radians, rising. */
  readonly from: number;
  readonly to: number;
  /** Radians a second. */
  readonly speed: number;
  readonly ways: readonly Way[];
  /** Share of the torque that the will could bring out at every angle. */
  readonly effort: number;
  readonly sets: number;
  readonly reps: number;
}

/**
 * Moments of one repetition: one an angle and way, as long as the machine takes to pass it.
 *
 * The will works at the stated effort; the fibres carry effort × torque while moving over that in
 * a hold. That torque falls within a set is left out.
 */
export function isokineticMoments(exercise: IsokineticExercise): Moment[] {
  const { from, to, speed, ways, effort } = exercise;
  const angles = rangeAngles(from, to, gridAngles);
  return ways.flatMap((way) => {
    const tension = effort * torqueWhileMoving(way, speed);
    return angles.map((angle, i) => {
      const turned = ((angles[i + 1] ?? angle) - (angles[i - 1] ?? angle)) / 2;
      const moment = { angle, seconds: turned / speed, effort, tension };
      return way === 'lowering' ? { ...moment, yielded: turned } : moment;
    });
  });
}

/** Largest torque (N·m, one side) that is possible inside the range in each of its ways. */
export function bestWhileMoving(
  { action, from, to, speed, ways }: IsokineticExercise,
  capacity: Capacity,
): { readonly way: Way; readonly torque: number }[] {
  const held = Math.max(
    ...rangeAngles(from, to, gridAngles).map((at) => atAngle(capacity[action], at)),
  );
  return ways.map((way) => ({ way, torque: held * torqueWhileMoving(way, speed) }));
}
