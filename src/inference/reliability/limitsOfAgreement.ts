import { meanOf, standardDeviation, sumOf } from '../../numeric/moments.ts';
import { studentCumulative } from '../../numeric/studentT.ts';
import { around, type Between } from './between.ts';
import { multiplier } from './multiplier.ts';
import { type Refusal, refusal } from './refusal.ts';

/** How two tests of the same people agree. */
export interface Agreement {
  readonly people: number;
  /** Mean of first less second, with its interval by t. */
  readonly bias: Between;
  /** Standard deviation of the differences. */
  readonly spread: number;
  readonly standardErrorOfBias: number;
  /** Paired t, and how often chance alone gives one as far from 0, two-sided. */
  readonly pairedT: number;
  readonly chance: number;
  readonly lower: Between;
  readonly upper: Between;
  readonly standardErrorOfLimit: number;
  /** Twice the spread of repeats (British Standards Institution, as Bland and Altman use it). */
  readonly repeatability: number;
  /** √(Σd²/2n): error within a person if there is no bias. */
  readonly withinPerson: number;
  /** Spread over √2: error within a person with the bias removed. */
  readonly typicalError: number;
}

/**
 * Limits of agreement between two tests (Bland and Altman 1986, Lancet 327:307).
 *
 * bias ± reach·spread; interval of a limit by its standard error √(3·s²/n), as they give it.
 *
 * @param first,second scores of the same people in the same order, unit of the scores
 * @param reach spreads from the bias to a limit: 1.96 for 95 % (they rounded to 2)
 * @param level of the intervals
 */
export function limitsOfAgreement(
  first: readonly number[],
  second: readonly number[],
  reach = 1.96,
  level = 0.95,
): Agreement | Refusal {
  const people = first.length;
  if (people < 2 || second.length !== people)
    return refusal('unpaired', 'both tests need the same people, two or more');
  const differences = first.map((score, i) => score - (second[i] ?? Number.NaN));
  if (!differences.every(Number.isFinite))
    return refusal('missing-score', 'a person has no score in one of the tests');
  const [mean, spread] = [meanOf(differences), standardDeviation(differences)];
  const standardErrorOfBias = spread / Math.sqrt(people);
  const standardErrorOfLimit = Math.sqrt((3 * spread ** 2) / people);
  const t = multiplier(level, people - 1);
  // Equal differences: no chance at all makes a bias, and there is none to test without one.
  const pairedT = mean === 0 ? 0 : mean / standardErrorOfBias;
  return {
    people,
    bias: around(mean, t * standardErrorOfBias),
    spread,
    standardErrorOfBias,
    pairedT,
    chance: 2 * studentCumulative(-Math.abs(pairedT), people - 1),
    lower: around(mean - reach * spread, t * standardErrorOfLimit),
    upper: around(mean + reach * spread, t * standardErrorOfLimit),
    standardErrorOfLimit,
    repeatability: 2 * spread,
    withinPerson: Math.sqrt(sumOf(differences.map((d) => d * d)) / (2 * people)),
    typicalError: spread / Math.SQRT2,
  };
}
