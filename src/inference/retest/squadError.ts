import { isSameAngle } from '../../numeric/degrees.ts';
import { sumOf } from '../../numeric/moments.ts';
import { pooledFreedom } from '../reliability/errorCorrelation.ts';
import { type ErrorCorrelation, unknownCorrelation } from '../reliability/errorOfChange.ts';
import { isRefusal, type Refusal, refusal } from '../reliability/refusal.ts';
import { varianceParts } from '../reliability/repeatedTests.ts';
import { scoresByAngle, type TestDay } from './testDay.ts';
import { outerFactor, type TestError } from './testError.ts';

/**
 * The error of one person's test from several people tested on the same days.
 *
 * Rest of the two-way analysis of log scores, angle by angle and pooled: a shift of all people from
 * day to day (learning, a new strap) is no error of one of them. Degrees of freedom (n − 1)(k − 1) an
 * angle, put together as the correlation of a day's errors allows at most.
 *
 * @param people each a list of days in the same order
 * @param outer angles that scatter more by a factor, which is taken out
 * @returns share of the torque, or why there is none
 */
export function squadError(
  people: readonly (readonly TestDay[])[],
  correlation: ErrorCorrelation = unknownCorrelation,
  outer?: TestError['outer'],
): TestError | Refusal {
  const days = Math.min(...people.map(({ length }) => length));
  const scores = people.map((one) => scoresByAngle(one.slice(0, days)));
  const shared = (scores[0] ?? []).filter(({ angle }) =>
    scores.every((one) =>
      one.some((entry) => isSameAngle(entry.angle, angle) && entry.days.length === days),
    ),
  );
  const parts = shared.flatMap(({ angle }) => {
    const table = scores.map((one) => {
      const entry = one.find((found) => isSameAngle(found.angle, angle));
      return (entry?.days ?? []).map(({ score }) => Math.log(score) / outerFactor(outer, angle));
    });
    const found = varianceParts(table);
    return isRefusal(found) ? [] : [found.rest];
  });
  const perAngle = (people.length - 1) * (days - 1);
  if (parts.length === 0 || perAngle < 1)
    return refusal('one-day', 'no angle was tested by several people on the same two days');
  return {
    amount: Math.sqrt(sumOf(parts) / (parts.length * perAngle)),
    unit: 'share',
    degreesOfFreedom: pooledFreedom(perAngle, parts.length, correlation.most),
    known: 'own',
  };
}
