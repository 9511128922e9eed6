import { isDeepStrictEqual } from 'node:util';
import { withWholePrograms } from '../programLikes.ts';
import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { besideName } from './besideName.ts';
import { changedAt, newChange } from './changeEntry.ts';
import { saidText, withSaid } from './differences.ts';
import { placeInText } from './placeInText.ts';
import type { Problem } from './problem.ts';
import { readWithIncludes } from './readWithIncludes.ts';
import { renderings, unquoted } from './renderings.ts';
import { nodesOf, scalarAt } from './scalarAt.ts';
import type { Beside, Source } from './source.ts';

/** A file with one value changed. */
export interface Written {
  /** The one that holds the value: the scenario, or a file that it includes. */
  readonly file: string;
  /** Of that file, without a byte order mark as in `Source`. */
  readonly text: string;
  readonly isSame: boolean;
  readonly source: Source;
  readonly place: string;
  /** Both on one line, cut short if long. */
  readonly before: string;
  readonly after: string;
  readonly line: number;
  /** Programs that follow the changed one, because they are like it. */
  readonly alike: readonly string[];
}

export type WriteResult =
  | { readonly written: Written; readonly fault?: undefined; readonly problems?: undefined }
  | { readonly fault: string; readonly written?: undefined; readonly problems?: undefined }
  /** Of the file as it would be. */
  | {
      readonly problems: readonly Problem[];
      readonly texts: Source['texts'];
      readonly written?: undefined;
      readonly fault?: undefined;
    };

/** A place of a file, told by its path in the file and, in a whole program, by its path there. */
interface Spot {
  readonly place: string;
  readonly path: Path;
  readonly wholePath: Path;
  readonly was: unknown;
  /** The file that holds it, and its text. */
  readonly file: string;
  readonly text: string;
}

/**
 * Writes one value into the text of a file and nothing else: comments, order, quotes and line ends
 * stay. The new text is read again; it must say what the old one said but for this value.
 *
 * A value that a program has from the one it is like goes into its `change`.
 *
 * @param place with dots, "athlete.mass", "programs.deep squat.work.1.to"
 * @param value as it would be written without quotes
 * @returns the file as it would be, or why it cannot be; never throws
 */
export function writeValue(source: Source, place: string, value: string): WriteResult {
  const { source: whole } = withWholePrograms(source);
  const direct = placeInText(source, place).place;
  const found = direct ? { place: direct } : placeInText(whole, place);
  if (!found.place) return { fault: found.fault };
  const { path } = found.place;
  const { file } = source.at(path);
  const text = source.texts.get(file) ?? '';
  const spot = { place, path, wholePath: path, was: valueAt(whole.value, path), file, text };
  if (direct) return replace(source, { ...spot, was: valueAt(source.value, path) }, value);
  const [, name, ...inside] = path;
  const changed = changedAt(source.value, String(name), inside);
  const made = changed
    ? replace(source, { ...spot, path: changed }, value)
    : insert(source, spot, String(name), inside, value);
  if (made.fault === undefined) return made;
  return {
    fault: `${place} comes from the program that "${name}" is like; write it under change: of "${name}" by hand`,
  };
}

const newlineOf = (text: string) => (text.includes('\r\n') ? '\r\n' : '\n');

function replace(source: Source, spot: Spot, value: string): WriteResult {
  const { text } = spot;
  const node = scalarAt(nodesOf(text), spot.path);
  const [start, end] = node?.range ?? [0, 0];
  if (!node || end === start) return { fault: byHand(spot.place, value) };
  const plain = node.type === 'PLAIN';
  const wanted = plain ? unquoted(value) : value;
  if (isSaid(node.value, wanted)) return written(source, source, spot, spot.path);
  const ways = renderings(node, text.slice(start, end), value, newlineOf(text));
  const texts = ways.map((way) => text.slice(0, start) + way + text.slice(end));
  return firstGood(source, texts, spot, wanted);
}

function insert(source: Source, spot: Spot, name: string, inside: Path, value: string) {
  const { text } = spot;
  const entry = newChange(text, nodesOf(text), name, inside, newlineOf(text));
  if (!entry) return { fault: byHand(spot.place, value) };
  const [before, after] = entry.around;
  const texts = [value, JSON.stringify(value)].map(
    (way) => text.slice(0, entry.at) + before + way + after + text.slice(entry.at),
  );
  const wanted = unquoted(value);
  return firstGood(source, texts, { ...spot, path: entry.path }, wanted);
}

/** The first text that reads as the old one with the value in its place. */
function firstGood(
  source: Source,
  texts: readonly string[],
  spot: Spot,
  wanted: unknown,
): WriteResult {
  let unread: WriteResult | undefined;
  for (const text of texts) {
    const { source: next, problems, texts } = withText(source, spot.file, text);
    if (!next) unread = { problems, texts };
    else if (isOnlyChange(source, next, spot, wanted))
      return written(source, next, spot, spot.path);
  }
  return unread ?? { fault: byHand(spot.place, String(wanted)) };
}

/** The scenario with another text of one of its files. */
function withText({ file: own, text: ownText, beside }: Source, file: string, text: string) {
  if (file === own) return readWithIncludes(own, text, beside);
  const other: Beside = (name) =>
    besideName(own, name) === file
      ? { text }
      : (beside?.(name) ?? { fault: `${name} cannot be read` });
  return readWithIncludes(own, ownText, other);
}

const byHand = (place: string, value: string) =>
  `${saidText(value)} cannot be put at ${place} without touching more of the file; write it by hand`;

/** Whether the file differs at the path alone, and the program there in the value alone. */
function isOnlyChange(old: Source, next: Source, spot: Spot, wanted: unknown): boolean {
  const { path, wholePath } = spot;
  // What is not there yet is a new entry of the nearest group that is.
  const known = path.findIndex((_, i) => valueAt(old.value, path.slice(0, i + 1)) === undefined);
  const touched = known < 0 ? path : path.slice(0, known + 1);
  return (
    isSaid(valueAt(next.value, path), wanted) &&
    isDeepStrictEqual(withSaid(old, next, touched).value, next.value) &&
    (path === wholePath || isSoInFull(old, next, wholePath, wanted))
  );
}

/** Whether a program that is like another changes in one value alone, once it is put in full. */
function isSoInFull(old: Source, next: Source, path: Path, wanted: unknown): boolean {
  const [before, after] = [withWholePrograms(old).source, withWholePrograms(next).source];
  const program = path.slice(0, 2);
  return (
    isSaid(valueAt(after.value, path), wanted) &&
    isDeepStrictEqual(
      valueAt(withSaid(before, after, path).value, program),
      valueAt(after.value, program),
    )
  );
}

/** A block of lines ends with a line break that nobody types. */
const isSaid = (said: unknown, wanted: unknown) =>
  typeof said === 'string' && typeof wanted === 'string'
    ? said.replace(/\n+$/, '') === wanted.replace(/\n+$/, '')
    : Object.is(said, wanted);

function written(old: Source, next: Source, spot: Spot, path: Path) {
  const { place, was, wholePath, file } = spot;
  const text = next.texts.get(file) ?? '';
  return {
    written: {
      file,
      text,
      isSame: text === spot.text,
      source: next,
      place,
      before: saidText(was),
      after: saidText(valueAt(next.value, path)),
      line: next.at(path).line,
      alike: changedBeside(old, next, wholePath),
    },
  };
}

/** Programs other than that of a path which differ between two files, once they are put in full. */
function changedBeside(old: Source, next: Source, [group, name]: Path): string[] {
  if (group !== 'programs') return [];
  const [before, after] = [old, next].map((source) =>
    Object(valueAt(withWholePrograms(source).source.value, ['programs'])),
  );
  const others = Object.keys(after).filter((one) => one !== name);
  return others.filter((one) => !isDeepStrictEqual(before[one], after[one]));
}
