import { didYouMean } from '../didYouMean.ts';
import type { Path } from '../scenario.ts';
import type { Source } from './source.ts';

/** A single value of a scenario: the file it stands in, and where in its text it begins and ends. */
export interface ValuePlace {
  readonly path: Path;
  /** The scenario's own, or one that it includes; its text is `source.texts.get(file)`. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
  /** What stands there. */
  readonly written: string;
}

export type FoundPlace =
  | { readonly place: ValuePlace; readonly fault?: undefined }
  | { readonly fault: string; readonly place?: undefined };

/**
 * Finds the value at a place written with dots: "athlete.mass", "programs.deep squat.work.1.to", list
 * places from 1.
 *
 * @returns where it stands, or what is wrong with the place in a sentence; never throws
 */
export function placeInText(source: Source, dotted: string): FoundPlace {
  const path: (string | number)[] = [];
  let here: unknown = source.value;
  let rest = dotted.trim();
  while (rest !== '') {
    const known = Array.isArray(here)
      ? here.map((_, i) => String(i + 1))
      : Object.keys(Object(here));
    // Names may hold dots themselves: the longest that fits is meant.
    const name = known
      .filter((one) => rest === one || rest.startsWith(`${one}.`))
      .sort((a, b) => b.length - a.length)[0];
    if (name === undefined) return { fault: missing(rest, path, known) };
    const step = Array.isArray(here) ? Number(name) - 1 : name;
    path.push(step);
    here = Object(here)[step];
    rest = rest.slice(name.length + 1);
  }
  if (here === null) return { fault: `${dotted} is empty; write its value in the file first` };
  if (typeof here === 'object' || here === undefined)
    return { fault: `${dotted} is a group, not a single value; name one in it` };
  const at = source.at(path);
  const text = source.texts.get(at.file) ?? '';
  const start = text
    .split('\n')
    .slice(0, at.line - 1)
    .reduce((sum, line) => sum + line.length + 1, at.col - 1);
  const end = start + ((at.endCol ?? at.col) - at.col);
  return { place: { path, file: at.file, start, end, written: text.slice(start, end) } };
}

function missing(
  rest: string,
  path: readonly (string | number)[],
  known: readonly string[],
): string {
  const [first = ''] = rest.split('.');
  const where = path.length === 0 ? 'this file' : dottedOf(path);
  const meant = didYouMean(first, known);
  const hint = meant ? `did you mean "${meant}"?` : `there is: ${known.join(', ')}`;
  return `there is no "${first}" in ${where}; ${hint}`;
}

/** A path as coaches write it, "programs.deep squat.work.1.to": list places count from 1. */
export const dottedOf = (path: readonly (string | number)[]) =>
  path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.');

/** The text of a place's file with another value at the place; nothing else changes. */
export function withValue(text: string, { start, end }: ValuePlace, value: string): string {
  return text.slice(0, start) + quoted(value) + text.slice(end);
}

/** A value as the file would hold it: a bare number, or a text. */
export const scalarOf = (value: string): number | string =>
  /^[+-]?\d+(\.\d+)?$/.test(value.trim()) ? Number(value) : value;

/** Values with signs that YAML takes for its own are put in quotes. */
const quoted = (value: string) =>
  /^[\w.+-][\w .%+/°-]*$/.test(value) ? value : JSON.stringify(value);
