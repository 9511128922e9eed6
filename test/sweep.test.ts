import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { readSource, type Source } from '../src/notebook/text/source.ts';
import { soughtText } from '../src/page/soughtText.ts';
import { sweepOfTwoPage } from '../src/page/sweepOfTwoPage.ts';
import { sweepPage } from '../src/page/sweepPage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { seek } from '../src/questions/seek.ts';
import { seekExtreme } from '../src/questions/seekExtreme.ts';
import { type Sweep, sweep } from '../src/questions/sweep.ts';
import { sweepTwo } from '../src/questions/sweepTwo.ts';
import { run } from '../src/run.ts';
import { Memory } from '../src/stages/memory.ts';

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

describe('a place that counts something', () => {
  const place = 'programs.deep squat.work.1.sets';

  it('is tried at every whole number and at no other', async () => {
    // minutes = 6 reps × 3 s a set + 180 s between sets: (18·n + 180·(n − 1))/60 a week (hand calculation).
    const found = await seek(
      parsed(oneProgram),
      place,
      '1 : 6',
      'minutes("deep squat")',
      '10.2 min',
    );
    if ('fault' in found) throw new Error(found.fault);
    expect(found.sought.solutions.map(({ value }) => value)).toEqual(['4']);
    expect(found.sought.refused.count).toBe(0);
    const between = await seek(
      parsed(oneProgram),
      place,
      '1 : 6',
      'minutes("deep squat")',
      '11 min',
    );
    if ('fault' in between) throw new Error(between.fault);
    expect(between.sought.solutions).toEqual([]);
    expect(between.sought.jumps.map((pair) => pair.map(({ value }) => value))).toEqual([
      ['4', '5'],
    ]);
  });

  it('says with which values a program cannot be done as written', async () => {
    const steps = await swept(oneProgram, 'programs.deep squat.work.1.load', '60 %, 95 %', 'mass');
    // At 95 % of the single two repetitions are possible (textbook chart), six are written.
    expect(steps.steps.map(({ short }) => short)).toEqual([[], ['deep squat']]);
    expect(renderTerminal(sweepPage(steps), 80).replace(/\s+/g, ' ')).toContain(
      'With 95 % "deep squat" cannot be done as written',
    );
  });
});

describe('the page of a sweep', () => {
  const place = 'programs.deep squat.work.1.to';
  const page = async (width: number, values: string, ...formulas: string[]) =>
    renderTerminal(sweepPage(await swept(oneProgram, place, values, ...formulas)), width);

  it('says what has no answer below the table, and leaves a gap in the chart', async () => {
    // 100 deg is in the file; the limit is 125 deg. Stature does not change: 1.68 m.
    const [words = '', chart = ''] = (await page(60, '100 deg, 110 deg, 130 deg', 'stature')).split(
      'stature (m)\n',
    );
    expect(words).toBe(`${place} varied
====================================

Values
------

In the file: 100 deg. Everything else stays as it is.

to                    stature
--------------------  -------
100 deg (as written)   1.68 m
110 deg                1.68 m
130 deg                     -

- No answer at 130 deg: back squat goes to 130 deg of knee
  flexion, past the athlete's limit of 125 deg
  (athlete.limits.knee flexion).

stature does not change.

`);
    // 60 columns less 5 of margin are 55 for 30 deg: 110 deg is column 18, the last of the line.
    expect(chart.match(/─+$/gmu)).toEqual(['─'.repeat(19)]);
    expect(chart).toMatch(/^ +100 +105 +110 +115 +120 +125 +130\n +to \(deg\)$/mu);
  });

  it('draws a list over angles once a value, at most seven, and says which are left out', async () => {
    const shown = await page(80, '60 deg : 5 deg : 100 deg', 'gain("deep squat")');
    expect(shown).toContain(
      'Drawn for 7 of the 9 values; left out of the chart: 70 deg and 90 deg.',
    );
    expect(shown).toContain('target 75-100 deg');
    expect(shown).toMatch(/o 60 deg {3}\* 65 deg {3}x 75 deg/);
    const short = await page(80, '90 deg, 100 deg', '[1, 2]');
    expect(short).toContain('is not drawn: only lists over all angles');
  });

  it.each([38, 40, 80])('is never wider than %i columns', async (width) => {
    const formulas = ['load("deep squat", 1)', 'target_gain("deep squat")'];
    const shown = await page(width, '90 deg : 20 deg : 130 deg', ...formulas);
    for (const line of shown.split('\n')) expect(displayWidth(line)).toBeLessThanOrEqual(width);
  });
});

describe('sweep of two places', () => {
  const two = (mass: string, to: string, formula = 'mass', file = oneProgram) =>
    sweepTwo(
      parsed(file),
      { place: 'athlete.mass', values: mass },
      { place: 'programs.deep squat.work.1.to', values: to },
      formula,
    );

  it('answers with every pair, as the file with both would', async () => {
    const formula = 'load("deep squat", 1)';
    const { sweep: found } = await two('60 kg, 70 kg', '90 deg, 110 deg', formula);
    const values = found?.steps.map((row) => row.map(({ answers: [one] }) => one?.value));
    const alone = async (mass: string, to: string) => {
      const file = oneProgram.replace('mass: 63.5 kg', `mass: ${mass}`);
      const { steps } = await swept(file, 'programs.deep squat.work.1.to', to, formula);
      return steps.map(({ answers: [one] }) => one?.value);
    };
    expect(values).toEqual([
      await alone('60 kg', '90 deg, 110 deg'),
      await alone('70 kg', '90 deg, 110 deg'),
    ]);
  });

  it.each([38, 40, 80])(
    'is a map of %i columns at most, refused cells explained',
    async (width) => {
      const { sweep: found } = await two(
        '60 kg : 5 kg : 80 kg',
        '90 deg, 130 deg',
        '(mass - 70 kg)^2',
      );
      if (!found) throw new Error('no sweep');
      const shown = renderTerminal(sweepOfTwoPage(found), width);
      for (const line of shown.split('\n')) expect(displayWidth(line)).toBeLessThanOrEqual(width);
      // By hand: 100, 25, 0, 25, 100 kg²; a fifth of the way is 20.
      expect(shown).toContain(`
     90       130
60 [100 @@]  -
65   25 ::   -
70    0 ..   -
75   25 ::   -
80 [100 @@]  -
`);
      const words = shown.replace(/\s+/gu, ' ');
      expect(words).toContain('No answer at to = 130 deg: back squat');
      expect(words).toContain(
        'largest at mass = 60 kg, to = 90 deg and mass = 80 kg, to = 90 deg (100 kg^2) and smallest at mass = 70 kg, to = 90 deg (0 kg^2).',
      );
    },
  );

  it('says what is wrong (whole messages)', async () => {
    expect([
      (await two('60 kg : 1 kg : 79 kg', '90 deg : 1 deg : 97 deg')).fault,
      (await two('60 kg, 70 kg', '90 deg, 100 deg', 'gain("deep squat")')).fault,
      (await two('60 kg : 70 kg', '90 deg')).fault,
      (
        await sweepTwo(
          parsed(oneProgram),
          { place: 'athlete.mass', values: '60 kg' },
          { place: 'athlete.mass', values: '70 kg' },
          'mass',
        )
      ).fault,
    ]).toEqual([
      'that is 20 × 8 = 160 evaluations, at most 144 are taken; make a step wider',
      'gain("deep squat") is not a single number; two places need one for each pair',
      'values are "60 kg : 70 kg"; write from : step : to, such as 60 kg : 5 kg : 80 kg, or a list with commas',
      'athlete.mass is named twice; name another place after --by',
    ]);
  });
});

describe('a sweep over one program', () => {
  it('plans and forecasts only that program again, and the athlete once', async () => {
    const memory = new Memory();
    const values = '90 deg : 10 deg : 120 deg';
    const found = await sweep(
      parsed(text),
      'programs.deep squat.work.1.to',
      values,
      ['target_gain()'],
      memory,
    );
    expect(found.sweep?.steps.every(({ says }) => says === undefined)).toBe(true);
    // Seven programs; the swept one takes four values, the others one each.
    expect(memory.plans.count).toBe(6 + 4);
    expect(memory.forecasts.count).toBe(6 + 4);
    // Singles are asked over the ranges of all programs, which the swept one changes.
    expect(memory.singles.count).toBe(7 * 4);
    expect(memory.athletes.count).toBe(1);
  });
});

describe('seek of the least or most', () => {
  // Over a cell, so that nothing of the athlete is computed again.
  const withCell = `${oneProgram}cells: { bar: 65 kg }\n`;
  const found = async (range: string, formula: string, goal: 'least' | 'most') => {
    const answer = await seekExtreme(parsed(withCell), 'cells.bar', range, formula, goal);
    return 'fault' in answer ? answer.fault : soughtText(answer.sought);
  };
  const wave = 'sin(bar / (1 kg) * 60 deg)';
  const fall = 'if(bar < 65 kg, bar, bar - 20 kg)';

  // By hand. The wave has a period of 6 kg with tops at 61.5 kg and every 6 kg on; with a slope of
  // −1/100 kg, 60° = 1.0472 a kg: lows where cos = 0.01/1.0472, 0.009 kg beside 64.5, 70.5, 76.5,
  // −1 − 0.645, −1 − 0.705, −1 − 0.765; it begins at sin 3600° − 0.6 = −0.6 and rises from there.
  // The second parabola is looked at every 2/3 kg: 61.67 and 62.33 are equal, 62 lies between.
  it.each([
    ['60 kg : 90 kg', '(bar - 70 kg)^2', 'least', 'at cells.bar = 70 kg: 0 kg^2.'],
    ['59 kg : 67 kg', '(bar - 62 kg)^2', 'least', 'at cells.bar = 62 kg: 0 kg^2.'],
    [
      '60 kg : 90 kg',
      '(bar - 70 kg)^2',
      'most',
      'at cells.bar = 90 kg: 400 kg^2. That is at the end of the range: widen it to see whether it goes on. It has other highs: at 60 kg (100 kg^2).',
    ],
    [
      '60 kg : 80 kg',
      wave,
      'most',
      'at cells.bar = 67.5 kg: 1. It is as high at 61.5 kg, at 73.5 kg and at 79.5 kg.',
    ],
    [
      '60 kg : 80 kg',
      `${wave} - bar / (100 kg)`,
      'least',
      'at cells.bar = 76.5 kg: -1.77. It has other lows: at 70.5 kg (-1.71), at 64.5 kg (-1.65) and at 60 kg (-0.6).',
    ],
    [
      '60 kg : 70 kg',
      fall,
      'most',
      'just below cells.bar = 65 kg: 65 kg. There it jumps to 45 kg. It has other highs: at 70 kg (50 kg).',
    ],
    [
      '60 kg : 70 kg',
      fall,
      'least',
      'just above cells.bar = 65 kg: 45 kg. There it jumps to 65 kg. It has other lows: at 60 kg (60 kg).',
    ],
    // Looked at every 5/6 kg: 60, 60.8, 61.7, 62.5, 63.3, then 64.2.
    [
      '60 kg : 70 kg',
      'max(bar, 64 kg)',
      'least',
      'from cells.bar = 60 kg to 63.3 kg: 64 kg. It does not change between them.',
    ],
  ] as const)('in %s, %s is %s', async (range, formula, goal, says) => {
    const text = await found(range, formula, goal);
    // Which of four equal tops comes first is rounding's choice.
    const tops = /67\.5|61\.5|73\.5|79\.5/gu;
    if (formula === wave && goal === 'most')
      expect([text.replace(tops, 'T'), [...text.matchAll(tops)].map(String).sort()]).toEqual([
        `${formula} is ${goal} ${says.replace(tops, 'T')}`,
        ['61.5', '67.5', '73.5', '79.5'],
      ]);
    else expect(text).toBe(`${formula} is ${goal} ${says}`);
  });

  it('stops at the last value that can be', async () => {
    // The athlete's limit is 125 deg, up to which going deeper adds.
    const answer = await seekExtreme(
      parsed(oneProgram),
      'programs.deep squat.work.1.to',
      '100 deg : 140 deg',
      'target_gain("deep squat")',
      'most',
    );
    if ('fault' in answer) throw new Error(answer.fault);
    const [best] = answer.sought.extremes;
    expect(best?.lies).toBe('edge');
    // Found to a thousandth of a step of 40/12 deg, from below.
    expect(Number.parseFloat(best?.value ?? '')).toBeGreaterThan(125 - 0.0034);
    expect(Number.parseFloat(best?.value ?? '')).toBeLessThanOrEqual(125);
    expect(soughtText(answer.sought)).toContain('Beyond that value there is no answer.');
  });

  it('says that a formula does not change, or has no number', async () => {
    expect(await found('60 kg : 70 kg', '3 kg', 'least')).toBe(
      '3 kg does not change in this range of cells.bar: it is always 3 kg.',
    );
    expect(await found('60 kg : 70 kg', '"heavy"', 'least')).toBe(
      '"heavy" has no value anywhere in this range of cells.bar. (13 values tried cannot be: the formula is not a number)',
    );
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
