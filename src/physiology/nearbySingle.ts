import { atAngle, nearestIndex } from '../mechanics/angleGrid.ts';
import type { Demand } from '../mechanics/demand.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import type { Athlete } from './athlete.ts';
import { liftFactor } from './athlete.ts';
import { demandsOver, heaviestLoad, mostLoad, type Range } from './heaviestLoad.ts';
import type { Capacity } from './jointEfforts.ts';
import { leastEffort } from './sharing.ts';
import { restingCapacity, type TrainedState } from './trainedState.ts';

/**
 * The heaviest load of a range as it goes with strength, to first order around one known strength:
 * cheap to ask many times.
 */
export interface NearbySingle {
  readonly range: Range;
  /** kg before training, and with the known strength. */
  readonly before: number;
  readonly known: number;
  readonly postures: readonly NearbyPosture[];
}

interface NearbyPosture {
  readonly leading: number;
  readonly angles: Demand['angles'];
  /** ln effort with the known load and strength; 0 at the sticking point. */
  readonly effort: number;
  /** Rise of ln effort with ln load. */
  readonly byLoad: number;
  /** Fall of ln effort with ln strength, and that strength, N·m, by action. */
  readonly byAction: readonly {
    readonly action: ActionName;
    readonly fall: number;
    readonly strength: number;
  }[];
}

/** Small relative step of strength and load for slopes. */
const step = 0.01;

/**
 * Slopes of every posture's effort around a known strength.
 *
 * @returns undefined if no load at all can be carried before training, or if none is too heavy, as
 *   where it hangs straight below the joint
 */
export function nearbySingle(
  range: Range,
  athlete: Athlete,
  capacity: Capacity,
): NearbySingle | undefined {
  const factor = liftFactor(athlete, range);
  const before = heaviestLoad(range, athlete.body, restingCapacity(athlete), factor).load;
  const known = heaviestLoad(range, athlete.body, capacity, factor).load;
  if (before <= 0 || known <= 0 || Math.max(before, known) >= mostLoad) return undefined;
  const heavier = demandsOver(range, athlete.body, known * (1 + step));
  const postures = demandsOver(range, athlete.body, known).flatMap(({ leading, asked }, i) => {
    const more = heavier[i]?.asked;
    if ('impossible' in asked || !more || 'impossible' in more) return [];
    const effort = leastEffort(asked, capacity);
    if (effort <= 0) return [];
    const byLoad = Math.log(leastEffort(more, capacity) / effort) / Math.log(1 + step);
    const byAction = actionNames.flatMap((action) => {
      const angle = asked.angles[actions[action].joint];
      if (angle === undefined) return [];
      const stronger = { ...capacity, [action]: capacity[action].map((t) => t * (1 + step)) };
      const fall = -Math.log(leastEffort(asked, stronger) / effort) / Math.log(1 + step);
      return fall === 0 ? [] : [{ action, fall, strength: atAngle(capacity[action], angle) }];
    });
    return [{ leading, angles: asked.angles, effort: Math.log(effort / factor), byLoad, byAction }];
  });
  return { range, before, known, postures };
}

/** Gain of a heaviest single, a share, with a strength near the known one and practice of the lift. */
export function nearbyGain(
  single: NearbySingle,
  capacity: Capacity,
  practice: TrainedState['practice'],
): number {
  let least = Number.POSITIVE_INFINITY;
  let at = single.range.to;
  for (const { leading, angles, effort, byLoad, byAction } of single.postures) {
    if (byLoad <= 0) continue;
    const easier = byAction.reduce((sum, { action, fall, strength }) => {
      const now = atAngle(capacity[action], angles[actions[action].joint] ?? 0);
      return sum + fall * Math.log(now / strength);
    }, -effort);
    if (easier / byLoad < least) [least, at] = [easier / byLoad, leading];
  }
  const practised = practice[single.range.lift.name]?.[nearestIndex(at)] ?? 0;
  return (single.known * Math.exp(least) * (1 + practised)) / single.before - 1;
}
