import { describe, expect, it, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { declared, kickback, withLifts } from './declareLift.ts';
import { told } from './told.ts';

describe('a lift of the catalogue declared word for word', () => {
  it.each(lifts.map((lift) => [lift.name, lift] as const))(
    '%s is read as it is',
    async (_, lift) => {
      const { scenario, problems } = await readScenario(
        'f.yaml',
        withLifts(`  ours: ${declared(lift)}\n`),
      );
      expect(problems).toBeUndefined();
      const own = 'A lift of the coach’s own, declared in the scenario.';
      expect(scenario?.lifts).toEqual([{ ...lift, name: 'ours', assumed: [own, ...lift.assumed] }]);
    },
  );
});

test('a lift like another keeps what is not changed, and says what is', async () => {
  const text = withLifts(`  safety bar squat:
    like: back squat
    resistance: { kind: mass, on: "trunk, head and arms", along: 1, across: 3 cm }
    assumed: [The bar sits 3 cm in front of the shoulder joint.]
`).replace('lift: box squat', 'lift: safety bar squat');
  const { scenario, problems } = await readScenario('f.yaml', text);
  expect(problems).toBeUndefined();
  const squat = lifts.find(({ name }) => name === 'back squat');
  expect(scenario?.lifts).toEqual([
    {
      ...squat,
      name: 'safety bar squat',
      resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0.03 },
      assumed: [
        'A lift of the coach’s own: the back squat with its own resistance; the rest is assumed as there.',
        'The bar sits 3 cm in front of the shoulder joint.',
      ],
    },
  ]);
});

test('joint angles follow the file’s convention, directions and ratios do not', async () => {
  const { scenario, problems } = await readScenario(
    'f.yaml',
    `title: t
angles: included
group: { name: g, reference: male, stature: 180 cm, mass: 80 kg, training: 0 years }
lifts:
  half bent raise:
    like: hip flexor raise
    range: [180 deg, 90 deg]
    follow: [{ joint: knee, rule: linear, from: 160 deg, per leading: 0.5 }]
target: { action: knee extension, from: 105 deg, to: 80 deg }
programs:
  p:
    weeks: 1
    sessions per week: 1
    work: [{ lift: half bent raise, from: 180 deg, to: 100 deg, reserve: 2, sets: 1, reps: 6 }]
`,
  );
  expect(problems).toBeUndefined();
  // By hand: 180 - 180 = 0, 180 - 90 = 90, 180 - 160 = 20.
  expect(scenario?.lifts[0]).toMatchObject({
    rangeDeg: [0, 90],
    follow: [{ joint: 'knee', rule: 'linear', fromDeg: 20, perLeading: 0.5 }],
    supportDirectionDeg: 0,
  });
});

describe('names', () => {
  const named = withLifts(kickback);

  test('a slip of a declared name is told by that name; a broken declaration is told once', async () => {
    expect(await told(named.replace('lift: box squat', 'lift: cable kickbak'))).toEqual([
      '45 [cable kickbak] lift is "cable kickbak"; there is no such lift | did you mean "cable kickback"?',
    ]);
    const broken = named.replace('turn: -1', 'turn: -2');
    expect(await told(broken.replace('lift: box squat', 'lift: cable kickback'))).toEqual([
      '27 [-2] turn must be 1 or -1',
    ]);
  });

  test('a range beyond a declared lift is refused by its leading joint', async () => {
    const far = 'lift: cable kickback, from: 0 deg, to: 90 deg';
    expect(await told(named.replace('lift: box squat, from: 0 deg, to: 90 deg', far))).toEqual([
      '45 [90 deg] to is 90 deg of hip flexion; cable kickback runs from -10 to 60 deg',
    ]);
  });
});

describe('a machine of another joint', () => {
  const machine = `  multi-hip machine:
    chain: [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }]
    support: seat
    support direction: 0 deg
    sides: 1
    leads: hip
    range: [0 deg, 90 deg]
    resistance: { kind: machine torque, arm: 20 cm }
`;
  const work = 'lift: multi-hip machine, machine: hip plates, from: 0 deg, to: 80 deg';
  const text = withLifts(machine)
    .replace('lift: box squat, from: 0 deg, to: 90 deg', work)
    .replace(
      'machines:\n',
      'machines:\n  hip plates: { joint: hip, load: 20 kg, torque: { -10 deg: 30 N m, 90 deg: 40 N m } }\n',
    );

  test('states its joint, and its angles are of that joint', async () => {
    const { scenario, problems } = await readScenario('f.yaml', text);
    expect(problems).toBeUndefined();
    // By hand: -10 deg = -pi / 18; a knee would be refused below 0.
    expect(scenario?.machines['hip plates']).toMatchObject({
      joint: 'hip',
      points: [
        { angle: -Math.PI / 18, torque: 30 },
        { angle: Math.PI / 2, torque: 40 },
      ],
    });
  });

  test('is refused on a lift that another joint leads', async () => {
    expect(await told(text.replace('machine: hip plates', 'machine: black leg machine'))).toEqual([
      '45 [black leg machine] "black leg machine" turns the knee, but the multi-hip machine is led by the hip | write joint: hip under the machine if it was measured there',
    ]);
  });
});
