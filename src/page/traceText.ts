import { threeDigits } from '../notebook/formula/cellText.ts';
import type { TraceNode } from '../questions/trace/traceNode.ts';
import { fittedTo } from '../tables/adaptation.ts';
import type { TableRow } from '../tables/rowsBehind.ts';
import { wrapWords } from './wrap.ts';

/**
 * The tree behind an answer as indented lines of at most `width` columns, what rests on what below
 * and further right. What was told before is named again, with its parts left out.
 *
 * @param file the scenario's own name, left out beside its lines
 */
export function traceText(tree: TraceNode, file: string, width: number): string {
  const told = new Set<TraceNode>();
  const lines: string[] = [];
  const tell = (node: TraceNode, depth: number) => {
    const indent = '  '.repeat(Math.min(depth, deepest));
    const isKnown = told.has(node) && node.parts.length > 0;
    const text = nodeText(node, file) + (isKnown ? ' (as above)' : '');
    lines.push(...wrapWords(text, width, indent, `${indent}    `));
    if (isKnown) return;
    told.add(node);
    for (const part of node.parts) tell(part, depth + 1);
  };
  tell(tree, 0);
  const isFitted = [...told].some(({ table }) => table?.known === 'fitted');
  if (isFitted) lines.push('', ...wrapWords(`Fitted: to ${fittedTo}.`, width));
  return lines.join('\n');
}

/** Deeper levels are not moved further right, so that a narrow terminal keeps room for words. */
const deepest = 8;

function nodeText({ what, value, at, assumed, table }: TraceNode, file: string): string {
  if (table) return tableText(table);
  const where = at ? ` (${at.file === file ? '' : `${at.file} `}line ${at.line})` : '';
  return [
    what,
    value === undefined ? '' : ` = ${value}`,
    where,
    assumed ? `: ${assumed}` : '',
  ].join('');
}

/** A table with its number if it is one, how that is known, and from where. */
function tableText({ what, value, unit, spread, known, source }: TableRow): string {
  const digits = spread ? ` ± ${threeDigits(spread)}` : '';
  const size = value === undefined ? '' : ` ${threeDigits(value)}${digits} ${unit ?? ''}`.trimEnd();
  return `table: ${what}${size} (${known === 'fitted' ? known : `${known}: ${source}`})`;
}
