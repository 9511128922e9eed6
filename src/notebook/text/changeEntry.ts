import type { Pair, Scalar, YAMLMap } from 'yaml';
import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { dottedOf } from './placeInText.ts';
import { entryOf, mapAt, type Nodes } from './scalarAt.ts';

/** Where a piece of text goes in, the path at which it is then read, and what stands around a value. */
export interface Insertion {
  readonly at: number;
  readonly path: Path;
  readonly around: readonly [before: string, after: string];
}

/**
 * Where the `change` of a program that is like another already says what stands at a place of it: at
 * the place itself, or within a group that it replaces whole.
 *
 * @param inside path within the whole program
 * @returns undefined where the change does not speak of the place
 */
export function changedAt(file: unknown, name: string, inside: Path): Path | undefined {
  const change: Path = ['programs', name, 'change'];
  const dotted = dottedOf(inside);
  const [nearest] = Object.keys(Object(valueAt(file, change)))
    .filter((key) => dotted === key.trim() || dotted.startsWith(`${key.trim()}.`))
    .sort((a, b) => b.length - a.length);
  if (nearest === undefined) return undefined;
  return [...change, nearest, ...inside.slice(nearest.split('.').length)];
}

/**
 * Where a new entry of a program's `change` goes: in front of its first one, or in a new `change`
 * behind `like`. No other line is touched.
 *
 * @returns undefined where the file is laid out so that this needs more than a piece of text
 */
export function newChange(
  text: string,
  nodes: Nodes,
  name: string,
  inside: Path,
  newline: string,
): Insertion | undefined {
  const key = dottedOf(inside);
  const path: Path = ['programs', name, 'change', key];
  const change = mapAt(nodes, path.slice(0, 3));
  if (change) {
    const found = beforeFirst(text, change, newline);
    return found && { at: found.at, path, around: [`${found.before}${key}: `, found.after] };
  }
  const own = mapAt(nodes, path.slice(0, 2));
  const like = own && entryOf(own, 'like');
  const found = own && like && behind(text, own, like, newline);
  return found && { at: found.at, path, around: [`${found.before}change: { ${key}: `, ' }'] };
}

function beforeFirst(text: string, map: YAMLMap, newline: string) {
  const [first] = map.items;
  if (!first) return map.range ? { at: map.range[0] + 1, before: ' ', after: ' ' } : undefined;
  const at = startOf(first);
  if (at === undefined) return undefined;
  if (map.flow) return { at, before: '', after: ', ' };
  const indent = indentAt(text, at);
  return indent === undefined ? undefined : { at, before: '', after: newline + indent };
}

function behind(text: string, map: YAMLMap, pair: Pair, newline: string) {
  const [start, end] = [startOf(pair), scalarEnd(pair)];
  if (start === undefined || end === undefined) return undefined;
  if (map.flow) return { at: end, before: ', ' };
  const indent = indentAt(text, start);
  const rest = /^[^\r\n]*/.exec(text.slice(end))?.[0] ?? '';
  return indent === undefined ? undefined : { at: end + rest.length, before: newline + indent };
}

/** The blanks before a name that is the first of its line. */
function indentAt(text: string, at: number): string | undefined {
  const before = text.slice(text.lastIndexOf('\n', at - 1) + 1, at);
  return /^ *$/.test(before) ? before : undefined;
}

const startOf = ({ key }: Pair): number | undefined => rangeOf(key)?.[0];
const scalarEnd = ({ value }: Pair): number | undefined => rangeOf(value)?.[1];

const rangeOf = (node: unknown): Scalar['range'] => Object(node).range;
