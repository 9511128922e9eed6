import { expect, test } from 'vitest';
import { z } from 'zod';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { scenarioSchema } from '../../src/notebook/schema.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { changed, goodScenario } from './goodScenario.ts';

const degrees = (value: number) => expect.closeTo(toRadians(value), 12);

// Expected numbers by hand: 168 cm = 1.68 m, 80 % = 0.8, 40 deg = 40 pi / 180.
test('a good file becomes a scenario in SI', async () => {
  const { scenario, notes } = await readScenario('snow.yaml', goodScenario);
  expect(notes).toEqual([]);
  expect(scenario).toMatchObject({
    file: 'snow.yaml',
    title: 'Stronger in the deep knee range before the snow season',
    note: 'Invented athlete and data.',
    convention: 'flexion',
    subject: {
      isGroup: false,
      code: 'SN-04',
      reference: 'female',
      stature: 1.68,
      mass: 63.5,
      lengths: { thigh: 0.41 },
      trainingYears: 4,
      limits: { 'ankle dorsiflexion': degrees(30), 'knee flexion': degrees(125) },
      path: ['athlete'],
    },
    target: {
      action: 'knee extension',
      from: degrees(75),
      to: degrees(100),
      gain: 0.1,
      weeks: 8,
      path: ['target'],
    },
    minutesPerWeek: 120,
  });
  expect(scenario?.tests).toEqual([
    {
      kind: 'torque',
      action: 'knee extension',
      date: '2026-09-14',
      neighbours: { hip: degrees(85) },
      score: 'best',
      measure: { unit: 'N m' },
      points: [
        { angle: degrees(40), trials: [118, 121, 116], path: ['tests', 0, 'trials', '40 deg'] },
        { angle: degrees(60), trials: [163, 158, 166], path: ['tests', 0, 'trials', '60 deg'] },
      ],
      path: ['tests', 0],
    },
    { kind: 'lift', lift: 'back squat', to: degrees(110), best: 85, path: ['tests', 1] },
  ]);
  expect(scenario?.machines['black leg machine']).toEqual({
    joint: 'knee',
    load: 40,
    points: [
      { angle: degrees(10), torque: 70 },
      { angle: degrees(60), torque: 88 },
      { angle: degrees(100), torque: 75 },
    ],
    path: ['machines', 'black leg machine'],
  });
});

test('programs keep their order, and what is left out has a default', async () => {
  const { scenario } = await readScenario('snow.yaml', goodScenario);
  const [deep, plain] = scenario?.programs ?? [];
  expect(deep).toMatchObject({ name: 'deep squat', weeks: 8, sessionsPerWeek: 2 });
  expect(deep).toMatchObject({ progress: 0.025, deloads: [{ week: 4, sets: 0.5 }] });
  expect(plain).toMatchObject({ name: 'plain', progress: 0, path: ['programs', 'plain'] });
  expect(plain?.deloads).toEqual([
    { week: 3, sets: 0.5 },
    { week: 6, sets: 0.75 },
  ]);
  const common = { from: 0, tempo: [2, 0, 1], rest: 120 };
  expect(deep?.work).toMatchObject([
    { kind: 'lift', to: degrees(115), load: { share: 0.8 }, tempo: [3, 0, 1], rest: 180 },
    {
      ...common,
      from: degrees(10),
      load: { kind: 'repetition maximum', reps: 8 },
      machine: 'black leg machine',
    },
    { ...common, load: { kind: 'reserve', reps: 2 } },
    { ...common, load: { kind: 'mass', mass: 70 } },
    { kind: 'hold', of: 'knee extension', at: degrees(90), effort: 0.9, seconds: 5, rest: 60 },
    { kind: 'hold', of: 'back squat', at: degrees(100), rest: 120 },
  ]);
});

test('what a default stands for is said', async () => {
  const text = changed([', tempo: 3-0-1, rest: 180 s', ', tempo: 3-0-1']);
  const { scenario } = await readScenario('snow.yaml', text);
  expect(scenario?.programs[0]?.work.map(({ assumed }) => assumed)).toEqual([
    ['rest'],
    ['tempo', 'rest'],
    ['tempo'],
    ['tempo', 'rest'],
    undefined,
    ['rest'],
  ]);
  const whole = await readScenario('snow.yaml', goodScenario);
  expect(whole.scenario?.programs[0]?.work[0]).not.toHaveProperty('assumed');
});

test('a group needs no tests', async () => {
  const group = `title: A club
angles: flexion
group: { name: club women, reference: female, stature: 168 cm, mass: 64 kg, training: 3 years }
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  plain: { weeks: 8, sessions per week: 2, work: [{ lift: back squat, from: 0 deg, to: 90 deg, reserve: 2, sets: 3, reps: 8 }] }
`;
  const { scenario, problems } = await readScenario('club.yaml', group);
  expect(problems).toBeUndefined();
  expect(scenario?.subject).toMatchObject({ isGroup: true, code: 'club women', path: ['group'] });
  expect(scenario?.tests).toEqual([]);
});

test('a narrow target is noted, not refused', async () => {
  const text = changed(['to: 100 deg, gain', 'to: 80 deg, gain']);
  const { scenario, notes } = await readScenario('snow.yaml', text);
  expect(scenario).toBeDefined();
  expect(notes?.map(({ message }) => message)).toEqual([
    'target is 5 deg wide; gains spread wider than that, so programs will look alike',
  ]);
});

test('further problems can be placed by the path of any value', async () => {
  const { scenario, source } = await readScenario('snow.yaml', goodScenario);
  const path = scenario?.programs[0]?.path ?? [];
  expect(source?.at(path, { key: true })).toEqual({
    file: 'snow.yaml',
    line: 28,
    col: 3,
    endCol: 13,
  });
  expect(source?.at([...path, 'work', 0, 'to'])).toMatchObject({ line: 32, col: 46, endCol: 53 });
});

test('the shape can be given to editors as a JSON Schema', () => {
  const shape = z.toJSONSchema(scenarioSchema, { io: 'input' });
  expect(shape.required).toEqual(['title', 'angles', 'target', 'programs']);
  expect(shape.additionalProperties).toBe(false);
});
