import type { CellFile } from './cellSchema.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import { formulaText } from './formula/parseFormula.ts';
import type { Reading } from './reading.ts';
import type { Cell, Path } from './scenario.ts';

/**
 * Reads the cells of a file; their formulas are understood later, when there is something to
 * compute with.
 *
 * @returns the cells in the file's order; problems are collected, never thrown
 */
export function readCells(
  reading: Reading,
  cells: Readonly<Record<string, Draft<CellFile>>> | undefined,
): readonly Cell[] {
  return Object.entries(cells ?? {}).flatMap(([name, draft]) => {
    const path: Path = ['cells', name];
    const read =
      typeof draft === 'string'
        ? complete<Cell>({ name, formula: formulaText(draft), chart: false, path })
        : draft && readDescribed(reading, name, draft, path);
    return read ? [read] : [];
  });
}

type Described = Exclude<NonNullable<Draft<CellFile>>, string>;

function readDescribed(
  reading: Reading,
  name: string,
  draft: Described,
  path: Path,
): Cell | undefined {
  const expect = draft.expect === undefined ? undefined : readExpectation(draft.expect);
  if (draft.expect !== undefined && !expect)
    reading.refuse([...path, 'expect'], {
      code: 'bad-expectation',
      message: `expect is "${draft.expect}"`,
      hint: 'write "0.8 to 1.2", "at least 80 kg" or "at most 3"',
    });
  return complete<Cell>({
    name,
    formula: draft.is === undefined ? undefined : formulaText(draft.is),
    ...optional('note', draft.note),
    ...optional('unit', draft.unit),
    ...optional('expect', expect),
    chart: draft.chart === 'yes',
    path: [...path, 'is'],
  });
}

function readExpectation(text: string): Cell['expect'] | undefined {
  const [, least, most] = /^\s*(.+?)\s+to\s+(.+?)\s*$/.exec(text) ?? [];
  if (least !== undefined && most !== undefined) return { least, most };
  const [, side, bound] = /^\s*at\s+(least|most)\s+(.+?)\s*$/.exec(text) ?? [];
  if (side === undefined || bound === undefined) return undefined;
  return side === 'least' ? { least: bound } : { most: bound };
}
