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
  readonly lowering?: true;
}

/**
 * The effort of a pass by that of the fresh posture. Lowering is easier by the ratio of lowering to
 * isometric strength. No effort exceeds 1.
 */
export function passEffort({ left, lowering }: Pass, fresh: number): number {
  return Math.min(fresh / left / (lowering ? loweringStrength.value : 1), 1);
}

/** Moments of work of one action in passes. */
export function momentsOf(action: ActionName, passes: readonly Pass[]): Moment[] {
  return passes.map((pass) => ({
    angle: pass.posture.asked.angles[actions[action].joint] ?? 0,
    seconds: pass.seconds,
    effort: passEffort(pass, pass.posture.effort[action] ?? 0),
    ...(pass.lowering ? { lowering: true } : {}),
  }));
}

/** Actions that any pass asks for. */
export function actionsAsked(passes: readonly Pass[]): ActionName[] {
  return actionNames.filter((action) =>
    passes.some(({ posture }) => posture.effort[action] !== undefined),
  );
}

/**
 * Passes of one set: each repetition lowers and lifts through the samples at even speed and pauses
 * at the far end.
 *
 * @param tempo seconds lowering, held at the far end, lifting
 * @param fresh share of capacity left, one entry a repetition
 * @param lowered the same range with the load of the way down, where that is another one
 */
export function setPasses(
  samples: readonly Sample[],
  [lowering, pause, lifting]: readonly [number, number, number],
  fresh: readonly number[],
  lowered: readonly Sample[] = samples,
): Pass[] {
  return fresh.flatMap((left) =>
    samples.flatMap((sample, i) => {
      const atEnd = i === samples.length - 1 ? pause : 0;
      const down = lowered[i] ?? sample;
      return [
        { posture: down, seconds: lowering * down.share, left, lowering: true } as const,
        { posture: sample, seconds: lifting * sample.share + atEnd, left },
      ];
    }),
  );
}
