import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s';

describe('lowering: what is refused', () => {
  test.each<[string, string, string[]]>([
    [
      '80 %',
      '80 %, lower only: maybe',
      [
        '32 [maybe] lower only is "maybe"; write yes, or leave it out | known: yes, no, true, false',
      ],
    ],
    [
      '80 %',
      '160 %, lower only: yes',
      [
        '32 [160 %] load is 160 %; a load that is lowered lies above 0 % and up to 150 % of the best single repetition',
      ],
    ],
    [
      '80 %',
      '110 %, lower only: no',
      [
        '32 [110 %] load is 110 %; a load lies above 0 % and up to 100 % of the best single repetition',
      ],
    ],
    [
      'back squat, from: 0 deg, to: 115 deg, load: 80 %',
      'machine knee extension, from: 10 deg, to: 100 deg, load: body weight, lower only: yes',
      [
        "32 [body weight] load is body weight, but machine knee extension moves a machine's or a cable's weight | write that weight, such as 20 kg",
      ],
    ],
    [
      'load: 80 %',
      'reserve: 2, lower only: yes',
      [
        '32 [reserve] reserve counts repetitions that could still be lifted, but this work is lowered only | write load: 100 % (of the heaviest single), load: 70 kg or load: body weight',
      ],
    ],
    [
      'load: 80 %',
      'lower only: yes',
      [
        '32 [{ lift: back squat, from: 0 deg, to: 115 deg, lower only: yes, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }] work has no load | write load: 100 % (of the heaviest single), load: 70 kg or load: body weight',
      ],
    ],
    [
      '80 %',
      '80 %, lower only: yes, lowering load: +20 %',
      [
        '32 [lowering load] work has both lower only and lowering load; with nothing lifted there is one load | write it as load, and delete lowering load',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: 20 %',
      [
        '32 [20 %] lowering load is "20 %"; write how much more than is lifted ("+20 %") or a mass ("100 kg") | write "+20 %"',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: 115 %',
      [
        '32 [115 %] lowering load is "115 %"; write how much more than is lifted ("+20 %") or a mass ("100 kg") | write "+15 %"',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: heavy',
      [
        '32 [heavy] lowering load is "heavy"; write how much more than is lifted ("+20 %") or a mass ("100 kg")',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: 20',
      [
        '32 [20] programs.deep squat.work.1.lowering load must be more than is lifted ("+20 %") or a mass ("100 kg")',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: +150 %',
      [
        '32 [+150 %] lowering load is +150 %; what is added on the way down lies between +1 % and +100 % of what is lifted',
      ],
    ],
    [
      '80 %',
      '80 %, lowering load: 700 kg',
      ['32 [700 kg] lowering load is 700 kg; a load lies above 0 kg and below 600 kg'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([squat, squat.replace(from, () => to)]))).toEqual(expected);
  });
});
