import { didYouMean } from '../notebook/didYouMean.ts';
import { withWholePrograms } from '../notebook/programLikes.ts';
import { valueAt } from '../notebook/schemaAt.ts';
import { type Difference, differences, withSaid } from '../notebook/text/differences.ts';
import { dottedOf } from '../notebook/text/placeInText.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { type ProgramResult, type Results, rankPrograms, runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';
import { mostTrials, type Trial, tried } from './compare.ts';

/** Two programs of one scenario. */
export interface ProgramsCompared {
  readonly results: Results;
  readonly a: ProgramResult;
  readonly b: ProgramResult;
  /** How far the model typically misses each gain, as a share like the gain. */
  readonly margins: readonly [a: number, b: number];
  /** Whether the ranking could not tell them apart if there were only these two. */
  readonly isTie: boolean;
  /** Places within the programs, both put in full, in the order of a's entries. */
  readonly differences: readonly Difference[];
  /** What a's gain comes to with b's value at one of these places alone; the first places only. */
  readonly trials: readonly Trial[];
}

/**
 * Compares two programs of a scenario: what they differ in once both are put in full, what each is
 * expected to do, and what b's value at each place does to a's gain if it alone is put into a.
 *
 * @returns the comparison, what is wrong with a name, or the problems of the file
 */
export async function comparePrograms(
  written: Source,
  first: string,
  second: string,
): Promise<
  | {
      readonly compared: ProgramsCompared;
      readonly problems?: undefined;
      readonly fault?: undefined;
    }
  | { readonly fault: string; readonly compared?: undefined; readonly problems?: undefined }
  | {
      readonly problems: readonly Problem[];
      readonly compared?: undefined;
      readonly fault?: undefined;
    }
> {
  const memory = new Memory();
  const { results, problems } = { problems: [], ...(await runSource(written, memory)) };
  if (!results) return { problems };
  const found = [first, second].map((name) => programNamed(results, name));
  const fault = found.find((one) => typeof one === 'string');
  if (fault !== undefined) return { fault: String(fault) };
  const [a, b] = found;
  if (typeof a !== 'object' || typeof b !== 'object') throw new Error('a program was lost');
  if (a === b) return { fault: `both are "${first}"; name two programs` };
  const whole = withWholePrograms(written).source;
  const other = withProgram(whole, a.name, b.name);
  const places = differences(whole, other).map((one) => ({
    ...one,
    place: dottedOf(one.path.slice(2)),
  }));
  const watched = {
    kind: 'gain',
    name: a.name,
    a: a.landing.meanGain,
    b: b.landing.meanGain,
  } as const;
  const trials: Trial[] = [];
  for (const place of places.slice(0, mostTrials))
    trials.push(await tried(watched, withSaid(whole, other, place.path), place, memory));
  const placed = rankPrograms([a, b]);
  const marginOf = (name: string) =>
    placed.find(({ program }) => program.name === name)?.margin ?? 0;
  return {
    compared: {
      results,
      a,
      b,
      margins: [marginOf(a.name), marginOf(b.name)],
      isTie: placed.every(({ tiesWithBest }) => tiesWithBest),
      differences: places,
      trials,
    },
  };
}

function programNamed({ ranking }: Results, name: string): ProgramResult | string {
  const found = ranking.find(({ program }) => program.name === name);
  if (found) return found.program;
  const names = ranking.map(({ program }) => program.name);
  const meant = didYouMean(name, names);
  return `there is no program "${name}"; ${meant ? `did you mean "${meant}"?` : `there is: ${names.join(', ')}`}`;
}

/** The file with one of its programs written in place of another. */
function withProgram(whole: Source, name: string, other: string): Source {
  const programs = Object(valueAt(whole.value, ['programs']));
  const value = {
    ...Object(whole.value),
    programs: { ...programs, [name]: programs[other] },
  };
  return { ...whole, value };
}
