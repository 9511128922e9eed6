import { describe, expect, it, test } from 'vitest';
import { repetitionFormulas, singleFromReps } from '../../src/tables/repetitionFormulas.ts';
import { around, readWith, saidOf } from './tested.ts';

/*
 * Epley w(1+r/30), Brzycki 36w/(37−r), Lander 100w/(101.3−2.67123r), Lombardi w·r^0.10, Mayhew
 * 100w/(52.2+41.9e^(−0.055r)), O’Conner w(1+0.025r), Wathan 100w/(48.8+53.8e^(−0.075r)), each from
 * memory; the values by hand calculation from these, with more digits by a pocket program.
 */
const computed: readonly (readonly [load: number, reps: number, singles: readonly number[]])[] = [
  [
    100,
    3,
    [
      110, 105.88235294117646, 107.19686522063098, 111.61231740339043, 113.9903214585847, 107.5,
      108.97974273590935,
    ],
  ],
  [
    100,
    5,
    [
      116.66666666666667, 112.5, 113.70891767872341, 117.4618943088019, 119.01068045151959, 112.5,
      116.58250529118924,
    ],
  ],
  [
    100,
    8,
    [
      126.66666666666666, 124.13793103448276, 125.10922034936499, 123.11444133449163,
      126.28634315137971, 120, 127.67141908045373,
    ],
  ],
  [
    100,
    10,
    [
      133.33333333333331, 133.33333333333334, 134.0703628078088, 125.89254117941672,
      130.93427342753154, 125, 134.74669948168537,
    ],
  ],
  [
    140,
    5,
    [
      163.33333333333334, 157.5, 159.19248475021277, 164.44665203232265, 166.61495263212743, 157.5,
      163.21550740766492,
    ],
  ],
];

describe('the heaviest single from repetitions', () => {
  it.each(computed)('%d kg × %d by each formula', (load, reps, singles) => {
    expect(repetitionFormulas.map(({ single }) => single(load, reps))).toEqual(
      singles.map((value) => expect.closeTo(value, 6)),
    );
  });

  it('is the median of the seven, between least and most', () => {
    // Sorted by hand from the row of 100 kg × 5: 112.5, 112.5, 113.71, 116.58, 116.67, 117.46, 119.01.
    expect(singleFromReps(100, 5)).toEqual({
      single: expect.closeTo(116.58250529118924, 6),
      least: expect.closeTo(112.5, 6),
      most: expect.closeTo(119.01068045151959, 6),
    });
  });

  it('a single repetition is itself, though Epley would add a thirtieth', () => {
    expect(singleFromReps(100, 1)).toEqual({ single: 100, least: 100, most: 100 });
    expect(repetitionFormulas[0]?.single(100, 1)).toBeCloseTo(103.33333333333334, 6);
  });
});

describe('a lift tested by repetitions', () => {
  const lift = (more: string) => around(`  - { lift: back squat, to: 110 deg, ${more} }`);

  it('is read with what it is estimated from', async () => {
    const { tests } = await readWith(lift('reps: 5, load: 75 kg'));
    // Three quarters of the row of 100 kg × 5: every formula is proportional to the load.
    expect(tests[0]).toMatchObject({
      kind: 'lift',
      best: expect.closeTo(0.75 * 116.58250529118924, 6),
      estimated: {
        reps: 5,
        load: 75,
        least: expect.closeTo(0.75 * 112.5, 6),
        most: expect.closeTo(0.75 * 119.01068045151959, 6),
      },
    });
    const [single] = (await readWith(lift('reps: 1, load: 75 kg'))).tests;
    expect(single).toMatchObject({ best: 75 });
    expect(single).not.toHaveProperty('estimated');
  });

  test.each<[more: string, said: string[]]>([
    [
      'reps: 15, load: 60 kg',
      [
        'f.yaml:5 [15] reps is 15; above 12 repetitions endurance decides more than strength, and no formula tells the heaviest single | test with more than 60 kg, best for 2 to 6 repetitions',
      ],
    ],
    ['reps: 5', ['f.yaml:5 [{] tests.1.load is missing | add for example "load: 75 kg"']],
    ['load: 75 kg', ['f.yaml:5 [{] tests.1.reps is missing | add for example "reps: 5"']],
    [
      'best: 85 kg, reps: 5',
      [
        'f.yaml:5 [reps] reps stands beside best; a heaviest single is lifted or estimated, not both | keep best if the single was lifted, else reps and load',
      ],
    ],
    [
      'reps: 5, load: body weight',
      [
        'f.yaml:5 [body weight] load is "body weight"; a mass is a number with its unit, for example "85 kg"',
      ],
    ],
  ])('%s', async (more, said) => {
    expect(await saidOf(lift(more))).toEqual(said);
  });

  it('not where the body is the weight', async () => {
    const text = around('  - { lift: chin-up, to: 0 deg, reps: 5, load: 10 kg }');
    expect(await saidOf(text)).toContain(
      'f.yaml:5 [reps] reps of chin-up carry the body too; the formulas for a heaviest single are made for a bar alone | test a single and write it as best: 20 kg (what hangs on) or best: body weight',
    );
  });
});
