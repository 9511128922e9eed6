import { isMap, isScalar, isSeq, type Node } from 'yaml';
import type { Path, Program } from '../scenario.ts';
import type { Problem } from './problem.ts';
import type { Locate } from './refusedYaml.ts';
import type { Source } from './source.ts';

/** Limits on a file: above what a coach writes, below what holds up a run (measured). */
export const most = {
  /** Characters of a name; it stands in tables and messages, and is compared with known names. */
  name: 200,
  /** Characters of a text. */
  text: 5000,
  /** Characters, lines and columns of a table beside the scenario: more than a squad's season. */
  table: 500_000,
  lines: 5000,
  columns: 200,
  /** Of all tables that tests name together, a table counted as often as it is named. */
  tables: { characters: 1_500_000, lines: 20_000 },
  /** Entries of one list or group; each wrong one costs a search for what was meant. */
  entries: 300,
  /** Calls in all formulas; one that asks about a lift takes some milliseconds. */
  calls: 250,
  /** Lifts times weeks, over all programs; a week of a lift takes some milliseconds. */
  weeksOfLifts: 500,
} as const;

/**
 * Refuses a name, text, list or group that is too long.
 *
 * @returns the problem of this node alone, not of what is in it; never throws
 */
export function oversized(node: Node, locate: Locate): Problem | undefined {
  if (isScalar(node)) {
    const { length } = String(node.value);
    if (length <= most.text) return undefined;
    const hint = 'shorten it';
    return tooLong(
      node,
      `this text has ${length} characters; at most ${most.text} are read`,
      hint,
      locate,
    );
  }
  if (!isMap(node) && !isSeq(node)) return undefined;
  const { length } = node.items;
  if (length <= most.entries) return undefined;
  const what = isMap(node) ? 'group' : 'list';
  const message = `this ${what} has ${length} entries; at most ${most.entries} are read`;
  return tooLong(node, message, 'split the file: one scenario a file', locate);
}

/** Refuses a name that is too long; never throws. */
export function longName(key: Node, locate: Locate): Problem | undefined {
  const length = isScalar(key) ? String(key.value).length : 0;
  if (length <= most.name) return undefined;
  const message = `this name has ${length} characters; at most ${most.name} are read`;
  return tooLong(key, message, 'shorten it; a note holds longer texts', locate);
}

function tooLong({ range }: Node, message: string, hint: string, locate: Locate): Problem {
  const [start, end] = range ?? [0, 0];
  return { code: 'too-much', message, at: locate(start, end), hint };
}

/**
 * Refuses more calls in formulas than can be computed in a moment. Counted after programs that are
 * like others are whole: a copy of a formula is computed again.
 *
 * @returns the problem, at the first formula that is too many; never throws
 */
export function tooManyCalls(source: Source): Problem | undefined {
  let calls = 0;
  const first = (value: unknown, path: Path): Path | undefined => {
    if (typeof value === 'string') {
      calls += value.match(/[A-Za-z_]\s?\(/g)?.length ?? 0;
      return calls > most.calls ? path : undefined;
    }
    if (typeof value !== 'object' || value === null) return undefined;
    for (const [name, inside] of Object.entries(value)) {
      const found = first(inside, [...path, Array.isArray(value) ? Number(name) : name]);
      if (found) return found;
    }
    return undefined;
  };
  const path = first(source.value, []);
  return (
    path && {
      code: 'too-much',
      message: `with this one, the formulas of the file call functions more than ${most.calls} times`,
      at: source.at(path),
      hint: 'give a value that is used often a cell of its own, or split the file',
    }
  );
}

/**
 * Refuses more training than can be computed in a moment.
 *
 * @returns the problem, at the first program that is too many; never throws
 */
export function tooMuchTraining(programs: readonly Program[], source: Source): Problem | undefined {
  let sum = 0;
  const over = programs.find((program) => {
    sum += weeksOfLifts(program);
    return sum > most.weeksOfLifts;
  });
  return (
    over && {
      code: 'too-much',
      message: `with "${over.name}", the programs come to ${sum} lifts times weeks; at most ${most.weeksOfLifts} are computed`,
      at: source.at(over.path, { key: true }),
      hint: 'split the file, or give the programs fewer weeks or lifts',
    }
  );
}

function weeksOfLifts({ weeks, work, phases }: Program): number {
  const lifts = (places: readonly number[]) =>
    places.filter((place) => work[place]?.kind === 'lift').length;
  const parts = phases ?? [{ weeks, places: work.map((_, place) => place) }];
  return parts.reduce((sum, part) => sum + part.weeks * lifts(part.places), 0);
}
