import { describe, expect, test } from 'vitest';
import { rigged } from './rigged.ts';
import { told } from './told.ts';

describe('what is wrong with chains', () => {
  test.each<[string, string, string[]]>([
    [
      'link: 10 mm, ',
      '',
      [
        '28 [ten-millimetre] ten-millimetre does not say how heavy the chain is | write link: 10 mm (thickness of its wire) or weighs: 2.2 kg/m',
      ],
    ],
    [
      'link: 10 mm',
      'link: 10 mm, weighs: 2.2 kg/m',
      [
        '28 [weighs] ten-millimetre has both link and weighs; either one says how heavy the chain is | delete one of the two',
      ],
    ],
    [
      'link: 10 mm',
      'link: 40 mm',
      [
        '28 [40 mm] link is 40 mm; the table of chains goes from 5 to 20 mm; weigh a piece and write weighs: 2.2 kg/m instead',
      ],
    ],
    [
      'link: 10 mm',
      'weighs: 2.2 kg',
      [
        '28 [2.2 kg] weighs is a weight a metre; "kg" is a mass — write it in kg/m or lb/ft, for example "2.2 kg/m"',
      ],
    ],
    [
      'link: 10 mm',
      'per metre: 2.2 kg',
      [
        '28 [ten-millimetre] ten-millimetre does not say how heavy the chain is | write link: 10 mm (thickness of its wire) or weighs: 2.2 kg/m',
        '28 [per metre] unknown name "per metre" in chains.ten-millimetre | did you mean "weighs"?',
      ],
    ],
    [
      ', length: 1.8 m',
      '',
      [
        '28 [ten-millimetre] chains.ten-millimetre.length is missing | add for example "length: 1.8 m"',
      ],
    ],
    [
      'length: 1.8 m',
      'length: 18 m',
      ['28 [18 m] length is 18 m; a chain is between 0.1 m and 6 m long'],
    ],
    [
      'cord: 20 cm',
      'cord: 20',
      ['28 [20] chains.ten-millimetre.cord needs a unit of length, for example "20 cm"'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(rigged([from, to]))).toEqual(expected);
  });
});

describe('what is wrong with bands', () => {
  const tension = '{ 0.9 m: 100 N, 1.4 m: 260 N }';
  test.each<[string, string, string[]]>([
    [
      tension,
      '{ 1.4 m: 260 N }',
      [
        '30 [tension] tension has only one length; one pull does not tell where the bands go slack or how fast they tighten | measure the pull at two lengths or more, with the bar at the bottom and at the top of the lift',
      ],
    ],
    [
      tension,
      '{ 0.9 m: 100 N, 90 cm: 110 N }',
      [
        '30 [90 cm] tension gives one length twice: "0.9 m" and "90 cm" | keep one of them, or their mean',
      ],
    ],
    [
      tension,
      '{ 0.9 m: 260 N, 1.4 m: 100 N }',
      [
        '30 [100 N] the bands pull no harder at 1.4 m than at 0.9 m; a longer band pulls harder | check the two measurements',
      ],
    ],
    [
      tension,
      '{ 0.2 m: 100 N, 0.7 m: 260 N }',
      [
        '30 [100 N] by the pulls at 0.2 m and 0.7 m the bands would pull even with no length at all | check the lengths: from fixed end to bar, not the stretch alone',
      ],
    ],
    [
      tension,
      '{ 0.9 m: 10 kg, 1.4 m: 260 N }',
      [
        '30 [10 kg] the pull at 0.9 m is a force; "kg" is a mass — write it in N, kgf or lbf, for example "100 N" | a scale that shows kilograms: write "10 kgf"',
      ],
    ],
    [
      tension,
      '{ 0.9: 100 N, 1.4 m: 260 N }',
      ['30 [0.9] a length in tension needs a unit of length, for example "1.4 m"'],
    ],
    [
      tension,
      '{ 9 m: 100 N, 14 m: 260 N }',
      [
        '30 [9 m] a length in tension is 9 m; a band in use is between 0.1 m and 6 m long',
        '30 [14 m] a length in tension is 14 m; a band in use is between 0.1 m and 6 m long',
      ],
    ],
    [
      tension,
      '{ 0.9 m: 100 N, 1.4 m: 26000 N }',
      ['30 [26000 N] the pull at 1.4 m is 26000 N; bands pull with 0 to 5000 N'],
    ],
    [
      'anchor: 2.3 m',
      'anchor: 23 m',
      ['30 [23 m] anchor is 23 m; the fixed end lies between the floor and 4 m above it'],
    ],
    [
      'anchor: 2.3 m',
      'count: 2',
      [
        '30 [count] tension is the pull of all bands together, so their count is not needed | delete count, and give the pull of all bands at each length',
      ],
    ],
    [
      'tension: { 0.9 m: 100 N, 1.4 m: 260 N }, ',
      '',
      [
        '30 [red loop] red loop does not say how hard the bands pull | measure them and write tension: { 0.9 m: 100 N, 1.4 m: 260 N }, or describe the rubber',
      ],
    ],
    [
      ', count: 2',
      '',
      [
        '31 [home loop] home loop does not say how many bands of this rubber are used | write count: 2 for one at each end of the bar, count: 1 for a single one',
      ],
    ],
    [
      ', count: 2',
      ', count: 2, tension: { 0.9 m: 100 N, 1.4 m: 260 N }',
      [
        '31 [rubber] home loop has both tension and rubber; either one says how hard the bands pull | keep tension, which was measured, and delete rubber',
        '31 [count] tension is the pull of all bands together, so their count is not needed | delete count, and give the pull of all bands at each length',
      ],
    ],
    [
      'width: 22 mm',
      'width: 22 cm',
      ['31 [22 cm] width is 22 cm; a band is between 3 mm and 20 cm wide'],
    ],
    [
      'thickness: 4.5 mm, ',
      '',
      [
        '31 [rubber] bands.home loop.rubber.thickness is missing | add for example "thickness: 4.5 mm"',
      ],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(rigged([from, to]))).toEqual(expected);
  });
});
