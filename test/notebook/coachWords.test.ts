import { describe, expect, test } from 'vitest';
import { liftNameHint } from '../../src/notebook/liftNameHint.ts';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { formatProblem } from '../../src/notebook/text/problem.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

/** What a coach writes in the words of the gym or of another notation, and the way out. */

const squat =
  'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s';
const dose = 'load: 80 %, sets: 4, reps: 6';
const first = (work: string) => told(changed([squat, work]));
const beforeMachines = (text: string) => changed(['machines:\n', `${text}machines:\n`]);
const names = lifts.map(({ name }) => name);

describe('names of lifts', () => {
  test.each([
    ['squat', 'did you mean "back squat" or "front squat" or "low-bar squat" or "box squat"?'],
    ['bulgarian split squat', 'did you mean "rear-foot raised split squat"?'],
    ['Bulgarian Split-Squats', 'did you mean "rear-foot raised split squat"?'],
    ['RDL', 'did you mean "Romanian deadlift"?'],
    ['hip bridge', 'did you mean "glute bridge" or "hip thrust"?'],
    ['leg extensions', 'did you mean "machine knee extension"?'],
    ['Hack squat', 'nearest: leg press, belt squat; or declare it under lifts:'],
    ['split sqat', 'did you mean "split squat"?'],
    [
      'cable flying curl',
      'known with "curl": seated leg curl, lying leg curl, standing curl, incline curl, preacher curl, cable curl',
    ],
    ['zzz', `known: ${names.join(', ')}`],
  ])('%s', (written, hint) => {
    expect(liftNameHint(written, names)).toBe(hint);
  });

  test('each trade word leads to lifts of the catalogue', () => {
    for (const word of ['lunge', 'pull-up', 'trap bar deadlift', 'nordic curl', 'biceps curl'])
      expect(liftNameHint(word, names)).toMatch(/^(nearest: |did you mean ")/);
  });

  test('a long list ends after a whole name', () => {
    const hint = `known: ${names.join(', ')}`;
    const shown = formatProblem({ code: 'x', message: 'y', hint }).split('\n')[1] ?? '';
    expect(shown).toMatch(/, …$/);
    expect(names).toContain(shown.replace(/, …$/, '').split(', ').at(-1));
  });
});

describe('missing ends of a range', () => {
  const missing = (name: string, value: string) =>
    `32 [{] programs.deep squat.work.1.${name} is missing | add for example "${name}: ${value}"`;
  // Ranges of the catalogue: bench press to 80, calf raise from -30 to 15, machine from 10.
  test.each<[string, string[]]>([
    [`lift: bench press, from: 0 deg, ${dose}`, [missing('to', '80 deg')]],
    [`lift: standing calf raise, ${dose}`, [missing('from', '-30 deg'), missing('to', '15 deg')]],
    [
      `lift: machine knee extension, ${dose}`,
      [missing('from', '10 deg'), missing('to', '115 deg')],
    ],
    [`lift: front squat, from: 0 deg, ${dose}`, [missing('to', '115 deg')]],
    [
      'hold: ankle plantarflexion, effort: 80 %, sets: 4, reps: 6, seconds: 3',
      [missing('at', '-5 deg')],
    ],
  ])('%s', async (work, expected) => {
    expect(await first(work)).toEqual(expected);
  });

  test('in a file of included angles', async () => {
    const text = `title: A
angles: included
group: { name: men, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
target: { action: elbow flexion, to: 60 deg }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ hold: elbow flexion, at: 90 deg, effort: 90 %, sets: 3, reps: 6, seconds: 5 }] }
`;
    expect(await told(text)).toEqual([
      '4 [target] target.from is missing | add for example "from: 180 deg"',
    ]);
  });
});

describe('loads, times and sets', () => {
  test.each<[string, string[]]>([
    [
      squat.replace('80 %', 'reserve 2'),
      [
        '32 [reserve 2] load is "reserve 2"; that says how many repetitions are left, not how heavy the weight is | leave out load and write reserve: 2 (repetitions left)',
      ],
    ],
    [
      squat.replace('0 deg, to: 115 deg', '115 deg, to: 0 deg'),
      [
        '32 [115 deg] from is 115 deg and to is 0 deg; from must be the smaller one | write from: 0 deg, to: 115 deg',
      ],
    ],
    [
      squat.replace('180 s', '1 h'),
      ['32 [1 h] rest is "1 h"; a time is written in s or min | write 60 min'],
    ],
    [
      squat.replace('3-0-1', '3010'),
      [
        '32 [3010] programs.deep squat.work.1.tempo must be a text such as 3-0-1 | write 3-0-1 (a pause at the top is not read)',
      ],
    ],
    [
      squat.replace('3-0-1', '3-0-X'),
      [
        '32 [3-0-X] tempo is "3-0-X"; write seconds lowering, held at the bottom and lifting, for example 3-0-1 | write 3-0-1 (1 for a lift as fast as possible)',
      ],
    ],
    [
      squat.replace('sets: 4, reps: 6', 'sets: 4x6, reps: 6'),
      ['32 [4x6] programs.deep squat.work.1.sets must be a whole number | write sets: 4, reps: 6'],
    ],
    [
      squat.replace('80 %', '8 RM, lower only: yes'),
      [
        '32 [8 RM] 8 RM counts repetitions that can be lifted, but this work is lowered only | write load: 100 % (of the heaviest single), load: 70 kg or load: body weight',
      ],
    ],
  ])('%s', async (work, expected) => {
    expect(await first(work)).toEqual(expected);
  });
});

test('progress in per cent of nothing is remarked on', async () => {
  const text = changed([squat, squat.replace('80 %', 'body weight')]);
  expect(await notesOf(text)).toEqual([
    '38: progress is +2.5 % per week, which changes nothing in the back squat with body weight | for a load that rises, write one to begin with, such as load: 2.5 kg',
  ]);
});

describe('the athlete', () => {
  test('a limit one level too high', async () => {
    const limits = '  limits: { ankle dorsiflexion: 30 deg, knee flexion: 125 deg }';
    expect(await told(changed([limits, '  ankle dorsiflexion: 30 deg']))).toEqual([
      '11 [ankle dorsiflexion] unknown name "ankle dorsiflexion" in athlete | it belongs inside limits: write limits: { ankle dorsiflexion: … }',
    ]);
  });

  test('no person is so heavy, no career so long', async () => {
    expect(await told(changed(['63.5 kg', '260 kg'], ['4 years', '61 years']))).toEqual([
      '8 [260 kg] mass is 260 kg; a person weighs between 20 kg and 250 kg',
      '10 [61 years] training is 61 years; it lies between 0 and 60 years',
    ]);
  });

  test('a very light one is remarked on', async () => {
    expect(await notesOf(changed(['63.5 kg', '34 kg']))).toEqual([
      '8: mass is 34 kg; body and strength tables are of adults, and so light an athlete may be a child | check the unit; train minors only under qualified supervision',
    ]);
    expect(await notesOf(changed(['63.5 kg', '35 kg']))).toEqual([]);
  });
});

describe('declared lifts and machines', () => {
  test('a joint that the segment has', async () => {
    const chain = (near: string) => `lifts:
  kb:
    like: hip thrust
    chain:
      - { segment: thigh, near: ${near}, turn: -1 }
      - { segment: shank and foot, near: proximal, turn: 1 }
`;
    const missing = (line: number, place: number, joint: string) =>
      `${line} [{] lifts.kb.chain.${place}.joint is missing | add for example "joint: ${joint}"`;
    expect(await told(beforeMachines(chain('proximal')))).toEqual([
      missing(29, 1, 'hip'),
      missing(30, 2, 'knee'),
    ]);
    expect((await told(beforeMachines(chain('distal'))))[0]).toBe(missing(29, 1, 'knee'));
  });

  test('a lift led otherwise than the one it is like', async () => {
    expect(await told(beforeMachines('lifts:\n  a: { like: back squat, leads: hip }\n'))).toEqual([
      '26 [hip] the hip leads, but in the back squat it follows another joint | delete leads, or write follow: and range: of its own for a lift led by the hip',
    ]);
  });

  test('places farther from a segment than a body is wide, and weights below the floor', async () => {
    const on = 'kind: mass, on: "trunk, head and arms", along: 1';
    const text = `lifts:
  a: { like: back squat, resistance: { ${on}, across: 3 m } }
  b: { like: deadlift, resistance: { ${on}, across: 0 cm, below: 3 m } }
`;
    expect(await told(beforeMachines(text))).toEqual([
      '26 [3 m] across is 3 m; a place beside a body segment lies within 1 m of it',
      '27 [3 m] below is 3 m; a weight hangs at most 2.5 m below',
    ]);
  });

  test('a machine that takes the place of a weight says which muscles it works', async () => {
    const curl = (arm: string) =>
      `lifts:\n  a: { like: preacher curl, resistance: { kind: machine torque, arm: ${arm} } }\n`;
    expect(await notesOf(beforeMachines(curl('20 cm')))).toEqual([
      '26: with an arm of 20 cm the machine of "a" works the triceps | if it works those of the other side, as may the preacher curl, write arm: -20 cm',
    ]);
    expect(await notesOf(beforeMachines(curl('-20 cm')))).toEqual([
      '26: with an arm of -20 cm the machine of "a" works the elbow flexors | if it works those of the other side, as may the preacher curl, write arm: 20 cm',
    ]);
  });

  test('a machine whose joint is misspelt is not held against the knee', async () => {
    const hip = '{ joint: hop, load: 40 kg, torque: { -10 deg: 60 N m, 10 deg: 70 N m';
    const text = changed(['{ load: 40 kg, torque: { 10 deg: 70 N m', hip]);
    expect(await told(text)).toEqual([
      '26 [hop] joint is "hop"; there is no such joint | did you mean "hip"?',
    ]);
  });
});

describe('singles of one lift', () => {
  const other = (test: string) =>
    changed(['  - lift: back squat\n', `  - { ${test} }\n  - lift: back squat\n`]);

  test('two bests over one range are refused', async () => {
    expect(await told(other('lift: back squat, to: 110.5 deg, best: 90 kg'))).toEqual([
      '23 [85 kg] the back squat from 0° to 110° has two bests, 90 kg and 85 kg | keep the newer one and delete the other',
    ]);
    expect(await told(other('lift: back squat, to: 110 deg, best: 85 kg'))).toEqual([]);
  });

  test('a longer range that is heavier is remarked on', async () => {
    expect(await notesOf(other('lift: back squat, to: 90 deg, best: 60 kg'))).toEqual([
      '23: the tested back squat of 85 kg from 0° to 110° is heavier than that of 60 kg over the shorter range from 0° to 90° inside it | check load, depth and date of both; the shorter range can be no lighter',
    ]);
    expect(await notesOf(other('lift: back squat, to: 120 deg, best: 100 kg'))).toEqual([
      '20: the tested back squat of 100 kg from 0° to 120° is heavier than that of 85 kg over the shorter range from 0° to 110° inside it | check load, depth and date of both; the shorter range can be no lighter',
    ]);
    expect(await notesOf(other('lift: back squat, to: 90 deg, best: 100 kg'))).toEqual([]);
  });
});

async function notesOf(text: string): Promise<string[]> {
  const { notes, problems } = await readScenario('f.yaml', text);
  expect(problems).toBeUndefined();
  return (notes ?? []).map(({ at, message, hint }) => `${at?.line}: ${message} | ${hint}`);
}
