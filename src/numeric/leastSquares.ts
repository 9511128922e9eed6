/** Result of a fit: parameters, sum of squared residuals, and whether the steps had settled. */
export interface Fit {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  readonly converged: boolean;
}

/**
 * Minimises the sum of squared residuals by the Levenberg–Marquardt method with column scaling
 * and central differences (Marquardt 1963, SIAM J 11:431).
 *
 * @param residuals residual vector of a parameter vector; may include prior terms
 * @param start first guess, length p
 * @param tolerance relative size of a step at which two steps in a row end the fit; so does a fall of
 *   the sum of squares below tolerance^1.5 of itself
 * @returns the best parameters found; `converged` is false if steps were still large at the end
 */
export function leastSquares(
  residuals: (parameters: readonly number[]) => readonly number[],
  start: readonly number[],
  tolerance = 1e-9,
): Fit {
  let parameters = [...start];
  let current = residuals(parameters);
  let best = sumOfSquares(current);
  let damping = 1e-3;
  let quietSteps = 0;
  for (let iteration = 0; iteration < 200 && quietSteps < 2; iteration++) {
    const columns = derivatives(residuals, parameters);
    let accepted = false;
    while (!accepted && damping < 1e12) {
      const step = dampedStep(columns, current, damping);
      const trial = parameters.map((p, j) => p - (step[j] ?? 0));
      const trialResiduals = residuals(trial);
      const trialSum = sumOfSquares(trialResiduals);
      if (trialSum <= best) {
        const small = step.every(
          (d, j) => Math.abs(d) <= tolerance * (Math.abs(trial[j] ?? 0) + tolerance),
        );
        const flat = best - trialSum <= tolerance ** 1.5 * best;
        quietSteps = small || flat ? quietSteps + 1 : 0;
        parameters = trial;
        current = trialResiduals;
        best = trialSum;
        damping = Math.max(damping / 10, 1e-12);
        accepted = true;
      } else damping *= 10;
    }
    if (!accepted) quietSteps = 2;
  }
  return { parameters, sumOfSquares: best, converged: quietSteps >= 2 };
}

const sumOfSquares = (r: readonly number[]) => r.reduce((sum, value) => sum + value * value, 0);

/** Columns of the Jacobian, one a parameter. */
function derivatives(
  residuals: (parameters: readonly number[]) => readonly number[],
  parameters: readonly number[],
): number[][] {
  return parameters.map((value, j) => {
    const h = 1e-5 * Math.max(Math.abs(value), 1e-3);
    const shifted = (d: number) => residuals(parameters.map((p, k) => (k === j ? p + d : p)));
    const after = shifted(h);
    const before = shifted(-h);
    return after.map((r, i) => (r - (before[i] ?? 0)) / (2 * h));
  });
}

/** Solves (JᵀJ + λ·diag(JᵀJ))·step = Jᵀr by Cholesky factors. */
function dampedStep(
  columns: readonly (readonly number[])[],
  r: readonly number[],
  damping: number,
): number[] {
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
  const normal = columns.map((a, i) =>
    columns.map((b, j) => dot(a, b) * (i === j ? 1 + damping : 1) + (i === j ? 1e-30 : 0)),
  );
  return solvePositiveDefinite(
    normal,
    columns.map((a) => dot(a, r)),
  );
}

/**
 * Solves A·x = b for a symmetric positive definite A by Cholesky factors.
 *
 * @param a square matrix as rows
 * @param b right-hand side of the same length
 */
export function solvePositiveDefinite(
  a: readonly (readonly number[])[],
  b: readonly number[],
): number[] {
  const n = b.length;
  const l = a.map(() => new Array<number>(n).fill(0));
  const at = (i: number, j: number) => l[i]?.[j] ?? 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = a[i]?.[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= at(i, k) * at(j, k);
      (l[i] as number[])[j] = i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / at(j, j);
    }
  const y: number[] = [];
  for (let i = 0; i < n; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= at(i, k) * (y[k] ?? 0);
    y.push(sum / at(i, i));
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = y[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= at(k, i) * (x[k] ?? 0);
    x[i] = sum / at(i, i);
  }
  return x;
}
