import { stringify } from 'yaml';
import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { dottedOf } from './placeInText.ts';
import type { Source } from './source.ts';

/** What one file says at a place. */
export interface Said {
  /** The value on one line; a group or list in braces, cut short if it is long. */
  readonly text: string;
  /** From 1. */
  readonly line: number;
  /** Left out where it stands in the scenario itself, not in a file that it includes. */
  readonly file?: string;
}

/** A place at which two files differ; a side that says nothing there is left out. */
export interface Difference {
  readonly path: Path;
  /** With dots, list places from 1, as `sweep` takes it. */
  readonly place: string;
  readonly a?: Said;
  readonly b?: Said;
}

/** The order in which a file's groups enter the computation; names that count for nothing are last. */
const orderOfUse = [
  'angles',
  'athlete',
  'group',
  'limits',
  'tests',
  'machines',
  'chains',
  'bands',
  'lifts',
  'target',
  'programs',
  'retests',
  'repeatability',
  'cells',
];

/** Names by which entries of tests and work are told apart. */
const kinds = ['lift', 'hold', 'isokinetic', 'action'];

const longestText = 60;

/**
 * Finds the places at which two files say something else: names are matched by name, list entries by
 * position. Comments, layout, quotes and the order of names are no difference.
 *
 * @returns in the order of computation, within a group in the order of writing; a group that only
 * one file has is one difference
 */
export function differences(a: Source, b: Source): Difference[] {
  const paths = differingPaths(a.value, b.value, []);
  const rank = ([top]: Path) => {
    const index = orderOfUse.indexOf(String(top));
    return index < 0 ? orderOfUse.length : index;
  };
  return paths
    .map((path, i) => ({ path, i }))
    .sort((one, other) => rank(one.path) - rank(other.path) || one.i - other.i)
    .map(({ path }) => ({
      path,
      place: dottedOf(path),
      ...side('a', a, path),
      ...side('b', b, path),
    }));
}

/** The first file with what the second says at one place; problems are placed as in the first. */
export function withSaid(a: Source, b: Source, path: Path): Source {
  return { ...a, value: replaced(a.value, path, valueAt(b.value, path)) };
}

function differingPaths(a: unknown, b: unknown, path: Path): Path[] {
  if (Array.isArray(a) && Array.isArray(b)) {
    const most = Math.max(a.length, b.length);
    return Array.from({ length: most }, (_, i) => i).flatMap((i) =>
      kindOf(a[i]) === kindOf(b[i]) ? within(a, b, path, i) : [[...path, i]],
    );
  }
  if (isGroup(a) && isGroup(b)) {
    const names = new Set([...Object.keys(a), ...Object.keys(b)]);
    return [...names].flatMap((name) => within(a, b, path, name));
  }
  return isSame(a, b) ? [] : [path];
}

/** Entries of another kind (a lift, a hold) have no value in common: they differ whole. */
const kindOf = (entry: unknown) =>
  isGroup(entry) ? kinds.find((name) => Object.hasOwn(entry, name)) : undefined;

function within(a: unknown, b: unknown, path: Path, step: string | number): Path[] {
  const inside = [...path, step];
  if (has(a, step) !== has(b, step)) return [inside];
  return differingPaths(valueAt(a, [step]), valueAt(b, [step]), inside);
}

/** Blanks within a text are layout: YAML itself folds some of them. */
function isSame(a: unknown, b: unknown): boolean {
  if (a === null || b === null || typeof a === 'object' || typeof b === 'object') return a === b;
  return oneLine(String(a)) === oneLine(String(b));
}

function side(name: 'a' | 'b', source: Source, path: Path): Partial<Record<'a' | 'b', Said>> {
  const last = path.at(-1);
  const above = valueAt(source.value, path.slice(0, -1));
  if (last !== undefined && !has(above, last)) return {};
  const { file, line } = source.at(path);
  const elsewhere = file === source.file ? {} : { file };
  return { [name]: { text: saidText(valueAt(source.value, path)), line, ...elsewhere } };
}

/** A value on one line; a group or list in braces, cut short if it is long. */
export function saidText(value: unknown): string {
  if (value === null || value === undefined) return 'empty';
  if (typeof value !== 'object') return cut(oneLine(String(value)));
  return cut(oneLine(stringify(value, { collectionStyle: 'flow', lineWidth: 0 })));
}

/** A copy with another value at a path; undefined takes the entry out. */
function replaced(here: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  const inside = replaced(valueAt(here, [step]), rest, value);
  if (Array.isArray(here)) {
    const copy: unknown[] = [...here];
    copy.splice(Number(step), 1, ...(inside === undefined ? [] : [inside]));
    return copy;
  }
  const others = Object.entries(Object(here));
  const known = has(here, step);
  const entries = others.flatMap(([name, old]): [string, unknown][] => {
    if (name !== step) return [[name, old]];
    return inside === undefined ? [] : [[name, inside]];
  });
  return Object.fromEntries(
    known || inside === undefined ? entries : [...entries, [String(step), inside]],
  );
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const has = (value: unknown, step: string | number) =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, step);

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

const cut = (text: string) =>
  text.length > longestText ? `${text.slice(0, longestText - 1).trimEnd()}…` : text;
