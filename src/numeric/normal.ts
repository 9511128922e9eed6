import { positiveQuantile } from './positiveQuantile.ts';

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Cumulative standard normal distribution Φ(z).
 *
 * Series for small |z|, Lentz continued fraction of the complementary error function beyond
 * (Abramowitz and Stegun 1964, 26.2.11 and 26.2.14); absolute error below 1e-15. Beyond |z| = 8.3
 * the tail is under 1e-16 and taken as 0.
 */
export function normalCumulative(z: number): number {
  const distance = Math.abs(z);
  if (distance > 8.3) return z < 0 ? 0 : 1;
  if (distance < 3) {
    let term = distance;
    let sum = term;
    for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
      term *= (distance * distance) / k;
      sum += term;
    }
    const half = sum * normalDensity(distance);
    return z < 0 ? 0.5 - half : 0.5 + half;
  }
  let fraction = distance;
  for (let k = 60; k > 0; k--) fraction = distance + k / fraction;
  const tail = normalDensity(distance) / fraction;
  return z < 0 ? tail : 1 - tail;
}

/**
 * Quantile of the standard normal distribution, Φ⁻¹(p), 0 < p < 1 (outside: ±∞ at the ends).
 *
 * @throws RangeError for a p that is no probability
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`${p} is no probability`);
  if (p === 0.5) return 0;
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity;
  if (p > 0.5) return -normalQuantile(1 - p);
  // By symmetry the lower tail is the upper one mirrored.
  return -positiveQuantile((z) => normalCumulative(-z), normalDensity, p);
}
