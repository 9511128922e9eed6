import { describe, expect, it } from 'vitest';
import { largestMultiple } from '../../src/numeric/boxLinearProgram.ts';
import { minimiseWeightedSquares } from '../../src/numeric/boxQuadraticProgram.ts';
import { byLinearLibrary, linearModel, randomProblem, seeded, times } from './libraries.ts';

const moved = (target: readonly number[], slope: readonly number[], multiple: number) =>
  target.map((p, r) => p + multiple * (slope[r] ?? 0));

describe('largest multiple', () => {
  it('agrees with javascript-lp-solver to 1e-6 on 1,000 random problems: largest, least, and none', () => {
    const random = seeded(20261125);
    let worst = 0;
    let [without, above] = [0, 0];
    for (let k = 0; k < 1000; k++) {
      const problem = randomProblem(random);
      const own = largestMultiple(problem.rows, problem.target, problem.slope, problem.upper);
      const high = byLinearLibrary(linearModel(problem));
      const low = byLinearLibrary(linearModel(problem, 'min'));
      expect(own.feasible).toBe(high !== undefined);
      if (high === undefined || low === undefined) without++;
      else {
        worst = Math.max(worst, Math.abs(own.high - high) / (1 + high));
        worst = Math.max(worst, Math.abs(own.low - low) / (1 + low));
        if (low > 0) above++;
      }
    }
    expect(worst).toBeLessThan(1e-6);
    expect(without).toBeGreaterThan(100);
    expect(above).toBeGreaterThan(20);
  });

  it('its x meets the rows at high; the quadratic solver finds both ends and nothing just beyond', () => {
    const random = seeded(3);
    for (let k = 0; k < 500; k++) {
      const { rows, target, slope, weights, upper } = randomProblem(random);
      const { low, high, x, feasible } = largestMultiple(rows, target, slope, upper);
      if (!feasible) continue;
      const atHigh = moved(target, slope, high);
      times(rows, x).forEach((value, r) => {
        expect(value).toBeCloseTo(atHigh[r] ?? Number.NaN, 9);
      });
      expect(x.every((value, i) => value >= 0 && value <= (upper[i] ?? 0))).toBe(true);
      const fits = (multiple: number) =>
        minimiseWeightedSquares(rows, moved(target, slope, multiple), weights, upper).feasible;
      const beyond = 1e-5 * (1 + high);
      expect([fits(low), fits(high), fits(high + beyond)]).toEqual([true, true, false]);
      if (low > beyond) expect(fits(low - beyond)).toBe(false);
    }
  });
});

describe('largest multiple by hand', () => {
  it('2x + 3y = 1 + λ·2 with x, y ≤ 1: at most 5 = 1 + 2λ, so λ = 2', () => {
    expect(largestMultiple([[2, 3]], [1], [2], [1, 1])).toEqual({
      low: 0,
      high: 2,
      x: [1, 1],
      feasible: true,
    });
  });

  it('2x + 3y = λ − 1: at least 0 = λ − 1, so λ is 1..6', () => {
    expect(largestMultiple([[2, 3]], [-1], [1], [1, 1])).toMatchObject({ low: 1, high: 6 });
  });

  it('a shared unknown limits two rows: x + y = λ, y + z = 1 with bounds 1, 1, 0.25: y = 0.75..1, λ = 0.75..2', () => {
    const rows = [
      [1, 1, 0],
      [0, 1, 1],
    ];
    const range = largestMultiple(rows, [0, 1], [1, 0], [1, 1, 0.25]);
    expect(range.low).toBeCloseTo(0.75, 12);
    expect(range.high).toBeCloseTo(2, 12);
    expect(range.x).toEqual([1, 1, 0]);
  });
});

describe('degenerate largest multiple', () => {
  it('a slope of 0 has no largest multiple if the offset fits, and none at all if not', () => {
    const range = largestMultiple([[1, 2]], [2.5], [0], [1, 1]);
    expect(range).toMatchObject({ low: 0, high: Infinity, feasible: true });
    expect(times([[1, 2]], range.x)[0]).toBeCloseTo(2.5, 12);
    expect(largestMultiple([[1, 2]], [3.5], [0], [1, 1])).toMatchObject({
      low: Infinity,
      high: -Infinity,
      feasible: false,
    });
  });

  it('a slope the unknowns cannot follow holds the multiple at one value', () => {
    const rows = [
      [1, 2],
      [0, 0],
    ];
    expect(largestMultiple(rows, [1, 0], [1, 1], [1, 1])).toMatchObject({ low: 0, high: 0 });
    const one = largestMultiple(rows, [1, -0.5], [1, 1], [1, 1]);
    expect(one.low).toBeCloseTo(0.5, 12);
    expect(one.high).toBeCloseTo(0.5, 12);
  });

  it('redundant rows, zero columns and upper 0', () => {
    const rows = [
      [1, 0, 5],
      [2, 0, 10],
    ];
    expect(largestMultiple(rows, [0, 0], [1, 2], [3, 9, 0]).high).toBeCloseTo(3, 12);
    expect(largestMultiple(rows, [0, 0.1], [1, 2], [3, 9, 0]).feasible).toBe(false);
    expect(largestMultiple([[1]], [0], [1], [0])).toMatchObject({ low: 0, high: 0, x: [0] });
  });

  it('only multiples of 0 or more count', () => {
    expect(largestMultiple([[1]], [2], [1], [1]).feasible).toBe(false);
  });

  it('does not mind units: rows a million times as large, λ a million times as small', () => {
    const { rows, target, slope, upper } = randomProblem(seeded(5));
    const own = largestMultiple(rows, target, slope, upper);
    const scaled = largestMultiple(
      rows.map((row) => row.map((value) => 1e6 * value)),
      target.map((p) => 1e6 * p),
      slope.map((q) => 1e12 * q),
      upper,
    );
    expect(own.feasible).toBe(true);
    expect((scaled.high * 1e6) / own.high).toBeCloseTo(1, 9);
  });

  it('refuses a row of the wrong length', () => {
    expect(() => largestMultiple([[1, 2]], [0], [1], [1])).toThrow(RangeError);
  });
});
