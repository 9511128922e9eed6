import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { withValuesAt } from '../notebook/formula/fieldFormulas.ts';
import { placeInText, scalarOf } from '../notebook/placeInText.ts';
import type { Path } from '../notebook/scenario.ts';
import type { Source } from '../notebook/source.ts';
import { runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';
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
  source: Source,
  place: string,
  values: string,
  formulas: readonly string[],
): Promise<Swept> {
  const found = placeInText(source, place);
  if (!found.place) return { fault: found.fault };
  const list = valuesOf(values);
  if (typeof list === 'string') return { fault: list };
  const { path, written } = found.place;
  const memory = new Memory();
  const steps: Step[] = [];
  for (const value of list)
    steps.push(await stepAt(withValues(source, [[path, value]]), value, formulas, memory));
  return { sweep: { place, written, formulas, steps } };
}

/** A file with other values at some places, each as it would be written there. */
export function withValues(
  source: Source,
  values: readonly (readonly [path: Path, value: string])[],
): Source {
  const put = values.map(([path, value]) => ({ path, value: scalarOf(value) }));
  return { ...source, value: withValuesAt(source.value, put) };
}

/** Evaluates a changed file and answers formulas. */
export async function stepAt(
  changed: Source,
  value: string,
  formulas: readonly string[],
  memory: Memory,
): Promise<Step> {
  const { results, problems } = { results: undefined, ...(await runSource(changed, memory)) };
  if (!results) {
    const says = (problems ?? []).map(({ message }) => message).join('; ');
    return { value, answers: [], says };
  }
  const answers: CellResult[] = [];
  for (const formula of formulas) {
    const found = await ask(results, formula);
    if ('fault' in found)
      return { value, answers: [], says: `the formula ${formula} ${found.fault.message}` };
    answers.push(found.result);
  }
  return { value, answers };
}

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
