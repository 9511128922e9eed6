import { describe, expect, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { changed } from './goodScenario.ts';
import { boxSquat, rigged } from './rigged.ts';
import { told } from './told.ts';

describe('chains and bands that read well', () => {
  test('come out in SI with their places', async () => {
    const { scenario, problems } = await readScenario('f.yaml', rigged());
    expect(problems).toBeUndefined();
    expect(scenario?.chains).toEqual({
      'ten-millimetre': {
        weight: { link: 0.01 },
        length: 1.8,
        cord: 0.2,
        path: ['chains', 'ten-millimetre'],
      },
    });
    expect(scenario?.bands['red loop']).toEqual({
      pull: {
        points: [
          { length: 0.9, tension: 100 },
          { length: 1.4, tension: 260 },
        ],
      },
      anchor: 2.3,
      path: ['bands', 'red loop'],
    });
    expect(scenario?.bands['home loop']).toEqual({
      pull: { width: 0.022, thickness: 0.0045, rest: 1, strands: 2, count: 2 },
      anchor: 0,
      path: ['bands', 'home loop'],
    });
    expect(scenario?.programs[0]?.work[3]).toMatchObject({
      chains: 'ten-millimetre',
      bands: 'red loop',
    });
  });

  test('other units say the same: 1.478 lb/ft is 2.2 kg/m, 10.197 kgf is 100 N, lengths in any order', async () => {
    const { scenario } = await readScenario(
      'f.yaml',
      rigged(
        ['link: 10 mm', `weighs: ${(2.2 * 0.3048) / 0.45359237} lb/ft`],
        ['0.9 m: 100 N, 1.4 m: 260 N', `140 cm: 0.26 kN, 90 cm: ${100 / 9.80665} kgf`],
      ),
    );
    const weight = scenario?.chains['ten-millimetre']?.weight ?? {};
    expect('kgPerMetre' in weight ? weight.kgPerMetre : 0).toBeCloseTo(2.2, 9);
    const pull = scenario?.bands['red loop']?.pull;
    const points = pull && 'points' in pull ? pull.points : [];
    expect(points.map(({ length }) => length)).toEqual([0.9, 1.4]);
    expect(points[0]?.tension).toBeCloseTo(100, 9);
    expect(points[1]?.tension).toBeCloseTo(260, 9);
  });
});

describe('work that names them', () => {
  test.each<[string, string, string[]]>([
    [
      'chains: ten-millimetre, bands',
      'chains: ten-milimetre, bands',
      [
        '40 [ten-milimetre] there is no set of chains "ten-milimetre" in this file | did you mean "ten-millimetre"?',
      ],
    ],
    [
      'bands: red loop, from',
      'bands: blue one, from',
      [
        '40 [blue one] there is no set of bands "blue one" in this file | known: red loop, home loop',
      ],
    ],
    [
      'machine: black leg machine,',
      'bands: red loop,',
      [
        '38 [bands] machine knee extension takes no bands: it has no free weight at a known height above the floor; squats, deadlifts, hip thrusts, bench and overhead presses, standing curls and raises can take them, and cable lifts | delete bands',
      ],
    ],
    [
      'lift: box squat, chains',
      'lift: cable curl, chains',
      [
        '40 [chains] cable curl takes no chains: it has no free weight at a known height above the floor; squats, deadlifts, hip thrusts, bench and overhead presses, standing curls and raises can take them | delete chains',
        '40 [0 deg] from is 0 deg of elbow flexion; cable curl runs from 10 to 135 deg',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(rigged([from, to]))).toEqual(expected);
  });

  test('chains that are described nowhere', async () => {
    const text = changed([boxSquat, 'lift: box squat, chains: thick, from']);
    expect(await told(text)).toEqual([
      '35 [thick] there is no set of chains "thick" in this file | describe it under chains:',
    ]);
  });
});
