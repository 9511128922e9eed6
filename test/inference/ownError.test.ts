import { describe, expect, it } from 'vitest';
import { fitStrength } from '../../src/inference/fitStrength.ts';
import { isRefusal, type Refusal } from '../../src/inference/reliability/refusal.ts';
import { squadError } from '../../src/inference/retest/squadError.ts';
import type { TestDay } from '../../src/inference/retest/testDay.ts';
import {
  borrowedError,
  errorFromRepeats,
  type TestError,
} from '../../src/inference/retest/testError.ts';
import { toRadians } from '../../src/numeric/degrees.ts';

const day = (torque: number, deg = 60): TestDay => ({
  score: 'best',
  angles: [{ angle: toRadians(deg), trials: [torque] }],
});

function given(error: TestError | Refusal): TestError {
  if (isRefusal(error)) throw new Error(error.reason);
  return error;
}

describe('the error of one person’s test from a squad', () => {
  it('leaves out a shift of all from day to day: +8 % for everybody is no error of one', () => {
    const people = [180, 200, 220, 240, 260, 280].map((x) => [day(x), day(1.08 * x)]);
    const found = given(squadError(people));
    expect(found).toMatchObject({ amount: expect.closeTo(0, 12), degreesOfFreedom: 5 });
  });

  it('is √(rest/((n − 1)(k − 1))) of the logarithms (hand calculation)', () => {
    // ln ratios 0.06 and −0.02: rest of two by two is (0.06 + 0.02)²/4 = 0.0016, one degree.
    const people = [
      [day(200), day(200 * Math.exp(0.06))],
      [day(180), day(180 * Math.exp(-0.02))],
    ];
    expect(given(squadError(people)).amount).toBeCloseTo(Math.sqrt(0.0016), 12);
  });
});

describe('own days at an outer angle', () => {
  const middle = { from: toRadians(35), to: toRadians(105) };
  const { outer } = borrowedError('single-joint dynamometer', { middle });

  it('tell the error of the middle: the factor is taken out, not put on top', () => {
    // Two days at 20° apart by ln = 0.1: SD 0.1/√2, over 1.25.
    const days = [day(100, 20), day(100 * Math.exp(0.1), 20)];
    expect(given(errorFromRepeats([days], undefined, outer)).amount).toBeCloseTo(
      0.1 / Math.SQRT2 / 1.25,
      12,
    );
    expect(given(errorFromRepeats([days])).amount).toBeCloseTo(0.1 / Math.SQRT2, 12);
  });
});

describe('the fit', () => {
  it('follows a point with a small error more than one with a large', () => {
    const tests = [40, 60, 80].map((deg) => ({
      action: 'knee extension',
      deg,
      torque: deg === 60 ? 300 : 200,
    }));
    const at = (sure: number) =>
      fitStrength('male', 80, tests, () => ({
        share: 0.04,
        known: 'own',
        at: (deg) => (deg === sure ? 0.01 : 0.2),
      }))[0]?.fitted;
    expect(Math.abs((at(60)?.[1] ?? 0) - 300)).toBeLessThan(Math.abs((at(40)?.[1] ?? 0) - 300));
    expect(Math.abs((at(40)?.[0] ?? 0) - 200)).toBeLessThan(Math.abs((at(60)?.[0] ?? 0) - 200));
  });
});
