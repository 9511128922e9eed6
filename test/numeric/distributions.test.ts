import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquaredCumulative, chiSquaredQuantile } from '../../src/numeric/chiSquared.ts';
import { fisherCumulative, fisherQuantile } from '../../src/numeric/fisherF.ts';
import { logGamma } from '../../src/numeric/gamma.ts';
import { normalCumulative, normalQuantile } from '../../src/numeric/normal.ts';
import { normalDraw, seededRandom } from '../../src/numeric/random.ts';
import { studentCumulative, studentQuantile } from '../../src/numeric/studentT.ts';
import {
  chiSquaredQuantiles,
  fisherQuantiles,
  normalQuantiles,
  shares,
  studentFar,
  studentQuantiles,
} from './quantileTables.ts';

/** Right to 1e-9 of the value. */
const same = (found: number, expected: number) =>
  expect(Math.abs(found / expected - 1)).toBeLessThan(1e-9);

describe('logarithm of the gamma function', () => {
  it('Γ(1/2) = √π, Γ(11) = 10!, Γ(3.5) = 15√π/8 (identities)', () => {
    same(logGamma(0.5), Math.log(Math.sqrt(Math.PI)));
    same(logGamma(11), Math.log(3_628_800));
    same(logGamma(3.5), Math.log((15 * Math.sqrt(Math.PI)) / 8));
  });
});

describe('quantiles beside a general statistics package (1e-9 relative)', () => {
  it.each(Object.entries(studentQuantiles))(
    'Student t with %s degrees of freedom',
    (freedom, row) => {
      for (const [i, value] of row.entries())
        same(studentQuantile(shares[i] ?? 0, Number(freedom)), value);
    },
  );
  it.each(studentFar)('Student t at %d with %d degrees of freedom', (p, freedom, value) => {
    same(studentQuantile(p, freedom), value);
    same(studentQuantile(1 - p, freedom), -value);
  });
  it.each(chiSquaredQuantiles)('χ² at %d with %d degrees of freedom', (p, freedom, value) => {
    same(chiSquaredQuantile(p, freedom), value);
  });
  it.each(fisherQuantiles)('F at %d with %d and %d degrees of freedom', (p, over, under, value) => {
    same(fisherQuantile(p, over, under), value);
  });
  it('the normal distribution', () => {
    for (const [i, value] of normalQuantiles.entries()) same(normalQuantile(shares[i] ?? 0), value);
  });
  // Printed tables of χ² (Pearson and Hartley), .025 and .975.
  it.each([
    [9, 2.700389, 19.022768],
    [16, 6.907664, 28.845351],
    [19, 8.906516, 32.852327],
    [49, 31.554916, 70.222414],
  ])('χ² with %d degrees of freedom: %d and %d', (freedom, low, high) => {
    expect(chiSquaredQuantile(0.025, freedom)).toBeCloseTo(low, 6);
    expect(chiSquaredQuantile(0.975, freedom)).toBeCloseTo(high, 6);
  });
});

describe('closed forms and identities', () => {
  it('t with 1 degree is Cauchy, with 2: t = (2p − 1)√(2/(4p(1 − p))); χ² with 2: −2 ln(1 − p)', () => {
    for (const p of [0.001, 0.2, 0.6, 0.9995]) {
      same(studentQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)));
      same(studentQuantile(p, 2), (2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p))));
      same(chiSquaredQuantile(p, 2), -2 * Math.log1p(-p));
    }
  });

  it('the cumulative of a quantile is p, for any degrees of freedom; t² is F with 1 above', () => {
    const p = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const freedom = fc.double({ min: 0.5, max: 2000, noNaN: true });
    fc.assert(
      fc.property(p, freedom, freedom, (share, over, under) => {
        const t = studentQuantile(share, under);
        expect(studentCumulative(t, under)).toBeCloseTo(share, 10);
        expect(chiSquaredCumulative(chiSquaredQuantile(share, over), over)).toBeCloseTo(share, 10);
        const f = fisherQuantile(share, over, under);
        expect(fisherCumulative(f, over, under)).toBeCloseTo(share, 10);
        expect(fisherCumulative(t * t, 1, under)).toBeCloseTo(Math.abs(2 * share - 1), 9);
        expect(normalCumulative(normalQuantile(share))).toBeCloseTo(share, 12);
      }),
    );
  });

  it('with endless degrees of freedom t is normal', () => {
    expect(studentQuantile(0.975, Number.POSITIVE_INFINITY)).toBe(normalQuantile(0.975));
    expect(studentCumulative(1.3, Number.POSITIVE_INFINITY)).toBe(normalCumulative(1.3));
  });

  it('what is no probability or no degrees of freedom throws', () => {
    expect(() => normalQuantile(1.2)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0)).toThrow(RangeError);
    expect(() => chiSquaredQuantile(1, 5)).toThrow(RangeError);
    expect(() => fisherQuantile(0.5, 3, Number.NaN)).toThrow(RangeError);
  });
});

describe('repeatable random numbers', () => {
  it('equal seeds give equal streams, near seeds unlike ones', () => {
    const take = (seed: number) => Array.from({ length: 5 }, seededRandom(seed));
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
  });

  it('100,000 normal draws: mean 0, variance 1, 2.5 % above 1.96 (4 standard errors each)', () => {
    const random = seededRandom(1);
    const n = 100_000;
    const draws = Array.from({ length: n }, () => normalDraw(random));
    const mean = draws.reduce((sum, z) => sum + z, 0) / n;
    const square = draws.reduce((sum, z) => sum + z * z, 0) / n;
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(n));
    expect(Math.abs(square - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
    const above = draws.filter((z) => z > 1.959964).length / n;
    expect(Math.abs(above - 0.025)).toBeLessThan(4 * Math.sqrt((0.025 * 0.975) / n));
  });
});
