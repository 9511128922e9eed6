/**
 * Lower Cholesky factor L of a symmetric positive definite matrix, A = L·Lᵀ.
 *
 * @param a square matrix as rows
 */
export function choleskyFactor(a: readonly (readonly number[])[]): number[][] {
  const l = a.map((row) => new Array<number>(row.length).fill(0));
  const at = (i: number, j: number) => l[i]?.[j] ?? 0;
  for (let i = 0; i < a.length; i++)
    for (let j = 0; j <= i; j++) {
      let sum = a[i]?.[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= at(i, k) * at(j, k);
      (l[i] as number[])[j] = i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / at(j, j);
    }
  return l;
}

/** Solves L·y = b for a lower triangular L. */
export function forwardSolved(l: readonly (readonly number[])[], b: readonly number[]): number[] {
  const y: number[] = [];
  for (let i = 0; i < b.length; i++) {
    let sum = b[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (l[i]?.[k] ?? 0) * (y[k] ?? 0);
    y.push(sum / (l[i]?.[i] ?? 1));
  }
  return y;
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
  const l = choleskyFactor(a);
  const y = forwardSolved(l, b);
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = y[i] ?? 0;
    for (let k = i + 1; k < n; k++) sum -= (l[k]?.[i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (l[i]?.[i] ?? 1);
  }
  return x;
}
