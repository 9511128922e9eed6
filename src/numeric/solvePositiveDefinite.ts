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
