import { describe, expect, it, test } from 'vitest';
import { around, readWith, saidOf } from './tested.ts';

const torque = (more: string, trials = '40 deg: [112, 118], 60 deg: [163, 158]') =>
  `  - { action: knee extension, contraction: isometric, unit: N m, trials: { ${trials} }, ${more} }`;

const retest = (more: string, trials?: string) => `retests:
  - after: squats
    tests:
    ${torque(more, trials)}
`;

const first = torque('date: 2026-09-14, side: left');

describe('retests', () => {
  it('are read with their program and their dates, and are no tests', async () => {
    const { tests, retests } = await readWith(
      around(first, retest('date: 2026-11-20, side: left')),
    );
    expect(tests).toHaveLength(1);
    expect(retests).toMatchObject([
      { after: 'squats', tests: [{ date: '2026-11-20', side: 'left' }], path: ['retests', 0] },
    ]);
    expect((await readWith(around(first))).retests).toEqual([]);
  });

  it('several days of the same action stand in the tests', async () => {
    const { tests } = await readWith(around(`${first}\n${torque('date: 2026-09-17, side: left')}`));
    expect(tests).toMatchObject([{ date: '2026-09-14' }, { date: '2026-09-17' }]);
  });

  const cannot = 'this retest of knee extension cannot be compared with the test:';

  test.each<[name: string, tests: string, more: string, said: string[]]>([
    ['alike', first, retest('date: 2026-11-20, side: left'), []],
    [
      'no date',
      first,
      retest('side: left'),
      [
        'f.yaml:12 [{] date is missing; a retest has the day it was done | add for example "date: 2026-11-20"',
      ],
    ],
    [
      'before the test',
      first,
      retest('side: left, date: 2026-09-14'),
      [
        'f.yaml:12 [2026-09-14] this retest is of 2026-09-14, not after the tests of 2026-09-14 | retests stand in order of time, each after training; check the dates',
      ],
    ],
    [
      'before the retest above it',
      first,
      `${retest('date: 2026-11-20, side: left')}  - tests:\n    ${torque('date: 2026-10-20, side: left')}\n`,
      [
        'f.yaml:14 [2026-10-20] this retest is of 2026-10-20, not after retest 1 of 2026-11-20 | retests stand in order of time, each after training; check the dates',
      ],
    ],
    [
      'an unknown program',
      first,
      retest('date: 2026-11-20, side: left').replace('squats', 'squat'),
      ['f.yaml:10 [squat] after is "squat"; the file has no such program | did you mean "squats"?'],
    ],
    [
      'another score',
      first,
      retest('date: 2026-11-20, side: left, score: mean'),
      [
        `f.yaml:12 [score] ${cannot} the best trial counts in the test, the mean in the retest | write the same score: in both`,
      ],
    ],
    [
      'the other side',
      first,
      retest('date: 2026-11-20, side: right'),
      [
        `f.yaml:12 [side] ${cannot} the test is of the left side, the retest of the right side | retest as in the test`,
      ],
    ],
    [
      'another hip angle',
      torque('date: 2026-09-14, with: { hip: 85 deg }'),
      retest('date: 2026-11-20, with: { hip: 10 deg }'),
      [
        `f.yaml:12 [hip] ${cannot} the hip was at 85 deg and is at 10 deg | retest with the hip as in the test: it changes the length of muscles over two joints`,
      ],
    ],
    [
      'angles at rest beside angles in the effort',
      torque('date: 2026-09-14, angle taken: at rest'),
      retest('date: 2026-11-20, angle taken: during effort'),
      [
        `f.yaml:12 [angle taken] ${cannot} its angles were taken at rest, those of the retest during effort | take them alike: under load a knee may straighten by 10 to 20 deg`,
      ],
    ],
    [
      'the weight of the limb in one of them',
      torque('date: 2026-09-14'),
      retest('date: 2026-11-20, gravity: none'),
      [
        `f.yaml:12 [gravity] ${cannot} the weight of the limb is taken out of the test, but not of the retest | treat both alike: write the same gravity: in both`,
      ],
    ],
    [
      'no angle in common',
      torque('date: 2026-09-14'),
      retest('date: 2026-11-20', '50 deg: [140, 141], 70 deg: [170, 171]'),
      [
        `f.yaml:12 [trials] ${cannot} they share no angle | retest at the angles of the test: 40 deg, 60 deg`,
      ],
    ],
    [
      'a strap moved along the limb',
      torque('date: 2026-09-14').replace('unit: N m', 'unit: N, lever arm: 36 cm'),
      retest('date: 2026-11-20').replace('unit: N m', 'unit: N, lever arm: 33 cm'),
      [
        'f.yaml:12 [N] retest of knee extension: the lever arm was 36 cm and is 33 cm; a change may come from the rig | check the lever arm, and use the same set-up in both',
      ],
    ],
    [
      'a torque beside a force',
      torque('date: 2026-09-14'),
      retest('date: 2026-11-20').replace('unit: N m', 'unit: N, lever arm: 33 cm'),
      [
        'f.yaml:12 [N] retest of knee extension: one was measured as a torque, the other as a force at a lever arm; a change may come from the rig | check the lever arm, and use the same set-up in both',
      ],
    ],
    [
      'nothing to compare with',
      '  - { lift: back squat, to: 110 deg, best: 85 kg }',
      retest('date: 2026-11-20'),
      [
        'f.yaml:12 [knee extension] knee extension is retested, but the file has no such test before training; it is compared with nothing | add the first test under tests:',
      ],
    ],
    [
      'a lift over another range',
      '  - { lift: back squat, to: 110 deg, best: 85 kg, date: 2026-09-14 }',
      'retests: [{ tests: [{ lift: back squat, to: 90 deg, best: 95 kg, date: 2026-11-20 }] }]\n',
      [
        'f.yaml:9 [90 deg] back squat is retested to 90 deg of knee flexion, the tests have it to 110 deg of knee flexion; two ranges have two heaviest singles | retest over the range of the test',
      ],
    ],
    [
      'a lift, once lifted and once estimated',
      '  - { lift: back squat, to: 110 deg, best: 85 kg, date: 2026-09-14 }',
      'retests: [{ tests: [{ lift: back squat, to: 110 deg, reps: 3, load: 85 kg, date: 2026-11-20 }] }]\n',
      [
        'f.yaml:9 [3] the single of back squat was lifted in the test and is estimated in the retest; the difference holds the error of the formulas too | test both alike',
      ],
    ],
  ])('%s', async (_, tests, more, said) => {
    expect(await saidOf(around(tests, more))).toEqual(said);
  });
});

describe('how far tests differ between days', () => {
  const read = async (more: string, files = {}) =>
    (await readWith(around(first, `repeatability:\n  - ${more}\n`), files)).repeatability;

  it('days of the athlete, and of a squad by name', async () => {
    const day = (a: number, b: number) => `{ 40 deg: [${a}, ${b}], 60 deg: [150] }`;
    const own = `{ action: knee extension, unit: lbf ft, score: mean, days: [${day(100, 104)}, ${day(98, 101)}] }`;
    expect(await read(own)).toMatchObject([
      {
        kind: 'days',
        of: { action: 'knee extension' },
        score: 'mean',
        measure: { unit: 'lbf ft' },
        // 1 lbf ft is 1.3558179483314 N m by definition.
        people: [
          {
            days: [
              [{ trials: [100 * 1.3558179483314, 104 * 1.3558179483314] }, {}],
              [{ trials: [98 * 1.3558179483314, 101 * 1.3558179483314] }, {}],
            ].map((points) =>
              points.map((point) =>
                'trials' in point
                  ? { trials: point.trials.map((value) => expect.closeTo(value, 9)) }
                  : point,
              ),
            ),
          },
        ],
      },
    ]);
    const squad = `{ action: knee extension, unit: N m, people: { A: [${day(1, 2)}, ${day(3, 4)}], B: [${day(5, 6)}, ${day(7, 8)}] } }`;
    expect(await read(squad)).toMatchObject([{ people: [{ person: 'A' }, { person: 'B' }] }]);
  });

  it('from a table of a squad', async () => {
    const csv =
      'Athlete,Day,Angle,Torque\nA,1,40,100\nA,2,40,104\nB,1,40,90\nB,2,40,88\nB,2,40,91\n';
    const more =
      '{ action: knee extension, unit: N m, trials from: r.csv, columns: { person: Athlete, day: Day, angle: Angle, value: Torque } }';
    expect(await read(more, { 'r.csv': csv })).toMatchObject([
      {
        people: [
          { person: 'A', days: [[{ trials: [100] }], [{ trials: [104] }]] },
          { person: 'B', days: [[{ trials: [90] }], [{ trials: [88, 91] }]] },
        ],
      },
    ]);
  });

  it('a typical error that is known, as a share or a size', async () => {
    const from = 'from: 10 people × 2 days';
    expect(await read(`{ action: knee extension, typical error: 4 %, ${from} }`)).toMatchObject([
      { error: { share: 0.04 }, from: { people: 10, days: 2 } },
    ]);
    expect(
      await read(`{ action: knee extension, typical error: 9 N m, from: 1 person x 6 days }`),
    ).toMatchObject([{ error: { torque: 9 }, from: { people: 1, days: 6 } }]);
    expect(
      await read(`{ lift: back squat, to: 110 deg, typical error: 2.5 kg, ${from} }`),
    ).toMatchObject([{ kind: 'typical error', of: { lift: 'back squat' }, error: { mass: 2.5 } }]);
  });

  test.each<[more: string, said: string[]]>([
    [
      '{ action: knee extension, unit: N m, days: [{ 40 deg: [100, 104] }] }',
      [
        'f.yaml:10 [days] there is one test day only; how far tests differ between days takes two or more | add another day without training between, or write the typical error if it is known',
      ],
    ],
    [
      '{ action: knee extension, unit: N m, people: { A: [{ 40 deg: [100] }, { 40 deg: [100] }], B: [{ 40 deg: [90] }] } }',
      [
        'f.yaml:10 [B] B has one test day only; how far tests differ between days takes two or more | add another day without training between, or write the typical error if it is known',
      ],
    ],
    [
      '{ action: knee extension, typical error: 4 % }',
      [
        'f.yaml:10 [{] from is missing; how well a typical error is known depends on people and days | write for example "from: 10 people × 2 days"',
      ],
    ],
    [
      '{ action: knee extension, typical error: 4 %, from: my squad }',
      [
        'f.yaml:10 [my squad] from is "my squad"; it is people and days | write for example "from: 10 people × 2 days"',
      ],
    ],
    [
      '{ action: knee extension, typical error: 4 %, from: 10 people × 1 day }',
      [
        'f.yaml:10 [10 people × 1 day] from is "10 people × 1 day"; one day tells nothing about how days differ | write for example "from: 10 people × 2 days"',
      ],
    ],
    [
      '{ action: knee extension, typical error: 9 kg, from: 10 people × 2 days }',
      [
        'f.yaml:10 [9 kg] typical error is a torque; "kg" is a mass — write it in N m, lbf ft or kgf cm, for example "9 N m"',
      ],
    ],
    [
      '{ lift: back squat, to: 110 deg, from: 10 people × 2 days }',
      [
        'f.yaml:10 [{] typical error is missing; write it as a share or in the unit of the test | add for example "typical error: 4 %" or "typical error: 2.5 kg"',
      ],
    ],
    [
      '{ action: knee extension, days: [{ 40 deg: [100] }, { 40 deg: [99] }] }',
      ['f.yaml:10 [{] repeatability.1.unit is missing | add for example "unit: N m"'],
    ],
    [
      '{ action: knee extension, unit: N m }',
      [
        'f.yaml:10 [{] repeatability.1.days is missing | add for example "trials: { 40 deg: [118, 121, 116] }", or "trials from: tests/sn04.csv"',
      ],
    ],
  ])('%s', async (more, said) => {
    expect(await saidOf(around(first, `repeatability:\n  - ${more}\n`))).toEqual(said);
  });
});
