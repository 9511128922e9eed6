import {
  type AnglesCompared,
  type DaysTested,
  type ErrorCorrelation,
  errorOfChange,
} from './errorOfChange.ts';
import type { ErrorSize } from './errorSize.ts';
import { multiplier } from './multiplier.ts';

export interface ChangeAsked {
  readonly days?: DaysTested;
  readonly angles?: AnglesCompared;
  readonly correlation?: ErrorCorrelation;
  /** Two-sided, 0.95 unless said otherwise. */
  readonly level?: number;
}

/**
 * Smallest change that test noise alone does not reach more often than the level allows.
 *
 * 1.96·√2·TE for one angle tested once before and once after (Weir 2005, J Strength Cond Res
 * 19:231); other cases by `errorOfChange`; t in place of 1.96 where the error has few degrees of
 * freedom.
 *
 * @returns in the unit of the error
 */
export function minimalDetectableChange(error: ErrorSize, asked: ChangeAsked = {}): number {
  const { days = { before: 1, after: 1 }, angles, correlation, level = 0.95 } = asked;
  const standardError = errorOfChange(error.value, days, angles, correlation);
  return multiplier(level, error.degreesOfFreedom) * standardError;
}

/**
 * Test days needed on each side for a wanted gain to stand out of test noise:
 * (1.96·√2·TE/D)², rounded up, at least one.
 *
 * @param gain above 0, unit of the error
 * @returns whole days, and the number before rounding
 * @throws RangeError for a gain that is not above 0, which no number of days would show
 */
export function testDaysNeeded(
  error: ErrorSize,
  gain: number,
  level = 0.95,
): { readonly days: number; readonly exact: number } {
  if (!(gain > 0)) throw new RangeError(`a wanted gain of ${gain} cannot be shown`);
  const exact = (minimalDetectableChange(error, { level }) / gain) ** 2;
  // A hair above a whole number is rounding, not a day.
  return { days: Math.max(1, Math.ceil(exact - 1e-9)), exact };
}
