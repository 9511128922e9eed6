import { fisherQuantile } from '../../numeric/fisherF.ts';
import { sumOf } from '../../numeric/moments.ts';
import type { ErrorCorrelation } from './errorOfChange.ts';
import { isRefusal, type Refusal, refusal } from './refusal.ts';
import { type ScoreTable, varianceParts } from './repeatedTests.ts';

/** How errors of one day's angles go together, estimated, with its interval. */
export interface EstimatedCorrelation extends ErrorCorrelation {
  readonly value: number;
  /** Degrees of freedom of what days share: days less one, added up over people. */
  readonly dayFreedom: number;
}

/**
 * Correlation between the errors of the angles of one day, from repeated days over several angles.
 *
 * Of one person's days × angles table, with each angle's own mean taken out, what the angles of a
 * day share is the day's error: r is ICC(3,1) with days as the targets and angles as the judges.
 * Several people: their sums of squares and degrees of freedom are added. A steady rise from day to
 * day (learning) counts as shared error and raises r; nothing is done about that here.
 *
 * Few days leave r wide open, so the ends of its interval are what is handed on, held within 0 to 1:
 * a day that helps one angle at the cost of another is not believed without better data.
 *
 * @param people each a table, rows test days, columns angles; logarithms of torque if errors are shares
 * @param level of the interval; 0.8 leaves a tenth on each side
 */
export function errorCorrelation(
  people: readonly ScoreTable[],
  level = 0.8,
): EstimatedCorrelation | Refusal {
  const tables = people.map(varianceParts);
  const wrong = tables.find(isRefusal);
  if (wrong) return wrong;
  const parts = tables.flatMap((table) => (isRefusal(table) ? [] : [table]));
  const angles = parts[0]?.days ?? 0;
  if (parts.some(({ days }) => days !== angles) || angles < 2)
    return refusal('unlike-angles', 'every person needs the same angles, two or more');
  if (parts.some(({ targets }) => targets < 2))
    return refusal('one-day', 'there is one test day; an error needs two days or more');
  const dayFreedom = sumOf(parts.map(({ targets }) => targets - 1));
  const restFreedom = dayFreedom * (angles - 1);
  const ofDays = sumOf(parts.map(({ betweenTargets }) => betweenTargets)) / dayFreedom;
  const ofRest = sumOf(parts.map(({ rest }) => rest)) / restFreedom;
  if (ofDays + ofRest === 0) return refusal('no-spread', 'the days do not differ at all');
  const r = (ratio: number) => 1 - angles / (ratio + angles - 1);
  const inside = (x: number) => Math.min(1, Math.max(0, x));
  const [share, ratio] = [(1 + level) / 2, ofDays / ofRest];
  return {
    value: r(ratio),
    least: inside(r(ratio / fisherQuantile(share, dayFreedom, restFreedom))),
    most: inside(r(ratio * fisherQuantile(share, restFreedom, dayFreedom))),
    known: 'own',
    dayFreedom,
  };
}

/**
 * Degrees of freedom of an error pooled over m angles of the same days: m·f when the errors are
 * independent, f when they are one, m·f/(1 + (m − 1)r²) between (the correlation of squared normal
 * errors is r²).
 *
 * @param perAngle degrees of freedom of one angle alone
 */
export function pooledFreedom(perAngle: number, angles: number, r: number): number {
  return (angles * perAngle) / (1 + (angles - 1) * r ** 2);
}
