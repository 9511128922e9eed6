import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

// What coaches wrote when they tried the program, and what each is told.
describe('quantities written as coaches write them', () => {
  test.each<[string, string, string[]]>([
    [
      'stature: 168 cm',
      'stature: 5\'11"',
      [
        '7 [5\'11"] stature is "5\'11""; a length is one number with its unit | write 71 in or 180 cm',
      ],
    ],
    [
      'stature: 168 cm',
      'stature: 5 ft 11 in',
      [
        '7 [5 ft 11 in] stature is "5 ft 11 in"; a length is one number with its unit | write 71 in or 180 cm',
      ],
    ],
    [
      'stature: 168 cm',
      'stature: 1,82',
      ['7 [1,82] stature has a decimal comma and no unit | write "1.82 m"'],
    ],
    [
      'stature: 168 cm',
      'stature: 182,5',
      ['7 [182,5] stature has a decimal comma and no unit | write "182.5 cm"'],
    ],
    [
      'mass: 63.5 kg',
      'mass: 63,5',
      ['8 [63,5] mass has a decimal comma and no unit | write "63.5 kg"'],
    ],
    [
      'within: 8 weeks',
      'within: 2 months',
      [
        '23 [2 months] within is "2 months"; months differ in length, so it is counted in weeks | write weeks, for example "9 weeks"',
      ],
    ],
    [
      'weeks: 8\n',
      'weeks: 2 months\n',
      [
        '29 [2 months] programs.deep squat.weeks must be a whole number | write weeks, for example 9',
      ],
    ],
    [
      'training: 4 years',
      'training: 6 months',
      ['10 [6 months] training is "6 months"; it is counted in years | write "0.5 years"'],
    ],
    [
      'rest: 180 s',
      'rest: 2:30',
      ['32 [2:30] rest is "2:30"; a time is one number with its unit | write 150 s'],
    ],
    [
      'rest: 180 s',
      'rest: 90-120 s',
      [
        '32 [90-120 s] rest is "90-120 s"; a time is one number with its unit | write one number, for example "105 s"',
      ],
    ],
    [
      'sets: 4, reps: 6',
      'sets: 3-4, reps: 6-8',
      [
        '32 [3-4] programs.deep squat.work.1.sets must be a whole number | write one number, for example 4',
        '32 [6-8] programs.deep squat.work.1.reps must be a whole number | write one number, for example 7',
      ],
    ],
    [
      'load: 80 %',
      'load: 75-80 %',
      [
        '32 [75-80 %] load is "75-80 %"; a share is one number with its unit | write one number, for example "78 %"',
      ],
    ],
    [
      'load: 80 %',
      'load: 75-80',
      [
        '32 [75-80] load is "75-80"; write a share ("80 %"), a mass ("70 kg") or a repetition maximum ("8 RM") | write one number with its unit, for example "78 %"',
      ],
    ],
    [
      'load: 8 RM',
      'load: 8-10 RM',
      [
        '33 [8-10 RM] load is 8-10 RM; write a whole number from 1 to 50, for example "8 RM" | write one number, for example "9 RM"',
      ],
    ],
    [
      'load: 80 %',
      'load: "72,5"',
      ['32 ["72,5"] load has a decimal comma and no unit | write "72.5 %" or "72.5 kg"'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});

describe('ratings of effort as a load', () => {
  test.each<[string, string, string[]]>([
    [
      'load: 80 %',
      'load: RPE 8',
      [
        '32 [RPE 8] load is "RPE 8"; that says how many repetitions are left, not how heavy the weight is | leave out load and write reserve: 2 (repetitions left)',
      ],
    ],
    [
      'load: 80 %',
      'load: "@8"',
      [
        '32 ["@8"] load is "@8"; that says how many repetitions are left, not how heavy the weight is | leave out load and write reserve: 2 (repetitions left)',
      ],
    ],
    [
      'load: 80 %',
      'load: @8',
      [
        '32 [@8] a load cannot start with "@" | leave out load and write reserve: 2 (repetitions left)',
      ],
    ],
    [
      'load: 80 %',
      'load: RIR 2',
      [
        '32 [RIR 2] load is "RIR 2"; that says how many repetitions are left, not how heavy the weight is | leave out load and write reserve: 2 (repetitions left)',
      ],
    ],
    [
      'load: 80 %, ',
      'reserve: 2, rpe: 8, ',
      [
        '32 [rpe] unknown name "rpe" in programs.deep squat.work.1 | write reserve: and the repetitions left, 10 minus RPE',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});
