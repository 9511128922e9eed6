import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { placeInText, type ValuePlace, withValue } from '../notebook/placeInText.ts';
import type { Problem } from '../notebook/problem.ts';
import { readSource } from '../notebook/source.ts';
import { run } from '../run.ts';
import { ask } from './ask.ts';

/** One value put at the place, and what the formulas came to with it, or why not. */
export interface Step {
  readonly value: string;
  readonly answers: readonly CellResult[];
  /** What the file or a formula says against this value. */
  readonly says?: string;
}

export interface Sweep {
  readonly place: string;
  /** What stands in the file. */
  readonly written: string;
  readonly formulas: readonly string[];
  readonly steps: readonly Step[];
}

export type Swept =
  | { readonly sweep: Sweep; readonly fault?: undefined }
  | { readonly fault: string; readonly sweep?: undefined };

/** Most values a sweep takes: each is a whole evaluation of the file. */
const mostValues = 60;

/**
 * Puts several values at one place of a file in turn and answers formulas with each. The file itself
 * is not touched.
 *
 * @param place with dots: "athlete.mass", "programs.deep squat.work.1.to"
 * @param values "60 kg : 5 kg : 80 kg" (from : step : to), or texts with commas between
 */
export async function sweep(
  file: string,
  text: string,
  place: string,
  values: string,
  formulas: readonly string[],
): Promise<Swept> {
  const found = findPlace(file, text, place);
  if ('fault' in found) return found;
  const list = valuesOf(values);
  if (typeof list === 'string') return { fault: list };
  const steps: Step[] = [];
  for (const value of list)
    steps.push(await stepAt(file, withValue(text, found.place, value), value, formulas));
  return { sweep: { place, written: found.place.written, formulas, steps } };
}

/** The place of one value in a file, or what is wrong with it. */
export function findPlace(
  file: string,
  text: string,
  place: string,
): { readonly place: ValuePlace } | { readonly fault: string } {
  const { source, problems } = readSource(file, text);
  if (problems) return { fault: messagesOf(problems) };
  const found = placeInText(source, place);
  return found.place ? { place: found.place } : { fault: found.fault };
}

/** Evaluates a file with a value in its place and answers formulas. */
export async function stepAt(
  file: string,
  text: string,
  value: string,
  formulas: readonly string[],
): Promise<Step> {
  const { results, problems } = { results: undefined, ...(await run(file, text)) };
  if (!results) return { value, answers: [], says: messagesOf(problems ?? []) };
  const answers: CellResult[] = [];
  for (const formula of formulas) {
    const found = await ask(results, formula);
    if ('fault' in found)
      return { value, answers: [], says: `the formula ${formula} ${found.fault.message}` };
    answers.push(found.result);
  }
  return { value, answers };
}

const messagesOf = (problems: readonly Problem[]) =>
  problems.map(({ message }) => message).join('; ');

/** A number and its unit as values are written. */
export const numberThenUnit = /^\s*(-?\d+(?:\.\d+)?)\s*(.*?)\s*$/;

/** The values of a range or a list, or what is wrong with it. */
function valuesOf(text: string): readonly string[] | string {
  if (!text.includes(':')) return text.split(',').map((value) => value.trim());
  const parts = text.split(':').map((part) => numberThenUnit.exec(part));
  const [from, step, to] = parts;
  if (parts.length !== 3 || !from || !step || !to)
    return `values are "${text}"; write from : step : to, such as 60 kg : 5 kg : 80 kg, or a list with commas`;
  const unit = from[2] ?? '';
  if (step[2] !== unit || to[2] !== unit)
    return `values are "${text}"; write all three in one unit, such as 60 kg : 5 kg : 80 kg`;
  const [first, by, last] = [Number(from[1]), Number(step[1]), Number(to[1])];
  const count = Math.floor((last - first) / by + 1e-9) + 1;
  if (!(by > 0) || !(count >= 2) || count > mostValues)
    return `values are "${text}"; that is ${Number.isFinite(count) ? Math.max(count, 0) : 'no number of'} values, from 2 to ${mostValues} are taken`;
  return Array.from({ length: count }, (_, i) =>
    `${Number((first + i * by).toFixed(9))} ${unit}`.trim(),
  );
}
