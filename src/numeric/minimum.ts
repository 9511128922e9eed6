/** The interval left, its lowest point found so far, and the values at all three. */
export interface Minimum {
  readonly a: number;
  readonly fa: number;
  readonly x: number;
  readonly fx: number;
  readonly b: number;
  readonly fb: number;
}

/** The part of an interval that golden section cuts off, (3 − √5) / 2. */
const golden = (3 - Math.sqrt(5)) / 2;

interface Place {
  readonly x: number;
  readonly f: number;
}

/**
 * Steps to a minimum of a function between two places, where it is known to be lower in between:
 * parabolas through the three lowest points, golden sections where they do not shrink fast enough
 * (Brent 1973, Algorithms for Minimization without Derivatives, chapter 5). It asks for one value
 * at a time, so that whoever computes it may wait: give the value at each place that is yielded to
 * `next`.
 *
 * @param from an interval a < x < b with the values at all three, none at the ends below fx
 * @param tolerance distance to which the place is found; also the closest that two places come
 * @returns a minimum, the lowest if there is but one, and the ends closed in around it, at most
 *   some four tolerances apart
 */
export function* minimumSteps(
  from: Minimum,
  tolerance: number,
): Generator<number, Minimum, number> {
  let [low, high]: [Place, Place] = [
    { x: from.a, f: from.fa },
    { x: from.b, f: from.fb },
  ];
  let best: Place = { x: from.x, f: from.fx };
  let [second, third] = low.f < high.f ? [low, high] : [high, low];
  let [last, beforeLast] = [high.x - low.x, high.x - low.x];
  for (;;) {
    const middle = (low.x + high.x) / 2;
    if (Math.abs(best.x - middle) <= 2 * tolerance - (high.x - low.x) / 2) break;
    const toParabola = parabolaStep(best, second, third);
    const target = best.x + toParabola;
    // A parabola is believed if it stays inside and its steps keep halving.
    const isTrusted =
      Math.abs(toParabola) < Math.abs(beforeLast) / 2 && target > low.x && target < high.x;
    const rest = (best.x < middle ? high.x : low.x) - best.x;
    let step = isTrusted ? toParabola : golden * rest;
    const nearEnd = target - low.x < 2 * tolerance || high.x - target < 2 * tolerance;
    if (isTrusted && nearEnd) step = Math.sign(middle - best.x) * tolerance;
    if (Math.abs(step) < tolerance) step = (Math.sign(step) || 1) * tolerance;
    beforeLast = isTrusted ? last : rest;
    last = step;
    const x = best.x + step;
    const tried: Place = { x, f: yield x };
    const isLower = tried.f <= best.f;
    const [kept, end] = isLower ? [tried, best] : [best, tried];
    if (end.x < kept.x) low = end;
    else high = end;
    if (isLower) [best, second, third] = [tried, best, second];
    else if (tried.f <= second.f) [second, third] = [tried, second];
    else if (tried.f <= third.f) third = tried;
  }
  return { a: low.x, fa: low.f, x: best.x, fx: best.f, b: high.x, fb: high.f };
}

/** From a point to the turn of the parabola through it and two others; infinite if they lie straight. */
function parabolaStep(at: Place, one: Place, other: Place): number {
  const r = (at.x - one.x) * (at.f - other.f);
  const q = (at.x - other.x) * (at.f - one.f);
  const p = (at.x - other.x) * q - (at.x - one.x) * r;
  const twice = 2 * (q - r);
  return twice === 0 ? Number.POSITIVE_INFINITY : -p / twice;
}
