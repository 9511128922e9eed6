/** Bernoulli numbers B₂ … B₁₄ over 2k(2k − 1): the terms of Stirling's series. */
const stirling = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];

/**
 * Logarithm of the gamma function, ln Γ(x), x > 0.
 *
 * Stirling's series at 15 or more, reached from below by Γ(x + 1) = x·Γ(x) (Abramowitz and Stegun
 * 1964, 6.1.41 and 6.1.15); relative error near 1e-15.
 */
export function logGamma(x: number): number {
  let product = 1;
  let at = x;
  for (; at < 15; at++) product *= at;
  const series = stirling.reduceRight((sum, term) => sum / (at * at) + term, 0) / at;
  return (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + series - Math.log(product);
}

/**
 * Regularised lower incomplete gamma function P(a, x), a > 0.
 *
 * Power series below x = a + 1, continued fraction of the rest above (Abramowitz and Stegun 1964,
 * 6.5.29 and 6.5.31).
 */
export function regularisedGamma(a: number, x: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  return x < a + 1 ? front * gammaSeries(a, x) : 1 - front * gammaFraction(a, x);
}

function gammaSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** 1/(x + 1 − a − 1(1 − a)/(x + 3 − a − …)), worked forward by Lentz's rule. */
function gammaFraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < 10_000; n++) {
    const over = -n * (n - a);
    b += 2;
    d = 1 / (over * d + b);
    c = b + over / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return value;
}
