/**
 * Where a falling tail probability of a distribution over x > 0 takes a given value.
 *
 * The tail is solved rather than the cumulative, so that a small tail keeps its digits. A bracket
 * by doubling or halving from 1, then Newton's steps, each replaced by the middle of the bracket
 * when it would leave it.
 *
 * @param tail P(X > x), falling from its value at 0 to 0
 * @param density minus the slope of `tail`
 * @param share the value sought, above 0 and below tail(0)
 * @returns x to about 1e-14 relative
 */
export function positiveQuantile(
  tail: (x: number) => number,
  density: (x: number) => number,
  share: number,
): number {
  let high = 1;
  while (tail(high) > share && high < 1e300) high *= 2;
  let low = high / 2;
  while (tail(low) < share && low > 1e-300) low /= 2;
  high = Math.min(high, 2 * low);
  let x = (low + high) / 2;
  for (let call = 0; call < 200; call++) {
    const excess = tail(x) - share;
    if (excess > 0) low = x;
    else high = x;
    const newton = x + excess / density(x);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= 1e-14 * x) return next;
    x = next;
  }
  return x;
}
