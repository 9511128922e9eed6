import { toRadians } from '../../numeric/degrees.ts';
import type { LiftTest } from './strengthTest.ts';

/** Ends of a range nearer than this are one (as near as a depth is set; working value). */
const sameEnd = toRadians(2.5);
const dust = 1e-9;

/** Whether two ends of a lift's range are one, radians. */
export const isSameEnd = (one: number, other: number): boolean =>
  Math.abs(one - other) <= sameEnd + dust;

interface Range {
  readonly lift: string;
  readonly from?: number;
  readonly to: number;
}

/**
 * How far apart two ranges of one lift are (sum over both ends, radians), infinite for two lifts or
 * two ranges: such singles are two tests.
 *
 * @param start where the lift begins if a test does not say
 */
export function rangesApart(one: Range, other: Range, start: number): number {
  const ends: readonly [number, number][] = [
    [one.from ?? start, other.from ?? start],
    [one.to, other.to],
  ];
  if (one.lift !== other.lift || !ends.every(([a, b]) => isSameEnd(a, b)))
    return Number.POSITIVE_INFINITY;
  return ends.reduce((sum, [a, b]) => sum + Math.abs(a - b), 0);
}

/**
 * What a retested single is compared with: of the latest occasion that has this lift over this range
 * the single of the nearest range, and the place of that occasion in time.
 *
 * @param occasions singles of each earlier occasion, in order of time
 * @param start where the lift begins if a test does not say
 */
export function earlierSingle(
  test: LiftTest,
  occasions: readonly (readonly LiftTest[])[],
  start: number,
): { readonly place: number; readonly single: LiftTest } | undefined {
  for (const [place, singles] of [...occasions.entries()].reverse()) {
    const near = singles
      .map((single) => ({ single, apart: rangesApart(single, test, start) }))
      .filter(({ apart }) => Number.isFinite(apart))
      .sort((a, b) => a.apart - b.apart);
    if (near[0]) return { place, single: near[0].single };
  }
  return undefined;
}
