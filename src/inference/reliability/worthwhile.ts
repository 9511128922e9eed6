import { studentCumulative } from '../../numeric/studentT.ts';
import { type Refusal, refusal } from './refusal.ts';

/**
 * Smallest worthwhile change: 0.2 of the spread between people, the instrument's noise taken out
 * (Hopkins's convention, after Cohen's small effect; no limit set by the body).
 *
 * Only noise of the instrument is taken out; people's real change from day to day stays.
 *
 * @param spread standard deviation between people of one group, unit of the scores
 * @param instrumentError standard deviation of the instrument's noise, same unit
 * @param share of the spread, 0.2 by convention
 */
export function smallestWorthwhileChange(
  spread: number,
  instrumentError = 0,
  share = 0.2,
): number | Refusal {
  if (!(spread > instrumentError))
    return refusal(
      'all-noise',
      'people differ no more than the instrument’s noise; no worthwhile change can be told',
    );
  return share * Math.sqrt(spread ** 2 - instrumentError ** 2);
}

/** Chances that a true change is above, within or below the smallest worthwhile one; they add to 1. */
export interface WorthwhileChances {
  readonly up: number;
  readonly trivial: number;
  readonly down: number;
}

/**
 * Chances of the true change behind an observed one, if before the test every change was as likely
 * as any other (a flat prior: it knows nothing of training, so it believes large changes too well).
 *
 * @param change observed, with its standard error, same unit as `worthwhile`
 * @param worthwhile 0 or more
 * @param degreesOfFreedom of the standard error
 */
export function worthwhileChances(
  change: number,
  standardError: number,
  worthwhile: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): WorthwhileChances {
  const above = (x: number) => chanceAbove(change, standardError, x, degreesOfFreedom);
  const [up, notDown] = [above(worthwhile), above(-worthwhile)];
  return { up, trivial: notDown - up, down: 1 - notDown };
}

/** Chance that the true change is above x, flat prior. */
export function chanceAbove(
  change: number,
  standardError: number,
  x: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): number {
  return studentCumulative((change - x) / standardError, degreesOfFreedom);
}
