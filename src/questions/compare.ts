import { type Difference, differences, withSaid } from '../notebook/differences.ts';
import { cellText } from '../notebook/formula/cellText.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import type { Problem } from '../notebook/problem.ts';
import type { Source } from '../notebook/source.ts';
import { type Results, runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';

/** A value in each of two scenarios; a side that has none is left out. */
export interface Pair<T> {
  readonly name: string;
  readonly a?: T;
  readonly b?: T;
}

/** The best program of a scenario and those not to be told apart from it. */
export interface Best {
  readonly file: string;
  readonly program: string;
  /** Fraction. */
  readonly gain: number;
  readonly ties: readonly string[];
}

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

export interface Compared {
  readonly a: Best;
  readonly b: Best;
  /** Target gains as fractions, in the order of the second ranking. */
  readonly programs: readonly Pair<number>[];
  readonly cells: readonly Pair<CellResult>[];
  readonly differences: readonly Difference[];
  /** Left out where no number changed as far as it is shown. */
  readonly cause?: Cause;
}

/** Most places tried for a cause: each is a whole evaluation. */
const mostTrials = 12;

/** Gains nearer than this are shown as equal, to a tenth of a point. */
const leastShown = 0.0005;

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
  const programs = pairs(gainsOf(ranA.results), gainsOf(ranB.results));
  const cells = pairs(cellsOf(ranA.results), cellsOf(ranB.results));
  const found = differences(a, b);
  const best = bestOf(a.file, ranA.results);
  const watched = watchedOf(best.program, programs, cells);
  return {
    compared: {
      a: best,
      b: bestOf(b.file, ranB.results),
      programs,
      cells,
      differences: found,
      ...(watched ? { cause: await causeOf(watched, found, a, b, memory) } : {}),
    },
  };
}

function bestOf(file: string, { ranking }: Results): Best {
  const [best] = ranking;
  if (!best) throw new Error(`${file} has no program`);
  const { name, landing } = best.program;
  const ties = ranking
    .filter(({ tiesWithBest }) => tiesWithBest)
    .map(({ program }) => program.name);
  return { file, program: name, gain: landing.meanGain, ties };
}

const gainsOf = ({ ranking }: Results) =>
  new Map(ranking.map(({ program }) => [program.name, program.landing.meanGain]));

const cellsOf = ({ cells }: Results) => new Map(cells.map((result) => [result.cell.name, result]));

/** Values of both by name: the second's order, then what only the first has. */
function pairs<T>(a: ReadonlyMap<string, T>, b: ReadonlyMap<string, T>): Pair<T>[] {
  const names = new Set([...b.keys(), ...a.keys()]);
  return [...names].map((name) => {
    const [inA, inB] = [a.get(name), b.get(name)];
    return {
      name,
      ...(inA === undefined ? {} : { a: inA }),
      ...(inB === undefined ? {} : { b: inB }),
    };
  });
}

/** The best program's gain if it changed, else the gain that changed most, else a changed cell. */
function watchedOf(
  best: string,
  programs: readonly Pair<number>[],
  cells: readonly Pair<CellResult>[],
): Watched | undefined {
  const moved = programs.flatMap(({ name, a, b }) =>
    a !== undefined && b !== undefined && isMoved(a, b)
      ? [{ kind: 'gain', name, a, b } as const]
      : [],
  );
  const size = ({ a, b }: { readonly a: number; readonly b: number }) => Math.abs(b - a);
  const [most] = [...moved].sort((one, other) => size(other) - size(one));
  const first = moved.find(({ name }) => name === best) ?? most;
  if (first) return first;
  return cells.flatMap(({ name, a, b }) =>
    a && b && cellText(a) !== cellText(b) ? [{ kind: 'cell', name, a, b } as const] : [],
  )[0];
}

/** Whether two gains differ as far as they are shown. */
const isMoved = (a: number, b: number) => Math.abs(b - a) >= leastShown;

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

async function tried(
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
