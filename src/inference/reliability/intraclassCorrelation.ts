import { fisherQuantile } from '../../numeric/fisherF.ts';
import { type Between, eachEnd } from './between.ts';
import { type Refusal, refusal } from './refusal.ts';
import { meanSquares, type VarianceParts } from './repeatedTests.ts';

/**
 * The six intraclass correlations, of one day's score and of the mean of all days.
 *
 * `oneWay`: days differ from target to target, ICC(1,·). `agreement`: days drawn at random, a shift
 * between them counts as error, ICC(2,·). `consistency`: a shift between days does not count,
 * ICC(3,·).
 */
export interface IntraclassCorrelations {
  readonly oneWay: OneAndMean;
  readonly agreement: OneAndMean;
  readonly consistency: OneAndMean;
}

export interface OneAndMean {
  readonly single: Between;
  readonly mean: Between;
}

/**
 * Intraclass correlations with intervals (Shrout and Fleiss 1979, Psychol Bull 86:420).
 *
 * With more difference within targets than between them the values are negative, and stay so.
 *
 * @param level of the two-sided interval, 0.95 for 95 %
 * @returns values without unit, or why there are none: one target, scores that never differ
 */
export function intraclassCorrelations(
  parts: VarianceParts,
  level = 0.95,
): IntraclassCorrelations | Refusal {
  if (parts.targets < 2)
    return refusal('one-target', 'a correlation needs scores of two people or more');
  // Equal people on every day leave 0 over 0, but for rounding.
  if (parts.betweenTargets + parts.rest <= 1e-24 * (parts.total + parts.grandMean ** 2))
    return refusal('no-spread', 'all people score the same; there is nothing to correlate');
  const { days: k, targets: n } = parts;
  const { targets: b, rest: e, within: w } = meanSquares(parts);
  const within = [n - 1, n * (k - 1)] as const;
  const rest = [n - 1, (n - 1) * (k - 1)] as const;
  return {
    oneWay: fromRatio(b / w, within, k, level),
    agreement: agreement(parts, level),
    consistency: fromRatio(b / e, rest, k, level),
  };
}

/**
 * ICC(1,·) and ICC(3,·) rise with F = B/W or B/E alone: (F − 1)/(F + k − 1) = 1 − k/(F + k − 1)
 * and 1 − 1/F. Their intervals follow from F over its upper and times its lower quantile.
 */
function fromRatio(
  ratio: number,
  [over, under]: readonly [number, number],
  k: number,
  level: number,
): OneAndMean {
  const share = (1 + level) / 2;
  const ends = {
    value: ratio,
    low: ratio / fisherQuantile(share, over, under),
    high: ratio * fisherQuantile(share, under, over),
  };
  return {
    single: eachEnd(ends, (f) => 1 - k / (f + k - 1)),
    mean: eachEnd(ends, (f) => 1 - 1 / f),
  };
}

/**
 * ICC(2,1) = (B − E)/(B + (k − 1)E + k(J − E)/n), the mean of k by the Spearman–Brown step-up,
 * which equals (B − E)/(B + (J − E)/n). Its interval needs the degrees of freedom of a mix of J
 * and E.
 */
function agreement(parts: VarianceParts, level: number): OneAndMean {
  const { days: k, targets: n } = parts;
  const { targets: b, days: j, rest: e } = meanSquares(parts);
  const value = (b - e) / (b + (k - 1) * e + (k * (j - e)) / n);
  const v = mixedFreedom(value, j, e, n, k);
  const share = (1 + level) / 2;
  const upper = fisherQuantile(share, n - 1, v);
  const lower = fisherQuantile(share, v, n - 1);
  const mix = k * j + (k * n - k - n) * e;
  const single = {
    value,
    low: (n * (b - upper * e)) / (upper * mix + n * b),
    high: (n * (lower * b - e)) / (mix + n * lower * b),
  };
  return { single, mean: eachEnd(single, (r) => (k * r) / (1 + (k - 1) * r)) };
}

/**
 * Satterthwaite's degrees of freedom of kρJ + (n(1 + (k − 1)ρ) − kρ)E, as Shrout and Fleiss give
 * them. A mix of two variances never has fewer than the one known worse (k − 1): with a negative ρ
 * the two terms could cancel, so the formula is held there.
 */
function mixedFreedom(value: number, j: number, e: number, n: number, k: number): number {
  const ofDays = k * value * j;
  const ofRest = (n * (1 + (k - 1) * value) - k * value) * e;
  const squares = (n - 1) * ofDays ** 2 + ofRest ** 2;
  // No days' shift and no rest: any degrees of freedom do.
  if (squares === 0) return k - 1;
  return Math.max(k - 1, ((k - 1) * (n - 1) * (ofDays + ofRest) ** 2) / squares);
}
