import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1';
const target = 'from: 75 deg, to: 100 deg, gain: 10 %, within: 8 weeks';

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
      [
        '23 [100 deg] from is 100 deg and to is 75 deg; from must be the smaller one | write from: 75 deg, to: 100 deg',
      ],
    ],
    [
      squat,
      squat.replace('115 deg', '130 deg'),
      [
        "32 [130 deg] back squat goes to 130 deg of knee flexion, past the athlete's limit of 125 deg (athlete.limits.knee flexion)",
      ],
    ],
    [
      'machine: black leg machine, from: 10 deg, to: 100 deg',
      'machine: black leg machin, from: 10 deg, to: 122 deg',
      [
        '33 [black leg machin] there is no machine "black leg machin" in this file | did you mean "black leg machine"?',
        '33 [122 deg] to is 122 deg of knee flexion; machine knee extension runs from 10 to 120 deg',
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
      '23 [145 deg] to is 145 deg of knee flexion; strength in knee extension is known from 0 to 140 deg | write an angle within that; the knee counts from 0 deg (straight), flexion positive',
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
