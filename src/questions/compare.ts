import { cellText } from '../notebook/formula/cellText.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { type Difference, withSaid } from '../notebook/text/differences.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';
import { type Change, cellsOf, changeBetween, gainsOf, isMoved } from './changes.ts';

/** The number whose change is explained: a program's target gain (fraction), or a cell. */
export type Watched =
  | { readonly kind: 'gain'; readonly name: string; readonly a: number; readonly b: number }
  | {
      readonly kind: 'cell';
      readonly name: string;
      readonly a: CellResult;
      readonly b: CellResult;
    };

/** One place's value of the second file put alone into the first. */
export interface Trial {
  readonly difference: Difference;
  /** What the watched number comes to; left out where the file cannot be so. */
  readonly gain?: number;
  readonly cell?: CellResult;
}

export interface Cause {
  readonly watched: Watched;
  /** Places that alone do not move it, or cannot be changed alone. */
  readonly idle: readonly Trial[];
  /** The first place that alone moves it. */
  readonly first?: Trial;
}

export interface Compared extends Change {
  /** Left out where no number changed as far as it is shown. */
  readonly cause?: Cause;
}

/** Most places tried for a cause: each is a whole evaluation. */
export const mostTrials = 12;

/**
 * Compares two scenarios: their answers, what the files say, and the first place in the order of
 * computation that alone moves the answer, found by trying.
 *
 * @returns the comparison, or every problem of either file
 */
export async function compare(
  a: Source,
  b: Source,
): Promise<
  | { readonly compared: Compared; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly compared?: undefined }
> {
  const memory = new Memory();
  const [ranA, ranB] = [await runSource(a, memory), await runSource(b, memory)];
  if (!ranA.results || !ranB.results)
    return { problems: [...(ranA.problems ?? []), ...(ranB.problems ?? [])] };
  const change = changeBetween(
    { source: a, results: ranA.results },
    { source: b, results: ranB.results },
  );
  const watched = watchedOf(change);
  if (!watched) return { compared: change };
  return {
    compared: { ...change, cause: await causeOf(watched, change.differences, a, b, memory) },
  };
}

/** The best program's gain if it changed, else the gain that changed most, else a changed cell. */
function watchedOf({ a: best, programs, cells }: Change): Watched | undefined {
  const moved = programs.flatMap(({ name, a, b }) =>
    a !== undefined && b !== undefined && isMoved(a, b)
      ? [{ kind: 'gain', name, a, b } as const]
      : [],
  );
  const size = ({ a, b }: { readonly a: number; readonly b: number }) => Math.abs(b - a);
  const [most] = [...moved].sort((one, other) => size(other) - size(one));
  const first = moved.find(({ name }) => name === best.program) ?? most;
  if (first) return first;
  return cells.flatMap(({ name, a, b }) =>
    a && b && cellText(a) !== cellText(b) ? [{ kind: 'cell', name, a, b } as const] : [],
  )[0];
}

/** Puts places of the second file alone into the first, until one moves the watched number. */
async function causeOf(
  watched: Watched,
  found: readonly Difference[],
  a: Source,
  b: Source,
  memory: Memory,
): Promise<Cause> {
  const idle: Trial[] = [];
  for (const difference of found.slice(0, mostTrials)) {
    const trial = await tried(watched, withSaid(a, b, difference.path), difference, memory);
    if (isMovedBy(watched, trial)) return { watched, idle, first: trial };
    idle.push(trial);
  }
  return { watched, idle };
}

/** Evaluates a file that has one place of another. */
export async function tried(
  { kind, name }: Watched,
  changed: Source,
  difference: Difference,
  memory: Memory,
): Promise<Trial> {
  const { results } = await runSource(changed, memory);
  if (!results) return { difference };
  const gain = kind === 'gain' ? gainsOf(results).get(name) : undefined;
  const cell = kind === 'cell' ? cellsOf(results).get(name) : undefined;
  return { difference, ...(gain === undefined ? {} : { gain }), ...(cell ? { cell } : {}) };
}

function isMovedBy(watched: Watched, { gain, cell }: Trial): boolean {
  if (watched.kind === 'gain') return gain !== undefined && isMoved(watched.a, gain);
  return cell !== undefined && cellText(watched.a) !== cellText(cell);
}
