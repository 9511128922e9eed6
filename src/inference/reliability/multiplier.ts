import { studentQuantile } from '../../numeric/studentT.ts';

/**
 * How many standard errors an interval reaches to each side: 1.96 at 95 % with a known error, the
 * t quantile with one of few degrees of freedom (2.262 with 9).
 *
 * @param level two-sided, above 0 and below 1
 * @param degreesOfFreedom of the error; Infinity when it is known
 */
export function multiplier(level: number, degreesOfFreedom = Number.POSITIVE_INFINITY): number {
  return studentQuantile((1 + level) / 2, degreesOfFreedom);
}
