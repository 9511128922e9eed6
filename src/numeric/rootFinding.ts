/**
 * Finds where a continuous increasing function crosses zero, by the Illinois form of false
 * position (Dowell and Jarratt 1971): as safe as bisection, a few calls when f is nearly straight.
 *
 * @param tolerance largest |f| that counts as zero
 * @returns the crossing, or `low` / `high` when there is none inside
 */
export function risingRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let [a, fa] = [low, f(low)];
  let [b, fb] = [high, f(high)];
  if (fa >= 0) return low;
  if (fb <= 0) return high;
  for (let call = 0; call < 100; call++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) <= tolerance) return x;
    if (fx < 0) {
      [a, fa] = [x, fx];
      fb /= 2;
    } else {
      [b, fb] = [x, fx];
      fa /= 2;
    }
  }
  return (a + b) / 2;
}
