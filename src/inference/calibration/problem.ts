import { adaptationPriors, coefficientNames } from '../../tables/adaptationPriors.ts';
import { amplitudeSpread, type Family } from '../../tables/calibrationValues.ts';
import type { FindingRow, Logs, Predictor } from './finding.ts';

/** Everything a fit is given. */
export interface Problem {
  readonly rows: readonly FindingRow[];
  readonly studies: number;
  readonly predict: Predictor;
  /** What the model is taken to leave out, by family. */
  readonly discrepancy: Readonly<Record<Family, number>>;
}

/** Middle and spread of each logarithm before any study, and where it must stop. */
export const priors = coefficientNames.map((name) => {
  const { value, logSpread, ...rest } = adaptationPriors[name];
  const most: number | undefined = 'most' in rest ? rest.most : undefined;
  return { log: Math.log(value), spread: logSpread, most: Math.log(most ?? 1e6) };
});

/** Total variance of a row: its own error and what the model leaves out. */
export function varianceOf(row: FindingRow, { discrepancy }: Pick<Problem, 'discrepancy'>): number {
  return row.error ** 2 + discrepancy[row.family] ** 2;
}

/** Coefficients and ln amplitudes of the studies, one after the other. */
export interface Parameters {
  readonly logs: Logs;
  readonly amplitudes: readonly number[];
}

/** Weighted sum of squares with both kinds of priors, of the rows that count. */
export function costOf(
  problem: Problem,
  { logs, amplitudes }: Parameters,
  predicted: readonly number[],
  without?: number,
): number {
  const ofRows = problem.rows.reduce((sum, row, i) => {
    if (row.study === without) return sum;
    const scaled = Math.exp(amplitudes[row.study] ?? 0) * (predicted[i] ?? 0);
    return sum + (row.weight * (row.observed - scaled) ** 2) / varianceOf(row, problem);
  }, 0);
  const ofLogs = priors.reduce(
    (sum, { log, spread }, j) => sum + (((logs[j] ?? 0) - log) / spread) ** 2,
    0,
  );
  return amplitudes.reduce((sum, b) => sum + (b / amplitudeSpread.value) ** 2, ofRows + ofLogs);
}

/** ∂predicted/∂ln coefficient by forward differences: one column a coefficient. */
export function slopesOf(
  problem: Problem,
  logs: Logs,
  predicted: readonly number[],
): Float64Array[] {
  const step = 1e-4;
  return logs.map((_, j) => {
    const moved = problem.predict(logs.map((log, k) => (k === j ? log + step : log)));
    return Float64Array.from(predicted, (p, i) => ((moved[i] ?? 0) - p) / step);
  });
}
