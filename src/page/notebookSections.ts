import type { NotebookBlock, SectionName } from '../notebook/blocks.ts';
import { cellUnit, threeDigits } from '../notebook/formula/cellText.ts';
import type { Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import { athleteSection } from './athleteSection.ts';
import { calendarSection } from './calendarSection.ts';
import { cellBlocks, cellChart, reachAngles } from './cellsSection.ts';
import { conflictSection } from './evidence.ts';
import { gainSection, whySection } from './gainSections.ts';
import { programSections } from './programSections.ts';
import type { Block, Section } from './report.ts';
import { singlesSection } from './singlesSection.ts';
import { torqueSection } from './torqueSection.ts';
import { verdictSection } from './verdict.ts';

/** Degrees between the rows of a table by angle. */
const rowsEvery = 10;

/** What each name of a section stands for. */
const builtIn: Readonly<Record<SectionName, (results: Results) => readonly Section[]>> = {
  'which program': (results) => [verdictSection(results)],
  'where the gains land': (results) => [gainSection(results)],
  'torque before and after': (results) => [torqueSection(results)],
  why: (results) => [whySection(results)],
  calendar: (results) => [calendarSection(results)],
  programs: programSections,
  'heaviest singles': singlesSection,
  'measured and assumed': (results) => [athleteSection(results)],
  disagreements: (results) => [conflictSection(results)],
};

/**
 * The coach's own middle of a report, in the coach's order. The verdict comes first where no block
 * says where it is to stand, so that no notebook leaves it out.
 */
export function notebookSections(notebook: readonly NotebookBlock[], results: Results): Section[] {
  const isPlaced = notebook.some(
    (block) => block.kind === 'section' && block.name === 'which program',
  );
  return [
    ...(isPlaced ? [] : [verdictSection(results)]),
    ...notebook.flatMap((block) => sectionsOf(block, results)),
  ];
}

/** A section by its name; other blocks have no heading but those of the coach's texts. */
function sectionsOf(block: NotebookBlock, results: Results): readonly Section[] {
  if (block.kind === 'section') return builtIn[block.name](results);
  return [{ heading: '', blocks: blocksOf(block, results) }];
}

function blocksOf(
  block: Exclude<NotebookBlock, { kind: 'section' }>,
  results: Results,
): readonly Block[] {
  switch (block.kind) {
    case 'text':
      return [{ kind: 'markdown', text: block.text }];
    case 'cells':
      return cellBlocks(block.names === 'all' ? results.cells : named(block.names, results));
    case 'chart':
      return named([block.name], results).flatMap((cell) => cellChart(cell, results));
    case 'table':
      return [
        angleTable(
          block.columns.map(({ name }) => name),
          results,
        ),
      ];
  }
}

function named(names: readonly string[], { cells }: Results) {
  return names.flatMap((name) => cells.filter(({ cell }) => cell.name === name));
}

/** Lists over angles side by side, a row every ten degrees. */
function angleTable(names: readonly string[], results: Results): Block {
  const columns = named(names, results).map((result) => {
    const { text, size } = cellUnit(result);
    const { value, cell } = result;
    return {
      head: text === '' ? cell.name : `${cell.name} (${text})`,
      at: (i: number) =>
        typeof value === 'object' ? threeDigits((value[i] ?? Number.NaN) / size) : '',
    };
  });
  const rows = reachAngles(results).flatMap((deg, i) =>
    deg % rowsEvery === 0 ? [{ deg, i }] : [],
  );
  return {
    kind: 'table',
    columns: [
      { head: `${actions[results.question.action].joint} angle`, align: 'right' },
      ...columns.map(({ head }) => ({ head, align: 'right' as const })),
    ],
    rows: rows.map(({ deg, i }) => [`${deg}°`, ...columns.map(({ at }) => at(i))]),
  };
}
