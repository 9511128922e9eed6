/**
 * Covariance of the parameters of a linearised least squares fit: variance · (JᵀJ)⁻¹.
 *
 * By orthogonal columns, J = Q·R with the largest remaining column first, so (JᵀJ)⁻¹ = R⁻¹R⁻ᵀ
 * without ever forming JᵀJ, whose condition is the square of J's. A column of which less than
 * 1e-8 is left when the others are taken out, or a zero one, leaves its parameter undetermined.
 *
 * @param columns Jacobian, one column a parameter
 * @param variance of one residual
 * @returns p × p covariance, with an infinite variance (and covariances of 0) for a parameter that
 *   is not determined; the others are then as if it were held
 */
export function covarianceOf(
  columns: readonly (readonly number[])[],
  variance: number,
): { readonly covariance: number[][]; readonly determined: boolean[] } {
  const unscaled = columns.map(length);
  const { order, upper, dependent } = orthogonalised(
    columns.map((column, j) => column.map((value) => value / (unscaled[j] || 1))),
  );
  const inverse = invertedUpper(upper);
  const covariance = columns.map((_, i) =>
    columns.map((__, j) => (i === j ? Number.POSITIVE_INFINITY : 0)),
  );
  order.forEach((i, a) => {
    order.forEach((j, b) => {
      const entry = (inverse[a] ?? []).reduce((sum, r, k) => sum + r * (inverse[b]?.[k] ?? 0), 0);
      const row = covariance[i];
      if (row && !dependent.has(i) && !dependent.has(j))
        row[j] = (variance * entry) / ((unscaled[i] ?? 1) * (unscaled[j] ?? 1));
    });
  });
  return { covariance, determined: columns.map((_, j) => order.includes(j) && !dependent.has(j)) };
}

const length = (a: readonly number[]) => Math.hypot(...a);
const leastLeft = 1e-8;

/**
 * Modified Gram–Schmidt with the longest remaining column next. `order` lists the columns that
 * stand apart, `upper` is R over them, and `dependent` those tied to a column that does not.
 */
function orthogonalised(columns: readonly (readonly number[])[]) {
  const order: number[] = [];
  const upper: number[][] = [];
  const dependent = new Set<number>();
  const left = columns.map((column) => [...column]);
  const shares = columns.map((): number[] => []);
  const open = new Set(columns.keys());
  while (open.size > 0) {
    const next = [...open].reduce((a, b) =>
      length(left[b] ?? []) > length(left[a] ?? []) ? b : a,
    );
    const size = length(left[next] ?? []);
    open.delete(next);
    if (size < leastLeft) {
      // What it shares with the columns before it cannot be told from them either.
      shares[next]?.forEach((share, k) => {
        if (Math.abs(share) > leastLeft) dependent.add(order[k] ?? next);
      });
      continue;
    }
    const unit = (left[next] ?? []).map((value) => value / size);
    for (const j of open) {
      const column = left[j] ?? [];
      const share = unit.reduce((sum, value, i) => sum + value * (column[i] ?? 0), 0);
      shares[j]?.push(share);
      left[j] = column.map((value, i) => value - share * (unit[i] ?? 0));
    }
    order.push(next);
    upper.push([...(shares[next] ?? []), size]);
  }
  return { order, upper: upper.map((_, i) => upper.map((column) => column[i] ?? 0)), dependent };
}

/** Inverse of an upper triangular matrix given as rows. */
function invertedUpper(upper: readonly (readonly number[])[]): number[][] {
  const n = upper.length;
  const inverse = upper.map(() => new Array<number>(n).fill(0));
  const at = (i: number, j: number) => inverse[i]?.[j] ?? 0;
  for (let j = 0; j < n; j++)
    for (let i = j; i >= 0; i--) {
      let sum = i === j ? 1 : 0;
      for (let k = i + 1; k <= j; k++) sum -= (upper[i]?.[k] ?? 0) * at(k, j);
      (inverse[i] as number[])[j] = sum / (upper[i]?.[i] ?? 1);
    }
  return inverse;
}
