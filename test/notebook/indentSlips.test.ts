import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { indentSlips } from '../../src/notebook/text/indentSlips.ts';
import { formatProblems } from '../../src/notebook/text/problem.ts';
import { readSource } from '../../src/notebook/text/source.ts';
import { goodScenario } from './goodScenario.ts';

const block = `title: x
athlete:
  code: A
  lengths:
    thigh: 41 cm
    shank: 40 cm
    foot: 25 cm
  training: 4 years
tests:
  - action: knee extension
    trials:
      40 deg: [112, 118, 115]
      60 deg: [163,
        158, 166]
      80 deg: [101]
    unit: N m
  - lift: back squat
    to: 110 deg
note: >
  some text: with a colon
   and more
programs:
  deep:
    weeks: 8
    work:
      - lift: back squat
        from: 0 deg
        to: 115 deg
      - lift: front squat
        from: 0 deg
        to: 90 deg
    progress: 1.5 % per week
    deload: { week: 4, sets: half }
`;
const lines = block.split('\n');

/** The block with one line, counted from 1, moved by some columns. */
function moved(line: number, by: number): string {
  const shift = (text: string) => (by < 0 ? text.slice(-by) : ' '.repeat(by) + text);
  return lines.map((text, index) => (index === line - 1 ? shift(text) : text)).join('\n');
}

const shown = (text: string): string =>
  formatProblems(readSource('f.yaml', text).problems ?? [], () => text);

const group = 'lines of one group start in the same column';

describe('a line that is indented otherwise than its neighbours', () => {
  test.each<[string, string, string]>([
    [
      'one too few in an entry of a list',
      moved(27, -1),
      `f.yaml:27:8: this line is indented by 7 spaces, its neighbours by 8; ${group}
       from: 0 deg
       ^^^^^^^^^^^`,
    ],
    [
      'one too many',
      moved(28, 1),
      `f.yaml:28:10: this line is indented by 9 spaces, its neighbours by 8; ${group}
         to: 115 deg
         ^^^^^^^^^^^`,
    ],
    [
      'the first of a group',
      moved(5, 1),
      `f.yaml:5:6: this line is indented by 5 spaces, its neighbours by 4; ${group}
     thigh: 41 cm
     ^^^^^^^^^^^^`,
    ],
    [
      'a dash',
      moved(29, -1),
      `f.yaml:29:6: this line is indented by 5 spaces, its neighbours by 6; ${group}
     - lift: front squat
     ^^^^^^^^^^^^^^^^^^^`,
    ],
    [
      'the first dash of a list',
      moved(10, 1),
      `f.yaml:10:4: this line is indented by 3 spaces, its neighbours by 2; ${group}
   - action: knee extension
   ^^^^^^^^^^^^^^^^^^^^^^^^`,
    ],
    [
      'between two groups',
      moved(8, 1),
      `f.yaml:8:4: this line is indented by 3 spaces, its neighbours by 2 or 4; ${group}
   training: 4 years
   ^^^^^^^^^^^^^^^^^`,
    ],
    [
      'a whole stretch is told once, and other slips besides',
      moved(27, 1).replace('        to: 115', '         to: 115').replace('half }', 'half'),
      `f.yaml:27:10: this line is indented by 9 spaces, its neighbours by 8; ${group}
         from: 0 deg
         ^^^^^^^^^^^
f.yaml:33:13: "{" is never closed
    deload: { week: 4, sets: half
            ^
  hint: put "}" after its last entry`,
    ],
  ])('%s', (_, text, expected) => {
    expect(shown(text)).toBe(expected);
  });

  // Lines inside brackets and block texts may stand anywhere.
  const free = [14, 20, 21];
  const movable = lines.flatMap((text, index) =>
    text === '' || free.includes(index + 1) ? [] : [index + 1],
  );
  test.each(movable)('moving line %i is told at this line alone', (line) => {
    for (const by of /^ /.test(lines[line - 1] ?? '') ? [-1, 1] : [1]) {
      const { problems } = readSource('f.yaml', moved(line, by));
      if (problems) expect(problems.map(({ at }) => at?.line)).toEqual([line]);
    }
  });
});

test('well indented files have no slips', () => {
  const scenarios = ['ski-deep-range', 'sprint-push-off'].map((name) =>
    readFileSync(`scenarios/${name}.yaml`, 'utf8'),
  );
  for (const text of [block, goodScenario, ...scenarios]) expect(indentSlips(text)).toEqual([]);
});

test('a long file of odd lines is told in part and at once', () => {
  const text = Array.from({ length: 5000 }, (_, n) => `${' '.repeat(n % 7)}a${n}: 1`).join('\n');
  expect(indentSlips(text).length).toBeLessThanOrEqual(50);
});
