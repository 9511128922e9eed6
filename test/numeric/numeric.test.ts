import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageOverOrders } from '../../src/numeric/averageOverOrders.ts';
import { naturalSpline, piecewiseLinear } from '../../src/numeric/interpolation.ts';
import { normalCumulative } from '../../src/numeric/normal.ts';
import { risingRoot } from '../../src/numeric/rootFinding.ts';

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
