/** Sum of numbers; 0 of none. */
export const sumOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0);

/** Mean of numbers; NaN of none, for there is no such mean. */
export const meanOf = (values: readonly number[]): number => sumOf(values) / values.length;

/** Sum of squared distances from the mean: the mean first, so that leading digits do not cancel. */
export function squaresAroundMean(values: readonly number[]): number {
  const mean = meanOf(values);
  return sumOf(values.map((value) => (value - mean) ** 2));
}

/** Standard deviation with n − 1; NaN of fewer than two numbers. */
export const standardDeviation = (values: readonly number[]): number =>
  values.length < 2 ? Number.NaN : Math.sqrt(squaresAroundMean(values) / (values.length - 1));
