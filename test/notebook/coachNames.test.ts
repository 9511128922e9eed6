import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

// What coaches wrote when they tried the program, and what each is told.
describe('required names that are missing', () => {
  test.each<[string, string, string[]]>([
    [
      '  code: SN-04\n',
      '',
      ['4 [athlete] athlete.code is missing | add for example "code: SN-04"'],
    ],
    [
      '  reference: female\n',
      '',
      ['4 [athlete] athlete.reference is missing | add for example "reference: female"'],
    ],
    [
      '  mass: 63.5 kg\n',
      '',
      ['4 [athlete] athlete.mass is missing | add for example "mass: 63.5 kg"'],
    ],
    [
      '  training: 4 years\n',
      '',
      ['4 [athlete] athlete.training is missing | add for example "training: 4 years"'],
    ],
    ['    unit: N m\n', '', ['13 [a] tests.1.unit is missing | add for example "unit: N m"']],
    [
      '    contraction: isometric\n',
      '',
      ['13 [a] tests.1.contraction is missing | add for example "contraction: isometric"'],
    ],
    [
      'stature: 168 cm',
      'stature:',
      ['7 [stature] athlete.stature is empty | add for example "stature: 168 cm"'],
    ],
    [
      'from: 0 deg, to: 115 deg, ',
      '',
      [
        '32 [{] programs.deep squat.work.1.from is missing | add for example "from: 0 deg"',
        '32 [{] programs.deep squat.work.1.to is missing | add for example "to: 115 deg"',
      ],
    ],
    [
      'sets: 4, reps: 6, ',
      '',
      [
        '32 [{] programs.deep squat.work.1.sets is missing | add for example "sets: 4"',
        '32 [{] programs.deep squat.work.1.reps is missing | add for example "reps: 6"',
      ],
    ],
    [
      'at: 90 deg, effort: 90 %, ',
      '',
      [
        '36 [{] programs.deep squat.work.5.at is missing | add for example "at: 90 deg"',
        '36 [{] programs.deep squat.work.5.effort is missing | add for example "effort: 90 %"',
      ],
    ],
    [
      'seconds: 5, rest',
      'rest',
      ['36 [{] programs.deep squat.work.5.seconds is missing | add for example "seconds: 5"'],
    ],
    [
      'from: 75 deg, to: 100 deg, ',
      '',
      [
        '23 [target] target.from is missing | add for example "from: 75 deg"',
        '23 [target] target.to is missing | add for example "to: 100 deg"',
      ],
    ],
    [
      'action: knee extension, from',
      'from',
      ['23 [target] target.action is missing | add for example "action: knee extension"'],
    ],
    [
      'target: { action: knee extension, from: 75 deg, to: 100 deg, gain: 10 %, within: 8 weeks }\n',
      '',
      [
        '1 [t] target is missing | add for example "target: { action: knee extension, from: 75 deg, to: 100 deg }"',
      ],
    ],
    [
      '    to: 110 deg\n    best: 85 kg\n',
      '',
      [
        '20 [l] tests.2.to is missing | add for example "to: 110 deg"',
        '20 [l] tests.2.best is missing | add for example "best: 85 kg"',
      ],
    ],
    [
      '    weeks: 8\n    sessions per week: 2\n',
      '',
      [
        '28 [deep squat] programs.deep squat.weeks is missing | add for example "weeks: 8"',
        '28 [deep squat] programs.deep squat.sessions per week is missing | add for example "sessions per week: 2"',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});

describe('other words for a name', () => {
  test.each<[string, string, string[]]>([
    [
      'stature:',
      'height:',
      [
        '4 [athlete] athlete.stature is missing | add for example "stature: 168 cm"',
        '7 [height] unknown name "height" in athlete | did you mean "stature"?',
      ],
    ],
    [
      'mass:',
      'weight:',
      [
        '4 [athlete] athlete.mass is missing | add for example "mass: 63.5 kg"',
        '8 [weight] unknown name "weight" in athlete | did you mean "mass"?',
      ],
    ],
    [
      'reference:',
      'sex:',
      [
        '4 [athlete] athlete.reference is missing | add for example "reference: female"',
        '6 [sex] unknown name "sex" in athlete | did you mean "reference"?',
      ],
    ],
    [
      'code:',
      'name:',
      [
        '4 [athlete] athlete.code is missing | add for example "code: SN-04"',
        '5 [name] unknown name "name" in athlete | did you mean "code"?',
      ],
    ],
    [
      'lift: back squat, from',
      'exercise: back squat, from',
      [
        '32 [{ exercise: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }] work.1 must be work with "lift:", "hold:" or "isokinetic:" | did you mean "lift" instead of "exercise"?',
      ],
    ],
    [
      'load: 80 %',
      'reserve: 2, intensity: 80 %',
      [
        '32 [intensity] unknown name "intensity" in programs.deep squat.work.1 | did you mean "load"?',
      ],
    ],
    [
      'effort: 90 %, sets: 4, reps: 5',
      'intensity: 90 %, sets: 4, reps: 5',
      [
        '36 [{] programs.deep squat.work.5.effort is missing | add for example "effort: 90 %"',
        '36 [intensity] unknown name "intensity" in programs.deep squat.work.5 | did you mean "effort"?',
      ],
    ],
    [
      'seconds: 5, rest',
      'duration: 5 s, rest',
      [
        '36 [{] programs.deep squat.work.5.seconds is missing | add for example "seconds: 5"',
        '36 [duration] unknown name "duration" in programs.deep squat.work.5 | did you mean "seconds"?',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(changed([from, to]))).toEqual(expected);
  });
});
