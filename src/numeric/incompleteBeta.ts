import { logGamma } from './gamma.ts';

/** ln B(a, b) = ln Γ(a) + ln Γ(b) − ln Γ(a + b). */
export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/**
 * Regularised incomplete beta function I_x(a, b), a and b above 0, from x and its complement.
 *
 * Continued fraction, on the side where it converges fast (Abramowitz and Stegun 1964, 26.5.8).
 * Both x and 1 − x are asked for because a tail needs the small one of them without rounding.
 *
 * @param x 0 to 1
 * @param rest 1 − x
 */
export function incompleteBeta(x: number, rest: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (rest <= 0) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log(rest) - logBeta(a, b));
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(rest, b, a)) / b;
}

/** The fraction 1/(1 + d₁/(1 + d₂/(1 + …))), worked forward by Lentz's rule. */
function betaFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= c * d;
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return value;
}
