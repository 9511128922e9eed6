import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cellText } from '../src/notebook/formula/cellText.ts';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { run } from '../src/run.ts';

/** The demo athlete with two programs and these cells (invented). */
const [head = '', programs = ''] = readFileSync('scenarios/ski-deep-range.yaml', 'utf8').split(
  'programs:\n',
);
const two = programs
  .split(/^(?= {2}\S)/m)
  .slice(0, 2)
  .join('');
const withCells = (cells: string) => `${head}programs:\n${two}cells:\n${cells}`;
const lineOfFirst = withCells('').split('\n').length;

async function resultsOf(cells: string) {
  const found = await run('f.yaml', withCells(cells));
  if (!found.results) throw new Error(formatProblems(found.problems, () => withCells(cells)));
  return found;
}

/** What is said of cells, with lines counted from the first cell. */
async function toldOf(cells: string): Promise<string[]> {
  const found = await run('f.yaml', withCells(cells));
  return [...(found.problems ?? found.broken ?? [])].map(
    ({ message, at, hint }) =>
      `${(at?.line ?? 0) - lineOfFirst + 1}:${at?.col} ${message.replace(/line (\d+)/g, (_, line) => `line ${Number(line) - lineOfFirst + 1}`)}${hint === undefined ? '' : ` | ${hint}`}`,
  );
}

describe('cells', () => {
  it('may use one another in any order of writing, names with blanks by underscores', async () => {
    const { results } = await resultsOf(`  double: = 2 * bar_to_body
  bar to body: = best("back squat", 110 deg) / mass
  constant: 70 kg
  heavier: '= constant > mass ? "yes, heavier" : "no"'
`);
    expect(results.cells.map((result) => [result.cell.name, cellText(result)])).toEqual([
      // 85 kg tested over 63.5 kg of body mass.
      ['double', '2.68'],
      ['bar to body', '1.34'],
      ['constant', '70 kg'],
      ['heavier', 'yes, heavier'],
    ]);
  });

  it('are shown in the unit asked for, and drawn if they are lists over all angles', async () => {
    const { results } = await resultsOf(`  body mass in pounds: { is: = mass, unit: lb }
  gains: { is: '= gain("deep squat")', unit: "%", chart: yes, note: where they land }
  some: { is: "= [1, 2, 3]", chart: yes }
`);
    const [pounds] = results.cells;
    // 63.5 kg over 0.45359237.
    expect(pounds && cellText(pounds)).toBe('140 lb');
    const report = renderMarkdown(fullReport(results));
    expect(report).toContain('## Cells');
    expect(report).toContain('gains (%)');
    expect(report).toContain('- gains: where they land.');
    expect(report).toContain('"some" is not drawn');
  });

  it('say where they are not as expected: a problem, with the report still made', async () => {
    const cells = `  fine: { is: = mass, expect: 60 kg to 70 kg }
  heavy: { is: = mass, expect: at least 80 kg }
  tall: { is: = stature, unit: cm, expect: at most 150 cm }
`;
    expect(await toldOf(cells)).toEqual([
      '2:32 "heavy" is 63.5 kg, expected at least 80 kg | look for what changed, or change the expectation',
      '3:44 "tall" is 168 cm, expected at most 150 cm | look for what changed, or change the expectation',
    ]);
    expect((await resultsOf(cells)).results.cells).toHaveLength(3);
  });

  it('tell a circle with its whole path and every line on it', async () => {
    expect(
      await toldOf(`  a: = c + 1 kg
  b: = a
  c: = b
`),
    ).toEqual([
      '1:6 cells need each other in a circle: a (line 1) → c (line 3) → b (line 2) → a (line 1) | break the circle by giving one of them a number',
    ]);
  });

  it('tell what is wrong once, at its place, and keep quiet about cells that wait for it', async () => {
    expect(
      await toldOf(`  wrong: = mass + stature
  waits: = 2 * wrong
  open: = (1 + 2
  angle: = 60 deg + 3
  blank: = 2 * bar to body
  bar to body: = 1
`),
    ).toEqual([
      '1:10 the formula of "wrong" does not fit: mass (kg) + length (m) | both sides must be of one kind',
      '3:17 the formula of "open" cannot be read: parenthesis ) expected | a bracket is not closed; inside { } or [ ] a comma ends a value: put the whole formula in quotes',
      '4:10 the formula of "angle" does not fit: angle (deg) + number | both sides must be of one kind',
      '5:10 the formula of "blank" converts with "to" or "in" | in a formula "bar to body" is written bar_to_body',
    ]);
  });

  it('refuse names that mean something else, units and bounds that do not fit', async () => {
    expect(await toldOf('  cut: { is: = mean(1, 2) }\n')).toEqual([
      '1:24 unknown name "2)" in cells.cut | a bracket is not closed; inside { } or [ ] a comma ends a value: put the whole formula in quotes',
    ]);
    expect(await toldOf('  odd: { is: = mass, expect: about 60 kg }\n')).toEqual([
      '1:30 expect is "about 60 kg" | write "0.8 to 1.2", "at least 80 kg" or "at most 3"',
    ]);
    expect(
      await toldOf(`  shown: { is: = mass, unit: m }
  bound: { is: = mass, expect: 1 m to 2 m }
`),
    ).toEqual([
      '1:16 the formula of "shown" gives mass (kg), which cannot be shown in m',
      '2:16 the formula of "bound" gives mass (kg), but is expected to be length (m) | give the bounds in a unit of the same kind',
    ]);
    expect(
      await toldOf(`  mass: = 1 kg
  torque: = 1
  kg: = 1
  7 days: = 1
  one two: = 1
  one-two: = 2
`),
    ).toEqual([
      '1:3 the cell "mass" is called like a value of the file | call it otherwise, for example "my mass"',
      '2:3 the cell "torque" is called like a function | call it otherwise, for example "my torque"',
      '3:3 the cell "kg" is called like a unit | call it otherwise, for example "my kg"',
      '4:3 the cell "7 days" has a name that formulas cannot write | use letters, digits and blanks, a letter first',
      '6:3 the cell "one-two" is the same in formulas as "one two" | give one of them another name',
    ]);
  });
});
