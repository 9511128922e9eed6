import { toRadians } from '../numeric/degrees.ts';
import type { Lift } from './lift.ts';
import { type Body, Stance } from './posture.ts';

/** First and last angle of the leading joint, degrees, between which postures can be taken. */
export type StretchDeg = readonly [first: number, last: number];

/** Empty-handed, and with loads that balance what an empty hand does not, kg. */
const usualLoads = [0, 20, 40, 80] as const;

/**
 * Where a body can take the postures of a lift with some load or other, looked at degree by degree.
 *
 * @param within angles of the leading joint to look at, degrees; by default the lift's range
 * @returns the first and last that can be taken, or undefined if none can
 */
export function balancedStretch(
  lift: Lift,
  body: Body,
  [first, last]: StretchDeg = lift.rangeDeg,
): StretchDeg | undefined {
  const stances = usualLoads.map((load) => new Stance(lift, body, load));
  const steps = Math.ceil(last - first);
  const angles = Array.from({ length: steps + 1 }, (_, i) => Math.min(first + i, last));
  const taken = angles.filter((deg) =>
    stances.some((stance) => !('impossible' in stance.posture(toRadians(deg)))),
  );
  const [least, most] = [taken[0], taken[taken.length - 1]];
  return least === undefined || most === undefined ? undefined : [least, most];
}
