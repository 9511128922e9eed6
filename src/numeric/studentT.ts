import { incompleteBeta, logBeta } from './incompleteBeta.ts';
import { normalCumulative, normalQuantile } from './normal.ts';
import { positiveQuantile } from './positiveQuantile.ts';

/** P(T > t) for t ≥ 0: half of I_x(ν/2, 1/2) at x = ν/(ν + t²) (Abramowitz and Stegun 26.7.1). */
function upperTail(t: number, degreesOfFreedom: number): number {
  const whole = degreesOfFreedom + t * t;
  const [x, rest] = [degreesOfFreedom / whole, (t * t) / whole];
  return incompleteBeta(x, rest, degreesOfFreedom / 2, 0.5) / 2;
}

function density(t: number, degreesOfFreedom: number): number {
  const scale = Math.exp(-logBeta(degreesOfFreedom / 2, 0.5)) / Math.sqrt(degreesOfFreedom);
  return scale * (1 + (t * t) / degreesOfFreedom) ** (-(degreesOfFreedom + 1) / 2);
}

/**
 * Cumulative distribution of Student's t.
 *
 * @param degreesOfFreedom above 0, need not be whole; Infinity is the normal distribution
 */
export function studentCumulative(t: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom === Infinity) return normalCumulative(t);
  const tail = upperTail(Math.abs(t), degreesOfFreedom);
  return t < 0 ? tail : 1 - tail;
}

/**
 * Quantile of Student's t: the value with probability p below it.
 *
 * @param degreesOfFreedom above 0, need not be whole; Infinity is the normal distribution
 * @throws RangeError for a p that is no probability or degrees of freedom that are not above 0
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0)) throw new RangeError(`${degreesOfFreedom} degrees of freedom`);
  if (degreesOfFreedom === Infinity || !(p > 0 && p < 1) || p === 0.5) return normalQuantile(p);
  if (p < 0.5) return -studentQuantile(1 - p, degreesOfFreedom);
  return positiveQuantile(
    (t) => upperTail(t, degreesOfFreedom),
    (t) => density(t, degreesOfFreedom),
    1 - p,
  );
}
