import { squaresAroundMean, sumOf } from '../../numeric/moments.ts';
import { type TestKind, testErrorFactors, testErrors } from '../../tables/testError.ts';
import type { AngleRange } from '../ranking.ts';
import { pooledFreedom } from '../reliability/errorCorrelation.ts';
import { type ErrorCorrelation, unknownCorrelation } from '../reliability/errorOfChange.ts';
import { degreesOfSpread, pooledError } from '../reliability/errorSize.ts';
import { type Refusal, refusal } from '../reliability/refusal.ts';
import { scoresByAngle, type TestDay } from './testDay.ts';

/** Typical error of one day's score at one angle, and how it is known. */
export interface TestError {
  /** Share of the torque (as a logarithm: 0.04 is 4 %), or N·m. */
  readonly amount: number;
  readonly unit: 'share' | 'newtonMetre';
  /** Infinity when the error is known for sure; few make every verdict more careful. */
  readonly degreesOfFreedom: number;
  readonly known: 'own' | 'borrowed' | 'own and borrowed';
  /** The row of `tables/testError.ts` it was borrowed from. */
  readonly kind?: TestKind;
  /** True when it was raised for people who do not know the test. */
  readonly unfamiliar?: boolean;
  /** Angles outside `middle` have an error larger by the factor. */
  readonly outer?: { readonly middle: AngleRange; readonly factor: number };
}

/**
 * The error of a kind of test, for a coach who has measured none.
 *
 * Its degrees of freedom come from how unsure the row is, so that a borrowed error is not taken for
 * a measured one.
 *
 * @param middle angles (radians) outside which the outer-angle factor applies; none: nowhere
 */
export function borrowedError(
  kind: TestKind,
  { unfamiliar = false, middle }: { unfamiliar?: boolean; middle?: AngleRange } = {},
): TestError {
  const { value, spread } = testErrors[kind];
  const { unfamiliar: raise, outerAngle } = testErrorFactors;
  const factor = unfamiliar ? raise.value : 1;
  const unsure = Math.hypot(spread / value, unfamiliar ? raise.spread / raise.value : 0);
  return {
    amount: value * factor,
    unit: 'share',
    degreesOfFreedom: degreesOfSpread(1, unsure),
    known: 'borrowed',
    kind,
    unfamiliar,
    ...(middle ? { outer: { middle, factor: outerAngle.value } } : {}),
  };
}

/**
 * An athlete's own error from several test days without training between.
 *
 * Scatter of the logarithms of an angle's days around their mean, pooled over angles. A day shared
 * by all angles is part of the error, so it stays in; a rise by learning is in it too. How far
 * angles of one day are separate evidence is unknown: the degrees of freedom count them as the
 * correlation allows at most, with an unknown one as a single angle.
 *
 * @param occasions each a list of days before, or after, some training
 * @param outer angles that scatter more by a factor: it is taken out, so that the error is that of the
 *   middle
 * @returns share of the torque, or why there is none
 */
export function errorFromRepeats(
  occasions: readonly (readonly TestDay[])[],
  correlation: ErrorCorrelation = unknownCorrelation,
  outer?: TestError['outer'],
): TestError | Refusal {
  const parts = occasions.flatMap((days) => {
    const repeated = scoresByAngle(days).filter(({ days: scores }) => scores.length > 1);
    if (repeated.length === 0) return [];
    const logs = repeated.map(({ angle, days: scores }) =>
      scores.map(({ score }) => Math.log(score) / outerFactor(outer, angle)),
    );
    const freedom = sumOf(logs.map(({ length }) => length - 1));
    const value = Math.sqrt(sumOf(logs.map(squaresAroundMean)) / freedom);
    const angles = logs.length;
    const degreesOfFreedom = pooledFreedom(freedom / angles, angles, correlation.most);
    return [{ value, degreesOfFreedom }];
  });
  if (parts.length === 0)
    return refusal('one-day', 'no angle was tested on two days; an own error needs that');
  const { value, degreesOfFreedom } = pooledError(parts);
  if (value === 0)
    return refusal('no-spread', 'the test days agree to the last digit; no error can be told');
  return { amount: value, unit: 'share', degreesOfFreedom, known: 'own' };
}

/**
 * The athlete's own few days and a borrowed error together: squares weighted by degrees of freedom,
 * so that the borrowed one fades as own days are added. What the borrowed one says about outer
 * angles stays.
 *
 * @param own,borrowed both shares
 */
export function combinedError(own: TestError, borrowed: TestError): TestError {
  const { value, degreesOfFreedom } = pooledError(
    [own, borrowed].map((error) => ({ ...error, value: error.amount })),
  );
  return { ...borrowed, amount: value, degreesOfFreedom, known: 'own and borrowed' };
}

/**
 * Error at an angle as a share of its torque.
 *
 * @param torque N·m the share is of, for an error in N·m
 */
export function errorShareAt(error: TestError, angle: number, torque: number): number {
  const amount = error.amount * outerFactor(error.outer, angle);
  return error.unit === 'share' ? amount : amount / torque;
}

/** By how much an angle scatters more than the middle ones. */
export function outerFactor(outer: TestError['outer'], angle: number): number {
  const tiny = 1e-9;
  if (!outer || (angle >= outer.middle.from - tiny && angle <= outer.middle.to + tiny)) return 1;
  return outer.factor;
}
