import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  borrowedError,
  combinedError,
  errorFromRepeats,
} from '../../src/inference/retest/testError.ts';
import { updatedAmplitude } from '../../src/inference/retest/updatedAmplitude.ts';
import type { Judged, NotJudged } from '../../src/inference/retest/verdict.ts';
import { type RetestAsked, retest } from '../../src/inference/retest.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { gainMiss } from '../../src/tables/adaptation.ts';
import { testErrors, testKinds } from '../../src/tables/testError.ts';
import { given, refusedAs, same } from './expectSame.ts';
import { asked, day, exactly, knownError, range } from './tested.ts';

const z = 1.959963985;

const judgedOf = (verdict: Judged | NotJudged): Judged => given(verdict) as Judged;

describe('one angle', () => {
  it('5 N·m of error: 1.96·√2·5 = 13.86 N·m; +14 is beyond noise, +13 cannot be said (hand calculation)', () => {
    const says = (after: number) => retest(asked({ 80: 200 }, { 80: after })).angles[0];
    expect(says(214)?.minimalDetectableChange).toBeCloseTo(z * Math.SQRT2 * 5, 6);
    expect(says(214)?.says).toBe('gain beyond noise');
    expect(says(213)?.says).toBe('cannot say');
    expect(says(186)?.says).toBe('loss beyond noise');
    expect(says(187)?.says).toBe('cannot say');
  });

  it('5 % of error: 13.86 % of the torque between the two (hand calculation)', () => {
    // Logarithmic mean of 200 and 230: 30/ln 1.15 = 214.65.
    const [angle] = retest(asked({ 80: 200 }, { 80: 230 }, { error: knownError(0.05) })).angles;
    expect(angle?.minimalDetectableChange).toBeCloseTo(z * Math.SQRT2 * 0.05 * 214.65, 2);
    expect(angle?.gain.value).toBeCloseTo(0.15, 12);
    expect(angle?.gain.low).toBeCloseTo(1.15 / Math.exp(z * Math.SQRT2 * 0.05) - 1, 8);
  });

  it('9 degrees of freedom: 3.199 errors (t table: 2.262)', () => {
    const error = { ...knownError(5, 'newtonMetre'), degreesOfFreedom: 9 };
    const [angle] = retest(asked({ 80: 200 }, { 80: 214 }, { error })).angles;
    expect(angle?.minimalDetectableChange).toBeCloseTo(3.1992 * 5, 3);
    expect(angle?.says).toBe('cannot say');
  });

  it('days average: two before and three after, 1.96·5·√(1/2 + 1/3); best or mean of the trials as asked', () => {
    const occasion = (score: 'best' | 'mean'): RetestAsked => ({
      ...asked({}, {}),
      before: [day({ 80: [190, 210] }, score), day({ 80: [200, 180] }, score)],
      after: [1, 2, 3].map((n) => day({ 80: [220 + n, 200 + n] }, score)),
    });
    const [best] = retest(occasion('best')).angles;
    expect(best?.before).toBe(205);
    expect(best?.after).toBeCloseTo(222, 12);
    expect(best?.minimalDetectableChange).toBeCloseTo(z * 5 * Math.sqrt(5 / 6), 6);
    expect(best?.days).toEqual({ before: 2, after: 3 });
    expect(retest(occasion('mean')).angles[0]?.before).toBe(195);
  });
});

describe('the two verdicts', () => {
  const error = knownError(0.04);

  it('a uniform gain of 20 % is a gain in the target and no more there than elsewhere', () => {
    const { target, contrast } = retest(
      asked({ 40: 100, 80: 200, 90: 180 }, { 40: 120, 80: 240, 90: 216 }, { error }),
    );
    expect(target.says).toBe('yes');
    expect(judgedOf(target).gain.value).toBeCloseTo(0.2, 12);
    expect(contrast.says).toBe('cannot say');
    expect(judgedOf(contrast).gain.value).toBeCloseTo(0, 12);
  });

  it('+30 % in the target and none elsewhere is both; the reverse is a loss against elsewhere', () => {
    const there = retest(asked({ 40: 100, 80: 200 }, { 40: 100, 80: 260 }, { error }));
    expect([there.target.says, there.contrast.says]).toEqual(['yes', 'yes']);
    const elsewhere = retest(asked({ 40: 100, 80: 200 }, { 40: 130, 80: 200 }, { error }));
    expect([elsewhere.target.says, elsewhere.contrast.says]).toEqual(['cannot say', 'loss']);
  });

  it('standard errors: 0.04·√2·√(2/3) for three angles with r 0.5; 0.04·√2·√((1/2 + 1/3)·0.5) of 2 against 3', () => {
    const torques = { 75: 200, 80: 210, 85: 205 };
    const mean = retest(asked(torques, torques, { error, correlation: exactly(0.5) })).target;
    expect(judgedOf(mean).standardError).toBeCloseTo(0.04 * Math.SQRT2 * Math.sqrt(2 / 3), 12);
    const five = { 20: 90, 40: 150, 60: 190, 80: 210, 90: 205 };
    const { contrast } = retest(asked(five, five, { error, correlation: exactly(0.5) }));
    expect(judgedOf(contrast).standardError).toBeCloseTo(
      0.04 * Math.SQRT2 * Math.sqrt((5 / 6) * 0.5),
      12,
    );
  });

  it('an unknown correlation: the mean of angles as unsure as one, the contrast as if independent', () => {
    const torques = { 40: 100, 80: 200, 90: 190 };
    const { target, contrast } = retest(asked(torques, torques, { error }));
    expect(judgedOf(target).standardError).toBeCloseTo(0.04 * Math.SQRT2, 12);
    expect(judgedOf(contrast).standardError).toBeCloseTo(0.04 * Math.SQRT2 * Math.sqrt(1.5), 12);
  });

  it('angles outside the middle carry the larger error', () => {
    const outer = { middle: range(60, 85), factor: 1.25 };
    const torques = { 80: 200, 90: 190 };
    const { angles } = retest(asked(torques, torques, { error: { ...error, outer } }));
    expect(angles[0]?.minimalDetectableChange).toBeCloseTo(z * Math.SQRT2 * 0.04 * 200, 5);
    expect(angles[1]?.minimalDetectableChange).toBeCloseTo(z * Math.SQRT2 * 0.05 * 190, 5);
  });

  it('chances: equal to those of logarithms by hand, and they add to 1', () => {
    // +8 % with an error of 0.04·√2: z = (ln 1.08 − ln 1.05)/0.056569 = 0.49800 → 0.69076 (normal table).
    const { chances, chanceOfWanted } = retest(
      asked({ 80: 200 }, { 80: 216 }, { error, worthwhile: 0.05, wantedGain: 0.05 }),
    );
    expect(chances?.up).toBeCloseTo(0.6908, 3);
    expect(chanceOfWanted).toBe(chances?.up);
    expect((chances?.up ?? 0) + (chances?.trivial ?? 0) + (chances?.down ?? 0)).toBeCloseTo(1, 12);
    expect(retest(asked({ 80: 200 }, { 80: 216 }))).not.toHaveProperty('chances');
  });
});

describe('what cannot be judged says so, with the reason', () => {
  const reason = (what: RetestAsked) => {
    const { target, contrast } = retest(what);
    return [target.says, refusedAs(target), contrast.says, refusedAs(contrast)];
  };

  it.each([
    ['no test after', { after: [] }, 'one-test'],
    ['no test before', { before: [] }, 'one-test'],
    ['no trials', { after: [day({ 80: [] })] }, 'one-test'],
    ['scored differently', { after: [day({ 80: [200] }, 'mean')] }, 'scored-differently'],
    ['other angles', { after: [day({ 60: [200] })] }, 'no-common-angle'],
    ['a torque of 0', { after: [day({ 80: [0] })] }, 'no-torque'],
    ['no number', { after: [day({ 80: [Number.NaN] })] }, 'no-torque'],
  ] as const)('%s', (_, rest, code) => {
    const what = asked({ 80: 200 }, { 80: 210 }, rest);
    expect(reason(what)).toEqual(['cannot say', code, 'cannot say', code]);
    expect(retest(what).angles).toEqual([]);
  });

  it('the contrast alone: one angle only, or none outside; the target: none inside', () => {
    expect(reason(asked({ 80: 200 }, { 80: 230 }))).toEqual([
      'yes',
      undefined,
      'cannot say',
      'one-angle',
    ]);
    expect(reason(asked({ 80: 200, 90: 190 }, { 80: 230, 90: 220 }))[3]).toBe('none-outside');
    expect(reason(asked({ 30: 200, 40: 190 }, { 30: 230, 40: 220 }))).toEqual([
      'cannot say',
      'none-in-target',
      'cannot say',
      'none-in-target',
    ]);
  });

  it('our own mistakes throw: a level of 95, an error of 0', () => {
    expect(() => retest(asked({ 80: 1 }, { 80: 1 }, { level: 95 }))).toThrow(RangeError);
    expect(() => retest(asked({ 80: 1 }, { 80: 1 }, { error: knownError(0) }))).toThrow(RangeError);
  });
});

describe('notes', () => {
  const about = (what: RetestAsked) => retest(what).notes.map((note) => note.about);

  it('none for one angle with equal trials and an own error', () => {
    expect(about(asked({ 80: 200 }, { 80: 210 }))).toEqual([]);
  });

  it('five angles: 22.6 % of a false change, z 2.5758 for all (1 − 0.95⁵; normal table at 0.995)', () => {
    const torques = { 20: 100, 40: 150, 60: 190, 80: 210, 100: 190 };
    const { notes } = retest(asked(torques, torques));
    const note = notes.find((one) => one.about === 'many angles');
    expect(note?.chanceOfFalse).toBeCloseTo(1 - 0.95 ** 5, 12);
    expect(note?.chanceOfFalse).toBeCloseTo(0.226, 3);
    expect(note?.levelForEach).toBeCloseTo(0.99, 12);
    expect(note?.reachForEach).toBeCloseTo(2.5758293, 6);
  });

  it('a change that passes alone need not pass among all', () => {
    // 2.5758·√2·5 = 18.2 N·m among five angles.
    const before = { 20: 100, 40: 150, 60: 190, 80: 210, 100: 190 };
    const at80 = (after: number) => retest(asked(before, { ...before, 80: after })).angles[3];
    expect(at80(226)).toMatchObject({ says: 'gain beyond noise', standsAmongAll: false });
    expect(at80(229)).toMatchObject({ says: 'gain beyond noise', standsAmongAll: true });
  });

  it('one trial is allowed and named; more trials after flatter the best, not the mean', () => {
    const what = (score: 'best' | 'mean') => ({
      ...asked({}, {}),
      before: [day({ 80: [200], 90: [180, 170] }, score)],
      after: [day({ 80: [230, 220], 90: [180, 170] }, score)],
    });
    const [one, unequal] = retest(what('best')).notes;
    expect(one).toEqual({ about: 'one trial', when: 'before', angles: [toRadians(80)] });
    expect(unequal).toEqual({
      about: 'unequal trials',
      angles: [toRadians(80)],
      flatters: 'after',
    });
    expect(about(what('mean'))).toEqual(['one trial', 'many angles']);
    expect(refusedAs(retest(what('best')).target)).toBeUndefined();
  });

  it('angles of one side are named and count nowhere', () => {
    const { angles, notes } = retest(asked({ 40: 100, 80: 200 }, { 80: 230, 90: 200 }));
    expect(angles).toHaveLength(1);
    expect(notes).toContainEqual({
      about: 'left out',
      onlyBefore: [toRadians(40)],
      onlyAfter: [toRadians(90)],
    });
  });

  it('picked as weakest: 180 where 200 is expected, reliability 0.9, rises to 182 by itself (hand calculation)', () => {
    const picked = { reliability: 0.9, expected: 200 };
    const note = retest(asked({ 80: 180 }, { 80: 198 }, { picked })).notes[0];
    expect(note).toMatchObject({ about: 'picked as weakest', reliability: 0.9 });
    if (note?.about !== 'picked as weakest') throw new Error('no note');
    expect(note.changeByItself).toBeCloseTo(182 / 180 - 1, 12);
    expect(note.gainLeft).toBeCloseTo(198 / 182 - 1, 12);
  });

  it('learning and a borrowed error', () => {
    const error = borrowedError('hand-held or strap', { unfamiliar: true });
    const what = asked({ 80: 200 }, { 80: 210 }, { error, firstEver: true, familiarised: false });
    expect(retest(what).notes).toEqual([
      { about: 'borrowed error', kind: 'hand-held or strap', unfamiliar: true, wholly: true },
      { about: 'learning', firstEver: true, familiarised: false },
    ]);
  });
});

describe('what must not matter to a retest', () => {
  const torque = fc.double({ min: 60, max: 400, noNaN: true });
  const gain = fc.double({ min: 0.7, max: 1.4, noNaN: true });
  const measured = fc
    .uniqueArray(
      fc.record({ deg: fc.integer({ min: 0, max: 24 }).map((n) => 5 * n), torque, gain }),
      { minLength: 1, maxLength: 6, selector: ({ deg }) => deg },
    )
    // One angle always lies in the target.
    .map((rows) => [...rows.filter(({ deg }) => deg !== 80), { deg: 80, torque: 200, gain: 1.1 }]);
  type Rows = readonly { deg: number; torque: number; gain: number }[];
  const occasions = (rows: Rows, scale = 1, rest: Partial<RetestAsked> = {}): RetestAsked => ({
    ...asked({}, {}, rest),
    before: [{ score: 'best', angles: rows.map((r) => trial(r.deg, r.torque * scale)) }],
    after: [{ score: 'best', angles: rows.map((r) => trial(r.deg, r.torque * r.gain * scale)) }],
  });
  const trial = (deg: number, value: number) => ({ angle: toRadians(deg), trials: [value] });

  it('the order of angles', () => {
    fc.assert(
      fc.property(measured, (rows) => {
        expect(retest(occasions([...rows].reverse()))).toEqual(retest(occasions(rows)));
      }),
    );
  });

  it('the unit: pound-feet throughout give the same verdicts, torques in their unit', () => {
    const footPound = 1 / 1.3558179483314003;
    fc.assert(
      fc.property(measured, (rows) => {
        const metric = retest(occasions(rows));
        const error = knownError(5 * footPound, 'newtonMetre');
        const imperial = retest(occasions(rows, footPound, { error }));
        expect(imperial.target.says).toBe(metric.target.says);
        expect(imperial.contrast.says).toBe(metric.contrast.says);
        for (const [i, angle] of imperial.angles.entries()) {
          expect(angle.says).toBe(metric.angles[i]?.says);
          same(
            angle.minimalDetectableChange,
            (metric.angles[i]?.minimalDetectableChange ?? 0) * footPound,
          );
        }
      }),
    );
  });

  it('included angles (180° − flexion) throughout', () => {
    fc.assert(
      fc.property(measured, (rows) => {
        const flexion = retest(occasions(rows));
        const included = retest(
          occasions(
            rows.map((row) => ({ ...row, deg: 180 - row.deg })),
            1,
            { target: range(80, 110) },
          ),
        );
        expect(included.target.says).toBe(flexion.target.says);
        expect(included.contrast.says).toBe(flexion.contrast.says);
        expect(included.angles.map(({ says }) => says).reverse()).toEqual(
          flexion.angles.map(({ says }) => says),
        );
      }),
    );
  });

  it('an angle far away leaves the verdict in the target as it is; only notes and the contrast may change', () => {
    fc.assert(
      fc.property(measured, torque, gain, (rows, far, change) => {
        const before = retest(occasions(rows, 1, { worthwhile: 0.03 }));
        const more = [...rows, { deg: 140, torque: far, gain: change }];
        const after = retest(occasions(more, 1, { worthwhile: 0.03 }));
        expect(after.target).toEqual(before.target);
        expect(after.chances).toEqual(before.chances);
        const plain = (angles: typeof before.angles) =>
          angles.map(({ standsAmongAll: _, ...rest }) => rest);
        expect(plain(after.angles).slice(0, rows.length)).toEqual(plain(before.angles));
      }),
    );
  });

  it('a word and its numbers agree: beyond noise is a change above the detectable one and an interval without 0', () => {
    fc.assert(
      fc.property(measured, fc.constantFrom(5, 12, 25), (rows, size) => {
        const { angles, target } = retest(
          occasions(rows, 1, { error: knownError(size, 'newtonMetre') }),
        );
        for (const { change, minimalDetectableChange, gain, says } of angles) {
          expect(says !== 'cannot say').toBe(Math.abs(change) > minimalDetectableChange);
          expect(says === 'gain beyond noise').toBe(gain.low > 0);
          expect(says === 'loss beyond noise').toBe(gain.high < 0);
        }
        const judged = judgedOf(target);
        expect(judged.says === 'yes').toBe(judged.gain.value > judged.detectableGain);
      }),
    );
  });
});

describe('errors of tests', () => {
  it.each(testKinds)(
    '%s: the value lies within the published ones, and stays below what the worst give',
    (kind) => {
      const { value, spread, restsOn } = testErrors[kind];
      const ends = restsOn.flatMap(({ from, to }) => [from, to]);
      expect(value).toBeGreaterThan(Math.min(...ends));
      expect(value + spread).toBeLessThan(Math.max(...ends));
    },
  );

  it('borrowed: the table’s value, raised for the unfamiliar, degrees from its spread (hand calculation)', () => {
    // 0.04 ± 0.012: (1/0.3)²/2 = 5.56 degrees. Unfamiliar: 0.06, spread √(0.3² + 0.2²): 3.85 degrees.
    const plain = borrowedError('single-joint dynamometer');
    expect(plain.amount).toBeCloseTo(0.04, 12);
    expect(plain.degreesOfFreedom).toBeCloseTo(5.5556, 3);
    const raised = borrowedError('single-joint dynamometer', { unfamiliar: true });
    expect(raised.amount).toBeCloseTo(0.06, 12);
    expect(raised.degreesOfFreedom).toBeCloseTo(1 / (2 * 0.13), 10);
  });

  it('own: scatter of logarithms; 200 and 210 at one angle is ln 1.05/√2 with 1 degree (hand calculation)', () => {
    const one = given(errorFromRepeats([[day({ 80: [200] }), day({ 80: [210] })]]));
    expect(one.amount).toBeCloseTo(Math.log(1.05) / Math.SQRT2, 12);
    expect(one.degreesOfFreedom).toBe(1);
    const days = [day({ 60: [200], 80: [200] }), day({ 60: [210], 80: [210] })];
    // A shared good day stays in; two angles count as one unless their errors are known to part.
    const shared = given(errorFromRepeats([days]));
    expect(shared.amount).toBeCloseTo(one.amount, 12);
    expect(shared.degreesOfFreedom).toBe(1);
    expect(given(errorFromRepeats([days], exactly(0))).degreesOfFreedom).toBe(2);
    expect(given(errorFromRepeats([days, days])).degreesOfFreedom).toBe(2);
  });

  it('refuses single days and days that agree to the last digit', () => {
    expect(refusedAs(errorFromRepeats([[day({ 80: [200] })]]))).toBe('one-day');
    expect(refusedAs(errorFromRepeats([[day({ 80: [200] }), day({ 80: [200] })]]))).toBe(
      'no-spread',
    );
  });

  it('both together: 6 % with 2 degrees and 4 % with 5.56 are √(0.0161/7.56) with 7.56 (hand calculation)', () => {
    const own = { ...knownError(0.06), degreesOfFreedom: 2 };
    const both = combinedError(own, borrowedError('single-joint dynamometer'));
    expect(both.amount).toBeCloseTo(Math.sqrt((2 * 0.0036 + 5.55556 * 0.0016) / 7.55556), 7);
    expect(both.degreesOfFreedom).toBeCloseTo(7.5556, 3);
    expect(both.known).toBe('own and borrowed');
  });
});

describe('what a retest says of the next forecast', () => {
  it('15 % seen where 10 % was forecast, error 5 %, no miss: weight 1/2, ratio 1.25 ± 0.354 (hand calculation)', () => {
    const found = given(
      updatedAmplitude({ observed: 0.15, standardError: 0.05, predicted: 0.1, modelMiss: 0 }),
    );
    expect(found.seen).toBeCloseTo(1.5, 12);
    expect(found.weight).toBeCloseTo(0.5, 12);
    expect(found.ratio).toBeCloseTo(1.25, 12);
    expect(found.spread).toBeCloseTo(0.5 / Math.SQRT2, 12);
    expect(found.evidence).toBe('weak');
  });

  it('the model’s own miss m makes it weaker: 0.25/(0.25 + 0.25 + m²) (hand calculation)', () => {
    const found = given(updatedAmplitude({ observed: 0.15, standardError: 0.05, predicted: 0.1 }));
    expect(found.weight).toBeCloseTo(0.25 / (0.5 + gainMiss.value ** 2), 12);
  });

  it('refuses a forecast of almost nothing', () => {
    const nothing = { observed: 0.1, standardError: 0.05, predicted: 0.005 };
    expect(refusedAs(updatedAmplitude(nothing))).toBe('no-forecast-gain');
  });
});
