/**
 * Finds x = f(x) by steps to f(x), sped up by the secant through the last two (Aitken 1926): with
 * s the slope between them, the next x is (f − s·x)/(1 − s); a plain step where s is not well below
 * one.
 *
 * @param f gives undefined where it has no value
 * @param tolerance largest |f(x) − x| that counts as found
 * @returns the point, or undefined if f has no value on the way or 50 steps do not settle it
 */
export function fixedPoint(
  f: (x: number) => number | undefined,
  start: number,
  tolerance: number,
): number | undefined {
  let x = start;
  let before: { readonly x: number; readonly fx: number } | undefined;
  for (let step = 0; step < 50; step++) {
    const fx = f(x);
    if (fx === undefined || Math.abs(fx - x) <= tolerance) return fx === undefined ? undefined : x;
    const slope = before ? (fx - before.fx) / (x - before.x) : 0;
    before = { x, fx };
    x = Math.abs(slope) < 0.9 ? (fx - slope * x) / (1 - slope) : fx;
  }
  return undefined;
}
