import { incompleteBeta, logBeta } from './incompleteBeta.ts';
import { positiveQuantile } from './positiveQuantile.ts';

/** P(F > x): I at d₂/(d₂ + d₁x) with d₂/2 and d₁/2 (Abramowitz and Stegun 1964, 26.6.2). */
function upperTail(x: number, over: number, under: number): number {
  const whole = over * x + under;
  return incompleteBeta(under / whole, (over * x) / whole, under / 2, over / 2);
}

/** Cumulative distribution of F with `over` and `under` degrees of freedom (need not be whole). */
export function fisherCumulative(x: number, over: number, under: number): number {
  return x <= 0 ? 0 : 1 - upperTail(x, over, under);
}

function density(x: number, over: number, under: number): number {
  const ratio = over / under;
  const log =
    (over / 2) * Math.log(ratio) +
    (over / 2 - 1) * Math.log(x) -
    ((over + under) / 2) * Math.log1p(ratio * x) -
    logBeta(over / 2, under / 2);
  return Math.exp(log);
}

/**
 * Quantile of F: the value with probability p below it.
 *
 * @param p above 0 and below 1
 * @param over degrees of freedom of the numerator, above 0, need not be whole
 * @param under degrees of freedom of the denominator
 * @throws RangeError outside these bounds
 */
export function fisherQuantile(p: number, over: number, under: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`no quantile of F at ${p}`);
  if (!(over > 0 && under > 0)) throw new RangeError(`${over} and ${under} degrees of freedom`);
  return positiveQuantile(
    (x) => upperTail(x, over, under),
    (x) => density(x, over, under),
    1 - p,
  );
}
