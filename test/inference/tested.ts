/** Test days, errors and questions of retests, short to write. */
import type { ErrorCorrelation } from '../../src/inference/reliability/errorOfChange.ts';
import type { TestDay } from '../../src/inference/retest/testDay.ts';
import type { TestError } from '../../src/inference/retest/testError.ts';
import type { RetestAsked } from '../../src/inference/retest.ts';
import { toRadians } from '../../src/numeric/degrees.ts';

/** A day with trials (N·m) by angle in degrees. */
export const day = (
  trials: Readonly<Record<number, readonly number[]>>,
  score: TestDay['score'] = 'best',
): TestDay => ({
  score,
  angles: Object.entries(trials).map(([deg, values]) => ({
    angle: toRadians(Number(deg)),
    trials: values,
  })),
});

export const range = (fromDeg: number, toDeg: number) => ({
  from: toRadians(fromDeg),
  to: toRadians(toDeg),
});

/** An error known for sure. */
export const knownError = (amount: number, unit: TestError['unit'] = 'share'): TestError => ({
  amount,
  unit,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
  known: 'own',
});

export const exactly = (r: number): ErrorCorrelation => ({ least: r, most: r, known: 'own' });

/** One day before and one after, three trials at each angle, target 70° to 100°, error 5 N·m. */
export const asked = (
  before: Readonly<Record<number, number>>,
  after: Readonly<Record<number, number>>,
  rest: Partial<RetestAsked> = {},
): RetestAsked => ({
  before: [day(threeTrials(before))],
  after: [day(threeTrials(after))],
  target: range(70, 100),
  error: knownError(5, 'newtonMetre'),
  ...rest,
});

function threeTrials(best: Readonly<Record<number, number>>) {
  return Object.fromEntries(
    Object.entries(best).map(([deg, torque]) => [deg, [torque, torque * 0.97, torque * 0.95]]),
  );
}
