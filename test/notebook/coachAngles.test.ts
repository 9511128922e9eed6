import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

// What coaches wrote when they tried the program, and what each is told.
describe('depths', () => {
  test.each<[string, string, string[]]>([
    [
      'to: 115 deg',
      'to: parallel',
      [
        '32 [parallel] to is "parallel"; a depth word is not an angle | write the knee angle you see, for example 115 deg (thigh about level), or thigh level',
      ],
    ],
    [
      'to: 110 deg',
      'to: ass to grass',
      [
        '21 [ass to grass] to is "ass to grass"; a depth word is not an angle | write the knee angle you see, for example 115 deg (thigh about level), or thigh level',
      ],
    ],
    [
      'at: 90 deg',
      'at: half',
      [
        '36 [half] at is "half"; a depth word is not an angle | write the knee angle you see, for example 115 deg (thigh about level)',
      ],
    ],
    [
      'to: 100 deg, gain',
      'to: deep, gain',
      [
        '23 [deep] to is "deep"; a depth word is not an angle | write the knee angle you see, for example 115 deg (thigh about level)',
      ],
    ],
    [
      'to: 115 deg',
      'to: 20 deg',
      [
        '32 [20 deg] a back squat to 20 deg is limited by the back and by balance, which the model does not know; end the range at 30 deg or more',
      ],
    ],
    [
      'to: 110 deg',
      'to: 29 deg',
      [
        '21 [29 deg] a back squat to 29 deg is limited by the back and by balance, which the model does not know; end the range at 30 deg or more',
      ],
    ],
    [
      'hold: back squat, at: 100 deg',
      'hold: back squat, at: 15 deg',
      [
        '37 [15 deg] a back squat held at 15 deg is limited by the back and by balance, which the model does not know; hold it at 20 deg or more',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});

const included = `angles: included
group: { name: x, reference: male, stature: 180 cm, mass: 80 kg, training: 1 year }
title: t
target: { action: knee extension, from: 105 deg, to: 80 deg }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ lift: back squat, from: 180 deg, to: 65 deg, reserve: 2, sets: 3, reps: 8 }] }
`;

describe('a file of included angles is answered in included angles', () => {
  test.each<[string, string, string[]]>([
    [
      'to: 65 deg',
      'to: parallel',
      [
        '6 [parallel] to is "parallel"; a depth word is not an angle | write the knee angle you see, for example 65 deg (thigh about level), or thigh level',
      ],
    ],
    [
      'to: 65 deg',
      'to: 65',
      ['6 [65] programs.p.work.1.to needs a unit of angle, for example "65 deg"'],
    ],
    [
      'to: 65 deg',
      'to: far',
      ['6 [far] to is "far"; an angle is a number with its unit, for example "105 deg"'],
    ],
    [
      'to: 65 deg',
      'to: 155 deg',
      [
        '6 [155 deg] a back squat to 155 deg included is limited by the back and by balance, which the model does not know; end the range at 150 deg included or less',
      ],
    ],
    [
      'from: 180 deg, to: 65 deg, ',
      '',
      [
        '6 [{] programs.p.work.1.from is missing | add for example "from: 180 deg"',
        '6 [{] programs.p.work.1.to is missing | add for example "to: 65 deg"',
      ],
    ],
    [
      'from: 105 deg, ',
      '',
      ['4 [target] target.from is missing | add for example "from: 105 deg"'],
    ],
    [
      'lift: back squat, from: 180 deg, to: 65 deg, reserve: 2',
      'hold: back squat, at: 165 deg, effort: 90 %, seconds: 5',
      [
        '6 [165 deg] a back squat held at 165 deg included is limited by the back and by balance, which the model does not know; hold it at 160 deg included or less',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(included.replace(from, to))).toEqual(expected);
  });
});

test('a hold of a standing lift may be at 20 deg, a range may end at 30 deg', async () => {
  const text = changed(
    ['hold: back squat, at: 100 deg', 'hold: back squat, at: 20 deg'],
    ['to: 115 deg', 'to: 30 deg'],
  );
  expect(await told(text)).toEqual([]);
});
