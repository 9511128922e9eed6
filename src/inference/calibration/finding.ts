import type { Family } from '../../tables/calibrationValues.ts';

/** One published number to learn from or to be held against, in points (degrees for an optimum). */
export interface FindingRow {
  /** Places in the list of studies and in the list of all groups. */
  readonly study: number;
  readonly group: number;
  readonly family: Family;
  readonly observed: number;
  /** Standard error of the observed mean. */
  readonly error: number;
  /** Share of a finding that it counts for, beside others of its kind in its group. */
  readonly weight: number;
  readonly trained: boolean;
  /** Told only by its direction: a working value stands in for the size, to be fitted, not scored. */
  readonly isDirection?: boolean;
  /** What was measured; equal for groups of one study that can be compared. */
  readonly what: string;
  /** Distance of the tested from the trained angles, degrees; only where both have some. */
  readonly awayDeg?: number;
}

/** Logarithms of the coefficients, in the order of `coefficientNames`. */
export type Logs = readonly number[];

/**
 * What the model says of every row, in their order.
 *
 * @param study only this one's rows need be right
 */
export type Predictor = (logs: Logs, study?: number) => readonly number[];

/**
 * Weight of one of n findings whose errors share a correlation ρ: 1/(1 + (n − 1)·ρ), so that all n
 * together count like n/(1 + (n − 1)·ρ) (Kish 1965, design effect).
 */
export function weightAmong(count: number, correlation: number): number {
  return 1 / (1 + (count - 1) * correlation);
}
