import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorCorrelation } from '../../src/inference/reliability/errorCorrelation.ts';
import { intraclassCorrelations } from '../../src/inference/reliability/intraclassCorrelation.ts';
import {
  meanSquares,
  type ScoreTable,
  varianceParts,
} from '../../src/inference/reliability/repeatedTests.ts';
import {
  errorFromCorrelation,
  standardErrorOfMeasurement,
} from '../../src/inference/reliability/standardErrorOfMeasurement.ts';
import { given, refusedAs, same } from './expectSame.ts';
import { shroutFleiss as paper, siRstv, sixAthletes } from './reliabilityNumbers.ts';

const partsOf = (table: ScoreTable) => given(varianceParts(table));
const correlationsOf = (table: ScoreTable, level?: number) =>
  given(intraclassCorrelations(partsOf(table), level));

describe('analysis of variance of targets and days', () => {
  it('the sums of squares of Shrout and Fleiss', () => {
    const parts = partsOf(paper.table);
    same(parts.grandMean, paper.grand);
    same(parts.betweenTargets, paper.SSB);
    same(parts.betweenDays, paper.SSJ);
    same(parts.rest, paper.SSE);
    same(parts.withinTargets, paper.SSW);
    same(parts.total, paper.SST);
    const { targets, days, rest, within } = meanSquares(parts);
    same(targets, paper.BMS);
    same(days, paper.JMS);
    same(rest, paper.EMS);
    same(within, paper.WMS);
  });

  it('SiRstv of NIST: certified sums of squares between and within to 1e-9', () => {
    const parts = partsOf(siRstv.readings);
    expect(parts.betweenTargets / siRstv.between).toBeCloseTo(1, 9);
    expect(parts.withinTargets / siRstv.within).toBeCloseTo(1, 9);
  });

  it('refuses a missing score, one day and no scores, in words', () => {
    expect(refusedAs(varianceParts([[1, 2], [3]]))).toBe('missing-score');
    expect(refusedAs(varianceParts([[1, Number.NaN]]))).toBe('missing-score');
    expect(refusedAs(varianceParts([[1], [2]]))).toBe('one-day');
    expect(refusedAs(varianceParts([]))).toBe('no-scores');
    expect(varianceParts([[1, 2], [3]])).toHaveProperty(
      'reason',
      'row 2 has no score on day 2; leave the row out or test again',
    );
  });
});

describe('intraclass correlations', () => {
  it('the six values and intervals of Shrout and Fleiss 1979', () => {
    const { oneWay, agreement, consistency } = correlationsOf(paper.table);
    const expected = [
      [oneWay.single, paper.ICC11, paper.ICC11_CI, paper.printed.ICC11],
      [agreement.single, paper.ICC21, paper.ICC21_CI, paper.printed.ICC21],
      [consistency.single, paper.ICC31, paper.ICC31_CI, paper.printed.ICC31],
      [oneWay.mean, paper.ICC1k, paper.ICC1k_CI, paper.printed.ICC1k],
      [agreement.mean, paper.ICC2k, paper.ICC2k_CI, paper.printed.ICC2k],
      [consistency.mean, paper.ICC3k, paper.ICC3k_CI, paper.printed.ICC3k],
    ] as const;
    for (const [found, value, [low, high], printed] of expected) {
      same(found.value, value);
      same(found.low, low);
      same(found.high, high);
      expect(found.value).toBeCloseTo(printed, 2);
    }
  });

  it('six athletes tested twice, and SiRstv', () => {
    const six = sixAthletes.pre.map((score, i) => [score, sixAthletes.post[i]]);
    const { oneWay, agreement, consistency } = correlationsOf(six);
    same(oneWay.single.value, sixAthletes.icc11);
    same(agreement.single.value, sixAthletes.icc21);
    same(consistency.single.value, sixAthletes.icc31);
    const resistance = correlationsOf(siRstv.readings).oneWay;
    same(resistance.single.value, siRstv.icc11);
    same(resistance.mean.value, siRstv.icc1k);
  });

  it('more difference within than between is negative: −0.8 for 1 3 / 3 1 / 2 3 (hand calculation)', () => {
    // Row means 2, 2, 2.5; B = 2·(1/6)/2 = 1/6; W = (2 + 2 + 0.5)/3 = 1.5; (1/6 − 1.5)/(1/6 + 1.5) = −0.8.
    const { oneWay, agreement, consistency } = correlationsOf([
      [1, 3],
      [3, 1],
      [2, 3],
    ]);
    expect(oneWay.single.value).toBeCloseTo(-0.8, 12);
    expect(oneWay.mean.value).toBeCloseTo(1 - 9, 12);
    expect(consistency.single.value).toBeLessThan(0);
    for (const { value, low, high } of [oneWay.single, agreement.single, consistency.single]) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it('perfect repeats give 1 with an interval of no width', () => {
    const { oneWay, agreement, consistency } = correlationsOf([
      [1, 1],
      [2, 2],
      [5, 5],
    ]);
    for (const { single, mean } of [oneWay, agreement, consistency])
      for (const found of [single, mean]) expect(found).toEqual({ value: 1, low: 1, high: 1 });
  });

  it('refuses one person, and people who all score the same', () => {
    const correlations = (table: ScoreTable) => refusedAs(intraclassCorrelations(partsOf(table)));
    expect(correlations([[1, 2, 3]])).toBe('one-target');
    expect(
      correlations([
        [200.1, 210.3],
        [200.1, 210.3],
      ]),
    ).toBe('no-spread');
  });
});

const score = fc.double({ min: 50, max: 400, noNaN: true });
const table = fc
  .tuple(fc.integer({ min: 3, max: 7 }), fc.integer({ min: 2, max: 4 }))
  .chain(([n, k]) =>
    fc.array(fc.array(score, { minLength: k, maxLength: k }), { minLength: n, maxLength: n }),
  )
  // A spread without which every correlation is rounding.
  .map((rows) => rows.map((row, i) => row.map((x, day) => x + 40 * i + 7 * ((i * day) % 3))));

describe('what must not matter to correlations', () => {
  const singles = (rows: ScoreTable) => {
    const { oneWay, agreement, consistency } = correlationsOf(rows);
    return [oneWay, agreement, consistency].map(({ single }) => single.value);
  };
  const near = (found: readonly number[], expected: readonly number[]) => {
    for (const [i, value] of found.entries()) expect(value).toBeCloseTo(expected[i] ?? 0, 7);
  };

  it('the order of people and of days, the unit, and a constant added to all scores', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const before = singles(rows);
        near(singles([...rows].reverse()), before);
        near(singles(rows.map((row) => [...row].reverse())), before);
        near(singles(rows.map((row) => row.map((x) => x / 1.3558179483314003))), before);
        near(singles(rows.map((row) => row.map((x) => x + 1000))), before);
      }),
    );
  });

  it('a large enough shift of one day lowers agreement and leaves consistency', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const shifted = rows.map(([first = 0, ...others]) => [first + 5000, ...others]);
        const [, agreed = 0, consistent = 0] = singles(rows);
        const [, lower = 0, same = 0] = singles(shifted);
        expect(same).toBeCloseTo(consistent, 6);
        // A negative agreement comes nearer to 0 by it.
        expect(Math.abs(lower)).toBeLessThan(Math.abs(agreed));
      }),
    );
  });

  it('the sums of squares add up', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const parts = partsOf(rows);
        const { betweenTargets, betweenDays, rest, withinTargets, total } = parts;
        same(betweenTargets + betweenDays + rest, total);
        same(betweenDays + rest, withinTargets);
      }),
    );
  });
});

describe('standard error of measurement', () => {
  it('four values of the data of Shrout and Fleiss by their names', () => {
    const parts = partsOf(paper.table);
    same(standardErrorOfMeasurement(parts), paper.rootRest);
    same(standardErrorOfMeasurement(parts, 'agreement'), paper.rootWithin);
    const spread = Math.sqrt(parts.total / (6 * 4 - 1));
    same(spread, paper.spreadOfAll);
    same(errorFromCorrelation(spread, paper.ICC31), paper.fromConsistency);
    same(errorFromCorrelation(spread, paper.ICC21), paper.fromAgreement);
  });
});

describe('how errors of one day go together', () => {
  it('is the ICC(3,1) of days and angles: the table of Shrout and Fleiss as six days, four angles', () => {
    const found = given(errorCorrelation([paper.table], 0.95));
    same(found.value, paper.ICC31);
    same(found.least, paper.ICC31_CI[0]);
    same(found.most, paper.ICC31_CI[1]);
    expect(found.dayFreedom).toBe(5);
  });

  it('holds the ends within 0 and 1; a second person like the first narrows them', () => {
    const one = given(errorCorrelation([paper.table]));
    const two = given(errorCorrelation([paper.table, paper.table]));
    expect(two.value).toBeCloseTo(one.value, 12);
    expect(two.most - two.least).toBeLessThan(one.most - one.least);
    const opposed = given(
      errorCorrelation([
        [
          [1, 3],
          [3, 1],
          [2, 2.1],
        ],
      ]),
    );
    expect(opposed.value).toBeLessThan(0);
    expect(opposed.least).toBe(0);
  });

  it('refuses one angle, unlike angles and days that do not differ', () => {
    expect(refusedAs(errorCorrelation([[[1], [2]]]))).toBe('one-day');
    expect(refusedAs(errorCorrelation([[[1, 2]]]))).toBe('one-day');
    expect(refusedAs(errorCorrelation([paper.table, sixAthletes.pre.map((x) => [x, x])]))).toBe(
      'unlike-angles',
    );
    expect(
      refusedAs(
        errorCorrelation([
          [
            [1, 2],
            [1, 2],
          ],
        ]),
      ),
    ).toBe('no-spread');
  });
});
