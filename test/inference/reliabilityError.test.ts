import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ErrorCorrelation,
  errorOfChange,
  errorOfSum,
} from '../../src/inference/reliability/errorOfChange.ts';
import { degreesOfSpread, pooledError } from '../../src/inference/reliability/errorSize.ts';
import { limitsOfAgreement } from '../../src/inference/reliability/limitsOfAgreement.ts';
import {
  minimalDetectableChange,
  testDaysNeeded,
} from '../../src/inference/reliability/minimalDetectableChange.ts';
import { errorFromCorrelation } from '../../src/inference/reliability/standardErrorOfMeasurement.ts';
import { typicalError } from '../../src/inference/reliability/typicalError.ts';
import {
  smallestWorthwhileChange,
  worthwhileChances,
} from '../../src/inference/reliability/worthwhile.ts';
import { normalDraw, seededRandom } from '../../src/numeric/random.ts';
import { given, refusedAs, same } from './expectSame.ts';
import {
  blandAltman,
  chances,
  errorsFromCorrelation,
  hopkinsOnePerson,
  sixAthletes,
} from './reliabilityNumbers.ts';

const known = (value: number) => ({ value, degreesOfFreedom: Number.POSITIVE_INFINITY });
const exactly = (r: number): ErrorCorrelation => ({ least: r, most: r, known: 'own' });

describe('typical error', () => {
  it('one person (Hopkins 2000): 76.2 ± 2.8, 3.66 % of the mean', () => {
    const found = given(typicalError([hopkinsOnePerson.data]));
    same(found.amount.value, hopkinsOnePerson.sd);
    same(100 * (found.shareOfMean ?? 0), hopkinsOnePerson.cv);
    expect(found.degreesOfFreedom).toBe(5);
    expect(found.dayEffectRemoved).toBe(false);
  });

  it('six athletes tested twice: N·m with its χ² interval, and share by logarithms', () => {
    const found = given(typicalError(sixAthletes.pre.map((pre, i) => [pre, sixAthletes.post[i]])));
    same(found.amount.value, sixAthletes.te);
    same(found.amount.low, sixAthletes.te_ci95[0]);
    same(found.amount.high, sixAthletes.te_ci95[1]);
    same(100 * (found.shareByLogs?.value ?? 0), sixAthletes.cv_log_pct);
    expect(found.degreesOfFreedom).toBe(5);
  });

  it('a shift of one day does not count with several people, and does with one', () => {
    const shifted = sixAthletes.pre.map((pre, i) => [pre, (sixAthletes.post[i] ?? 0) + 30]);
    same(given(typicalError(shifted)).amount.value, sixAthletes.te);
    // Hand calculation: SD of 200 and 230 is 30/√2.
    same(given(typicalError([[200, 230]])).amount.value, 30 / Math.SQRT2);
  });

  it('scores at or below 0 have no share; gaps and one day are refused', () => {
    expect(given(typicalError([[1, -1, 0.5]]))).not.toHaveProperty('shareByLogs');
    expect(refusedAs(typicalError([[1, undefined]]))).toBe('missing-score');
    expect(refusedAs(typicalError([[1], [2]]))).toBe('one-day');
  });

  it('estimates pool by degrees of freedom: 3 with 1 and 5 with 3 are √21 with 4 (hand calculation)', () => {
    const pool = pooledError([
      { value: 3, degreesOfFreedom: 1 },
      { value: 5, degreesOfFreedom: 3 },
    ]);
    same(pool.value, Math.sqrt((9 + 75) / 4));
    expect(pool.degreesOfFreedom).toBe(4);
    expect(pooledError([{ value: 3, degreesOfFreedom: 9 }, known(4)])).toEqual(known(4));
  });

  it('a spread of a quarter of the value counts as 8 degrees: an SD of ν degrees scatters by 1/√(2ν)', () => {
    expect(degreesOfSpread(4, 1)).toBe(8);
    expect(degreesOfSpread(4, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('minimal detectable change', () => {
  it.each(errorsFromCorrelation)('SD $sd and ICC $icc: SEM, MDC 90 and MDC 95', (row) => {
    const error = errorFromCorrelation(row.sd, row.icc);
    same(error, row.sem);
    same(minimalDetectableChange(known(error), { level: 0.9 }), row.mdc90);
    // 1.96 rounded in the table against 1.959964.
    expect(minimalDetectableChange(known(error)) / row.mdc95_196).toBeCloseTo(1, 4);
  });

  it('9 degrees of freedom: 2.262157·√2 = 3.199 errors (hand calculation from the t table)', () => {
    const found = minimalDetectableChange({ value: 1, degreesOfFreedom: 9 });
    expect(found).toBeCloseTo(2.262157 * Math.SQRT2, 5);
  });

  // Hand calculations with 1.959964 for 1.96.
  const z = 1.959964;
  it.each([
    ['one angle, 2 days a side: 1.96·5', { days: { before: 2, after: 2 } }, z * 5],
    ['one angle, 1 and 3 days', { days: { before: 1, after: 3 } }, z * 5 * Math.sqrt(4 / 3)],
    [
      'mean of 3 angles, r 0.5: 1.96·√2·5·√(2/3)',
      { angles: { target: 3 }, correlation: exactly(0.5) },
      z * Math.SQRT2 * 5 * Math.sqrt(2 / 3),
    ],
    ['mean of 3, r unknown: as one angle', { angles: { target: 3 } }, z * Math.SQRT2 * 5],
    ['two single angles, r unknown: 1.96·2·5 = 19.6', { angles: { target: 1, others: 1 } }, z * 10],
    [
      'two single angles, r 0.5: 13.86',
      { angles: { target: 1, others: 1 }, correlation: exactly(0.5) },
      13.859,
    ],
    [
      'mean of 2 against mean of 3, r 0.2: 1.96·5·√((2/2 + 2/3)·0.8)',
      { angles: { target: 2, others: 3 }, correlation: exactly(0.2) },
      z * 5 * Math.sqrt((5 / 3) * 0.8),
    ],
  ])('typical error 5: %s', (_, asked, expected) => {
    expect(minimalDetectableChange(known(5), asked)).toBeCloseTo(expected, 3);
  });

  it('test days: 1.92 → 2, 4.3 → 5, 7.7 → 8 (hand calculation, (2.77·TE/D)²)', () => {
    const days = (error: number, gain: number) => testDaysNeeded(known(error), gain);
    expect(days(5, 10).days).toBe(2);
    expect(days(5, 10).exact).toBeCloseTo((2.7718 * 0.5) ** 2, 3);
    expect(days(7.5, 10).days).toBe(5);
    expect(days(5, 5).days).toBe(8);
    expect(days(1, 100).days).toBe(1);
    expect(() => days(5, 0)).toThrow(RangeError);
  });

  it('the days it asks for are enough, and one fewer is not', () => {
    const size = fc.double({ min: 1, max: 30, noNaN: true });
    fc.assert(
      fc.property(size, size, (error, gain) => {
        const { days } = testDaysNeeded(known(error), gain);
        const change = (n: number) =>
          minimalDetectableChange(known(error), { days: { before: n, after: n } });
        expect(change(days)).toBeLessThanOrEqual(gain * (1 + 1e-9));
        if (days > 1) expect(change(days - 1)).toBeGreaterThan(gain);
      }),
    );
  });

  it('drawn errors of correlated angles scatter as computed (20,000 draws, 2 %)', () => {
    // Errors √r·shared + √(1 − r)·own; two target angles of unlike errors against one other.
    const random = seededRandom(3);
    const readings = [
      { weight: 0.5, error: 4 },
      { weight: 0.5, error: 6 },
      { weight: -1, error: 5 },
    ];
    const drawn = Array.from({ length: 20_000 }, () => {
      const shared = Math.sqrt(0.3) * normalDraw(random);
      return readings.reduce(
        (sum, { weight, error }) =>
          sum + weight * error * (shared + Math.sqrt(0.7) * normalDraw(random)),
        0,
      );
    });
    const scatter = Math.sqrt(drawn.reduce((sum, x) => sum + x * x, 0) / drawn.length);
    expect(scatter / errorOfSum([readings], exactly(0.3))).toBeGreaterThan(0.98);
    expect(scatter / errorOfSum([readings], exactly(0.3))).toBeLessThan(1.02);
  });

  it('an unknown correlation is never better than any known one', () => {
    const count = fc.integer({ min: 1, max: 6 });
    fc.assert(
      fc.property(count, count, fc.double({ min: 0, max: 1, noNaN: true }), (m, q, r) => {
        for (const angles of [{ target: m }, { target: m, others: q }]) {
          const days = { before: 1, after: 2 };
          expect(errorOfChange(5, days, angles)).toBeGreaterThanOrEqual(
            errorOfChange(5, days, angles, exactly(r)) - 1e-12,
          );
        }
      }),
    );
  });
});

describe('limits of agreement (Bland and Altman 1986)', () => {
  const column = (i: number) => blandAltman.rows.map((row) => row[i] ?? 0);
  const first = given(limitsOfAgreement(column(0), column(2)));

  it('first readings of both meters', () => {
    same(first.bias.value, blandAltman.bias);
    same(first.spread, blandAltman.sd);
    same(first.lower.value, blandAltman.loa_196sd[0]);
    same(first.upper.value, blandAltman.loa_196sd[1]);
    same(first.bias.low, blandAltman.bias_ci[0]);
    same(first.bias.high, blandAltman.bias_ci[1]);
    same(first.standardErrorOfLimit, blandAltman.se_loa_approx);
  });

  it('with 2 spreads, and the printed values to 0.2, for the paper rounds its steps', () => {
    const { lower, upper, bias } = given(limitsOfAgreement(column(0), column(2), 2));
    same(lower.value, blandAltman.loa_2sd[0]);
    same(upper.value, blandAltman.loa_2sd[1]);
    const { loa, bias_ci } = blandAltman.published;
    // Limits' intervals as printed, recalled: −114.3 to −45.1 and 40.9 to 110.1.
    const pairs = [
      [lower.value, loa[0]],
      [upper.value, loa[1]],
      [bias.low, bias_ci[0]],
      [bias.high, bias_ci[1]],
      [lower.low, -114.3],
      [lower.high, -45.1],
      [upper.low, 40.9],
      [upper.high, 110.1],
    ] as const;
    for (const [found, printed] of pairs) expect(Math.abs(found - printed)).toBeLessThan(0.2);
  });

  it.each([
    ['large', 0, blandAltman.repeat_large],
    ['mini', 2, blandAltman.repeat_mini],
  ] as const)('repeats of the %s meter', (_, at, expected) => {
    const found = given(limitsOfAgreement(column(at), column(at + 1)));
    same(found.bias.value, expected.mean_diff);
    same(found.spread, expected.sd_diff);
    same(found.typicalError, expected.typical_error);
    same(found.withinPerson, expected.sw);
    same(found.repeatability, expected.coef_repeat_2sd);
  });

  it('bias of six athletes: paired t and its chance', () => {
    const found = given(limitsOfAgreement(sixAthletes.post, sixAthletes.pre));
    same(found.bias.value, sixAthletes.mean_change);
    same(found.spread, sixAthletes.sd_change);
    same(found.pairedT, sixAthletes.paired_t);
    same(found.chance, sixAthletes.p);
    const logs = (scores: readonly number[]) => scores.map(Math.log);
    const byLogs = given(limitsOfAgreement(logs(sixAthletes.post), logs(sixAthletes.pre)));
    same(100 * Math.expm1(byLogs.bias.value), sixAthletes.mean_change_log_pct);
  });

  it('refuses people who are not paired; equal scores have no bias', () => {
    expect(refusedAs(limitsOfAgreement([1, 2], [1]))).toBe('unpaired');
    expect(refusedAs(limitsOfAgreement([1, Number.NaN], [1, 2]))).toBe('missing-score');
    expect(given(limitsOfAgreement([1, 2], [1, 2])).chance).toBe(1);
  });
});

describe('worthwhile change', () => {
  it.each(chances)('chances with $n_pre and $n_post tests', (row) => {
    const error = errorOfChange(row.te, { before: row.n_pre, after: row.n_post });
    same(error, row.se);
    const { up, trivial, down } = worthwhileChances(row.d, error, row.swc);
    same(up, row.p_up);
    same(trivial, row.p_trivial);
    same(down, row.p_down);
  });

  it('0.2 of the spread, instrument noise out: 0.2·√(5² − 3²) = 0.8 (hand calculation)', () => {
    expect(smallestWorthwhileChange(30)).toBeCloseTo(6, 12);
    expect(smallestWorthwhileChange(5, 3)).toBeCloseTo(0.8, 12);
    expect(refusedAs(smallestWorthwhileChange(3, 5))).toBe('all-noise');
  });
});
