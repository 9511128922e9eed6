import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import { loweringStrength } from '../tables/movingStrength.ts';
import type { Moment } from './dose.ts';
import type { Sample } from './exercise.ts';

/** Some seconds in one posture of a set, passed or held. */
export interface Pass {
  readonly posture: Pick<Sample, 'asked' | 'effort' | 'muscles'>;
  readonly seconds: number;
  /** Share of capacity left. */
  readonly left: number;
  /** While lowering: the postures before and after, between which this one stands in the middle. */
  readonly lowering?: Between;
}

interface Between {
  readonly from: Pass['posture'];
  readonly to: Pass['posture'];
}

/**
 * The effort of a pass by that of the fresh posture. Lowering is easier by the ratio of lowering to
 * isometric strength. No effort exceeds 1.
 */
export function passEffort({ left, lowering }: Pass, fresh: number): number {
  return Math.min(fresh / left / (lowering ? loweringStrength.value : 1), 1);
}

/**
 * Torque of the same pass over the best in a hold, which the fibres carry whatever the will; a muscle
 * that lowers carries no more than its strength while lowering.
 */
export function passTension({ left, lowering }: Pass, fresh: number): number {
  return Math.min(fresh / left, lowering ? loweringStrength.value : 1);
}

/** Moments of work of one action in passes. */
export function momentsOf(action: ActionName, passes: readonly Pass[]): Moment[] {
  return passes.map((pass) => ({
    angle: pass.posture.asked.angles[actions[action].joint] ?? 0,
    seconds: pass.seconds,
    effort: passEffort(pass, pass.posture.effort[action] ?? 0),
  }));
}

/** Actions that any pass asks for. */
export function actionsAsked(passes: readonly Pass[]): ActionName[] {
  return actionNames.filter((action) =>
    passes.some(({ posture }) => posture.effort[action] !== undefined),
  );
}

/** One way down through samples. */
export function wayDown(down: readonly Sample[], seconds: number, left: number): Pass[] {
  return down.map((posture, i) => ({
    posture,
    seconds: seconds * posture.share,
    left,
    lowering: { from: down[i - 1] ?? posture, to: down[i + 1] ?? posture },
  }));
}

/**
 * Passes of one set: each repetition lowers and lifts through the samples at even speed and pauses
 * at the far end.
 *
 * @param tempo seconds lowering, held at the far end, lifting
 * @param fresh share of capacity left, one entry a repetition
 * @param down the samples from the top, with the load of the way down
 */
export function setPasses(
  samples: readonly Sample[],
  [lowering, pause, lifting]: readonly [number, number, number],
  fresh: readonly number[],
  down: readonly Sample[],
): Pass[] {
  return fresh.flatMap((left) => [
    ...wayDown(down, lowering, left),
    ...samples.map((posture, i) => {
      const atEnd = i === samples.length - 1 ? pause : 0;
      return { posture, seconds: lifting * posture.share + atEnd, left };
    }),
  ]);
}
