import { describe, expect, test } from 'vitest';
import { formatProblems } from '../../src/notebook/problem.ts';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { changed } from './goodScenario.ts';

/** Everything a coach would see, as one text. */
async function shown(text: string): Promise<string> {
  const { problems } = await readScenario('f.yaml', text);
  return formatProblems(problems ?? [], () => text);
}

/** Each problem as: line, [what the carets underline], message, | hint. */
async function told(text: string): Promise<string[]> {
  const { problems } = await readScenario('f.yaml', text);
  const lines = text.split('\n');
  return (problems ?? []).map(({ at, message, hint }) => {
    const { line = 0, col = 0, endCol } = at ?? {};
    const underlined = lines[line - 1]?.slice(col - 1, (endCol ?? col + 1) - 1);
    return `${line} [${underlined}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1';
const target = 'from: 75 deg, to: 100 deg, gain: 10 %, within: 8 weeks';
const trials = 'trials: { 40 deg: [118, 121, 116], 60 deg: [163, 158, 166] }';

describe('the whole text of a problem', () => {
  test('wrong unit', async () => {
    expect(await shown(changed(['168 cm', '168 kg']))).toBe(
      `f.yaml:7:12: stature is a length; "kg" is a mass — write it in m, cm, in or ft, for example "168 cm"
  stature: 168 kg
           ^^^^^^`,
    );
  });

  test('unknown lift', async () => {
    expect(await shown(changed(['- lift: back squat', '- lift: back sqaut']))).toBe(
      `f.yaml:20:11: lift is "back sqaut"; there is no such lift
  - lift: back sqaut
          ^^^^^^^^^^
  hint: did you mean "back squat"?`,
    );
  });

  test('several at once are sorted by place', async () => {
    const text = changed(
      ['weeks: 8\n', 'weeks: 0\n'],
      ['63.5 kg', '63,5 kg'],
      ['angles: flexion\n', ''],
    );
    expect(await shown(text)).toBe(
      `f.yaml:1:1: angles is missing; it says how this file writes joint angles: "flexion" (0 = straight, a bent knee is more) or "included" (180 = straight, a bent knee is less)
title: Stronger in the deep knee range before the snow season
^
f.yaml:7:9: mass has a decimal comma
  mass: 63,5 kg
        ^^^^^^^
  hint: write a decimal point: "63.5 kg"
f.yaml:28:12: weeks is 0; a program lasts at least 1 week
    weeks: 0
           ^`,
    );
  });
});

describe('units', () => {
  test.each<[string, string, string[]]>([
    [
      'stature: 168 cm',
      'stature: 168',
      ['7 [168] athlete.stature needs a unit of length, for example "168 cm"'],
    ],
    [
      'stature: 168 cm',
      'stature: "168"',
      ['7 ["168"] athlete.stature needs a unit of length, for example "168 cm"'],
    ],
    [
      'stature: 168 cm',
      'stature: 168 m',
      ['7 [168 m] stature is 168 m; a person stands between 1 m and 2.6 m tall'],
    ],
    [
      'mass: 63.5 kg',
      'mass: heavy',
      ['8 [heavy] mass is "heavy"; a mass is a number with its unit, for example "63.5 kg"'],
    ],
    [
      'mass: 63.5 kg',
      'mass: 63.5 kgs',
      [
        '8 [63.5 kgs] mass is a mass; "kgs" is not a unit known here — write it in kg, lb or g, for example "63.5 kg" | did you mean "kg"?',
      ],
    ],
    [
      'thigh: 41 cm',
      'thigh: 41,5 cm',
      [
        '9 [41] athlete.lengths.thigh needs a unit of length, for example "41 cm"',
        '9 [5 cm] unknown name "5 cm" in athlete.lengths | if a decimal comma stands before it, write a point, such as 41.5 cm',
      ],
    ],
    [
      '40 deg: [118',
      '40: [118',
      ['17 [40] tests.1.trials.40 needs a unit of angle, for example "75 deg"'],
    ],
    [
      'unit: N m',
      'unit: kg',
      [
        '18 [kg] unit is a torque; "kg" is a mass — write it in N m, lbf ft or kgf cm, for example "N m"',
      ],
    ],
    ['gain: 10 %', 'gain: 10', ['23 [10] target.gain needs a percent sign, for example "10 %"']],
    [
      'load: 80 %',
      'load: 80',
      [
        '32 [80] programs.deep squat.work.1.load must be a share ("80 %"), a mass ("70 kg") or a repetition maximum ("8 RM"), with its unit',
      ],
    ],
    [
      'load: 80 %',
      'load: 80 cm',
      [
        '32 [80 cm] load is "80 cm"; write a share ("80 %"), a mass ("70 kg") or a repetition maximum ("8 RM")',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});

describe('names and shape', () => {
  test.each<[string, string, string[]]>([
    ['  stature: 168 cm\n', '', ['4 [athlete] athlete.stature is missing']],
    [
      'stature: 168 cm',
      'statur: 168 cm',
      [
        '4 [athlete] athlete.stature is missing',
        '7 [statur] unknown name "statur" in athlete | did you mean "stature"?',
      ],
    ],
    ['title: Stronger', 'title: 7 #', ['1 [7] title must be a text; put it in quotes']],
    [
      'reference: female',
      'reference: woman',
      ['6 [woman] reference is "woman"; there is no such reference | known: female, male, pooled'],
    ],
    [
      'contraction: isometric',
      'contraction: fast',
      ['14 [fast] contraction is "fast"; only isometric tests are read'],
    ],
    ['2026-09-14', '2026-02-30', ['15 [2026-02-30] date must be a date like 2026-09-14']],
    ['[118, 121, 116]', '[118, 0]', ['17 [0] 40 deg.2 is 0; a torque is above 0']],
    ['[118, 121, 116]', '[]', ['17 [[]] 40 deg is an empty list']],
    [trials, 'trials: {}', ['17 [{}] trials is empty; a test has trials at one angle or more']],
    [
      'minutes per week: 120',
      'minutes per week: 120 min',
      ['24 [120 min] limits.minutes per week must be a number of minutes, without a unit'],
    ],
    ['sets: 4, reps: 6', 'sets: 2.5, reps: 6', ['32 [2.5] sets is 2.5; it must be a whole number']],
    ['sets: 4, reps: 6', 'sets: 4, reps: 60', ['32 [60] reps is 60; at most 50 can be read']],
    [
      'sessions per week: 2\n',
      'sessions per week: 0\n',
      ['30 [0] sessions per week is 0; a week has at least 1 session'],
    ],
    [
      `{ ${squat}, rest: 180 s }`,
      '{ sets: 3 }',
      ['32 [{ sets: 3 }] work.1 must be work with "lift:" or "hold:"'],
    ],
    [
      '{ week: 4, sets: half }',
      '{ wek: 4, sets: half }',
      [
        '39 [deload] programs.deep squat.deload.week is missing',
        '39 [wek] unknown name "wek" in programs.deep squat.deload | did you mean "week"?',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});

describe('plain sense', () => {
  test.each<[string, string, string[]]>([
    [
      target,
      'from: 75 deg, to: 130 deg',
      [
        "23 [130 deg] target goes to 130 deg of knee flexion, past the athlete's limit of 125 deg (athlete.limits.knee flexion)",
      ],
    ],
    [
      target,
      'from: 100 deg, to: 75 deg',
      ['23 [100 deg] from is 100 deg and to is 75 deg; from must be the smaller one'],
    ],
    [
      squat,
      squat.replace('115 deg', '130 deg'),
      [
        "32 [130 deg] back squat goes to 130 deg of knee flexion, past the athlete's limit of 125 deg (athlete.limits.knee flexion)",
      ],
    ],
    [
      'machine: black leg machine, from: 0 deg, to: 100 deg',
      'machine: black leg machin, from: 0 deg, to: 122 deg',
      [
        '33 [black leg machin] there is no machine "black leg machin" in this file | did you mean "black leg machine"?',
        '33 [122 deg] to is 122 deg of knee flexion; machine knee extension runs from 0 to 120 deg',
      ],
    ],
    [
      'lift: front squat,',
      'lift: front squat, machine: black leg machine,',
      ['34 [machine] front squat uses no machine | delete machine'],
    ],
    [
      'reserve: 2,',
      '',
      [
        '34 [{ lift: front squat, from: 0 deg, to: 100 deg,  sets: 3, reps: 6, rest: 2 min }] work has no load | write load: 80 %, load: 70 kg, load: 8 RM, or reserve: 2 (repetitions left)',
      ],
    ],
    [
      'reserve: 2,',
      'reserve: 2, load: 60 %,',
      [
        '34 [reserve] work has both load and reserve; either one says how heavy it is | delete one of the two',
      ],
    ],
    [
      'load: 8 RM',
      'load: 6 RM',
      ['33 [6 RM] load is 6 RM, a weight that can be lifted 6 times, but reps is 8'],
    ],
    [
      'effort: 90 %',
      'effort: 110 %',
      ['36 [110 %] effort is 110 %; an effort lies above 0 % and up to 100 %'],
    ],
    [
      'load: 80 %',
      'load: 0 %',
      ['32 [0 %] load is 0 %; a load lies above 0 % and up to 100 % of the best single repetition'],
    ],
    [
      'tempo: 3-0-1',
      'tempo: 3-0',
      [
        '32 [3-0] tempo is "3-0"; write seconds lowering, held at the bottom and lifting, for example 3-0-1',
      ],
    ],
    [
      '+2.5 % per week',
      '2.5 %',
      ['38 [2.5 %] progress is "2.5 %"; write a change per week, for example "2.5 % per week"'],
    ],
    ['week: 4', 'week: 9', ['39 [9] week is 9, but the program lasts 8 weeks']],
    ['week: 6', 'week: 3', ['47 [3] week 3 is given twice']],
    [
      '60 deg: [163',
      '40.0 deg: [163',
      [
        '17 [40.0 deg] trials gives 40 deg twice: "40 deg" and "40.0 deg" | put both under one angle',
      ],
    ],
    [
      '60 deg: [163',
      '165 deg: [163',
      [
        '17 [165 deg] 165 deg of knee flexion is more than a knee bends; is this an included angle (180 = straight)? then write angles: included',
      ],
    ],
    [
      'hip: 85 deg',
      'knee: 85 deg',
      ['16 [knee] with gives the knee, which is the joint tested; its angles stand under trials'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });

  test('a target ends at 140 deg even without a limit of the athlete', async () => {
    const text = changed([', knee flexion: 125 deg', ''], [target, 'from: 75 deg, to: 145 deg']);
    expect(await told(text)).toEqual([
      '23 [145 deg] to is 145 deg of knee flexion; a target lies within 0 to 140 deg',
    ]);
  });

  test('flexion angles in a file of included angles are asked about', async () => {
    const text = changed(
      ['angles: flexion', 'angles: included'],
      [target, 'from: 20 deg, to: 90 deg'],
    );
    expect(await told(text)).toContain(
      '23 [20 deg] 20 deg included is a knee bent by 160 deg, more than a knee bends; is this a flexion angle (0 = straight)? then write angles: flexion',
    );
  });
});

describe('who is forecast', () => {
  const tests = /tests:[\s\S]*(?=target:)/;
  const noTests =
    'this athlete has no tests; a forecast for one person starts from measured strength | add tests: with torque trials or a best lift, or write group: instead of athlete: for the mean person of a kind';

  test('an athlete without tests', async () => {
    expect(await told(changed().replace(tests, ''))).toEqual([`4 [athlete] ${noTests}`]);
    expect(await told(changed().replace(tests, 'tests: []\n'))).toEqual([`12 [tests] ${noTests}`]);
  });

  test('neither or both', async () => {
    expect(await told(changed(['athlete:', 'athlet:']))).toEqual([
      '1 [t] the file has neither an athlete nor a group | write athlete: for one person, or group: for the mean person of a kind',
      '4 [athlet] unknown name "athlet" | did you mean "athlete"?',
    ]);
    const group =
      'group: { name: x, reference: male, stature: 180 cm, mass: 80 kg, training: 1 year }';
    expect(await told(changed(['target:', `${group}\ntarget:`]))).toEqual([
      '23 [group] the file has both an athlete and a group; a forecast is for one of them | delete one of the two',
    ]);
  });
});
