/**
 * Natural cubic spline through knots, continued outside them by its end tangents.
 *
 * Second derivatives m solve the usual tridiagonal system with m = 0 at both ends
 * (Press et al., Numerical Recipes, section 3.3).
 *
 * @param x strictly increasing knots, at least two
 * @param y values at the knots
 */
export function naturalSpline(x: readonly number[], y: readonly number[]): (at: number) => number {
  const n = x.length;
  const at = (values: readonly number[], i: number) => values[i] ?? 0;
  const second = new Array<number>(n).fill(0);
  const upper = new Array<number>(n).fill(0);
  for (let i = 1; i < n - 1; i++) {
    const left = at(x, i) - at(x, i - 1);
    const right = at(x, i + 1) - at(x, i);
    const slopeChange = (at(y, i + 1) - at(y, i)) / right - (at(y, i) - at(y, i - 1)) / left;
    const pivot = 2 * (left + right) - left * at(upper, i - 1);
    upper[i] = right / pivot;
    second[i] = (6 * slopeChange - left * at(second, i - 1)) / pivot;
  }
  for (let i = n - 2; i > 0; i--) second[i] = at(second, i) - at(upper, i) * at(second, i + 1);

  const tangent = (i: number, j: number, sign: 1 | -1) => {
    const h = at(x, j) - at(x, i);
    const chord = (at(y, j) - at(y, i)) / h;
    return sign === 1
      ? chord + (h * (at(second, i) + 2 * at(second, j))) / 6
      : chord - (h * (2 * at(second, i) + at(second, j))) / 6;
  };
  return (t) => {
    if (t <= at(x, 0)) return at(y, 0) + (t - at(x, 0)) * tangent(0, 1, -1);
    if (t >= at(x, n - 1)) return at(y, n - 1) + (t - at(x, n - 1)) * tangent(n - 2, n - 1, 1);
    let i = 0;
    while (at(x, i + 1) < t) i++;
    const h = at(x, i + 1) - at(x, i);
    const a = (at(x, i + 1) - t) / h;
    const b = 1 - a;
    const bend = ((a ** 3 - a) * at(second, i) + (b ** 3 - b) * at(second, i + 1)) * h * h;
    return a * at(y, i) + b * at(y, i + 1) + bend / 6;
  };
}

/**
 * Straight lines between knots, held constant outside them.
 *
 * @param x strictly increasing knots
 * @param y values at the knots
 */
export function piecewiseLinear(
  x: readonly number[],
  y: readonly number[],
): (at: number) => number {
  return (t) => {
    const next = x.findIndex((knot) => knot >= t);
    if (next === -1) return y[y.length - 1] ?? 0;
    if (next === 0) return y[0] ?? 0;
    const left = x[next - 1] ?? 0;
    const right = x[next] ?? 0;
    const share = (t - left) / (right - left);
    return (1 - share) * (y[next - 1] ?? 0) + share * (y[next] ?? 0);
  };
}
