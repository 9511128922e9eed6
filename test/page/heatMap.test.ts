import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawHeatMap } from '../../src/page/heatMap.ts';
import { displayWidth } from '../../src/page/wrap.ts';

const values = [0, 1, 2, 3, 4, 5, 6, 7, 8];
const labels = values.map(String);

/** A hill of height 100 with its top in row 2, column 6, invented: 100 − (i − 2)² − (j − 6)². */
const hill = values.map((i) => values.map((j) => 100 - (i - 2) ** 2 - (j - 6) ** 2));

/** The number and the shade in each row of each block, read back from the drawing. */
function cellsOf(lines: readonly string[]) {
  return lines.flatMap((line) =>
    [...line.matchAll(/(\[?) *(-?\d[\d.]*) (\.\.|::|\+\+|XX|@@)/gu)]
      .filter(() => /^\d /u.test(line))
      .map(([, open, number, shade = '']) => ({
        isLargest: open === '[',
        number: Number(number),
        shade,
      })),
  );
}

const darkness = (shade: string) => ['..', '::', '++', 'XX', '@@'].indexOf(shade);

describe('a heat map', () => {
  it.each([38, 40, 80, 100])('has all cells, the darkest on the hill, %i columns wide', (width) => {
    const lines = drawHeatMap({ rows: labels, columns: labels, values: hill }, width);
    const cells = cellsOf(lines);
    expect(cells.map(({ number }) => number).toSorted((a, b) => a - b)).toEqual(
      hill.flat().toSorted((a, b) => a - b),
    );
    expect(cells.filter(({ isLargest }) => isLargest)).toEqual([
      { isLargest: true, number: 100, shade: '@@' },
    ]);
    // By hand: from 28 (row 8, column 0) to 100, five parts of 14.4 each.
    for (const { number, shade } of cells)
      expect(darkness(shade)).toBe(Math.min(Math.floor((number - 28) / 14.4), 4));
  });

  // Parts of 0.01 each, and two that print alike at the top.
  it('stands in as few blocks as fit, of columns as even as can be (whole map)', () => {
    const map = {
      rows: ['80', '100'],
      columns: ['2', '3', '4', '5'],
      values: [
        [0.01, 0.021, 0.031, undefined],
        [0.022, 0.041, 0.06, 0.0600001],
      ],
    };
    expect(drawHeatMap(map, 40)).toEqual([
      '      2           3',
      '80   0.0100 ..   0.0210 ::',
      '100  0.0220 ::   0.0410 XX',
      '',
      '      4           5',
      '80   0.0310 ++   -',
      '100 [0.0600 @@] [0.0600 @@]',
      '',
      '.. 0.0100 to 0.0200',
      ':: 0.0200 to 0.0300',
      '++ 0.0300 to 0.0400',
      'XX 0.0400 to 0.0500',
      '@@ 0.0500 to 0.0600   [ ] largest',
      '- no answer',
    ]);
  });

  it('of one size has no shades to explain and no largest', () => {
    expect(drawHeatMap({ rows: ['a'], columns: ['b', 'c'], values: [[0, 0]] }, 40)).toEqual([
      '    b      c',
      'a  0 ..   0 ..',
      '',
      'all are 0',
    ]);
    const nothing = { rows: ['a'], columns: ['b'], values: [[undefined]] };
    expect(drawHeatMap(nothing, 40)).toEqual(['(no values to draw)']);
  });

  // Shades are fifths of 10, wherever the largest of this map is; 0.04 prints as 0.0;
  // the sign for nothing stands under the last digits.
  it('of amounts counts its shades from nothing and marks none as the largest (whole map)', () => {
    const map = {
      rows: ['a', 'b'],
      columns: ['1–4', '5'],
      values: [
        [0.04, 1.9],
        [6, 0],
      ],
      amounts: { most: 10, decimals: 1, none: 'no work' },
    };
    expect(drawHeatMap(map, 40)).toEqual([
      '    1–4       5',
      'a     -       1.9 ..',
      'b   6.0 XX      -',
      '',
      '.. 0.0 to 2.0   :: 2.0 to 4.0',
      '++ 4.0 to 6.0   XX 6.0 to 8.0',
      '@@ 8.0 to 10.0   - no work',
    ]);
  });

  it('stays within its width, whatever the labels and numbers', () => {
    const name = fc.string({ unit: 'grapheme', maxLength: 60 });
    const number = fc.oneof(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.constantFrom(undefined, 0, 1e-9),
    );
    const maps = fc
      .record({
        rows: fc.array(name, { minLength: 1, maxLength: 6 }),
        columns: fc.array(name, { minLength: 1, maxLength: 12 }),
        pool: fc.array(number, { minLength: 72, maxLength: 72 }),
      })
      .map(({ rows, columns, pool }) => ({
        rows,
        columns,
        values: rows.map((_, i) => columns.map((__, j) => pool[12 * i + j])),
      }));
    fc.assert(
      fc.property(maps, fc.integer({ min: 38, max: 100 }), (map, width) => {
        for (const line of drawHeatMap(map, width)) {
          expect(displayWidth(line)).toBeLessThanOrEqual(width);
          expect(line).toBe(line.trimEnd());
          expect(line).not.toContain('\n');
        }
      }),
    );
  });
});
