import type { NotebookBlock } from '../notebook/blocks.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import type { Path } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';

/** What a chart or a table by angle needs of a cell. */
export interface Axis {
  readonly action: string;
  /** How many angles it has. */
  readonly angles: number;
  /** A program of the file, to show as an example. */
  readonly program: string;
}

/** Cells that the notebook wants by angle, but that are no list over the angles of the target. */
export function blockProblems(
  source: Source,
  notebook: readonly NotebookBlock[],
  cells: readonly CellResult[],
  axis: Axis,
): Problem[] {
  const complain = (kind: 'chart' | 'table', name: string, path: Path): Problem[] => {
    const value = cells.find(({ cell }) => cell.name === name)?.value;
    if (value === undefined || (typeof value === 'object' && value.length === axis.angles))
      return [];
    return [
      {
        code: 'no-list-over-angles',
        message: `"${name}" is ${kindOf(value)}; a ${kind} needs a list over all ${axis.angles} angles of ${axis.action}`,
        at: source.at(path),
        hint: `write "cells: [${name}]" to show it, or name a cell with a value at each angle, such as '= gain("${axis.program}")'`,
      },
    ];
  };
  return notebook.flatMap((block) => {
    if (block.kind === 'chart') return complain('chart', block.name, block.path);
    if (block.kind !== 'table') return [];
    return block.columns.flatMap(({ name, path }) => complain('table', name, path));
  });
}

function kindOf(value: CellResult['value']): string {
  if (typeof value === 'number') return 'a single number';
  if (typeof value === 'string') return 'a text';
  return typeof value === 'boolean' ? 'a yes or no' : `a list of ${value.length}`;
}
