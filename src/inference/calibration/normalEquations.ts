import { solvePositiveDefinite } from '../../numeric/solvePositiveDefinite.ts';
import { amplitudeSpread } from '../../tables/calibrationValues.ts';
import { type Parameters, type Problem, priors, varianceOf } from './problem.ts';

/** N·δ = g for a step of all parameters: coefficients first, then the studies' ln amplitudes. */
export interface NormalEquations {
  readonly matrix: readonly Float64Array[];
  readonly gradient: Float64Array;
}

/**
 * Normal equations of the weighted residuals and priors around given parameters.
 *
 * @param slopes ∂predicted/∂ln coefficient, a column a coefficient
 * @param without a study to leave out; its ln amplitude then stays at its prior
 */
export function normalEquations(
  problem: Problem,
  at: Parameters,
  predicted: readonly number[],
  slopes: readonly Float64Array[],
  without?: number,
): NormalEquations {
  const [p, s] = [priors.length, problem.studies];
  const matrix = Array.from({ length: p + s }, () => new Float64Array(p + s));
  const gradient = new Float64Array(p + s);
  const add = (i: number, j: number, value: number) => {
    const row = matrix[i];
    if (row) row[j] = (row[j] ?? 0) + value;
  };
  problem.rows.forEach((row, i) => {
    if (row.study === without) return;
    const scale = Math.exp(at.amplitudes[row.study] ?? 0);
    const w = row.weight / varianceOf(row, problem);
    const scaled = scale * (predicted[i] ?? 0);
    const miss = row.observed - scaled;
    const own = p + row.study;
    for (let j = 0; j < p; j++) {
      const slope = scale * (slopes[j]?.[i] ?? 0);
      if (slope === 0) continue;
      for (let k = 0; k <= j; k++) add(j, k, w * slope * scale * (slopes[k]?.[i] ?? 0));
      add(own, j, w * slope * scaled);
      gradient[j] = (gradient[j] ?? 0) + w * slope * miss;
    }
    add(own, own, w * scaled * scaled);
    gradient[own] = (gradient[own] ?? 0) + w * scaled * miss;
  });
  for (let j = 0; j < p + s; j++) {
    const prior = priors[j];
    const spread = prior?.spread ?? amplitudeSpread.value;
    const away = prior ? (at.logs[j] ?? 0) - prior.log : (at.amplitudes[j - p] ?? 0);
    add(j, j, 1 / spread ** 2);
    gradient[j] = (gradient[j] ?? 0) - away / spread ** 2;
  }
  for (let i = 0; i < p + s; i++)
    for (let j = 0; j < i; j++) (matrix[j] as Float64Array)[i] = matrix[i]?.[j] ?? 0;
  return { matrix, gradient };
}

/** The step, its coefficients stopped at their bounds; damping multiplies the diagonal. */
export function stepFrom(at: Parameters, equations: NormalEquations, damping: number): Parameters {
  const { matrix, gradient } = equations;
  const damped = matrix.map((row, i) =>
    Array.from(row, (value, j) => (i === j ? value * (1 + damping) : value)),
  );
  const step = solvePositiveDefinite(damped, [...gradient]);
  const p = at.logs.length;
  return {
    logs: at.logs.map((log, j) => Math.min(log + (step[j] ?? 0), priors[j]?.most ?? 0)),
    amplitudes: at.amplitudes.map((b, s) => b + (step[p + s] ?? 0)),
  };
}

/**
 * Covariance of all parameters: the inverse of the normal matrix, by Gauss and Jordan's elimination
 * in place; no pivots are sought, since the priors keep the matrix positive definite.
 */
export function inverseOf({ matrix }: NormalEquations): Float64Array[] {
  const a = matrix.map((row) => Float64Array.from(row));
  const n = a.length;
  for (let k = 0; k < n; k++) {
    const pivotRow = a[k] as Float64Array;
    const pivot = 1 / (pivotRow[k] as number);
    pivotRow[k] = 1;
    for (let j = 0; j < n; j++) pivotRow[j] = (pivotRow[j] as number) * pivot;
    for (let i = 0; i < n; i++) {
      const row = a[i] as Float64Array;
      const factor = row[k] as number;
      if (i === k || factor === 0) continue;
      row[k] = 0;
      for (let j = 0; j < n; j++) row[j] = (row[j] as number) - factor * (pivotRow[j] as number);
    }
  }
  return a;
}
