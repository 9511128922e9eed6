import { meanOf, squaresAroundMean, sumOf } from '../../numeric/moments.ts';
import { type Refusal, refusal } from './refusal.ts';

/**
 * A score of every target (a person, or an angle of one) on every day: rows are targets, columns
 * days. A missing cell is undefined.
 */
export type ScoreTable = readonly (readonly (number | undefined)[])[];

/** Two-way analysis of variance of such a table, one score a cell. */
export interface VarianceParts {
  readonly targets: number;
  readonly days: number;
  readonly grandMean: number;
  readonly dayMeans: readonly number[];
  /** Sums of squares between targets, between days, left over, and within targets (days and rest). */
  readonly betweenTargets: number;
  readonly betweenDays: number;
  readonly rest: number;
  readonly withinTargets: number;
  readonly total: number;
}

/**
 * Splits the squares of a targets × days table into targets, days and rest.
 *
 * Rest is summed from the residuals x − row mean − column mean + grand mean, not by subtraction of
 * totals: scores with many leading digits in common keep their differences.
 *
 * @returns the parts, or why there are none: a missing cell, one day, no target
 */
export function varianceParts(table: ScoreTable): VarianceParts | Refusal {
  const complete = completeTable(table);
  if (!Array.isArray(complete)) return complete;
  const rowMeans = complete.map(meanOf);
  const dayMeans = (complete[0] ?? []).map((_, day) =>
    meanOf(complete.map((row) => row[day] ?? 0)),
  );
  const grandMean = meanOf(rowMeans);
  const [targets, days] = [rowMeans.length, dayMeans.length];
  const rest = complete.flatMap((row, i) =>
    row.map((x, day) => (x - (rowMeans[i] ?? 0) - (dayMeans[day] ?? 0) + grandMean) ** 2),
  );
  return {
    targets,
    days,
    grandMean,
    dayMeans,
    betweenTargets: days * squaresAroundMean(rowMeans),
    betweenDays: targets * squaresAroundMean(dayMeans),
    rest: sumOf(rest),
    withinTargets: sumOf(complete.map(squaresAroundMean)),
    total: squaresAroundMean(complete.flat()),
  };
}

/** The table without gaps, or the first gap in words. */
function completeTable(table: ScoreTable): number[][] | Refusal {
  const days = Math.max(0, ...table.map((row) => row.length));
  if (table.length === 0 || days === 0) return refusal('no-scores', 'there are no scores');
  if (days === 1)
    return refusal('one-day', 'there is one test day; an error needs two days or more');
  for (const [i, row] of table.entries()) {
    const gap = Array.from({ length: days }, (_, day) => row[day]).findIndex(
      (score) => score === undefined || !Number.isFinite(score),
    );
    if (gap >= 0)
      return refusal(
        'missing-score',
        `row ${i + 1} has no score on day ${gap + 1}; leave the row out or test again`,
      );
  }
  return table.map((row) => row.map((score) => score ?? 0));
}

/** Mean squares: targets, days, rest and within targets (B, J, E and W of Shrout and Fleiss). */
export function meanSquares(parts: VarianceParts) {
  const [n, k] = [parts.targets, parts.days];
  return {
    targets: parts.betweenTargets / (n - 1),
    days: parts.betweenDays / (k - 1),
    rest: parts.rest / ((n - 1) * (k - 1)),
    within: parts.withinTargets / (n * (k - 1)),
  };
}
