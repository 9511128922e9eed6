import { logGamma, regularisedGamma } from './gamma.ts';
import { positiveQuantile } from './positiveQuantile.ts';

/** Cumulative distribution of χ²: P(ν/2, x/2) (Abramowitz and Stegun 1964, 26.4.19). */
export function chiSquaredCumulative(x: number, degreesOfFreedom: number): number {
  return regularisedGamma(degreesOfFreedom / 2, x / 2);
}

/**
 * Quantile of χ²: the value with probability p below it.
 *
 * @param p above 0 and below 1
 * @param degreesOfFreedom above 0, need not be whole
 * @throws RangeError outside these bounds
 */
export function chiSquaredQuantile(p: number, degreesOfFreedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`no quantile of χ² at ${p}`);
  if (!(degreesOfFreedom > 0)) throw new RangeError(`${degreesOfFreedom} degrees of freedom`);
  const half = degreesOfFreedom / 2;
  const logScale = half * Math.log(2) + logGamma(half);
  return positiveQuantile(
    (x) => 1 - chiSquaredCumulative(x, degreesOfFreedom),
    (x) => Math.exp((half - 1) * Math.log(x) - x / 2 - logScale),
    1 - p,
  );
}
