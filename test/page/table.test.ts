import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markdownTable, terminalTable } from '../../src/page/table.ts';
import { displayWidth } from '../../src/page/wrap.ts';

const ranking = {
  kind: 'table',
  columns: [
    { head: 'Program', align: 'left' },
    { head: 'Gain', align: 'right' },
    { head: 'Minutes a week', align: 'right' },
  ],
  rows: [
    ['deep squat', '+8 %', '64'],
    ['long holds', '+11 %', '105'],
  ],
} as const;

const cell = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.constantFrom('a|b', 'a\\|b', '|', '\n', 'two\nlines', '---', '\u001b[31mred', '深蹲', '`a|b`'),
);
const tables = fc.record({
  kind: fc.constant('table' as const),
  columns: fc.array(fc.record({ head: cell, align: fc.constantFrom('left', 'right') }), {
    minLength: 1,
    maxLength: 6,
  }),
  rows: fc.array(fc.array(cell, { maxLength: 7 }), { maxLength: 5 }),
});

/** Cells of a row by the GFM specification, section 4.10: parted by pipes without a backslash. */
function gfmCells(line: string): string[] {
  expect(line.startsWith('| ') && line.endsWith(' |')).toBe(true);
  return line.slice(1, -1).split(/(?<!\\)\|/u);
}

describe('markdownTable', () => {
  it('lines columns up and marks the right-aligned ones', () => {
    expect(markdownTable(ranking)).toEqual([
      '| Program    |  Gain | Minutes a week |',
      '| ---------- | ----: | -------------: |',
      '| deep squat |  +8 % |             64 |',
      '| long holds | +11 % |            105 |',
    ]);
  });

  it('escapes pipes, line breaks and marks', () => {
    const columns = [{ head: 'a|b', align: 'left' } as const];
    const rows = [['one\ntwo | three'], ['*bold* <b> `x | y`'], ['- 5 * 2'], []];
    expect(
      markdownTable({ kind: 'table', columns, rows }).map((line) => line.slice(2, -2)),
    ).toEqual([
      'a\\|b                  ',
      '----------------------',
      'one<br>two \\| three   ',
      '\\*bold\\* \\<b> `x \\| y`',
      '- 5 * 2               ',
      '                      ',
    ]);
  });

  it('has the same count of cells in every row, whatever they hold', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const lines = markdownTable(table);
        expect(lines).toHaveLength(table.rows.length + 2);
        for (const line of lines) expect(gfmCells(line)).toHaveLength(table.columns.length);
        for (const [index, rule] of gfmCells(lines[1] ?? '').entries())
          expect(rule).toMatch(table.columns[index]?.align === 'right' ? /^ -+: $/u : /^ -+ $/u);
      }),
    );
  });
});

describe('terminalTable', () => {
  it('stands side by side where it fits', () => {
    expect(terminalTable(ranking, 33)).toEqual([
      'Program      Gain  Minutes a week',
      '----------  -----  --------------',
      'deep squat   +8 %              64',
      'long holds  +11 %             105',
    ]);
  });

  it('stacks the records where it does not', () => {
    expect(terminalTable(ranking, 32)).toEqual([
      'deep squat',
      '  Gain: +8 %, Minutes a week: 64',
      'long holds',
      '  Gain: +11 %,',
      '  Minutes a week: 105',
    ]);
  });

  it('stacked, leaves out what is empty, down to a record that is a name alone', () => {
    const rows = [['deep squat', '', '64'], ['long holds', '+11 %'], ['none']];
    expect(terminalTable({ ...ranking, rows }, 20)).toEqual([
      'deep squat',
      '  Minutes a week: 64',
      'long holds',
      '  Gain: +11 %',
      'none',
    ]);
  });

  it('never exceeds the width, colours nothing, keeps every letter', () => {
    fc.assert(
      fc.property(tables, fc.integer({ min: 20, max: 100 }), (table, width) => {
        const lines = terminalTable(table, width);
        for (const line of lines) {
          expect(displayWidth(line)).toBeLessThanOrEqual(width);
          expect(line).not.toMatch(/\p{Cc}|\s$/u);
        }
        const shown = lines.join('').replace(/\s/gu, '');
        for (const row of table.rows)
          for (const text of row.slice(0, table.columns.length))
            if (/^[a-z|]+$/u.test(text)) expect(shown).toContain(text);
      }),
    );
  });
});
