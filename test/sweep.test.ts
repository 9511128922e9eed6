import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSource, type Source } from '../src/notebook/source.ts';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { soughtText } from '../src/page/soughtText.ts';
import { seek } from '../src/questions/seek.ts';
import { type Sweep, sweep } from '../src/questions/sweep.ts';
import { run } from '../src/run.ts';

const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');

function parsed(file: string): Source {
  const { source } = readSource('f.yaml', file);
  if (!source) throw new Error('the file cannot be parsed');
  return source;
}

/** The same athlete with one short program, so that an evaluation costs little. */
const oneProgram = `${text.slice(0, text.indexOf('programs:'))}programs:
  deep squat:
    weeks: 1
    sessions per week: 1
    work:
      - { lift: back squat, from: 0 deg, to: 100 deg, load: 78 %, sets: 1, reps: 6, rest: 180 s }
`;

async function swept(
  file: string,
  place: string,
  values: string,
  ...formulas: string[]
): Promise<Sweep> {
  const found = await sweep(parsed(file), place, values, formulas);
  if (found.fault !== undefined) throw new Error(found.fault);
  return found.sweep;
}

const fault = async (place: string, values = '1, 2') =>
  (await sweep(parsed(oneProgram), place, values, ['mass'])).fault;

describe('sweep', () => {
  it('puts each value of a range in the place and answers with it', async () => {
    const { written, steps } = await swept(
      oneProgram,
      'athlete.mass',
      '60 kg : 5 kg : 70 kg',
      'mass',
      'mass / 2',
    );
    expect(written).toBe('63.5 kg');
    expect(steps.map(({ value, answers }) => [value, ...answers.map((a) => a.value)])).toEqual([
      ['60 kg', 60, 30],
      ['65 kg', 65, 32.5],
      ['70 kg', 70, 35],
    ]);
  });

  it('gives what the changed file itself would give', async () => {
    const { steps } = await swept(
      text,
      'programs.deep squat.work.1.to',
      '90 deg, 100 deg',
      'target_gain("deep squat")',
    );
    for (const { value, answers } of steps) {
      const changed = text.replace(
        'to: 115 deg, load: 78 %, sets: 4',
        `to: ${value}, load: 78 %, sets: 4`,
      );
      const { results } = { results: undefined, ...(await run('f.yaml', changed)) };
      const program = results?.ranking.find(
        (entry) => entry.program.name === 'deep squat',
      )?.program;
      expect(answers[0]?.value).toBe(program?.landing.meanGain);
    }
  });

  it('says of a value that cannot be why, and goes on', async () => {
    const { steps } = await swept(
      oneProgram,
      'programs.deep squat.work.1.to',
      '140 deg, 100 deg',
      'mass',
    );
    expect(steps.map(({ says }) => says)).toEqual([expect.stringContaining('knee'), undefined]);
  });

  it('says what is wrong with a place or values (whole messages)', async () => {
    expect([
      await fault('athlete.mas'),
      await fault('programs.deep squat.work.2.to'),
      await fault('athlete'),
      await fault('athlete.mass', '60 kg : 70 kg'),
      await fault('athlete.mass', '60 kg : 5 lb : 70 kg'),
      await fault('athlete.mass', '60 kg : 0.01 kg : 70 kg'),
    ]).toEqual([
      'there is no "mas" in athlete; did you mean "mass"?',
      'there is no "2" in programs.deep squat.work; did you mean "1"?',
      'athlete is a group, not a single value; name one in it',
      'values are "60 kg : 70 kg"; write from : step : to, such as 60 kg : 5 kg : 80 kg, or a list with commas',
      'values are "60 kg : 5 lb : 70 kg"; write all three in one unit, such as 60 kg : 5 kg : 80 kg',
      'values are "60 kg : 0.01 kg : 70 kg"; that is 1001 values, from 2 to 60 are taken',
    ]);
  });
});

describe('seek', () => {
  const found = async (
    file: string,
    place: string,
    range: string,
    formula: string,
    goal: string,
  ) => {
    const answer = await seek(parsed(file), place, range, formula, goal);
    return 'fault' in answer ? answer.fault : soughtText(answer.sought);
  };

  // By hand: (mass − 62 kg)² is 4 kg² at 60 and at 64 kg; the cube root of 270,000 is 64.633.
  it.each([
    ['60 kg : 70 kg', 'mass / 2', '33 kg', 'mass / 2 is 33 kg at athlete.mass = 66 kg.'],
    [
      '59 kg : 67 kg',
      '(mass - 62 kg)^2',
      '4 kg^2',
      '(mass - 62 kg)^2 is 4 kg^2 at more than one value of athlete.mass: 60 kg, 64 kg.',
    ],
    ['50 kg : 90 kg', 'mass^3', '270000 kg^3', 'mass^3 is 270000 kg^3 at athlete.mass = 64.6 kg.'],
    [
      '60 kg : 70 kg',
      'mass',
      '80 kg',
      'mass is never 80 kg in this range of athlete.mass: it goes from 60 kg (at 60 kg) to 70 kg (at 70 kg).',
    ],
    // Whole kilograms pass 63.5 only by the step from 63 to 64.
    [
      '60 kg : 67 kg',
      'floor(mass / (1 kg))',
      '63.5',
      'floor(mass / (1 kg)) is never 63.5 in this range of athlete.mass: it goes from 60 (at 60 kg) to 67 (at 67 kg). It jumps over 63.5 near athlete.mass = 64 kg: from 63 to 64.',
    ],
    [
      '60 kg : 70 lb',
      'mass',
      '80 kg',
      'range is "60 kg : 70 lb"; write from : to in one unit, such as 60 kg : 120 kg',
    ],
    [
      '60 kg : 70 kg',
      'mass',
      '"heavy"',
      'mass is never "heavy" in this range of athlete.mass. (13 values tried cannot be: the formula or the goal is not a number)',
    ],
  ])('in %s, %s = %s', async (range, formula, goal, says) => {
    expect(await found(oneProgram, 'athlete.mass', range, formula, goal)).toBe(says);
  });

  it('finds the range end whose load is 80 kg, as the file itself then gives', async () => {
    const place = 'programs.deep squat.work.1.to';
    const answer = await seek(
      parsed(oneProgram),
      place,
      '80 deg : 115 deg',
      'load("deep squat", 1)',
      '80 kg',
    );
    if ('fault' in answer) throw new Error(answer.fault);
    const [solution] = answer.sought.solutions;
    expect(answer.sought.solutions).toHaveLength(1);
    const { steps } = await swept(
      oneProgram,
      place,
      solution?.value ?? '',
      'load("deep squat", 1)',
    );
    expect(steps[0]?.answers[0]?.value).toBeCloseTo(80, 2);
  });
});

describe('a new scenario', () => {
  it('runs as it is, with nothing to remark', async () => {
    const found = await run('scenario.yaml', startingScenario);
    expect(found.problems).toBeUndefined();
    expect(found.results?.ranking).toHaveLength(3);
    expect([...(found.results ? found.notes : []), ...(found.results ? found.broken : [])]).toEqual(
      [],
    );
  });
});
