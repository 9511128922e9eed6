import type { BlockFile } from './blockSchema.ts';
import { blockNames, type NotebookBlock } from './blocks.ts';
import { didYouMean } from './didYouMean.ts';
import type { Draft } from './draft.ts';
import type { Reading } from './reading.ts';
import type { Path } from './scenario.ts';
import { valueAt } from './schemaAt.ts';
import type { Place } from './text/problem.ts';
import { textSlip } from './text/textSlip.ts';
import { lastName } from './valueName.ts';

/**
 * Reads the notebook: the blocks that the coach puts into the report, in order. Whether a cell
 * can be drawn is seen later, when cells are computed.
 *
 * @returns the blocks that can be used; problems are collected, never thrown
 */
export function readNotebook(
  reading: Reading,
  blocks: readonly Draft<BlockFile>[],
): readonly NotebookBlock[] {
  return blocks.flatMap((draft, index): NotebookBlock[] => {
    const path: Path = ['notebook', index];
    if (!draft || !hasOneName(reading, path)) return [];
    const read = readBlock(reading, draft, path);
    return read ? [read] : [];
  });
}

/** Whether a block has one of the names; more than one, or none at all, is told. */
function hasOneName(reading: Reading, path: Path): boolean {
  const written = Object.keys(Object(valueAt(reading.source.value, path)));
  const [first, second] = written.filter((name) => blockNames.some((known) => known === name));
  if (written.length === 0)
    reading.refuse(path, {
      code: 'bad-block',
      message: `${lastName(path)} is empty`,
      hint: `write one of ${blockNames.join(', ')}`,
    });
  if (second !== undefined)
    reading.refuse([...path, second], {
      code: 'bad-block',
      message: `"${second}" stands beside "${first}"; each block of the notebook is one of them`,
      hint: `begin a new block: "- ${second}: …"`,
      key: true,
    });
  return first !== undefined && second === undefined;
}

function readBlock(
  reading: Reading,
  { text, cells, chart, table, section }: NonNullable<Draft<BlockFile>>,
  path: Path,
): NotebookBlock | undefined {
  if (text !== undefined) return readText(reading, text, [...path, 'text']);
  if (section !== undefined) return { kind: 'section', name: section };
  if (cells === 'all') return readAll(reading, [...path, 'cells']);
  if (cells !== undefined) {
    const known = readNames(reading, cells, [...path, 'cells']);
    return { kind: 'cells', names: known.map(({ name }) => name) };
  }
  if (table !== undefined)
    return { kind: 'table', columns: readNames(reading, table, [...path, 'table']) };
  const [drawn] = readName(reading, chart, [...path, 'chart']);
  return drawn && { kind: 'chart', ...drawn };
}

function readText(reading: Reading, text: string, path: Path): NotebookBlock | undefined {
  const slip = textSlip(text);
  if (!slip) return { kind: 'text', text };
  const { line, message, hint } = slip;
  const start = reading.source.at(path);
  reading.problems.push({
    code: 'bad-text',
    message: `the text ${message}`,
    at: placeOfLine(reading, text.split('\n')[line] ?? '', start) ?? start,
    hint,
  });
  return undefined;
}

/** Where a line of a text stands in the file, if it stands there by itself. */
function placeOfLine({ source }: Reading, written: string, { file, line }: Place) {
  const lines = source.texts.get(file)?.split('\n') ?? [];
  const index = lines.findIndex((one, i) => i >= line && one.trim() === written.trim());
  const found = lines[index];
  if (found === undefined) return undefined;
  const col = found.length - found.trimStart().length + 1;
  return { file, line: index + 1, col, endCol: col + written.trim().length };
}

function readAll(reading: Reading, path: Path): NotebookBlock | undefined {
  if (cellNames(reading).length > 0) return { kind: 'cells', names: 'all' };
  reading.refuse(path, { code: 'unknown-cell', message: noCells, hint: addCells });
  return undefined;
}

interface Named {
  readonly name: string;
  readonly path: Path;
}

function readNames(reading: Reading, names: readonly (string | undefined)[], path: Path): Named[] {
  return names.flatMap((name, i) => readName(reading, name, [...path, i]));
}

/** A cell's name, if the file has the cell. */
function readName(reading: Reading, name: string | undefined, path: Path): Named[] {
  if (name === undefined) return [];
  const known = cellNames(reading);
  if (known.includes(name)) return [{ name, path }];
  reading.refuse(path, {
    code: 'unknown-cell',
    message: `there is no cell "${name}"`,
    hint: nameHint(name, known),
  });
  return [];
}

function nameHint(name: string, known: readonly string[]): string {
  if (known.length === 0) return `${noCells}; ${addCells}`;
  const meant = didYouMean(name, known);
  return meant === undefined
    ? `cells of this file: ${known.join(', ')}`
    : `did you mean "${meant}"?`;
}

const noCells = 'the file has no cells';
const addCells = 'write them under cells:, such as "bar to body: = …"';

/** All that the file has, also those that are written wrongly, which is told there. */
const cellNames = ({ source }: Reading): readonly string[] =>
  Object.keys(Object(valueAt(source.value, ['cells'])));
