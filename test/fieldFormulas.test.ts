import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { athleteCalls, athleteFunctions } from '../src/functions/athleteFunctions.ts';
import { programCalls, programFunctions } from '../src/functions/programFunctions.ts';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { type Results, run } from '../src/run.ts';

const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
const deep = 'to: 115 deg, load: 78 %, sets: 4, reps: 6';

/** The demo file with changes, each of which must find its place. */
function changed(...pairs: readonly (readonly [string, string])[]): string {
  return pairs.reduce((whole, [from, to]) => {
    expect(whole).toContain(from);
    return whole.replace(from, to);
  }, text);
}

async function resultsOf(scenario: string): Promise<Results> {
  const found = await run('f.yaml', scenario);
  if (!found.results) throw new Error(formatProblems(found.problems, () => scenario));
  return found.results;
}

async function told(scenario: string): Promise<string[]> {
  const { problems } = { problems: undefined, ...(await run('f.yaml', scenario)) };
  const lines = scenario.split('\n');
  return (problems ?? []).map(({ message, at, hint }) => {
    const shown = lines[(at?.line ?? 1) - 1]?.slice((at?.col ?? 1) - 1, (at?.endCol ?? 1) - 1);
    return `[${shown}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}

describe('formulas in fields', () => {
  it('give what the same file with plain values gives', async () => {
    const plain = await resultsOf(
      changed(
        ['mass: 63.5 kg', 'mass: 64 kg'],
        [deep, 'to: 110 deg, load: 60 kg, sets: 5, reps: 6'],
      ),
    );
    const formulas = await resultsOf(
      changed(
        ['mass: 63.5 kg', 'mass: = 60 kg + 4 kg'],
        [
          deep,
          'to: = 100 deg + 10 deg, load: = 60 kg, sets: = 2 + 3, reps: = max(4, 6)'.replace(
            '= max(4, 6)',
            '"= max(4, 6)"',
          ),
        ],
      ),
    );
    expect(formulas.ranking.map(({ program }) => [program.name, program.landing])).toEqual(
      plain.ranking.map(({ program }) => [program.name, program.landing]),
    );
  });

  it('may ask about the athlete in programs and target: 78 % of the tested 85 kg', async () => {
    const results = await resultsOf(
      changed([
        deep,
        `to: 110 deg, load: '= 0.78 * best("back squat", 110 deg)', sets: 4, reps: 6`,
      ]),
    );
    const program = results.ranking.find((entry) => entry.program.name === 'deep squat')?.program;
    const exercise = program?.plan.exercises[0]?.exercise;
    expect(exercise?.kind === 'lift' && exercise.load).toBeCloseTo(0.78 * 85, 3);
  });

  it('may use cells and body measures, and plain numbers are shares where shares are read', async () => {
    const results = await resultsOf(
      changed(
        [deep, 'to: 115 deg, load: = share_of_best, sets: 4, reps: 6'],
        ['cells:\n', 'cells:\n  share of best: = 0.5 + mass / (635 kg)\n'],
      ),
    );
    const work = results.scenario.programs.find(({ name }) => name === 'deep squat')?.work[0];
    // 0.5 + 63.5/635.
    expect(work?.kind === 'lift' && work.load).toEqual({ kind: 'share', share: 0.6 });
  });

  it('are refused where they turn in a circle or ask what is not yet known (whole messages)', async () => {
    expect([
      ...(await told(changed(['mass: 63.5 kg', `mass: '= best("back squat", 110 deg) / 1.3'`]))),
      ...(await told(
        changed([deep, `to: 115 deg, load: '= load("box squat", 1)', sets: 4, reps: 6`]),
      )),
      ...(await told(changed(['mass: 63.5 kg', 'mass: = mass + 1 kg']))),
      ...(await told(changed(['mass: 63.5 kg', 'mass: = stature + 1 kg']))),
      ...(await told(changed(['mass: 63.5 kg', 'mass: = 1 m']))),
      ...(await told(changed(['mass: 63.5 kg', 'mass: = (60 kg']))),
      ...(await told(changed(['mass: 63.5 kg', 'mass: = 600 kg']))),
      ...(await told(changed([deep, 'to: 115 deg, load: 78 %, sets: = 1.5, reps: 6']))),
    ]).toEqual([
      `['= best("back squat", 110 deg) / 1.3'] the formula of mass asks best(…), which needs this very value: a circle | give a number here, or ask it in a program or a cell`,
      `['= load("box squat", 1)'] the formula of load asks load(…), which is known only when the programs have been computed | ask it in a cell; a field may ask about the athlete: torque, best, peak_angle …`,
      '[= mass + 1 kg] the formula of mass needs itself in a circle: mass → mass | break the circle by giving one of them a number',
      '[= stature + 1 kg] the formula of mass does not fit: length (m) + mass (kg) | both sides must be of one kind',
      '[= 1 m] mass is a mass; "m" is a length — write it in kg, lb or g, for example "63.5 kg"',
      '[= (60 kg] the formula of mass cannot be read: parenthesis ) expected',
      expect.stringMatching(/^\[= 600 kg\] mass is 600 kg/),
      '[= 1.5] sets is 1.5; it must be a whole number',
    ]);
  });

  it('know which functions ask about the athlete and which about programs', async () => {
    const results = await resultsOf(text);
    expect(athleteFunctions(results).map(({ name }) => name)).toEqual(athleteCalls);
    expect(programFunctions(results).map(({ name }) => name)).toEqual(programCalls);
  });
});
