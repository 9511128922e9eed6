import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { exerciseLine } from '../src/page/exerciseLine.ts';
import { singlesSection } from '../src/page/singlesSection.ts';
import { type Results, run } from '../src/run.ts';
import { carriesBody, countsWholeEffort, isBodyLift } from '../src/tables/bodyLifts.ts';
import { liftNamed, lifts } from '../src/tables/lifts.ts';

/** Lifts done with no weight but the body. */

const scenario = (work: string, test?: string) => `title: Body weight
angles: flexion
group: { name: invented men, reference: male, stature: 180 cm, mass: 78 kg, training: 3 years }
${test ? `tests: [{ ${test} }]\n` : ''}target: { action: elbow flexion, from: 20 deg, to: 60 deg, within: 8 weeks }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ ${work}, sets: 4, tempo: 2-0-1, rest: 60 s }] }
`;
const chinUp = 'lift: chin-up, from: 10 deg, to: 120 deg';
const bestChinUp = (best: string) => `lift: chin-up, to: 120 deg, best: ${best}`;

async function problemsOf(text: string): Promise<string[]> {
  const { problems } = { problems: undefined, ...(await run('f.yaml', text)) };
  return (problems ?? []).map(({ message, hint }) => `${message} | ${hint}`);
}

async function resultsOf(text: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('f.yaml', text)) };
  if (!results) throw new Error(formatProblems(problems ?? []));
  return results;
}

const only = ({ ranking }: Results) => {
  const [first] = ranking;
  const [work] = first?.program.program.work ?? [];
  const [planned] = first?.program.plan.exercises ?? [];
  if (!first || !work || !planned) throw new Error('one program with one entry');
  return { work, planned, program: first.program };
};

/** Repetitions done in the first week, of many wanted. */
async function done(work: string, test: string): Promise<number> {
  const { program } = only(await resultsOf(scenario(`${work}, reps: 50`, test)));
  return program.state.shortfalls[0]?.done ?? 50;
}

describe('what the body itself loads', () => {
  it('sorts the catalogue: the body is the main weight', () => {
    // By eye: what hangs, stands on one leg or on the toes, or turns about held shanks or hips.
    expect(lifts.filter(isBodyLift).map(({ name }) => name)).toEqual([
      'split squat',
      'rear-foot raised split squat',
      'step-up',
      'single-leg Romanian deadlift',
      '45-degree back extension',
      'horizontal back extension',
      'Nordic lowering',
      'Nordic lowering on a slope',
      'standing calf raise',
      'single-leg calf raise',
      'chin-up',
    ]);
  });

  it('lifts under a bar can be done without one, and keep the chart of the bar', () => {
    const squat = liftNamed('back squat');
    expect([carriesBody(squat), countsWholeEffort(squat, 85)]).toEqual([true, false]);
    expect(countsWholeEffort(squat, 0)).toBe(true);
    expect(carriesBody(liftNamed('standing curl'))).toBe(false);
  });

  it.each(['body weight', '0 kg'])('load: %s is nothing added', async (load) => {
    const text = scenario(`${chinUp}, load: ${load}, reps: 5`, bestChinUp('30 kg'));
    const results = await resultsOf(text);
    const { work, planned } = only(results);
    // The torque at the hardest angle grows with body and load alike: 78 kg less two forearms
    // (3 % of the body) over that and 30 kg is 75.7 / 105.7 = 0.716.
    expect(exerciseLine(work, planned, results)).toBe(
      'Chin-up, elbow 10–120°: 4 × 5, tempo 2-0-1, rest 60 s with the body alone, 72 % of what the heaviest single over this range asks, body included (30 kg added, tested); how often it can be lifted is read from that share. The heaviest single would be lost at 120° of elbow flexion, by the elbow flexors. The model cannot judge this lift, because the muscles that pull the upper arm down are not in the tables: this load rests on the tested single alone.',
    );
  });

  it('the same chart, on the whole torque: 72 % of a single allows ten repetitions, its own load one', async () => {
    // Chart (textbook): 75 % for ten, 70 % for eleven or twelve.
    expect(await done(`${chinUp}, load: body weight`, bestChinUp('30 kg'))).toBe(10);
    expect(await done(`${chinUp}, load: body weight`, bestChinUp('0 kg'))).toBe(1);
    // 20 of 30 kg: (75.7 + 20) / 105.7 = 0.905 and not 0.67; the chart has 90 % for four.
    expect(await done(`${chinUp}, load: 20 kg`, bestChinUp('30 kg'))).toBe(3);
  });

  it('a repetition maximum is the added weight that allows just so many', async () => {
    const text = scenario(`${chinUp}, load: 5 RM, reps: 5`, bestChinUp('30 kg'));
    const { planned } = only(await resultsOf(text));
    // 87 % of the whole for five: 0.87 · 105.7 − 75.7 = 16.3 kg.
    expect(planned.exercise).toMatchObject({ load: expect.closeTo(16.3, 0) });
    expect(planned.wholeShare).toBeCloseTo(0.87, 5);
  });

  it('a repetition maximum can be done as often as it says: eight times with an 8 RM (its meaning)', async () => {
    for (const from of [-25, -20, 0]) {
      const raise = `lift: standing calf raise, from: ${from} deg, to: 15 deg, load: 8 RM, reps: 8`;
      const { program } = only(await resultsOf(scenario(raise)));
      expect(program.state.shortfalls).toEqual([]);
    }
  });

  it('a squat without a bar', async () => {
    const results = await resultsOf(
      scenario('lift: back squat, from: 0 deg, to: 100 deg, load: body weight, reps: 20'),
    );
    const { work, planned } = only(results);
    expect(exerciseLine(work, planned, results)).toMatch(
      /^Back squat, knee 0–100°: 4 × 20, tempo 2-0-1, rest 60 s with the body alone, none of the heaviest single over this range \(\d+ kg, predicted, not tested\)\. The heaviest single would be lost at 100° of knee flexion, by the hip extensors\.$/,
    );
  });

  it('a single that is the body itself grows by kilograms', async () => {
    const test = 'lift: step-up, to: 90 deg, best: body weight';
    const work = 'lift: step-up, from: 0 deg, to: 90 deg, load: body weight, reps: 1';
    const [section] = singlesSection(await resultsOf(scenario(work, test)));
    const table = section?.blocks.find((block) => block.kind === 'table');
    const [row] = table?.kind === 'table' ? table.rows : [];
    expect(row?.join(' | ')).toMatch(
      /^step-up 0–90° \(tested\) \| 0 kg \| 90° of knee flexion by the knee extensors \| \+\d+(\.5)? kg$/,
    );
  });
});

describe('what is refused', () => {
  const single = bestChinUp('body weight');
  it.each<[string, string, string[]]>([
    [
      `${chinUp}, load: 70 %, reps: 3`,
      single,
      [
        'the tested single of the chin-up from 10° to 120° is the body alone, so a share of it is no load | write load: body weight, or let bands help',
      ],
    ],
    [
      `${chinUp}, reserve: 2, reps: 3`,
      single,
      [
        'by what is known of this athlete’s strength the chin-up from 10° to 120° can be done about once with the body alone, so a load for 5 is less than the body | write load: body weight with fewer repetitions, or let bands help',
      ],
    ],
    [
      `${chinUp}, load: 5 kg, reps: 1`,
      single,
      [
        '5 kg is more than this posture can hold: the heaviest chin-up from 10° to 120° is the body alone (tested, lost at 120° by the elbow flexors) | lower the load, shorten the range, or add a tested best for this range if it is higher',
      ],
    ],
    [
      'lift: leg press, from: 10 deg, to: 90 deg, load: body weight, reps: 5',
      'lift: leg press, to: 100 deg, best: 0 kg',
      [
        "best is 0 kg, but leg press moves a machine's or a cable's weight | write that weight, such as 20 kg",
        "load is body weight, but leg press moves a machine's or a cable's weight | write that weight, such as 20 kg",
      ],
    ],
    [
      'lift: standing curl, from: 20 deg, to: 100 deg, load: 0 kg, reps: 5',
      single,
      [
        'load is 0 kg, but standing curl moves a weight on a limb | write that weight, such as 20 kg',
      ],
    ],
  ])('%s', async (work, test, expected) => {
    expect(await problemsOf(scenario(work, test))).toEqual(expected);
  });

  it('a Nordic too heavy to hold: the hint names the action that it asks', async () => {
    const text = scenario(
      'hold: Nordic lowering, at: 60 deg, against: pins, effort: 100 %, reps: 5, seconds: 3',
    ).replace(', tempo: 2-0-1', '');
    const [told] = await problemsOf(text);
    expect(told).toMatch(
      /^the Nordic lowering cannot be held at 60°: the body alone asks \d+ % of what the muscles can give \| choose another angle, or hold the joint action itself \(hold: knee flexion\)$/,
    );
  });

  it('a chin-up that strong bands leave without balance hangs, it does not stand', async () => {
    const text = `${scenario(`${chinUp}, load: 2 kg, bands: b, reps: 5`).replace(
      'reference: male, stature: 180 cm, mass: 78',
      'reference: female, stature: 165 cm, mass: 61',
    )}bands:
  b: { tension: { 0.2 m: 50 N, 1 m: 400 N }, anchor: 2.3 m }
`;
    expect((await problemsOf(text)).map((one) => one.replace(/at \d+°/, 'at N°'))).toEqual([
      'with 2 kg and the bands "b" the chin-up cannot be held in balance, hanging from the bar, at N° | use weaker bands, another load, or end the range earlier',
    ]);
  });
});
