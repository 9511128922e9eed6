/** Tables as markdown and as terminal text. */

import Table from 'cli-table3';
import { escapeInline } from './escape.ts';
import type { Block } from './report.ts';
import { displayWidth, oneLine, wrapWords } from './wrap.ts';

type TableBlock = Extract<Block, { kind: 'table' }>;

/** Every row as wide as the head: missing cells empty, cells beyond the last column dropped. */
function filledRows(block: TableBlock): string[][] {
  return block.rows.map((row) => block.columns.map((_, index) => row[index] ?? ''));
}

function cellLines(cell: string): string[] {
  return cell.trim().split(/\r?\n/u).map(oneLine);
}

function markdownCell(cell: string): string {
  return cellLines(cell)
    .map((line) => escapeInline(line).replaceAll('|', '\\|'))
    .join('<br>');
}

/** Lines of a table drawn by cli-table3 without any colour. */
function drawn(
  block: TableBlock,
  chars: Readonly<Record<string, string>>,
  cellText: (cell: string) => string,
): string[] {
  const table = new Table({
    head: block.columns.map(({ head }) => cellText(head)),
    colAligns: block.columns.map(({ align }) => align),
    chars: { ...noLines, ...chars },
    // Empty styles: cli-table3 colours heads and borders by default, into pipes and files too.
    style: { head: [], border: [], compact: true, 'padding-left': 0, 'padding-right': 0 },
  });
  for (const row of filledRows(block)) table.push(row.map(cellText));
  return table.toString().split('\n');
}

/**
 * A table in GitHub-flavoured markdown, its columns lined up for reading as plain text. Pipes are
 * escaped and line breaks in cells become `<br>`. A table without columns gives nothing.
 */
export function markdownTable(block: TableBlock): string[] {
  const { columns } = block;
  if (columns.length === 0) return [];
  const chars = { left: '| ', middle: ' | ', right: ' |', mid: '-' };
  const bars = { 'left-mid': '| ', 'mid-mid': ' | ', 'right-mid': ' |' };
  const [head = '', ruled = '', ...body] = drawn(block, { ...chars, ...bars }, markdownCell);
  const dashes = ruled.slice(2, -2).split(' | ');
  const rule = columns.map(({ align }, i) => {
    // At least two signs: a right-aligned rule needs a dash before its colon.
    const width = Math.max(dashes[i]?.length ?? 0, 2);
    return align === 'right' ? `${'-'.repeat(width - 1)}:` : '-'.repeat(width);
  });
  // Without rows cli-table3 draws no rule.
  return [head, `| ${rule.join(' | ')} |`, ...(block.rows.length > 0 ? body : [])];
}

const noLines = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  right: '',
  'right-mid': '',
};

/** The table side by side: columns two spaces apart, a rule under each head. */
function columnLines(block: TableBlock): string[] {
  const chars = { mid: '-', 'mid-mid': '  ', middle: '  ' };
  const lines = drawn(block, chars, (cell) => cellLines(cell).join('\n'));
  return lines.map((line) => line.trimEnd());
}

/** The table record by record: the first cell, then the others that say something, each with its head. */
function stackedLines(block: TableBlock, width: number): string[] {
  const heads = block.columns.slice(1).map(({ head }) => (head.trim() === '' ? '' : `${head}: `));
  return filledRows(block).flatMap(([title = '', ...cells]) => {
    const named = cells.flatMap((cell, index) =>
      cell.trim() === '' ? [] : [(heads[index] ?? '') + cell.trim()],
    );
    return [...wrapWords(title === '' ? '-' : title, width), ...pairLines(named, width)];
  });
}

/** Pairs of head and value, as many whole ones on an indented line as fit. */
function pairLines(pairs: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const [i, pair] of pairs.entries()) {
    const text = i + 1 < pairs.length ? `${pair},` : pair;
    const longer = `${lines.at(-1) ?? ''} ${oneLine(text)}`;
    if (lines.length > 0 && displayWidth(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(...wrapWords(text, width, '  ', '    '));
  }
  return lines;
}

/**
 * A table as terminal text of at most `width` columns: side by side where it fits, otherwise
 * record by record. Never coloured. Left out: cells wrapped inside their columns.
 */
export function terminalTable(block: TableBlock, width: number): string[] {
  if (block.columns.length === 0) return [];
  const lines = columnLines(block);
  const fits = lines.every((line) => displayWidth(line) <= width);
  if (fits) return lines;
  if (block.rows.length > 0) return stackedLines(block, width);
  return wrapWords(block.columns.map(({ head }) => head).join(', '), width);
}
