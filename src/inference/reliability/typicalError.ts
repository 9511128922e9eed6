import { type Between, eachEnd } from './between.ts';
import { withInterval } from './errorSize.ts';
import { isRefusal, type Refusal } from './refusal.ts';
import { type ScoreTable, type VarianceParts, varianceParts } from './repeatedTests.ts';

/** How far a score of one test day falls from a person's mean by chance: one standard deviation. */
export interface TypicalError {
  /** Unit of the scores, with its interval. */
  readonly amount: Between;
  /** Share of the mean score; only for scores above 0. */
  readonly shareOfMean?: number;
  /** Share by logarithms, exp(s) − 1, with its interval; only for scores above 0. */
  readonly shareByLogs?: Between;
  readonly degreesOfFreedom: number;
  readonly people: number;
  readonly days: number;
  /** False for one person: a rise from day to day then counts as error. */
  readonly dayEffectRemoved: boolean;
}

/**
 * Typical error from repeats without training between (Hopkins 2000, Sports Med 30:1).
 *
 * Two people or more: √E of the two-way analysis, days' shifts removed; with two days this is
 * SD of the differences over √2. One person: the standard deviation of the days, since a shift
 * cannot be told from error. Interval by χ²: s·√(ν/χ²).
 *
 * @param table people × days, at least two days, no gaps
 * @param level of the two-sided interval
 */
export function typicalError(table: ScoreTable, level = 0.95): TypicalError | Refusal {
  const parts = varianceParts(table);
  if (isRefusal(parts)) return parts;
  const { value, degreesOfFreedom } = fromParts(parts);
  return {
    amount: withInterval(value, degreesOfFreedom, level),
    ...asShares(table, value / parts.grandMean, level),
    degreesOfFreedom,
    people: parts.targets,
    days: parts.days,
    dayEffectRemoved: parts.targets > 1,
  };
}

/** Nothing where a score is not above 0: it has no logarithm and is no share of anything. */
function asShares(table: ScoreTable, shareOfMean: number, level: number) {
  const logs = varianceParts(
    table.map((row) => row.map((x) => (x !== undefined && x > 0 ? Math.log(x) : undefined))),
  );
  if (isRefusal(logs)) return {};
  const { value, degreesOfFreedom } = fromParts(logs);
  return {
    shareOfMean,
    shareByLogs: eachEnd(withInterval(value, degreesOfFreedom, level), Math.expm1),
  };
}

function fromParts({ targets, days, rest, withinTargets }: VarianceParts) {
  const degreesOfFreedom = (days - 1) * Math.max(targets - 1, 1);
  const squares = targets > 1 ? rest : withinTargets;
  return { value: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}
