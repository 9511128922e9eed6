import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageOverOrders } from '../../src/numeric/averageOverOrders.ts';
import { naturalSpline, piecewiseLinear } from '../../src/numeric/interpolation.ts';
import { leastSquares } from '../../src/numeric/leastSquares.ts';
import { normalCumulative } from '../../src/numeric/normal.ts';
import { risingRoot } from '../../src/numeric/rootFinding.ts';

describe('least squares', () => {
  // NIST/ITL Statistical Reference Datasets, nonlinear regression; certified to 11 digits.
  const misra = {
    x: [
      77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760,
    ],
    y: [
      10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47,
      81.78,
    ],
  };
  it.each([[[500, 1e-4]], [[250, 5e-4]]])(
    'Misra1a of NIST from %j: 238.94212918 and 5.5015643181e-4 to 6 digits',
    (start) => {
      const fit = leastSquares(
        ([b1 = 0, b2 = 0]) =>
          misra.x.map((x, i) => (misra.y[i] ?? 0) - b1 * (1 - Math.exp(-b2 * x))),
        start,
      );
      expect(fit.converged).toBe(true);
      expect((fit.parameters[0] ?? 0) / 238.94212918).toBeCloseTo(1, 6);
      expect((fit.parameters[1] ?? 0) / 5.5015643181e-4).toBeCloseTo(1, 6);
      expect(fit.sumOfSquares / 0.12455138894).toBeCloseTo(1, 6);
    },
  );
});

describe('normal distribution', () => {
  it('matches standard quantiles (tables: 1.959963985 → 0.975, 2.575829304 → 0.995, 4.753424 → 1 − 1e-6)', () => {
    expect(normalCumulative(1.959963985)).toBeCloseTo(0.975, 9);
    expect(normalCumulative(2.575829304)).toBeCloseTo(0.995, 9);
    expect(1 - normalCumulative(4.753424309)).toBeCloseTo(1e-6, 11);
    expect(normalCumulative(0)).toBe(0.5);
    expect(normalCumulative(-9)).toBe(0);
  });
});

describe('interpolation', () => {
  it('a natural spline through a straight line is that line, also outside the knots', () => {
    const line = naturalSpline([0, 1, 3, 7], [1, 3, 7, 15]);
    for (const x of [-2, 0.5, 2, 6, 9]) expect(line(x)).toBeCloseTo(1 + 2 * x, 9);
  });

  it('a natural spline through 0, 1, 0 at 0, 1, 2 is 1.5x − x³/2 on the first half (hand calculation)', () => {
    const hump = naturalSpline([0, 1, 2], [0, 1, 0]);
    expect(hump(0.5)).toBeCloseTo(1.5 * 0.5 - 0.5 ** 3 / 2, 12);
  });

  it('straight pieces hold their ends', () => {
    const f = piecewiseLinear([1, 2], [10, 20]);
    expect([f(0), f(1.5), f(3)]).toEqual([10, 15, 20]);
  });
});

describe('root finding', () => {
  it('finds the root of a rising cubic and clamps outside', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 9.9, noNaN: true }), (root) => {
        expect(risingRoot((x) => x ** 3 - root ** 3, 0, 10, 1e-9)).toBeCloseTo(root, 5);
      }),
    );
    expect(risingRoot((x) => x + 1, 0, 10, 1e-9)).toBe(0);
    expect(risingRoot((x) => x - 11, 0, 10, 1e-9)).toBe(10);
  });
});

describe('averaging over orders', () => {
  it('splits a product of two causes evenly beyond their own parts (hand calculation)', () => {
    // a alone 0.1, b alone 0.2, both 1.1·1.2 − 1 = 0.32: a gets 0.11, b 0.21.
    const parts = averageOverOrders(['a', 'b'], (counted) => [
      (counted.has('a') ? 1.1 : 1) * (counted.has('b') ? 1.2 : 1),
    ]);
    expect(parts.get('a')?.[0]).toBeCloseTo(0.11, 12);
    expect(parts.get('b')?.[0]).toBeCloseTo(0.21, 12);
  });
});
