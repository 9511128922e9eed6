import { describe, expect, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

/** Work that is lowered only, heavier lowering, isokinetic work and pushing against pins. */

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s';
const machine =
  'isokinetic: knee extension, from: 10 deg, to: 100 deg, speed: 60 deg/s, way: both, effort: 100 %, sets: 4, reps: 8, rest: 60 s';
const pinned =
  'hold: back squat, at: 100 deg, against: pins, effort: 100 %, sets: 4, reps: 3, seconds: 5';

const withWork = (work: string, from: string, to: string) => {
  if (!work.includes(from)) throw new Error(`not in the work: ${from}`);
  return changed([squat, work.replace(from, () => to)]);
};

async function firstWork(text: string): Promise<unknown> {
  const { scenario, problems } = await readScenario('f.yaml', text);
  expect(problems).toBeUndefined();
  return scenario?.programs[0]?.work[0];
}

describe('what is read', () => {
  test.each(['yes', 'true'])('lower only: %s, with body weight', async (yes) => {
    const work = await firstWork(withWork(squat, '80 %', `body weight, lower only: ${yes}`));
    expect(work).toMatchObject({ kind: 'lift', lowerOnly: true, load: { kind: 'mass', mass: 0 } });
  });

  test('lower only: no is a full lift; nothing of it is kept', async () => {
    expect(await firstWork(withWork(squat, '80 %', '80 %, lower only: no'))).not.toHaveProperty(
      'lowerOnly',
    );
  });

  test('more than the best single may be lowered', async () => {
    const work = await firstWork(withWork(squat, '80 %', '115 %, lower only: yes'));
    expect(work).toMatchObject({ load: { kind: 'share', share: 1.15 } });
  });

  test('a heavier load on the way down, as more than is lifted or as a mass', async () => {
    expect(await firstWork(withWork(squat, '80 %', '80 %, lowering load: +20 %'))).toMatchObject({
      loweringLoad: { kind: 'more', share: 0.2 },
    });
    expect(await firstWork(withWork(squat, '80 %', '80 %, lowering load: 100 kg'))).toMatchObject({
      loweringLoad: { kind: 'mass', mass: 100 },
    });
  });

  test('isokinetic work: 60 deg/s is a third of pi a second', async () => {
    expect(await firstWork(changed([squat, machine]))).toEqual({
      kind: 'isokinetic',
      action: 'knee extension',
      from: expect.closeTo(Math.PI / 18, 12),
      to: expect.closeTo((10 * Math.PI) / 18, 12),
      speed: expect.closeTo(Math.PI / 3, 12),
      ways: ['lifting', 'lowering'],
      effort: 1,
      sets: 4,
      reps: 8,
      rest: 60,
      path: ['programs', 'deep squat', 'work', 0],
    });
  });

  test('its angles follow the file’s convention, its speed does not turn round', async () => {
    const included = `title: A
angles: included
group: { name: men, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
target: { action: knee extension, from: 120 deg, to: 80 deg }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ isokinetic: knee extension, from: 170 deg, to: 80 deg, speed: 60 deg/s, way: lowering, effort: 90 %, sets: 3, reps: 6 }] }
`;
    expect(await firstWork(included)).toMatchObject({
      from: expect.closeTo(Math.PI / 18, 12),
      to: expect.closeTo((10 * Math.PI) / 18, 12),
      speed: expect.closeTo(Math.PI / 3, 12),
      ways: ['lowering'],
      rest: 120,
      assumed: ['rest'],
    });
  });

  test('a hold against pins', async () => {
    expect(await firstWork(changed([squat, pinned]))).toMatchObject({ against: 'pins', effort: 1 });
  });
});

describe('isokinetic work: what is refused', () => {
  test.each<[string, string, string[]]>([
    [
      '60 deg/s',
      '60',
      ['32 [60] programs.deep squat.work.1.speed needs a unit of speed, for example "60 deg/s"'],
    ],
    [
      '60 deg/s',
      '60 degs/s',
      [
        '32 [60 degs/s] speed is a speed of turning; "degs/s" is not a unit known here — write it in deg/s or rad/s, for example "60 deg/s" | did you mean "deg/s"?',
      ],
    ],
    [
      '60 deg/s',
      '4 deg/s',
      ['32 [4 deg/s] speed is 4 deg/s; a machine turns a joint at 5 to 400 deg/s'],
    ],
    [
      '60 deg/s',
      '401 deg/s',
      ['32 [401 deg/s] speed is 401 deg/s; a machine turns a joint at 5 to 400 deg/s'],
    ],
    [
      'to: 100 deg',
      'to: 130 deg',
      [
        "32 [130 deg] isokinetic knee extension goes to 130 deg of knee flexion, past the athlete's limit of 125 deg (athlete.limits.knee flexion)",
      ],
    ],
    [
      'knee extension, from: 10 deg',
      'hip flexion, from: -30 deg',
      [
        '32 [-30 deg] from is -30 deg of hip flexion; strength in hip flexion is known from -10 to 120 deg | write an angle within that; the hip counts from 0 deg (thigh in line with the trunk), flexion positive',
      ],
    ],
    [
      'from: 10 deg, to: 100 deg',
      'from: 100 deg, to: 10 deg',
      [
        '32 [100 deg] from is 100 deg and to is 10 deg; from must be the smaller one | write from: 10 deg, to: 100 deg',
      ],
    ],
    [
      'way: both',
      'way: up',
      ['32 [up] way is "up"; there is no such way | known: both, lifting, lowering'],
    ],
    [
      'effort: 100 %',
      'effort: 120 %',
      ['32 [120 %] effort is 120 %; an effort lies above 0 % and up to 100 %'],
    ],
    [
      'isokinetic: knee extension',
      'isokinetic: knee extention',
      [
        '32 [knee extention] isokinetic is "knee extention"; there is no such joint action | did you mean "knee extension"?',
      ],
    ],
    [
      'speed: 60 deg/s, ',
      '',
      ['32 [{] programs.deep squat.work.1.speed is missing | add for example "speed: 60 deg/s"'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(withWork(machine, from, to))).toEqual(expected);
  });
});

describe('pins: what is refused', () => {
  test.each<[string, string, string[]]>([
    [
      'pins',
      'wall',
      ['32 [wall] against is "wall"; write pins (any bar that cannot move) or leave it out'],
    ],
    [
      'back squat',
      'knee extension',
      [
        '32 [against] knee extension is a joint action, not a lift with a bar that pins could stop | delete against',
      ],
    ],
    [
      'back squat',
      'leg press',
      [
        '32 [against] leg press moves a machine or a cable, not a bar that pins could stop | delete against',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(withWork(pinned, from, to))).toEqual(expected);
  });
});
