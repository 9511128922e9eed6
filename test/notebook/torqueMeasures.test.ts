import { describe, expect, it, test } from 'vitest';
import { around, readWith, saidOf } from './tested.ts';

const entry = (more: string, action = 'knee extension') =>
  around(
    `  - { action: ${action}, contraction: isometric, trials: { 40 deg: [112, 118], 60 deg: [163, 158], 80 deg: [171, 170] }, ${more} }`,
  );

async function torqueTest(text: string) {
  const [first] = (await readWith(text)).tests;
  if (first?.kind !== 'torque') throw new Error('no torque test');
  return first;
}

describe('what was measured', () => {
  // Sizes of units by definition: pound 0.45359237 kg, inch 0.0254 m, standard gravity 9.80665 m/s².
  it.each<[string, number]>([
    ['unit: N m', 112],
    ['unit: lbf ft', 112 * 1.3558179483314],
    ['unit: lbf in', 112 * 0.1129848290276167],
    ['unit: kgf cm', 112 * 0.0980665],
    ['unit: kgf m', 112 * 9.80665],
    ['unit: N, lever arm: 36 cm', 112 * 0.36],
    ['unit: kgf, lever arm: 36 cm', 112 * 9.80665 * 0.36],
    ['unit: kg, lever arm: 36 cm', 112 * 9.80665 * 0.36],
    ['unit: lbf, lever arm: 14 in', 112 * 4.4482216152605 * 14 * 0.0254],
    ['unit: lb, lever arm: 36 cm', 112 * 4.4482216152605 * 0.36],
  ])('%s', async (more, expected) => {
    // 171 kgf m is more than a joint makes: the one trial left is enough here.
    const text = entry(more).replace(
      ', 60 deg: [163, 158], 80 deg: [171, 170]',
      more.includes('kgf m') ? '' : ', 60 deg: [163, 158]',
    );
    const small = more.includes('kgf m') ? text.replace('[112, 118]', '[11.2, 11.8]') : text;
    const found = (await torqueTest(small)).points[0]?.trials[0];
    expect(found).toBeCloseTo(more.includes('kgf m') ? expected / 10 : expected, 9);
  });

  it('unit and lever arm stay known, to be said', async () => {
    const { measure } = await torqueTest(entry('unit: kg, lever arm: 36 cm'));
    expect(measure).toEqual({ unit: 'kg', lever: 0.36 });
  });

  it('the set-up is kept as written', async () => {
    const set =
      'unit: N m, side: left, posture: seated, with: { hip: 85 deg }, angle taken: during effort, familiarised: 3 sessions';
    expect(await torqueTest(entry(set))).toMatchObject({
      side: 'left',
      posture: 'seated',
      angleTaken: 'during effort',
      familiarised: 3,
    });
    expect(await torqueTest(entry('unit: N m, familiarised: no'))).toMatchObject({
      familiarised: 'no',
    });
  });

  test.each<[more: string, said: string[]]>([
    [
      'unit: lbf',
      [
        'f.yaml:5 [lbf] unit is lbf, a force; a torque needs its lever arm too | add "lever arm: 36 cm": from the joint to where strap or pad pulls, square to the pull',
      ],
    ],
    [
      'unit: N m, lever arm: 36 cm',
      [
        'f.yaml:5 [lever arm] unit is N m, a torque, and there is a lever arm; a torque has its lever arm in it | delete lever arm; or, if the device showed a force, write its unit: N, kg, lbf or kgf',
      ],
    ],
    [
      'unit: N, lever arm: 36 m',
      ['f.yaml:5 [36 m] lever arm is 36 m; a lever arm on a limb lies between 5 cm and 80 cm'],
    ],
    [
      'unit: N m, familiarised: often',
      ['f.yaml:5 [often] familiarised is "often"; write yes, no or a number such as 3 sessions'],
    ],
    [
      'unit: N m, side: lefft',
      ['f.yaml:5 [lefft] side is "lefft"; there is no such side | did you mean "left"?'],
    ],
  ])('%s', async (more, said) => {
    expect(await saidOf(entry(more))).toEqual(said);
  });
});

describe('the weight of the limb', () => {
  const seated = 'unit: N m, posture: seated, gravity:';

  it('is read as it was taken out', async () => {
    const gravityOf = async (more: string, action?: string) =>
      (await torqueTest(entry(more, action))).gravity;
    expect(await gravityOf('unit: N m')).toBeUndefined();
    expect(await gravityOf('unit: N m, gravity: corrected')).toEqual({ kind: 'corrected' });
    expect(await gravityOf(`${seated} estimated`)).toEqual({ kind: 'estimated', pulls: 1 });
    expect(await gravityOf(`${seated} estimated`, 'knee flexion')).toEqual({
      kind: 'estimated',
      pulls: -1,
    });
    // Weighed at 60°: cos 60° is a half, so level it is twice that (hand calculation).
    expect(await gravityOf(`${seated} { weighed: 6.25 N m, at: 60 deg }`)).toMatchObject({
      kind: 'weighed',
      level: expect.closeTo(12.5, 9),
    });
  });

  it('a relaxed trial keeps its angles, and says which way it pulls', async () => {
    const points = '{ relaxed: { 80 deg: 2 N m, 40 deg: 9 N m }, pulls: with }';
    const { gravity } = await torqueTest(entry(`unit: N m, gravity: ${points}`));
    expect(gravity).toEqual({
      kind: 'relaxed',
      points: [
        { angle: expect.closeTo((40 * Math.PI) / 180, 12), against: -9 },
        { angle: expect.closeTo((80 * Math.PI) / 180, 12), against: -2 },
      ],
    });
    // Seated, the weight of the shank pulls against extension; a force acts at the lever arm.
    const force = entry(
      'unit: N, lever arm: 50 cm, posture: seated, gravity: { relaxed: { 40 deg: 20 N, 80 deg: 4 N } }',
    );
    expect((await torqueTest(force)).gravity).toMatchObject({
      points: [{ against: 10 }, { against: 2 }],
    });
  });

  test.each<[more: string, action: string, said: string[]]>([
    [
      'unit: N m, gravity: corect',
      'knee extension',
      [
        'f.yaml:5 [corect] gravity is "corect"; write corrected (by the device), none, estimated, or a group such as { relaxed: { 40 deg: 8 N m } } or { weighed: 12.5 N m, at: 0 deg }',
      ],
    ],
    [
      'unit: N m, gravity: estimated',
      'knee extension',
      [
        'f.yaml:5 [gravity] gravity is estimated, which is known for the knee of a seated athlete only; this is knee extension without its posture | add "posture: seated" if so; else measure the relaxed limb: gravity: { relaxed: { 40 deg: 8 N m }, pulls: against }',
      ],
    ],
    [
      'unit: N m, posture: prone, gravity: estimated',
      'knee flexion',
      [
        'f.yaml:5 [gravity] gravity is estimated, which is known for the knee of a seated athlete only; this is knee flexion prone | measure the relaxed limb: gravity: { relaxed: { 40 deg: 8 N m }, pulls: against }',
      ],
    ],
    [
      'unit: N m, posture: standing, gravity: { weighed: 9 N m, at: 10 deg }',
      'hip extension',
      [
        'f.yaml:5 [gravity] gravity is weighed, which is known for the knee of a seated athlete only; this is hip extension | measure the relaxed limb: gravity: { relaxed: { 40 deg: 8 N m }, pulls: against }',
      ],
    ],
    [
      'unit: N m, posture: prone, gravity: { relaxed: { 40 deg: 8 N m, 80 deg: 3 N m } }',
      'knee flexion',
      [
        'f.yaml:5 [gravity] gravity does not say which way the relaxed limb pulls in this knee flexion | add "pulls: against" (the weight makes the effort harder) or "pulls: with" (it helps)',
      ],
    ],
    [
      `${seated} { relaxed: { 40 deg: 8 N m, 60 deg: 3 N m } }`,
      'knee extension',
      [
        'f.yaml:5 [relaxed] the relaxed trial covers 40 deg to 60 deg; there are trials at 80 deg | add the relaxed pull at the outer angles of the test',
      ],
    ],
    [
      `${seated} { weighed: 2 N m, at: 80 deg }`,
      'knee extension',
      [
        'f.yaml:5 [80 deg] at is 80 deg; there the shank hangs almost straight down and its weight is hardly felt | weigh it with the knee bent by 60 deg or less',
      ],
    ],
    [
      `${seated} { weighed: -12 N m, at: 0 deg }`,
      'knee extension',
      ['f.yaml:5 [-12 N m] weighed is -12 N m; the weight of a limb is above 0'],
    ],
    [
      `${seated} none`,
      'knee extension',
      [
        'f.yaml:5 [none] the weight of the limb is still in these trials of knee extension: they are too small, most near the straight knee | a relaxed trial at each angle takes it out: gravity: { relaxed: { 40 deg: 8 N m } }',
      ],
    ],
    [
      `${seated} none`,
      'knee flexion',
      [
        'f.yaml:5 [none] the weight of the limb is still in these trials of knee flexion: they are too large, most near the straight knee | a relaxed trial at each angle takes it out: gravity: { relaxed: { 40 deg: 8 N m } }',
      ],
    ],
    [
      'unit: N m, gravity: none',
      'elbow flexion',
      [
        'f.yaml:5 [none] the weight of the limb is still in these trials of elbow flexion: they are too small where the weight works against the effort, too large where it helps | a relaxed trial at each angle takes it out: gravity: { relaxed: { 40 deg: 8 N m } }',
      ],
    ],
  ])('%s, %s', async (more, action, said) => {
    expect(await saidOf(entry(more, action))).toEqual(said);
  });
});

describe('tests that tell less than they seem to are remarked on', () => {
  const trials = (written: string) =>
    around(
      `  - { action: knee extension, contraction: isometric, unit: N m, trials: { ${written} } }`,
    );

  test.each<[trials: string, said: string[]]>([
    ['40 deg: [112, 118], 60 deg: [163, 158]', []],
    [
      '40 deg: [112, 118, 115]',
      [
        'f.yaml:5 [trials] knee extension is tested at one angle, 40 deg; where in the range this athlete is strong it cannot tell | test at three angles or more, one of them near the target',
      ],
    ],
    [
      '40 deg: [112], 60 deg: [163]',
      [
        'f.yaml:5 [trials] knee extension has one trial only at each angle; a slip would not be seen | three trials an angle are usual',
      ],
    ],
    [
      '40 deg: [112], 60 deg: [163, 158]',
      [
        'f.yaml:5 [trials] knee extension has one trial only at 40 deg; a slip would not be seen | three trials an angle are usual',
      ],
    ],
    [
      // Spread 45 over a mean of 101: 45 % (hand calculation).
      '40 deg: [112, 74, 117], 60 deg: [163, 158]',
      [
        'f.yaml:5 [74] the trials at a knee angle of 40 deg differ by 43 %; trial 2 looks like a slip | check it against the record; leave out a trial that was not a full effort',
      ],
    ],
    [
      '40 deg: [112, 171], 60 deg: [163, 158]',
      [
        'f.yaml:5 [40 deg] the two trials at a knee angle of 40 deg differ by 42 %; one of them looks like a slip | check it against the record; leave out a trial that was not a full effort',
      ],
    ],
  ])('%s', async (written, said) => {
    expect(await saidOf(trials(written))).toEqual(said);
  });

  it('an included angle below 20 and a flexion above 140 are asked about, never turned', async () => {
    expect(await saidOf(trials('40 deg: [112, 118], 155 deg: [163, 158]'))).toEqual([
      'f.yaml:5 [155 deg] 155 deg of knee flexion is more than a knee bends; is this an included angle (180 = straight)? then write angles: included',
    ]);
    expect(await saidOf(trials('40 deg: [112, 118], 142 deg: [163, 158]'))).toEqual([
      'f.yaml:5 [142 deg] an angle of the test is 142 deg of knee flexion; strength in knee extension is known from 0 to 140 deg | write an angle within that; the knee counts from 0 deg (straight), flexion positive',
    ]);
    const included = around(
      '  - { action: knee extension, contraction: isometric, unit: N m, trials: { 15 deg: [112, 118] } }',
      '',
      'included',
    );
    expect(await saidOf(included)).toEqual([
      'f.yaml:5 [15 deg] 15 deg included is a knee bent by 165 deg, more than a knee bends; is this a flexion angle (0 = straight)? then write angles: flexion',
    ]);
  });
});
