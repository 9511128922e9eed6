import { meanOf, squaresAroundMean, sumOf } from '../../numeric/moments.ts';
import { type Refusal, refusal } from './refusal.ts';

/** An estimate of one unit (an athlete, a school) with its standard error. */
export interface UnitEstimate {
  readonly estimate: number;
  readonly standardError: number;
}

/** Units drawn toward what they have in common. */
export interface Pooled {
  readonly mean: number;
  readonly standardError: number;
  /** Each unit's estimate, shrunk toward the mean. */
  readonly shrunk: readonly number[];
}

/**
 * Mean and shrunk units at a given spread τ between them: weights 1/(SE² + τ²), each unit moved
 * toward the mean by SE²/(SE² + τ²).
 *
 * @param units one or more, standard errors above 0
 * @param between τ; 0 makes all units one
 */
export function pooled(units: readonly UnitEstimate[], between: number): Pooled {
  const weights = units.map(({ standardError }) => 1 / (standardError ** 2 + between ** 2));
  const total = sumOf(weights);
  const mean = sumOf(units.map(({ estimate }, i) => (weights[i] ?? 0) * estimate)) / total;
  const shrunk = units.map(({ estimate }, i) => {
    const own = between ** 2 * (weights[i] ?? 0);
    return mean + own * (estimate - mean);
  });
  return { mean, standardError: 1 / Math.sqrt(total), shrunk };
}

/** How unlike units are beyond their errors. */
export interface Heterogeneity {
  /** Cochran's Q, and its degrees of freedom. */
  readonly squares: number;
  readonly degreesOfFreedom: number;
  /** τ², held at 0 where the units differ less than their errors alone would make them. */
  readonly variance: number;
}

/**
 * Spread between units beyond their errors (DerSimonian and Laird 1986, Control Clin Trials 7:177):
 * τ² = max(0, (Q − ν)/(Σw − Σw²/Σw)), w = 1/SE².
 *
 * @returns τ² (square of the estimates' unit), or why there is none: fewer than two units
 */
export function heterogeneity(units: readonly UnitEstimate[]): Heterogeneity | Refusal {
  if (units.length < 2)
    return refusal('one-unit', 'a spread between units needs two of them or more');
  const weights = units.map(({ standardError }) => 1 / standardError ** 2);
  const { mean } = pooled(units, 0);
  const squares = sumOf(units.map(({ estimate }, i) => (weights[i] ?? 0) * (estimate - mean) ** 2));
  const degreesOfFreedom = units.length - 1;
  const scale = sumOf(weights) - sumOf(weights.map((w) => w * w)) / sumOf(weights);
  return {
    squares,
    degreesOfFreedom,
    variance: Math.max(0, (squares - degreesOfFreedom) / scale),
  };
}

/** Units drawn toward their mean by one common share. */
export interface CommonShrinkage {
  readonly mean: number;
  /** Share of its distance from the mean that every unit keeps. */
  readonly kept: number;
  readonly shrunk: readonly number[];
}

/**
 * James–Stein shrinkage toward the mean of units of one known error (Efron and Morris 1977, Sci Am
 * 236:119): kept = 1 − (k − 3)·SE²/Σ(y − ȳ)², held at 0 when noise explains all the spread.
 *
 * @param estimates four or more; with fewer, shrinking toward their own mean need not help
 * @param standardError of each
 */
export function jamesStein(
  estimates: readonly number[],
  standardError: number,
): CommonShrinkage | Refusal {
  if (estimates.length < 4)
    return refusal('few-units', 'shrinking toward a common mean needs four units or more');
  const mean = meanOf(estimates);
  const squares = squaresAroundMean(estimates);
  const noise = (estimates.length - 3) * standardError ** 2;
  const kept = squares > noise ? 1 - noise / squares : 0;
  return { mean, kept, shrunk: estimates.map((y) => mean + kept * (y - mean)) };
}
