import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { placeInText } from '../notebook/text/placeInText.ts';
import type { Source } from '../notebook/text/source.ts';
import { Memory } from '../stages/memory.ts';
import { stepAt } from './stepAt.ts';
import { numberThenUnit } from './sweptValues.ts';

/** A value of the place, and what the formula came to with it. */
export interface Solution {
  readonly value: string;
  readonly answer: CellResult;
}

/** A value that was tried: a number at `x` in the unit of the range, or no answer. */
export interface Point extends Solution {
  readonly x: number;
  /** What is looked at, SI: the formula, less its goal where there is one. */
  readonly y: number;
}

/** Values that the file cannot have, with the first reason. */
export interface Refused {
  readonly count: number;
  readonly says?: string;
}

/** A range of values for one place of a file, opened for trying. */
export interface Search {
  readonly written: string;
  readonly first: number;
  readonly last: number;
  /** Whether the place counts something: then every whole number of the range is tried, and no other. */
  readonly isWhole: boolean;
  /** Tries a value; none where the file refuses it. */
  readonly at: (x: number) => Promise<Point | undefined>;
  /** What was refused up to now. */
  readonly refused: () => Refused;
}

/** Values looked at before anything is closed in on: what lies within one step may be missed. */
export const looked = 13;
/** Most whole numbers that are tried one by one. */
const mostCounted = 60;

/**
 * Opens a range of values at one place of a file.
 *
 * @param range "60 kg : 120 kg"
 * @param formulas the one that is looked at, and its goal if it has one
 * @returns the search, or what is wrong with the place or the range
 */
export function openSearch(
  source: Source,
  place: string,
  range: string,
  formulas: readonly string[],
): { readonly search: Search } | { readonly fault: string } {
  const found = placeInText(source, place);
  if (!found.place) return { fault: found.fault };
  const { path, written } = found.place;
  const ends = range.split(':').map((part) => numberThenUnit.exec(part));
  const [from, to] = ends;
  const unit = from?.[2] ?? '';
  if (ends.length !== 2 || !from || !to || to[2] !== unit || !(Number(from[1]) < Number(to[1])))
    return { fault: `range is "${range}"; write from : to in one unit, such as 60 kg : 120 kg` };
  const memory = new Memory();
  let [count, says]: [number, string | undefined] = [0, undefined];
  const at = async (x: number): Promise<Point | undefined> => {
    const value = `${Number(x.toPrecision(8))} ${unit}`.trim();
    const step = await stepAt(source, [[path, value]], formulas, memory);
    const numbers = step.answers.flatMap((answer) =>
      typeof answer.value === 'number' ? [answer.value] : [],
    );
    const [answer] = step.answers;
    const [y, goal = 0] = numbers;
    if (answer && y !== undefined && numbers.length === formulas.length)
      return { x, value, answer, y: y - goal };
    count++;
    says ??= step.says ?? `the formula${formulas.length > 1 ? ' or the goal' : ''} is not a number`;
    return undefined;
  };
  const refused = () => ({ count, ...(says === undefined ? {} : { says }) });
  const [first, last] = [Number(from[1]), Number(to[1])];
  const isCount = unit === '' && [first, last, Number(written)].every(Number.isInteger);
  const isWhole = isCount && last - first <= mostCounted;
  return { search: { written, first, last, isWhole, at, refused } };
}

/** Tries evenly spread values over the whole range, or each whole number of it. */
export async function lookOver(search: Search): Promise<(Point | undefined)[]> {
  const { first, last, isWhole, at } = search;
  const steps = isWhole ? last - first : looked - 1;
  const points: (Point | undefined)[] = [];
  for (let i = 0; i <= steps; i++) points.push(await at(first + ((last - first) * i) / steps));
  return points;
}
