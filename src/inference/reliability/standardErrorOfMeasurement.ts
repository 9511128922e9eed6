import { meanSquares, type VarianceParts } from './repeatedTests.ts';

/**
 * What a standard error of measurement counts as error; the same data give other numbers, so it is
 * always named.
 *
 * `consistency`: √E, a shift of all scores between days is no error (report it apart).
 * `agreement`: √W, such a shift is error too.
 */
export type ErrorFormula = 'consistency' | 'agreement';

/**
 * Standard error of measurement, unit of the scores: √E by default (Weir 2005, J Strength Cond Res
 * 19:231), √W for agreement.
 */
export function standardErrorOfMeasurement(
  parts: VarianceParts,
  formula: ErrorFormula = 'consistency',
): number {
  const { rest, within } = meanSquares(parts);
  return Math.sqrt(formula === 'consistency' ? rest : within);
}

/**
 * Standard error of measurement of a published correlation: SD·√(1 − ICC).
 *
 * Only as good as the correlation fits the group: a wide mix of people raises it. Which correlation
 * was meant (agreement or consistency) decides what the error counts.
 *
 * @param spread standard deviation between people, unit of the scores
 * @param correlation at most 1
 */
export function errorFromCorrelation(spread: number, correlation: number): number {
  return spread * Math.sqrt(Math.max(0, 1 - correlation));
}
