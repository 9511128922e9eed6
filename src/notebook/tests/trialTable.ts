import { type CsvError, parse } from 'csv-parse/sync';
import type { Place, Problem } from '../text/problem.ts';
import type { Source } from '../text/source.ts';
import { most } from '../text/tooMuch.ts';

export const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;
type Separator = (typeof separators)[keyof typeof separators];

/** A table beside the scenario: cells as texts, each line as long as the header. */
export interface TrialTable {
  /** Places cells by the number of their line below the header and the name of their column. */
  readonly source: Source;
  readonly header: readonly string[];
  readonly lines: readonly (readonly string[])[];
}

type TableResult =
  | { readonly table: TrialTable; readonly problem?: undefined }
  | { readonly table?: undefined; readonly problem: Problem };

interface Parsed {
  readonly record: readonly string[];
  /** Number of its last line in the file, from 1. */
  readonly info: { readonly lines: number };
}

/**
 * Reads a table of comma-separated values, or semicolons or tabs: quotes, byte order marks and any
 * line ends are understood, empty lines left out.
 *
 * @param file the name to show in problems
 * @param separator found from the first line unless told
 * @returns the table, or the first thing that is wrong with it; never throws
 */
export function readTable(
  file: string,
  text: string,
  separator: Separator = likeliest(text),
): TableResult {
  const at = (line: number, col = 1, endCol?: number): Place =>
    endCol === undefined ? { file, line, col } : { file, line, col, endCol };
  const refuse = (line: number, message: string, hint?: string): TableResult => ({
    problem: { code: 'table', message, at: at(line), ...(hint === undefined ? {} : { hint }) },
  });
  if (text.length > most.table)
    return refuse(
      1,
      `this table has ${text.length} characters; at most ${most.table} are read`,
      'keep the lines of this athlete, or split it by season',
    );
  const { parsed, fault } = parsedRecords(text, separator);
  if (fault) return refuse(fault.line, fault.message, 'write a quote inside quotes twice: ""');
  const [first, ...others] = parsed.filter(({ record }) => record.some((cell) => cell !== ''));
  if (!first) return refuse(1, 'this table is empty');
  const header = first.record;
  if (parsed.length > most.lines)
    return refuse(1, `this table has ${parsed.length} lines; at most ${most.lines} are read`);
  if (header.length > most.columns)
    return refuse(1, `this table has ${header.length} columns; at most ${most.columns} are read`);
  if (header.every((cell) => /^[\d\s.,;+-]*$/.test(cell)))
    return refuse(
      first.info.lines,
      'the first line of this table holds numbers; it must hold the names of the columns',
      'add a first line such as "Angle,Trial 1,Trial 2"',
    );
  const uneven = others.find(({ record }) => !fits(record, header));
  if (uneven) {
    const { length } = uneven.record;
    const message = `this line has ${length} cells, the first line ${header.length}`;
    return refuse(uneven.info.lines, message, unevenHint(length > header.length, separator));
  }
  const rows = text.split(/\r\n|\r|\n/);
  const place: Source['at'] = ([index, name]) => {
    const line = others[Number(index)]?.info.lines ?? first.info.lines;
    const column = header.indexOf(String(name));
    const span = cellSpan(rows[line - 1] ?? '', separator, column);
    return at(line, ...span);
  };
  const lines = others.map(({ record }) => header.map((_, i) => record[i] ?? ''));
  return {
    table: {
      source: { file, text, texts: new Map([[file, text]]), value: lines, at: place },
      header,
      lines,
    },
  };
}

function parsedRecords(
  text: string,
  delimiter: string,
): {
  readonly parsed: readonly Parsed[];
  readonly fault?: { readonly line: number; readonly message: string };
} {
  const options = { delimiter, bom: true, info: true, trim: true, skip_empty_lines: true } as const;
  try {
    // With `info` each record comes with where it ended; the types of the library leave that out.
    return { parsed: parse(text, { ...options, relax_column_count: true }) as unknown as Parsed[] };
  } catch (error) {
    const { code, lines } = error as CsvError;
    if (typeof code !== 'string') throw error;
    const message =
      code === 'CSV_QUOTE_NOT_CLOSED'
        ? 'a quote that opens here is never closed'
        : 'there is a quote in the middle of a cell';
    return { parsed: [], fault: { line: Number(lines ?? 1), message } };
  }
}

/** The sign that parts the first line most often; a comma where there is none. */
function likeliest(text: string): Separator {
  const [line = ''] = text.split(/\r\n|\r|\n/).filter((one) => one.trim() !== '');
  const bare = line.replace(/"[^"]*"/g, '');
  const count = (sign: Separator) => bare.split(sign).length;
  return Object.values(separators).reduce((best, sign) =>
    count(sign) > count(best) ? sign : best,
  );
}

/** Whether a line has the header's cells; empty ones may be missing or too many at its end. */
const fits = (record: readonly string[], header: readonly string[]): boolean =>
  record.slice(header.length).every((cell) => cell === '') &&
  (record.length >= header.length || record.length > 1);

function unevenHint(isLonger: boolean, separator: Separator): string {
  if (isLonger && separator === ',')
    return 'a decimal comma parts cells too: save the table with semicolons, or put such numbers in quotes';
  return isLonger
    ? 'put a cell that holds the separator in quotes'
    : 'say what parts the columns: separator: semicolon';
}

/** First column and the one after the last of a cell in a line, for a line that is one record. */
function cellSpan(line: string, separator: Separator, column: number): [number, number?] {
  let start = 0;
  let isQuoted = false;
  let index = 0;
  for (let i = 0; i <= line.length; i++) {
    const sign = line[i];
    if (sign === '"') isQuoted = !isQuoted;
    if (sign !== undefined && (sign !== separator || isQuoted)) continue;
    if (index === column) {
      const cell = line.slice(start, i);
      const indent = cell.length - cell.trimStart().length;
      const width = cell.trim().length;
      return width > 0 ? [start + indent + 1, start + indent + width + 1] : [start + 1];
    }
    index++;
    start = i + 1;
  }
  return [1];
}
