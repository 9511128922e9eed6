import { chiSquaredQuantile } from '../../numeric/chiSquared.ts';
import type { Between } from './between.ts';

/** A standard deviation and how well it is known. */
export interface ErrorSize {
  readonly value: number;
  /** Infinity for one that is known. */
  readonly degreesOfFreedom: number;
}

/**
 * One error from several estimates of it: variances weighted by their degrees of freedom, which
 * add up. With an assumed error as one of them this is the scaled inverse χ² prior meeting data.
 */
export function pooledError(sizes: readonly ErrorSize[]): ErrorSize {
  const known = sizes.find(({ degreesOfFreedom }) => degreesOfFreedom === Infinity);
  if (known) return known;
  const total = sizes.reduce((sum, { degreesOfFreedom }) => sum + degreesOfFreedom, 0);
  const squares = sizes.reduce(
    (sum, { value, degreesOfFreedom }) => sum + degreesOfFreedom * value ** 2,
    0,
  );
  return { value: Math.sqrt(squares / total), degreesOfFreedom: total };
}

/**
 * Degrees of freedom of a standard deviation known to a relative spread: an estimate of it with ν
 * degrees scatters by about 1/√(2ν) of itself, so ν = 1/(2·(spread/value)²).
 *
 * With it a borrowed error widens every interval as an error measured on few people would.
 */
export function degreesOfSpread(value: number, spread: number): number {
  return spread > 0 ? value ** 2 / (2 * spread ** 2) : Infinity;
}

/** A standard deviation with the χ² interval of its degrees of freedom. */
export function withInterval(value: number, degreesOfFreedom: number, level: number): Between {
  const at = (p: number) =>
    value * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(p, degreesOfFreedom));
  return { value, low: at((1 + level) / 2), high: at((1 - level) / 2) };
}
