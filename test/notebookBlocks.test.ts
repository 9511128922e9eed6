import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { fullReport, shortReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { run } from '../src/run.ts';

/** The demo athlete with its first program, some cells and a notebook (invented). */
const [head = '', programs = ''] = readFileSync('scenarios/ski-deep-range.yaml', 'utf8').split(
  'programs:\n',
);
const [program = ''] = programs.split(/^(?= {2}\S)/m);
const cells = `cells:
  bar to body: { is: '= best("back squat", 110 deg) / mass', note: grows slowly }
  gains: { is: '= gain("deep squat")', unit: "%" }
  strength: = torque("knee extension")
  few: = [1, 2, 3]
  heavier: '= mass > 70 kg ? "yes" : "no"'
`;
const scenario = (notebook: string, own = cells) =>
  `${head}programs:\n${program}${own}notebook:\n${notebook}`;

async function resultsOf(notebook: string) {
  const text = scenario(notebook);
  const { results, problems } = { results: undefined, ...(await run('f.yaml', text)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => text));
  return results;
}

const markdownOf = async (notebook: string) =>
  renderMarkdown(fullReport(await resultsOf(notebook)));

const headings = (markdown: string) =>
  [...markdown.matchAll(/^## (.*)$/gm)].map(([, words = '']) => words);

/** What is said of a notebook: line of it, [underlined], message | hint. */
async function toldOf(notebook: string, own = cells): Promise<string[]> {
  const text = scenario(notebook, own);
  const before = scenario('', own).split('\n').length - 1;
  const { problems = [] } = await run('f.yaml', text);
  return problems.map(({ at, message, hint }) => {
    const { line = 0, col = 0, endCol = 0 } = at ?? {};
    const underlined = text.split('\n')[line - 1]?.slice(col - 1, endCol - 1);
    return `${line - before} [${underlined}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}

const closing = ['Cautions', 'Words', 'Sources'];

describe('the notebook', () => {
  it('puts the report in the order of its blocks; the verdict first, the doubts last', async () => {
    const report = await markdownOf(`  - text: |
      ## For Monday
  - section: disagreements
  - text: "## Then"
  - section: why
  - section: heaviest singles
  - section: measured and assumed
  - section: programs
  - section: where the gains land
`);
    expect(headings(report)).toEqual([
      'Which program',
      'For Monday',
      'Where the evidence disagrees',
      'Then',
      'Why',
      'Heaviest singles before and after',
      'What was measured, assumed and borrowed',
      '1. deep squat',
      'Where the gains land',
      ...closing,
    ]);
  });

  it('places the verdict where it is named; the short report shows it all the same', async () => {
    const results = await resultsOf(`  - section: why
  - section: which program
`);
    expect(headings(renderMarkdown(fullReport(results)))).toEqual([
      'Why',
      'Which program',
      ...closing,
    ]);
    // With it go the cautions that the programs touch: the screen shows no others.
    expect(headings(renderMarkdown(shortReport(results)))).toEqual([
      'Which program',
      'Cautions for these programs',
    ]);
  });

  it('keeps a text in the markdown report exactly as written', async () => {
    const text = `## For *Monday*

Warm up **well**, [see](https://example.org):
- \`3 x 5\` at 70 kg
  - then <https://example.org>

\`\`\`text
# a fence keeps  everything <b>
\`\`\`

1. a | b \\* & c`;
    const report = await markdownOf(`  - text: |
${text.replace(/^(?=.)/gm, '      ')}
  - section: why
`);
    expect(report).toContain(`\n\n${text}\n\n## Why\n`);
  });

  it('sends no control characters of a text to a terminal or a file', async () => {
    const results = await resultsOf('  - text: "red \\e[31m and \\u202e turned"\n');
    const report = fullReport(results);
    expect(renderMarkdown(report)).toContain('\nred  [31m and   turned\n');
    expect(renderTerminal(report, 80)).toContain('\nred [31m and turned\n');
  });

  it('shows cells with their notes, a few or all', async () => {
    const one = await markdownOf('  - cells: [bar to body]\n');
    expect(one).toContain(`| cell        | value |
| ----------- | ----: |
| bar to body |  1.34 |

- bar to body: grows slowly.

## Cautions`);
    const all = await markdownOf('  - cells: all\n');
    expect([
      ...all.matchAll(/^\| (bar to body|gains|strength|few|heavier) +\| [^|]+ \|$/gm),
    ]).toHaveLength(5);
  });

  it('draws a cell, and sets cells side by side every ten degrees', async () => {
    const report = await markdownOf(`  - chart: gains
  - table: [gains, strength]
`);
    expect(report).toMatch(/```text\ngains \(%\)\n/);
    const rows = [...report.matchAll(/^\| +(-?\d+)° \| +(\S+) \| +(\S+) \|$/gm)];
    expect(report).toContain('| knee angle | gains (%) | strength (N m) |');
    const results = await resultsOf('  - cells: all\n');
    const [least, most] = results.reachDeg;
    const tens = results.anglesDeg.filter((deg) => deg >= least && deg <= most && deg % 10 === 0);
    expect(rows.map(([, deg]) => Number(deg))).toEqual(tens);
    // The curve itself at 60°, to three digits.
    const torque = results.athlete.groups['knee extension'].torque[results.anglesDeg.indexOf(60)];
    const at60 = rows.find(([, deg]) => deg === '60');
    expect(Number(at60?.[3])).toBe(Number(torque?.toPrecision(3)));
  });

  it.each([40, 80])('fits a terminal of %i columns', async (width) => {
    const results = await resultsOf(`  - text: |
      ## What we do on Monday and on Thursday of this week
      Deep squats first, then long holds; nothing else before the
      knees are warm.
      - four sets of six at seventy per cent, three seconds down
      - rest

      ~~~
      kept    as  written, ${'and longer than a line '.repeat(4)}
      ~~~
  - table: [gains, strength]
  - chart: gains
  - cells: all
`);
    const { sections } = fullReport(results);
    const shown = renderTerminal({ title: 'Blocks', sections: sections.slice(1, 5) }, width);
    for (const line of shown.split('\n')) expect(displayWidth(line)).toBeLessThanOrEqual(width);
    const [prose] = shown.replace('Blocks\n======\n\n', '').split('~~~');
    expect(prose).toBe(
      width === 80
        ? `What we do on Monday and on Thursday of this week
-------------------------------------------------
Deep squats first, then long holds; nothing else before the knees are warm.
- four sets of six at seventy per cent, three seconds down
- rest

`
        : `What we do on Monday and on Thursday of
this week
---------------------------------------
Deep squats first, then long holds;
nothing else before the knees are warm.
- four sets of six at seventy per cent,
  three seconds down
- rest

`,
    );
    expect(shown).toContain('kept    as  written, and');
  });

  it('does not hinder formulas in other fields', async () => {
    const text = scenario('  - chart: gains\n').replace(
      /load: 7\d %/,
      `load: '= 0.78 * best("back squat", 110 deg)'`,
    );
    expect(text).toContain('= 0.78');
    expect(formatProblems((await run('f.yaml', text)).problems ?? [], () => text)).toBe('');
  });
});

describe('a notebook that cannot be read', () => {
  it('tells blocks that are none, or two in one', async () => {
    expect(
      await toldOf(`  - chrt: gains
  - { section: why, cells: all }
  - {}
  - why
  - chart:gains
`),
    ).toEqual([
      '1 [chrt] unknown name "chrt" in notebook.1 | did you mean "chart"?',
      '2 [cells] "cells" stands beside "section"; each block of the notebook is one of them | begin a new block: "- cells: …"',
      '3 [{}] notebook.3 is empty | write one of text, cells, chart, table, section',
      '4 [why] notebook.4 must be a block such as "section: why" or "cells: all"',
      '5 [chart:gains] notebook.5 must be a block such as "section: why" or "cells: all" | write a space after the colon: "chart: gains"',
    ]);
    expect(await toldOf('  why: yes\n')).toEqual([
      '1 [why: yes] notebook must be a list of blocks, each after "- "',
    ]);
    expect(await toldOf('  []\n')).toEqual(['1 [[]] notebook is empty']);
  });

  it('tells values that do not fit', async () => {
    expect(
      await toldOf(`  - section: wy
  - section: heaviest singles before and after
  - cells: bar to body
  - table: gains
  - chart: [gains]
  - text: 7
  - text:
  - table: []
  - cells: [3]
`),
    ).toEqual([
      '1 [wy] section is "wy"; there is no such section | did you mean "why"?',
      '2 [heaviest singles before and after] section is "heaviest singles before and after"; there is no such section | known: which program, where the gains land, torque before and after, why, calendar, programs, heaviest singles, measured and assumed, disagreements',
      '3 [bar to body] cells must be all, or a list of cells such as [bar to body]',
      '4 [gains] notebook.4.table must be a list of cells such as [bar to body]',
      '5 [[gains]] notebook.5.chart must be a text',
      '6 [7] notebook.6.text must be a text; put it in quotes',
      '7 [text] notebook.7.text is empty | add for example "text: Notes for Monday."',
      '8 [[]] table is empty',
      '9 [3] notebook.9.cells.1 must be a text; put it in quotes',
    ]);
  });

  it('tells cells that are not there', async () => {
    expect(
      await toldOf(`  - chart: gain
  - table: [gains, bar_to_body]
  - cells: [something else]
`),
    ).toEqual([
      '1 [gain] there is no cell "gain" | did you mean "gains"?',
      '2 [bar_to_body] there is no cell "bar_to_body" | did you mean "bar to body"?',
      '3 [something else] there is no cell "something else" | cells of this file: bar to body, gains, strength, few, heavier',
    ]);
    expect(await toldOf('  - cells: all\n  - chart: gains\n', '')).toEqual([
      '1 [all] the file has no cells | write them under cells:, such as "bar to body: = …"',
      '2 [gains] there is no cell "gains" | the file has no cells; write them under cells:, such as "bar to body: = …"',
    ]);
  });

  it('tells cells that are no list over angles, and what to write', async () => {
    expect(
      await toldOf(`  - chart: bar to body
  - table: [gains, few]
  - chart: heavier
`),
    ).toEqual([
      '1 [bar to body] "bar to body" is a single number; a chart needs a list over all 51 angles of knee extension | write "cells: [bar to body]" to show it, or name a cell with a value at each angle, such as \'= gain("deep squat")\'',
      '2 [few] "few" is a list of 3; a table needs a list over all 51 angles of knee extension | write "cells: [few]" to show it, or name a cell with a value at each angle, such as \'= gain("deep squat")\'',
      '3 [heavier] "heavier" is a text; a chart needs a list over all 51 angles of knee extension | write "cells: [heavier]" to show it, or name a cell with a value at each angle, such as \'= gain("deep squat")\'',
    ]);
  });

  it('tells texts that would reach beyond themselves', async () => {
    expect(
      await toldOf(`  - text: |
      fine

        # Monday
  - text: "# Tuesday"
  - text: |
      Wednesday
      ===
  - text: |
      fine
      ~~~ text
      # open
  - text: |
      \`<b>\` is fine, 1 < 2
      <!-- hidden
`),
    ).toEqual([
      '4 [# Monday] the text has a heading of the first level, which is the title of the report | write "## Monday"',
      '5 ["# Tuesday"] the text has a heading of the first level, which is the title of the report | write "## Tuesday"',
      '8 [===] the text has a heading of the first level, which is the title of the report | write "## Wednesday"',
      '11 [~~~ text] the text opens a fence that is not closed | close it with a line of ~~~',
      '15 [<!-- hidden] the text has HTML ("<!--"), which could hide what follows | write markdown; after a plain "<" leave a space',
    ]);
  });
});
