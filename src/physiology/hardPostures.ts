import { actions } from '../tables/actions.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { demandsOver, effortsOf, hardest, type Range, stickingPoint } from './heaviestLoad.ts';
import { type SharedLoad, sharedLoad } from './sharing.ts';
import { restingCapacity } from './trainedState.ts';

/** How muscles share one posture of a lift. */
export interface SharedPosture {
  /** Leading-joint angle, radians. */
  readonly at: number;
  /** What the joints of the heaviest single give together over what each gives alone. */
  readonly together: number;
  readonly efforts: SharedLoad['efforts'];
}

/** Where a range cannot be held even without a load, radians. */
export interface TooHeavyBody {
  readonly at: number;
  /** First and last angle of the range that can be held; missing if none can. */
  readonly held?: readonly [number, number];
}

/**
 * How the muscles share the hardest posture of the first week.
 *
 * Muscles over two joints pull against each other, so the joints together give less than one by
 * one. The heaviest single is known to be possible: strength is raised until it just is, and the
 * loss is told.
 */
export function sharedAtHardest(
  range: Range,
  athlete: Athlete,
  loads: { readonly first: number; readonly heaviest: number },
  strength: number,
): SharedPosture | undefined {
  const capacity = restingCapacity(athlete);
  const askedAt = (load: number) => {
    const { angle: at, action } = stickingPoint(range, athlete.body, capacity, load);
    if (actions[action].joint.startsWith('shoulder')) return undefined;
    const found = demandsOver(range, athlete.body, load).find(({ leading }) => leading === at);
    return found && !('impossible' in found.asked) ? { at, asked: found.asked } : undefined;
  };
  const [single, first] = [askedAt(loads.heaviest), askedAt(loads.first)];
  const together = single && sharedLoad(single.asked, capacity, strength)?.multiple;
  if (!first || !together) return undefined;
  const load = sharedLoad(first.asked, capacity, strength / Math.min(together, 1));
  return load && { at: first.at, together: Math.min(together, 1), efforts: load.efforts };
}

/** Where a range cannot be held with no load at all, and where it can. */
export function bodyTooHeavy(range: Range, athlete: Athlete): TooHeavyBody | undefined {
  const capacity = restingCapacity(athlete);
  const strength = liftFactor(athlete, range.lift.name, range.to);
  const worst = stickingPoint(range, athlete.body, capacity, 0);
  if (!Number.isFinite(worst.effort)) return undefined;
  const held = demandsOver(range, athlete.body, 0).filter(
    ({ asked }) =>
      !('impossible' in asked) && (hardest(effortsOf(asked, capacity, strength))?.effort ?? 0) <= 1,
  );
  const [first, last] = [held[0]?.leading, held[held.length - 1]?.leading];
  const ends = first === undefined || last === undefined ? {} : { held: [first, last] as const };
  return { at: worst.angle, ...ends };
}
