import { actionNames, actions } from '../tables/actions.ts';
import { liftingStrength, loweringStrength } from '../tables/movingStrength.ts';
import type { Sample } from './exercise.ts';
import { type Pass, wayDown } from './passes.ts';

/**
 * Effort, counted as in a heaviest single, at which control is lost on the way down. A single's
 * strength is `liftingStrength` of that in a hold, that of lowering `loweringStrength`: by way of
 * the hold 1.05 / 0.87 = 1.21 (common practice lowers 1.05–1.25 of a heaviest single).
 */
export const loweringLimit = loweringStrength.value / liftingStrength.value;

/** The same limit with the weakest and the strongest lowering that the sources allow. */
export const loweringLimits = [-1, 1].map(
  (side) => (loweringStrength.value + side * loweringStrength.spread) / liftingStrength.value,
);

/**
 * Samples from the top down.
 *
 * Muscles do the work −Σ torque·dθ (extension torque and flexion angle positive) from the first
 * sample to the last; where that is positive the load rises that way, so it comes down the other.
 */
export function fromTheTop(samples: readonly Sample[]): readonly Sample[] {
  let work = 0;
  samples.forEach(({ asked }, i) => {
    const before = samples[i - 1]?.asked ?? asked;
    for (const joint of new Set(actionNames.map((name) => actions[name].joint))) {
      const torque = ((asked.torques[joint] ?? 0) + (before.torques[joint] ?? 0)) / 2;
      work -= torque * ((asked.angles[joint] ?? 0) - (before.angles[joint] ?? 0));
    }
  });
  return work > 0 ? [...samples].reverse() : samples;
}

/**
 * The part of the way down that is under control: up to the first posture that asks more than the
 * limit. What lies below is fallen through, also where it would be easy again.
 *
 * @param down samples from the top
 */
export function underControl(down: readonly Sample[], limit: number): readonly Sample[] {
  // Rounding must not lose control of the very load that was solved for.
  const lost = down.findIndex((sample) => sample.whole > limit + 1e-4);
  return lost < 0 ? down : down.slice(0, lost);
}

/** Leading angle (radians) at which control is lost, by a straight line between postures. */
export function lossOfControl(down: readonly Sample[], limit: number): number | undefined {
  const kept = underControl(down, limit).length;
  const [above, below] = [down[kept - 1], down[kept]];
  if (!above || !below) return undefined;
  const share = (limit - above.whole) / (below.whole - above.whole);
  return above.leading + share * (below.leading - above.leading);
}

/**
 * Passes of one set that is lowered only: the lowering half of a full set, and the pause at the low
 * end if it is reached under control.
 *
 * @param down samples from the top; `limit` is the effort at which control is lost
 * @param fresh share of capacity left, one entry a repetition
 */
export function loweredPasses(
  down: readonly Sample[],
  limit: number,
  [lowering, pause]: readonly [number, number, number],
  fresh: readonly number[],
): Pass[] {
  const kept = underControl(down, limit);
  const last = kept.length === down.length ? kept[kept.length - 1] : undefined;
  return fresh.flatMap((left) => [
    ...wayDown(kept, lowering, left),
    ...(last ? [{ posture: last, seconds: pause, left }] : []),
  ]);
}
