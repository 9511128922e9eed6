import { describe, expect, it } from 'vitest';
import { tripped } from '../../src/page/cautions.ts';
import { type Asked, resultsOf, scenarioOf, textsUnder } from './askReport.ts';

const work = (lift: string, to: number, load: string, sets = 3, from = 0) =>
  `lift: ${lift}, from: ${from} deg, to: ${to} deg, load: ${load}, sets: ${sets}, reps: 4, tempo: 2-0-1, rest: 120 s`;
const hold = (sets: number, effort = 90, rest = 60) =>
  `hold: knee extension, at: 80 deg, effort: ${effort} %, sets: ${sets}, reps: 3, seconds: 5, rest: ${rest} s`;

async function careOf(entry: string, years = 4): Promise<[number, string][]> {
  const asked: Asked = { years, programs: { a: entry } };
  const results = await resultsOf(scenarioOf(asked));
  const program = results.ranking[0]?.program;
  return program ? tripped(program, results).map(({ number, because }) => [number, because]) : [];
}

// Cut-offs of volume are common practice; the programs lie on both sides of each.
describe('cautions that a program trips', () => {
  const novice = [4, 'it is more than is usual for someone new to training'];

  it('much hard work for someone new to training, and not for the trained', async () => {
    const five = work('back squat', 95, '85 %', 5);
    expect(await careOf(five, 0)).toContainEqual(novice);
    expect(await careOf(five, 4)).not.toContainEqual(novice);
    expect(await careOf(work('back squat', 95, '85 %', 4), 0)).not.toContainEqual(novice);
    expect(await careOf(work('back squat', 95, '60 %', 6), 0)).not.toContainEqual(novice);
    expect(await careOf(work('back squat', 95, '60 %', 7), 0)).toContainEqual(novice);
  });

  it('a load on the shoulders, on the toes too, and not one on the knees', async () => {
    const shoulders = [6, 'it puts a bar on the shoulders or above the body'];
    expect(await careOf(work('standing calf raise', 15, '60 kg', 3, -25))).toContainEqual(
      shoulders,
    );
    expect(await careOf(work('seated calf raise', 15, '40 kg', 3, -25))).not.toContainEqual(
      shoulders,
    );
  });

  it('a knee bent deep that its extensors straighten, not one that lies bent in a hip thrust', async () => {
    const deep = [3, 'it bends the knee deep under load'];
    for (const load of ['60 %', '95 %'])
      expect(await careOf(work('hip thrust', 80, load))).not.toContainEqual(deep);
    expect(await careOf(work('back squat', 105, '60 %'))).toContainEqual(deep);
  });

  it('volume that nobody gains from or recovers from', async () => {
    const tooMany = [10, 'it has 24 sets a week for the knee extensors, where about 10 are usual'];
    expect(await careOf(hold(12))).toContainEqual(tooMany);
    expect(await careOf(hold(10))).not.toContainEqual(tooMany);
    const noRest = [10, 'it rests 0 s between maximal holds'];
    expect(await careOf(hold(4, 100, 0))).toContainEqual(noRest);
    expect(await careOf(hold(4, 100, 60))).not.toContainEqual(noRest);
    expect(await careOf(hold(4, 60, 0))).not.toContainEqual(noRest);
    // 2 sessions of 9 sets of 3 × 5 s with 2 × 10 s between, and 8 rests of 40 min: 10.8 hours.
    expect(await careOf(hold(9, 60, 2400))).toContainEqual([10, 'it takes 11 hours a week']);
  });

  it('each number once in the ranking, and every number in the list', async () => {
    const results = await resultsOf(scenarioOf({ programs: { a: hold(12, 100, 0) } }));
    const [first] = textsUnder(results, 'Cautions').slice(-1);
    expect(first).toMatch(/^\(10\) More is not better: about ten hard sets a week/);
  });
});

describe('work of one side', () => {
  it('is written and timed for each side', async () => {
    const split = work('split squat', 100, '70 %');
    const results = await resultsOf(scenarioOf({ programs: { a: split } }));
    // 2 sessions of 6 sets of 4 × 3 s and 5 rests of 120 s: 2 · 672 s.
    expect(results.ranking[0]?.program.minutesPerWeek).toBeCloseTo((2 * 672) / 60, 9);
    expect(textsUnder(results, '1. a').join(' ')).toContain(
      'Split squat, knee 0–100°: 3 × 4 each side, ',
    );
    expect(textsUnder(results, 'Which program').join(' ')).toContain(
      ' Minutes leave out the warm-up and count both sides of one-sided work, one after the other with the rest after each.',
    );
  });

  it('of both sides at once is counted once', async () => {
    const results = await resultsOf(
      scenarioOf({ programs: { a: work('back squat', 95, '70 %') } }),
    );
    expect(results.ranking[0]?.program.minutesPerWeek).toBeCloseTo((2 * 276) / 60, 9);
  });
});
