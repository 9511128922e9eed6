import { describe, expect, it, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { declared } from './declareLift.ts';
import { goodScenario } from './goodScenario.ts';
import { told } from './told.ts';

/** The good file with a group of lifts put before its last top-level group but one. */
const withLifts = (body: string) =>
  goodScenario.replace('machines:\n', `lifts:\n${body}machines:\n`);

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

const kickback = `  cable kickback:
    chain: [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }, { segment: shank and foot, joint: knee, near: proximal, turn: 1 }]
    support: seat
    support direction: 0 deg
    sides: 1
    leads: hip
    range: [-10 deg, 60 deg]
    follow: [{ joint: knee, rule: linear, from: 20 deg, per leading: 0 }]
    resistance: { kind: cable, on: shank and foot, along: 1, across: 0 cm, pulley forward: 1 m, pulley up: -85 cm }
`;

describe('what a declared lift may not be', () => {
  test('the one these are changed from is good', async () => {
    expect(await told(withLifts(kickback))).toEqual([]);
  });

  test.each<[string, string, string[]]>([
    // An ankle that stays still beside the chain may be stated.
    ['joint: knee, rule', 'joint: ankle, rule', []],
    [
      'joint: knee, rule: linear, from: 20 deg, per leading: 0',
      'joint: ankle, rule: balance',
      ['33 [ankle] the ankle follows, but it is not in the chain | joints of the chain: hip, knee'],
    ],
    [
      'joint: knee, rule',
      'joint: hip, rule',
      ['33 [hip] the hip leads and cannot follow a rule | delete this rule'],
    ],
    [
      '[{ joint: knee, rule: linear, from: 20 deg, per leading: 0 }]',
      '[{ joint: knee, rule: balance }, { joint: knee, rule: direction, direction: 0 deg }]',
      ['33 [knee] the knee follows two rules | delete this rule'],
    ],
    [
      'leads: hip',
      'leads: ankle',
      ['31 [ankle] the ankle leads, but it is not in the chain | joints of the chain: hip, knee'],
    ],
    [
      'on: shank and foot',
      'on: trunk and head',
      [
        '34 [trunk and head] the resistance acts on the trunk and head, which is not in the chain | segments of the chain: thigh, shank and foot',
      ],
    ],
    [
      'segment: shank and foot, joint: knee, near: proximal',
      'segment: forearm and hand, joint: elbow, near: proximal',
      [
        '27 [elbow] the forearm and hand begins at the elbow, but the thigh before it does not end there | it ends at the knee',
        '34 [shank and foot] the resistance acts on the shank and foot, which is not in the chain | segments of the chain: thigh, forearm and hand',
      ],
    ],
    [
      'joint: knee, near: proximal',
      'joint: hip, near: proximal',
      ['27 [hip] the proximal end of the shank and foot is not at the hip | proximal: knee'],
    ],
    [
      '{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }, { segment: shank and foot, joint: knee',
      '{ segment: shank and foot, joint: knee, near: proximal, turn: 1 }, { segment: thigh, joint: hip',
      [
        '27 [hip] the thigh begins at the hip, but the shank and foot before it does not end there | nothing can follow the shank and foot',
      ],
    ],
    [
      'support: seat',
      'support: feet',
      [
        '27 [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }] support is feet, but the chain begins with the thigh | begin the chain with the shank, or write support: seat',
      ],
    ],
    [
      '{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }',
      '{ segment: "trunk, head and arms", joint: hinge, near: proximal, turn: 1 }, { segment: thigh, joint: hip, near: proximal, turn: -1 }',
      [
        '27 [chain] the chain turns freely about its hinge and nothing holds it | add a follow rule balance, or a contact that carries the other end',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [60 deg, 60 deg]',
      [
        '32 [[60 deg, 60 deg]] range runs from 60 to 60 deg; it needs two angles, the smaller one first',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [-10 deg, 160 deg]',
      [
        '32 [[-10 deg, 160 deg]] range runs from -10 to 160 deg; the hip goes from -40 to 145 deg | write the range within that',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [-10 deg]',
      ['32 [[-10 deg]] range must be two angles, such as [0 deg, 120 deg]'],
    ],
    [
      '    leads: hip\n    range: [-10 deg, 60 deg]\n',
      '',
      [
        '26 [cable kickback] the lift "cable kickback" lacks leads, range | add what is missing, or write like: and a lift of the catalogue to start from',
      ],
    ],
    [
      'cable kickback',
      'back squat',
      [
        '26 [back squat] "back squat" is a lift of the catalogue | call yours otherwise, for example "back squat of ours", and write like: back squat',
      ],
    ],
    [
      'cable kickback',
      'hip extension',
      [
        '26 [hip extension] "hip extension" is a joint action, which a hold may name | call the lift otherwise, for example "hip extension of ours"',
      ],
    ],
    [
      '    support: seat',
      '    like: hip flexer raise\n    support: seat',
      [
        '28 [hip flexer raise] like is "hip flexer raise"; the catalogue has no such lift | did you mean "hip flexor raise"?',
      ],
    ],
    [
      'rule: linear, from: 20 deg, per leading: 0',
      'rule: linear, per leading: 0, most: 3 deg',
      [
        '33 [{ joint: knee, rule: linear, per leading: 0, most: 3 deg }] "linear" needs from, which is missing | it takes: from, per leading',
        '33 [most] "linear" takes no most | it takes: from, per leading',
      ],
    ],
    [
      'rule: linear, from: 20 deg, per leading: 0',
      'rule: balance, from: 20 deg',
      ['33 [from] "balance" takes no from | delete from'],
    ],
    [
      'kind: cable, on: shank and foot, along: 1, across: 0 cm, pulley forward: 1 m, pulley up: -85 cm',
      'kind: mass, on: shank and foot, along: 1, arm: 20 cm',
      [
        '34 [{ kind: mass, on: shank and foot, along: 1, arm: 20 cm }] "mass" needs across, which is missing | it takes: on, along, across, below (if any)',
        '34 [arm] "mass" takes no arm | it takes: on, along, across, below (if any)',
      ],
    ],
    ['turn: -1', 'turn: -2', ['27 [-2] turn must be 1 or -1']],
    ['along: 1', 'along: 1.2', ['34 [1.2] along is 1.2; it lies between 0 and 1']],
    [
      'near: proximal, turn: -1',
      'turn: -1',
      ['27 [{] lifts.cable kickback.chain.1.near is missing | add for example "near: proximal"'],
    ],
    [
      'pulley up: -85 cm',
      'pulley up: -85 m',
      ['34 [-85 m] pulley up is -85 m; a place on a lift lies within 5 m'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(kickback).toContain(from);
    expect(await told(withLifts(kickback.replace(from, to)))).toEqual(expected);
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
