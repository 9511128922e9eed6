import { covarianceOf } from './covarianceOf.ts';
import { solvePositiveDefinite } from './solvePositiveDefinite.ts';

/** Result of a fit: parameters, how sure they are, and whether the steps had settled. */
export interface Fit {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  /** False if steps were still large at the end; true says nothing of other minima. */
  readonly converged: boolean;
  /** Covariance of the parameters (linearised), p × p; infinite on the diagonal where unknown. */
  readonly covariance: readonly (readonly number[])[];
  /** Roots of the covariance's diagonal. */
  readonly standardErrors: readonly number[];
  /** Whether the residuals tell a parameter apart from the others at the solution. */
  readonly determined: readonly boolean[];
  /** Whether a parameter left its first guess. */
  readonly moved: readonly boolean[];
}

export interface FitOptions {
  /** Relative size of a step at which two in a row end the fit; so does a fall of the sum of squares below tolerance^1.5 of itself. */
  readonly tolerance?: number;
  /** Variance of one residual if it is known; otherwise it is the sum of squares over n − p. */
  readonly variance?: number;
}

type Residuals = (parameters: readonly number[]) => readonly number[];

/**
 * Minimises the sum of squared residuals by the Levenberg–Marquardt method with central differences
 * (Marquardt 1963, SIAM J 11:431), columns scaled by the largest size they had so far (Moré 1978,
 * Lecture Notes in Mathematics 630:105) and damping set by how much of the promised fall of the sum
 * of squares a step kept (Nielsen 1999, report IMM-REP-1999-05, Technical University of Denmark;
 * from memory). All but one of the 18 certified problems in the tests are solved that way.
 *
 * @param residuals residual vector of a parameter vector; may include prior terms
 * @param start first guess, length p
 * @returns the best parameters found from this start, which may be a local minimum: see
 *   `fitFromStarts`, and `determined` for a fit that ran to where its residuals are level
 */
export function leastSquares(
  residuals: Residuals,
  start: readonly number[],
  { tolerance = 1e-9, variance }: FitOptions = {},
): Fit {
  const found = descend(residuals, start, tolerance);
  const { parameters, sumOfSquares: sum, columns } = found;
  const degreesOfFreedom = (columns[0]?.length ?? 0) - parameters.length;
  const free = degreesOfFreedom > 0 ? sum / degreesOfFreedom : Number.POSITIVE_INFINITY;
  const { covariance, determined } = covarianceOf(columns, variance ?? free);
  return {
    parameters,
    sumOfSquares: sum,
    converged: found.converged,
    covariance,
    determined,
    standardErrors: covariance.map((row, i) => Math.sqrt(row[i] ?? 0)),
    moved: parameters.map(
      (p, j) => Math.abs(p - (start[j] ?? 0)) > 1e-12 * Math.abs(start[j] ?? 0),
    ),
  };
}

/** Steps tried, accepted or not. */
const mostSteps = 2000;

/** The steps themselves; `columns` are the derivatives at the solution. */
function descend(residuals: Residuals, start: readonly number[], tolerance: number) {
  let parameters = [...start];
  let current = residuals(parameters);
  let best = squared(current);
  let columns = derivatives(residuals, parameters);
  let scales = columns.map(squared);
  let damping = 1e-3;
  let growth = 2;
  let quietSteps = 0;
  for (let step = 0; step < mostSteps && quietSteps < 2 && damping < 1e15; step++) {
    const gradient = columns.map((column) => dot(column, current));
    const weights = scales.map((scale) => damping * scale);
    const move = dampedStep(columns, gradient, weights);
    const trial = parameters.map((p, j) => p - (move[j] ?? 0));
    const trialResiduals = residuals(trial);
    const trialSum = squared(trialResiduals);
    if (!(trialSum <= best)) {
      damping *= growth;
      growth *= 2;
      continue;
    }
    const promised = dot(
      move,
      gradient.map((g, j) => g + (weights[j] ?? 0) * (move[j] ?? 0)),
    );
    const kept = promised > 0 ? (best - trialSum) / promised : 1;
    damping = Math.max(damping * Math.max(1 / 3, 1 - (2 * kept - 1) ** 3), 1e-12);
    growth = 2;
    const small = move.every(
      (d, j) => Math.abs(d) <= tolerance * (Math.abs(trial[j] ?? 0) + tolerance),
    );
    const flat = best - trialSum <= tolerance ** 1.5 * best;
    quietSteps = small || flat ? quietSteps + 1 : 0;
    [parameters, current, best] = [trial, trialResiduals, trialSum];
    columns = derivatives(residuals, parameters);
    // A parameter that acted once keeps its scale: where its column fades, steps do not run away.
    scales = columns.map((column, j) => Math.max(squared(column), scales[j] ?? 0));
  }
  const converged = Number.isFinite(best) && (quietSteps >= 2 || damping >= 1e15);
  return { parameters, sumOfSquares: best, converged, columns };
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
const squared = (a: readonly number[]) => dot(a, a);

/** Columns of the Jacobian, one a parameter. */
function derivatives(residuals: Residuals, parameters: readonly number[]): number[][] {
  return parameters.map((value, j) => {
    const h = 1e-5 * Math.max(Math.abs(value), 1e-3);
    const shifted = (d: number) => residuals(parameters.map((p, k) => (k === j ? p + d : p)));
    const after = shifted(h);
    const before = shifted(-h);
    return after.map((r, i) => (r - (before[i] ?? 0)) / (2 * h));
  });
}

/** Solves (JᵀJ + diag(weights))·step = gradient by Cholesky factors. */
function dampedStep(
  columns: readonly (readonly number[])[],
  gradient: readonly number[],
  weights: readonly number[],
): number[] {
  const normal = columns.map((a, i) =>
    columns.map((b, j) => dot(a, b) + (i === j ? (weights[i] ?? 0) + 1e-30 : 0)),
  );
  return solvePositiveDefinite(normal, gradient);
}
