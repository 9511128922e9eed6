import { describe, expect, it } from 'vitest';
import { rank } from '../../src/inference/ranking.ts';
import { type Asked, reportTexts, resultsOf, scenarioOf, tableUnder } from './askReport.ts';

const hold = (at: number, sets = 4) =>
  `hold: knee extension, at: ${at} deg, effort: 90 %, sets: ${sets}, reps: 5, seconds: 5`;
const elbow = 'hold: elbow flexion, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5';
const squat = (load: string, reps: number) =>
  `lift: back squat, from: 0 deg, to: 105 deg, load: ${load}, sets: 3, reps: ${reps}, tempo: 2-0-1, rest: 120 s`;

/** The verdict sentence, numbers of the forecast as "#". */
async function verdictOf(asked: Asked): Promise<string> {
  const texts = await reportTexts(asked, 'Which program');
  return (texts[1] ?? '').replace(/[+-]?\d+ %/g, '# %');
}

const gain = 'about # % torque';
const when = 'after 6 weeks, give or take # %';
const target = 'action: knee extension, from: 60 deg, to: 100 deg, gain: 80 %';

describe('the verdict sentence', () => {
  it('one program: nothing to compare, no others', async () => {
    expect(await verdictOf({ programs: { a: hold(80) } })).toBe(
      `"a" is expected to add ${gain} inside 60–100° ${when}.`,
    );
    expect(await verdictOf({ target, programs: { a: hold(80) } })).toBe(
      `"a" is expected to add ${gain} inside 60–100° ${when}. The wanted # % is more than it is expected to give.`,
    );
    expect(await verdictOf({ programs: { a: elbow } })).toBe(
      '"a" is not expected to change torque inside 60–100° noticeably.',
    );
  });

  it('two programs: the other by name', async () => {
    expect(await verdictOf({ programs: { a: hold(80), b: elbow } })).toBe(
      `"a" is expected to add most inside 60–100°: ${gain} ${when}. "b" is expected to give clearly less there.`,
    );
    expect(await verdictOf({ target, programs: { a: hold(80), b: hold(80) } })).toBe(
      `"a" is expected to add most inside 60–100°: ${gain} ${when}. "b" cannot be told apart from it: choose between them by time, equipment and what the athlete tolerates. The wanted # % is more than either of them is expected to give.`,
    );
    expect(await verdictOf({ programs: { a: elbow, b: elbow } })).toBe(
      'Neither of these programs is expected to change torque inside 60–100° noticeably.',
    );
  });

  it('several programs', async () => {
    expect(await verdictOf({ target, programs: { a: hold(80), b: elbow, c: elbow } })).toBe(
      `"a" is expected to add most inside 60–100°: ${gain} ${when}. The others are expected to give clearly less there. The wanted # % is more than any of these programs is expected to give.`,
    );
    expect(await verdictOf({ programs: { a: elbow, b: elbow, c: elbow } })).toBe(
      'None of these programs is expected to change torque inside 60–100° noticeably.',
    );
  });

  it('a program that adds nothing ties with none, even where the best adds little', () => {
    const of = (name: string, meanGain: number) => ({
      name,
      landing: { meanGain, hitShare: 0, ...peaks },
    });
    // 1.5 points lie below the least difference told apart (2 points, the ranking's working value).
    const placed = rank([of('a', 0.015), of('b', 0.006), of('c', 0.004), of('d', 0)], 0.3, 0.4);
    expect(placed.map(({ tiesWithBest }) => tiesWithBest)).toEqual([true, true, false, false]);
  });
});

const peaks = { peakBefore: 1, peakAfter: 1 };

describe('sets that cannot be done', () => {
  // 12 repetitions at 95 % of a single: two can be done (textbook chart of repetitions by load, from memory).
  it('are told in the verdict, in the ranking and in the line of the exercise', async () => {
    const asked = { programs: { a: hold(80), b: squat('95 %', 12) } };
    const results = await resultsOf(scenarioOf(asked));
    expect(await verdictOf(asked)).toBe(
      `"a" is expected to add most inside 60–100°: ${gain} ${when}. "b" is expected to give clearly less there. "b" cannot be done as written (back squat 2 of 12 repetitions); its gain is that of what can be done.`,
    );
    expect(tableUnder(results, 'Which program').map(([first]) => first)).toEqual([
      'program',
      '1. a',
      '2. b (cannot be done as written)',
    ]);
    const [, line] = await reportTexts(asked, '2. b');
    expect(line).toMatch(/ Cannot be done as written: with this load 2 of 12 repetitions a set\.$/);
  });

  it('are told with the week in which the load outruns the strength', async () => {
    const more = '    progress: 15 % per week\n';
    const [, line] = await reportTexts({ more, programs: { b: squat('85 %', 4) } }, '1. b');
    expect(line).toMatch(
      / Cannot be done as written: in week [23] [123] of 4 repetitions a set, because the load rises faster than the strength\.$/,
    );
  });

  it('a repetition missing of ten is said, and is no reason to call it impossible', async () => {
    // Ten repetitions are possible at 74 to 75 % of a single (common practice): 76 % leaves nine.
    const asked = { programs: { a: squat('76 %', 10) } };
    const [, line] = await reportTexts(asked, '1. a');
    expect(line).toMatch(
      / Not quite all can be done: with this load [89] of 10 repetitions a set\.$/,
    );
    expect(await verdictOf(asked)).not.toContain('as written');
  });

  it('work that lands nowhere is said to miss these muscles at these angles', async () => {
    expect(await reportTexts({ programs: { a: elbow } }, '1. a')).toContain(
      'None of the work lands on these muscles at these angles.',
    );
  });
});
