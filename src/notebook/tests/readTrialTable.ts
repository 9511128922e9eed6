import { checkActionRange } from '../checkActionRange.ts';
import { optional } from '../complete.ts';
import { Reading } from '../reading.ts';
import type { Path, Radian } from '../scenario.ts';
import { most } from '../text/tooMuch.ts';
import { pathName } from '../valueName.ts';
import { chosenLines, findColumns, type NamedTable, type TableColumns } from './tableColumns.ts';
import { tableNumber } from './tableNumber.ts';
import { readTable, separators } from './trialTable.ts';

/** Where a table keeps what, as the scenario says it. */
export interface TableDraft {
  readonly action?: string | undefined;
  readonly 'trials from'?: string | undefined;
  readonly columns?:
    | {
        readonly angle?: string | undefined;
        readonly value?: string | undefined;
        readonly values?: readonly (string | undefined)[] | undefined;
        readonly trial?: string | undefined;
        readonly day?: string | undefined;
        readonly person?: string | undefined;
      }
    | undefined;
  readonly where?: Readonly<Record<string, string | number | undefined>> | undefined;
  readonly decimal?: 'point' | 'comma' | undefined;
  readonly separator?: keyof typeof separators | undefined;
  readonly angles?: 'flexion' | 'included' | undefined;
}

/** Trials of one line of a table. */
export interface TrialLine {
  readonly person?: string;
  readonly day?: string;
  readonly dayPath?: Path;
  readonly trial?: string;
  readonly angle: Radian;
  readonly trials: readonly { readonly value: number; readonly path: Path }[];
  readonly path: Path;
}

/** The lines that count, and the reading that places what is wrong with them. */
export interface TrialLines {
  readonly lines: readonly TrialLine[];
  readonly table: Reading;
}

/**
 * Reads the trials of a table beside the scenario.
 *
 * @param joint whose angles it holds
 * @param path of the test that names it
 * @returns undefined if it cannot be used; problems are collected at their line, never thrown
 */
export function readTrialTable(
  reading: Reading,
  draft: TableDraft,
  joint: string,
  path: Path,
): TrialLines | undefined {
  const name = draft['trials from'];
  if (name === undefined || draft.columns === undefined) {
    if (name !== undefined && !Object.hasOwn(draft, 'columns')) refuseNoColumns(reading, path);
    return undefined;
  }
  const at = [...path, 'trials from'];
  const read = reading.source.beside?.(name) ?? {
    fault: `this scenario is read without its folder, so ${name} cannot be read`,
  };
  if ('fault' in read) {
    reading.refuse(at, { code: 'table', message: read.fault });
    return undefined;
  }
  // One that is too large by itself is told so below, before it is parsed.
  if (read.text.length <= most.table && isTooMuch(reading, read.text, at)) return undefined;
  const file = besideName(reading.source.file, name);
  const sign = draft.separator && separators[draft.separator];
  const { table, problem } = readTable(file, read.text, sign);
  if (problem) {
    reading.problems.push(problem);
    return undefined;
  }
  return readLines(reading, { table, draft, name, path }, joint);
}

/** Counts what tables hold together; beyond the limit it is told. */
function isTooMuch(reading: Reading, text: string, path: Path): boolean {
  const characters = reading.tables.characters + text.length;
  const lines = reading.tables.lines + text.split('\n').length;
  reading.tables = { characters, lines };
  if (characters <= most.tables.characters && lines <= most.tables.lines) return false;
  const message = `with this one, the tables of the file have more than ${most.tables.lines} lines or ${most.tables.characters} characters`;
  const hint = 'keep the lines of this athlete in each';
  reading.refuse(path, { code: 'too-much', message, hint });
  return true;
}

/** As the scenario's own name shows it: a table lies in its folder or below. */
function besideName(scenario: string, name: string): string {
  return scenario.slice(0, scenario.lastIndexOf('/') + 1) + name;
}

function refuseNoColumns(reading: Reading, path: Path): void {
  const message = `${pathName([...path, 'columns'])} is missing; it says which column of the table holds what`;
  const hint = 'add for example "columns: { angle: Angle, value: Torque }"';
  reading.refuse([...path, 'columns'], { code: 'missing', message, hint });
}

/** The table has its own places, and may have its own way to write angles. */
function readLines(reading: Reading, named: NamedTable, joint: string): TrialLines | undefined {
  const before = reading.problems.length;
  const columns = findColumns(reading, named);
  if (!columns) return undefined;
  const { source } = named.table;
  const convention = named.draft.angles ?? reading.convention;
  // A file that does not say how it counts angles is told so elsewhere.
  if (convention === undefined) return undefined;
  const table = new Reading(source, reading.units, convention, reading);
  const lines = chosenLines(reading, named, columns.where).flatMap((index) => {
    const line = readLine(table, named, columns, index, joint);
    return line ? [line] : [];
  });
  if (reading.problems.length > before) return undefined;
  if (lines.length > 0) return { lines, table };
  const message = `${named.name} holds no trials: their cells are empty`;
  reading.refuse([...named.path, 'trials from'], { code: 'table-lines', message });
  return undefined;
}

function readLine(
  table: Reading,
  { table: { header, lines }, draft }: NamedTable,
  places: TableColumns,
  index: number,
  joint: string,
): TrialLine | undefined {
  const record = lines[index] ?? [];
  const pathOf = (column: number): Path => [index, header[column] ?? ''];
  const number = (column: number, what: string) =>
    tableNumber(table, record[column] ?? '', pathOf(column), what, draft.decimal);
  const trials = places.values.flatMap((column) => {
    const value = record[column] === '' ? undefined : number(column, 'a trial');
    if (value === undefined) return [];
    if (value > 0) return [{ value, path: pathOf(column) }];
    const message = `${header[column]} is ${value}; a torque is above 0`;
    table.refuse(pathOf(column), { code: 'bad-value', message });
    return [];
  });
  if (trials.length === 0) return undefined;
  const written = number(places.angle, 'an angle');
  const path = pathOf(places.angle);
  const angle = written === undefined ? undefined : table.angle(path, `${written} deg`, joint);
  if (angle === undefined) return undefined;
  checkActionRange(table, draft.action, [{ angle, path }]);
  const text = (key: 'person' | 'day' | 'trial') => {
    const column = places[key];
    return optional(key, column === undefined ? undefined : record[column] || undefined);
  };
  return {
    ...text('person'),
    ...text('day'),
    ...text('trial'),
    ...optional('dayPath', places.day === undefined ? undefined : pathOf(places.day)),
    angle,
    trials,
    path,
  };
}
