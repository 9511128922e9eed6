import { didYouMean } from '../didYouMean.ts';
import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import type { TableDraft } from './readTrialTable.ts';
import type { TrialTable } from './trialTable.ts';

const keys = ['angle', 'trial', 'day', 'person'] as const;

/** Places of columns in a table's header. */
export interface TableColumns {
  readonly angle: number;
  readonly values: readonly number[];
  readonly trial?: number | undefined;
  readonly day?: number | undefined;
  readonly person?: number | undefined;
}

/** A column and the text it must hold for a line to count. */
export type Condition = readonly [column: number, text: string];

/** A table, the test that names it, and how it is named. */
export interface NamedTable {
  readonly table: TrialTable;
  readonly draft: TableDraft;
  readonly name: string;
  /** Of the test. */
  readonly path: Path;
}

/**
 * Finds the columns that a test names in the header of its table.
 *
 * @returns undefined if one is not there; problems are collected, never thrown
 */
export function findColumns(
  reading: Reading,
  named: NamedTable,
): (TableColumns & { readonly where: readonly Condition[] }) | undefined {
  const before = reading.problems.length;
  const { columns = {}, where = {} } = named.draft;
  const found = Object.fromEntries(
    keys.map((key) => [key, columnOf(reading, named, columns[key], ['columns', key])]),
  );
  const values = valueColumns(reading, named);
  const conditions = Object.entries(where).flatMap(([name, text]): Condition[] => {
    const column = columnOf(reading, named, name, ['where', name]);
    return column === undefined || text === undefined ? [] : [[column, String(text)]];
  });
  const { angle } = found;
  if (reading.problems.length > before || angle === undefined) return undefined;
  return { ...found, angle, values, where: conditions };
}

/** The place of a column in the header; a name that is not there, or twice, is told. */
function columnOf(
  reading: Reading,
  { table: { header }, name: file, path }: NamedTable,
  name: string | undefined,
  below: Path,
): number | undefined {
  if (name === undefined) return undefined;
  const index = header.indexOf(name);
  const isTwice = index >= 0 && header.indexOf(name, index + 1) > 0;
  if (index >= 0 && !isTwice) return index;
  const known = header.filter((one) => one !== '').join(', ');
  const meant = didYouMean(name, header);
  const hint = meant === undefined ? `its columns: ${known}` : `did you mean "${meant}"?`;
  reading.refuse([...path, ...below], {
    code: 'table-column',
    message: isTwice ? `${file} has two columns "${name}"` : `${file} has no column "${name}"`,
    hint: isTwice ? 'give each its own name in the first line of the table' : hint,
    key: below[0] === 'where',
  });
  return undefined;
}

function valueColumns(reading: Reading, named: NamedTable): readonly number[] {
  const { columns = {} } = named.draft;
  const isSingle = Object.hasOwn(columns, 'value');
  if (isSingle === Object.hasOwn(columns, 'values')) {
    reading.refuse([...named.path, 'columns'], {
      code: 'table-column',
      message: isSingle
        ? 'columns has both value and values'
        : 'columns names no trials: neither value nor values',
      hint: 'write value: Torque for one trial a line, or values: [Trial 1, Trial 2] for several',
      key: true,
    });
    return [];
  }
  const single = columnOf(reading, named, columns.value, ['columns', 'value']);
  const several = (columns.values ?? []).map((one, i) =>
    columnOf(reading, named, one, ['columns', 'values', i]),
  );
  return [single, ...several].filter((column) => column !== undefined);
}

/**
 * Numbers of the lines that meet every condition; that there are none is told.
 *
 * @returns places among the table's lines; problems are collected, never thrown
 */
export function chosenLines(
  reading: Reading,
  { table: { lines, header }, name, path }: NamedTable,
  where: readonly Condition[],
): readonly number[] {
  const meets = (line: readonly string[]) => where.every(([i, text]) => line[i] === text);
  const found = lines.flatMap((line, i) => (meets(line) ? [i] : []));
  if (found.length > 0) return found;
  const wanted = where.map(([i, text]) => `${header[i]} "${text}"`).join(' and ');
  const missing = where.find(([i, text]) => lines.every((line) => line[i] !== text));
  const there = missing && [...new Set(lines.map((line) => line[missing[0]] ?? ''))];
  reading.refuse([...path, where.length > 0 ? 'where' : 'trials from'], {
    code: 'table-lines',
    message: `${name} has no line${wanted === '' ? ' below its first' : ` with ${wanted}`}`,
    ...(missing && there ? { hint: `${header[missing[0]]} holds ${there.join(', ')}` } : {}),
  });
  return [];
}
