import { muscles } from '../tables/muscles.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { demandsOver, type Range, stickingPoint } from './heaviestLoad.ts';
import { hardest, jointEfforts } from './jointEfforts.ts';
import { leastEffort, sharedLoad } from './sharing.ts';
import { restingCapacity } from './trainedState.ts';

/** How muscles share one posture of a lift. */
export interface SharedPosture {
  /** Leading-joint angle, radians. */
  readonly at: number;
  /** What the joints give together over what the hardest of them gives alone, 0 to 1. */
  readonly together: number;
  /** Share of its best that each muscle gives, largest first. */
  readonly efforts: readonly { readonly muscle: string; readonly effort: number }[];
}

/** Where a range cannot be held even without a load, radians. */
export interface TooHeavyBody {
  readonly at: number;
  /** First and last angle of the range that can be held; missing if none can. */
  readonly held?: readonly [number, number];
}

/** How the muscles share the posture of a range that is hardest with a load (kg). */
export function sharedAtHardest(
  range: Range,
  athlete: Athlete,
  load: number,
  strength: number,
): SharedPosture | undefined {
  const capacity = restingCapacity(athlete);
  const { angle: at, effort } = stickingPoint(range, athlete.body, capacity, load);
  const found = demandsOver(range, athlete.body, load).find(({ leading }) => leading === at);
  if (!found || 'impossible' in found.asked) return undefined;
  const alone = hardest(jointEfforts(found.asked, capacity))?.effort ?? 0;
  const shared = sharedLoad(found.asked, capacity, strength).muscles;
  const efforts = muscles.map(({ name }, i) => ({
    muscle: name,
    effort: Math.min(shared[i] ?? 0, 1),
  }));
  return {
    at,
    together: Math.min(alone / effort, 1),
    efforts: efforts.sort((a, b) => b.effort - a.effort),
  };
}

/** Where a range cannot be held with no load at all, and where it can. */
export function bodyTooHeavy(range: Range, athlete: Athlete): TooHeavyBody | undefined {
  const capacity = restingCapacity(athlete);
  const strength = liftFactor(athlete, range);
  const worst = stickingPoint(range, athlete.body, capacity, 0);
  if (!Number.isFinite(worst.effort)) return undefined;
  const held = demandsOver(range, athlete.body, 0).filter(
    ({ asked }) => !('impossible' in asked) && leastEffort(asked, capacity) <= strength,
  );
  const [first, last] = [held[0]?.leading, held[held.length - 1]?.leading];
  const ends = first === undefined || last === undefined ? {} : { held: [first, last] as const };
  return { at: worst.angle, ...ends };
}
