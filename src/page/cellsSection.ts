import { cellText, cellUnit, expectationText } from '../notebook/formula/cellText.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import type { Block, Section } from './report.ts';

/** The coach's own calculations, if there are any: a table, and charts of those that ask for one. */
export function cellsSection(results: Results): Section[] {
  const { cells } = results;
  if (cells.length === 0) return [];
  return [
    {
      heading: 'Cells',
      blocks: [
        {
          kind: 'text',
          text: 'Calculations of the coach’s own; their formulas stand in the scenario. Three digits at most.',
        },
        ...cellBlocks(cells),
        ...cells.flatMap((result) => (result.cell.chart ? cellChart(result, results) : [])),
      ],
    },
  ];
}

/** Cells as a table, with what is noted and expected of them. */
export function cellBlocks(cells: readonly CellResult[]): Block[] {
  return [cellTable(cells), ...remarks(cells)];
}

function cellTable(cells: readonly CellResult[]): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'cell', align: 'left' },
      { head: 'value', align: 'right' },
    ],
    rows: cells.map((result) => [result.cell.name, cellText(result)]),
  };
}

/** Notes and expectations of the cells that have any. */
function remarks(cells: readonly CellResult[]): Block[] {
  const items = cells.flatMap((result) => {
    const { cell, expected } = result;
    const parts = [
      ...(cell.note === undefined ? [] : [cell.note]),
      ...(expected
        ? [`expected ${expectationText(result)}, ${expected.holds ? 'and it is' : 'and it is NOT'}`]
        : []),
    ];
    return parts.length > 0 ? [`${cell.name}: ${parts.join('; ')}.`] : [];
  });
  return items.length > 0 ? [{ kind: 'list', items }] : [];
}

/** The angles of the target's action, degrees: those of a list over all angles. */
export function reachAngles({ anglesDeg, reachDeg: [least, most] }: Results): readonly number[] {
  return anglesDeg.filter((deg) => deg >= least - 1e-6 && deg <= most + 1e-6);
}

/** A chart of a list over all angles of the target's action; other lists have no axis to stand on. */
export function cellChart(result: CellResult, results: Results): Block[] {
  const { question } = results;
  const { cell, value } = result;
  if (typeof value !== 'object') return [];
  const xDeg = reachAngles(results);
  if (xDeg.length !== value.length)
    return [
      {
        kind: 'text',
        text: `"${cell.name}" is not drawn: only lists over all angles of ${question.action} have an axis (${actions[question.action].joint} angle).`,
      },
    ];
  const { text, size } = cellUnit(result);
  return [
    {
      kind: 'chart',
      chart: {
        title: `${cell.name}${text === '' ? '' : ` (${text})`}`,
        x: xDeg,
        series: [{ name: cell.name, y: value.map((y) => y / size) }],
        band: {
          fromDeg: toDegrees(question.target.from),
          toDeg: toDegrees(question.target.to),
          name: 'target',
        },
      },
    },
  ];
}
