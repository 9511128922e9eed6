import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { type Difference, differences } from '../notebook/text/differences.ts';
import type { Source } from '../notebook/text/source.ts';
import { fallsShort } from '../physiology/shortfall.ts';
import type { Results } from '../run.ts';

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

/** What became of the answer from one file to another. */
export interface Change {
  readonly a: Best;
  readonly b: Best;
  /** Target gains as fractions, in the order of the second ranking. */
  readonly programs: readonly Pair<number>[];
  /** Places in the ranking, from 1, in the same order. */
  readonly places: readonly Pair<number>[];
  /** Programs that cannot be done as written in the second and could in the first. */
  readonly short: readonly string[];
  readonly cells: readonly Pair<CellResult>[];
  readonly differences: readonly Difference[];
}

/** A file and what it came to. */
export interface Evaluated {
  readonly source: Source;
  readonly results: Results;
}

/** Gains nearer than this are shown as equal, to a tenth of a point. */
const leastShown = 0.0005;

/** Whether two gains differ as far as they are shown. */
export const isMoved = (a: number, b: number) => Math.abs(b - a) >= leastShown;

/** What became of the answers, and where the files differ. */
export function changeBetween(a: Evaluated, b: Evaluated): Change {
  const [inA, inB] = [a.results, b.results];
  return {
    a: bestOf(a.source.file, inA),
    b: bestOf(b.source.file, inB),
    programs: pairs(gainsOf(inA), gainsOf(inB)),
    places: pairs(placesOf(inA), placesOf(inB)),
    short: shortOf(inB).filter((name) => !shortOf(inA).includes(name)),
    cells: pairs(cellsOf(inA), cellsOf(inB)),
    differences: differences(a.source, b.source),
  };
}

/** Programs with sets that cannot be done as written. */
export const shortOf = ({ ranking }: Results): string[] =>
  ranking.flatMap(({ program }) => (fallsShort(program.state) ? [program.name] : []));

function bestOf(file: string, { ranking }: Results): Best {
  const [best] = ranking;
  if (!best) throw new Error(`${file} has no program`);
  const { name, landing } = best.program;
  const ties = ranking
    .filter(({ tiesWithBest }) => tiesWithBest)
    .map(({ program }) => program.name);
  return { file, program: name, gain: landing.meanGain, ties };
}

/** Target gains by program, in the order of the ranking. */
export const gainsOf = ({ ranking }: Results) =>
  new Map(ranking.map(({ program }) => [program.name, program.landing.meanGain]));

const placesOf = ({ ranking }: Results) =>
  new Map(ranking.map(({ program, place }) => [program.name, place]));

/** Cells by name. */
export const cellsOf = ({ cells }: Results) =>
  new Map(cells.map((result) => [result.cell.name, result]));

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
