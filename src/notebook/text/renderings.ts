import { isScalar, type Scalar } from 'yaml';
import { nodesOf } from './scalarAt.ts';

/** The ways in which YAML writes a value that runs over lines of its own. */
const isBlock = ({ type }: Scalar) => type === 'BLOCK_LITERAL' || type === 'BLOCK_FOLDED';

/**
 * The ways to write a new value in place of one that stands in a text, the one most like it first: in
 * its quotes, or in its block of lines. Which of them says what is meant, only reading them shows.
 *
 * @param was how the old value is written, from its first to its last sign
 * @param newline of the file
 */
export function renderings(
  node: Scalar,
  was: string,
  value: string,
  newline: string,
): readonly string[] {
  if (isBlock(node)) return [inBlock(node, was, value, newline)];
  const [single, double] = [`'${value.replaceAll("'", "''")}'`, JSON.stringify(value)];
  if (node.type === 'QUOTE_DOUBLE') return [double];
  if (node.type === 'QUOTE_SINGLE') return [single, double];
  return [value, ...(value.includes('"') ? [single, double] : [double, single])];
}

/** The old block's head, indent and blank lines at its end around new lines. */
function inBlock({ type }: Scalar, was: string, value: string, newline: string): string {
  const [head = '', ...body] = was.split(/\r?\n/);
  const indent = /^ */.exec(body.find((line) => line.trim() !== '') ?? '')?.[0] ?? '';
  const end = /(?:[ \t]*\r?\n)*$/.exec(was)?.[0] ?? '';
  // A folded block takes a single line break for a blank.
  const lines = value.replace(/\n+$/, '').split('\n');
  const between = type === 'BLOCK_FOLDED' ? newline + newline : newline;
  return head + newline + lines.map((line) => line && indent + line).join(between) + end;
}

/** What a value means where no quotes say that it is a text: a number, true or false, or a text. */
export function unquoted(value: string): string | number | boolean {
  if (!/^[\w.+-]+$/.test(value)) return value;
  const { contents } = nodesOf(value);
  const parsed = isScalar(contents) ? contents.value : undefined;
  return typeof parsed === 'number' || typeof parsed === 'boolean' ? parsed : value;
}
