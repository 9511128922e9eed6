import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { shown, told } from './told.ts';

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1';
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
        '18 [kg] unit is kg, a mass on a scale, so a force; a torque needs its lever arm too | add "lever arm: 36 cm": from the joint to where strap or pad pulls, square to the pull',
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
    [
      '  stature: 168 cm\n',
      '',
      ['4 [athlete] athlete.stature is missing | add for example "stature: 168 cm"'],
    ],
    [
      'stature: 168 cm',
      'statur: 168 cm',
      [
        '4 [athlete] athlete.stature is missing | add for example "stature: 168 cm"',
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
      ['32 [{ sets: 3 }] work.1 must be work with "lift:", "hold:" or "isokinetic:"'],
    ],
    [
      '{ week: 4, sets: half }',
      '{ wek: 4, sets: half }',
      [
        '39 [deload] programs.deep squat.deload.week is missing | add for example "week: 4"',
        '39 [wek] unknown name "wek" in programs.deep squat.deload | did you mean "week"?',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});
