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
  let bracket: Bracket = { a: low, fa: f(low), b: high, fb: f(high) };
  if (bracket.fa >= 0) return low;
  if (bracket.fb <= 0) return high;
  for (let call = 0; call < 100; call++) {
    const x = secant(bracket);
    const fx = f(x);
    if (Math.abs(fx) <= tolerance) return x;
    bracket = narrowed(bracket, x, fx);
  }
  return (bracket.a + bracket.b) / 2;
}

/** Two places with values of unlike sign; a value may be halved, to draw the secant to its end. */
export interface Bracket {
  readonly a: number;
  readonly fa: number;
  readonly b: number;
  readonly fb: number;
}

/** Where the straight line through both ends crosses zero. */
export const secant = ({ a, fa, b, fb }: Bracket): number => (a * fb - b * fa) / (fb - fa);

/** The bracket with the end of like sign moved to x, and the value of the end that stays halved. */
export function narrowed({ a, fa, b, fb }: Bracket, x: number, fx: number): Bracket {
  return fx < 0 === fa < 0 ? { a: x, fa: fx, b, fb: fb / 2 } : { a, fa: fa / 2, b: x, fb: fx };
}
