import { describe, expect, it } from 'vitest';
import { minimiseWeightedSquares } from '../../src/numeric/boxQuadraticProgram.ts';
import { byQuadprog, quadprogArguments, randomProblem, seeded, times } from './libraries.ts';

const close = (actual: readonly number[], expected: readonly number[], digits = 9) => {
  expect(actual.length).toBe(expected.length);
  actual.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? Number.NaN, digits);
  });
};

describe('least weighted squares within bounds', () => {
  it('agrees with quadprog to 1e-6 on 1,000 random problems, and on which of them have no solution', () => {
    const random = seeded(20261125);
    let worst = 0;
    let without = 0;
    for (let k = 0; k < 1000; k++) {
      const problem = randomProblem(random);
      const { rows, target, weights, upper } = problem;
      const own = minimiseWeightedSquares(rows, target, weights, upper);
      const library = byQuadprog(quadprogArguments(problem));
      expect(own.feasible).toBe(library !== undefined);
      if (library === undefined) without++;
      else
        own.x.forEach((x, i) => {
          worst = Math.max(worst, Math.abs(x - (library[i] ?? Number.NaN)));
        });
    }
    expect(worst).toBeLessThan(1e-6);
    expect(without).toBeGreaterThan(100);
    expect(without).toBeLessThan(500);
  });

  it('meets the Karush–Kuhn–Tucker conditions, or proves that nothing fits', () => {
    const random = seeded(7);
    for (let k = 0; k < 1000; k++) {
      const { rows, target, weights, upper } = randomProblem(random);
      const { x, multipliers, feasible } = minimiseWeightedSquares(rows, target, weights, upper);
      const prices = upper.map((_, i) =>
        rows.reduce((sum, row, r) => sum + (row[i] ?? 0) * (multipliers[r] ?? 0), 0),
      );
      if (!feasible) {
        const most = prices.reduce((sum, z, i) => sum + Math.max(0, z) * (upper[i] ?? 0), 0);
        const asked = target.reduce((sum, b, r) => sum + b * (multipliers[r] ?? 0), 0);
        expect(asked).toBeGreaterThan(most);
        continue;
      }
      close(times(rows, x), target);
      x.forEach((value, i) => {
        const [u, w, z] = [upper[i] ?? 0, weights[i] ?? 0, prices[i] ?? 0];
        expect(value >= 0 && value <= u).toBe(true);
        const slope = (2 * w * value - z) / (2 * w + Math.abs(z));
        if (value < u) expect(slope).toBeGreaterThan(-1e-9);
        if (value > 0) expect(slope).toBeLessThan(1e-9);
      });
    }
  });

  it('does not mind the units of a row', () => {
    const { rows, target, weights, upper } = randomProblem(seeded(2));
    const own = minimiseWeightedSquares(rows, target, weights, upper);
    const scaled = minimiseWeightedSquares(
      rows.map((row, r) => row.map((value) => (r === 0 ? 1e6 * value : value))),
      target.map((b, r) => (r === 0 ? 1e6 * b : b)),
      weights,
      upper,
    );
    expect(own.feasible).toBe(true);
    close(scaled.x, own.x);
    expect((scaled.multipliers[0] ?? 0) * 1e6).toBeCloseTo(own.multipliers[0] ?? 0, 6);
  });
});

describe('least weighted squares by hand', () => {
  it('x + 2y = 5 with weights 1, 2: λ(1·1/2 + 2·2/4) = 5, λ = 10/3, x = λ/2 = 5/3, y = 2λ/4 = 5/3', () => {
    const { x, multipliers } = minimiseWeightedSquares([[1, 2]], [5], [1, 2], [9, 9]);
    close(x, [5 / 3, 5 / 3]);
    close(multipliers, [10 / 3]);
  });

  it('the same with y ≤ 1: x = 5 − 2 = 3, λ = 2·3 = 6', () => {
    const { x, multipliers } = minimiseWeightedSquares([[1, 2]], [5], [1, 2], [9, 1]);
    close(x, [3, 1]);
    close(multipliers, [6]);
  });

  it('an opponent stays off where it would cost: x − y = 1 gives x = 1, y = 0', () => {
    close(minimiseWeightedSquares([[1, -1]], [1], [1, 1], [2, 2]).x, [1, 0]);
  });

  it('and works where a second row needs it: x − y = 1 and y + z = 1: with y = t, least (1 + t)² + t² + (1 − t)² at 6t = 0', () => {
    const rows = [
      [1, -1, 0],
      [0, 1, 1],
    ];
    close(minimiseWeightedSquares(rows, [1, 1], [1, 1, 1], [3, 3, 3]).x, [1, 0, 1]);
    // With z ≤ 0.5: y = 0.5, x = 1.5; y wants λ₂ − λ₁ = 2·0.5, x wants λ₁ = 2·1.5, so λ = 3, 4.
    const bound = minimiseWeightedSquares(rows, [1, 1], [1, 1, 1], [3, 3, 0.5]);
    close(bound.x, [1.5, 0.5, 0.5]);
    close(bound.multipliers, [3, 4]);
  });
});

describe('degenerate least weighted squares', () => {
  it('nothing asked needs nothing', () => {
    close(minimiseWeightedSquares([[1, -1]], [0], [1, 1], [1, 1]).x, [0, 0]);
  });

  it('redundant rows: the sum of two rows as a third changes nothing', () => {
    const two = [
      [1, 2, -1],
      [0, 1, 1],
    ];
    const three = [...two, [1, 3, 0]];
    const [w, u] = [
      [1, 1, 1],
      [2, 2, 2],
    ];
    close(
      minimiseWeightedSquares(three, [3, 2, 5], w, u).x,
      minimiseWeightedSquares(two, [3, 2], w, u).x,
    );
    expect(minimiseWeightedSquares(three, [3, 2, 5.001], w, u).feasible).toBe(false);
  });

  it('zero columns, zero rows and upper 0 stay out of it', () => {
    const rows = [
      [1, 0, 1],
      [0, 0, 0],
    ];
    const { x, feasible } = minimiseWeightedSquares(rows, [1, 0], [1, 1, 1], [2, 2, 0]);
    expect(feasible).toBe(true);
    close(x, [1, 0, 0]);
    expect(minimiseWeightedSquares(rows, [1, 1], [1, 1, 1], [2, 2, 2]).feasible).toBe(false);
    expect(minimiseWeightedSquares([[1]], [1], [1], [0])).toMatchObject({
      feasible: false,
      x: [0],
    });
  });

  it('all at the bounds fits, a millionth more does not', () => {
    const rows = [
      [1, 2, -1],
      [0.5, 1, 1],
    ];
    const solve = (b: number) => minimiseWeightedSquares(rows, [b, 1.5], [1, 2, 3], [1, 1, 1]);
    expect(solve(3).feasible).toBe(true);
    close(solve(3).x, [1, 1, 0], 8);
    expect(solve(3.000001).feasible).toBe(false);
    expect(solve(3.000001).residual).toBeGreaterThan(1e-9);
  });

  it('more rows than unknowns', () => {
    const rows = [[1], [2], [-1]];
    close(minimiseWeightedSquares(rows, [0.5, 1, -0.5], [1], [1]).x, [0.5]);
    expect(minimiseWeightedSquares(rows, [0.5, 1, 0.5], [1], [1]).feasible).toBe(false);
  });

  it.each([
    ['a weight of 0', [[1]], [1], [0], [1]],
    ['a negative bound', [[1]], [1], [1], [-1]],
    ['no bound', [[1]], [1], [1], [Infinity]],
    ['a short row', [[1]], [1], [1, 1], [1, 1]],
    ['a target that is no number', [[1]], [Number.NaN], [1], [1]],
  ])('refuses %s', (_, rows, target, weights, upper) => {
    expect(() => minimiseWeightedSquares(rows, target, weights, upper)).toThrow(RangeError);
  });
});
