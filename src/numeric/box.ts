/**
 * Refuses problems R·x = b, 0 ≤ x ≤ u whose parts do not fit together.
 *
 * @param rows R as m rows of n
 * @param sides vectors of length m, such as b
 * @param upper u, length n, each finite and at least 0
 */
export function requireBox(
  rows: readonly (readonly number[])[],
  sides: readonly (readonly number[])[],
  upper: readonly number[],
): void {
  if (!upper.every((u) => u >= 0 && u < Infinity))
    throw new RangeError('upper bounds must be finite and at least 0');
  if (!rows.every((row) => row.length === upper.length && row.every(Number.isFinite)))
    throw new RangeError('each row needs one finite number for each unknown');
  if (!sides.every((side) => side.length === rows.length && side.every(Number.isFinite)))
    throw new RangeError('each right-hand side needs one finite number for each row');
}

/**
 * Size of each equation R·x = b: |b| plus the most that |R|·x can be within 0 ≤ x ≤ u; 1 if that is 0.
 * Dividing by it makes violations of different rows comparable and free of units.
 */
export function rowSizes(
  rows: readonly (readonly number[])[],
  target: readonly number[],
  upper: readonly number[],
): number[] {
  return rows.map((row, r) => {
    let size = Math.abs(target[r] as number);
    for (let i = 0; i < row.length; i++) size += Math.abs(row[i] as number) * (upper[i] as number);
    return size || 1;
  });
}
