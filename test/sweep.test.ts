import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { run } from '../src/run.ts';
import { type Sweep, sweep } from '../src/sweep.ts';

const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');

async function swept(place: string, values: string, ...formulas: string[]): Promise<Sweep> {
  const found = await sweep('f.yaml', text, place, values, formulas);
  if (found.fault !== undefined) throw new Error(found.fault);
  return found.sweep;
}

const fault = async (place: string, values = '1, 2') =>
  (await sweep('f.yaml', text, place, values, ['mass'])).fault;

describe('sweep', () => {
  it('puts each value of a range in the place and answers with it', async () => {
    const { written, steps } = await swept(
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
    const { steps } = await swept('programs.deep squat.work.1.to', '140 deg, 100 deg', 'mass');
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
