import { placeInText } from '../notebook/text/placeInText.ts';
import type { Source } from '../notebook/text/source.ts';
import { Memory } from '../stages/memory.ts';
import { type Step, stepAt } from './stepAt.ts';
import { sweptValues } from './sweptValues.ts';

/** One value put at the place, and what came of it. */
export interface SweptStep extends Step {
  readonly value: string;
}

export interface Sweep {
  readonly place: string;
  /** What stands in the file. */
  readonly written: string;
  readonly formulas: readonly string[];
  readonly steps: readonly SweptStep[];
}

export type Swept =
  | { readonly sweep: Sweep; readonly fault?: undefined }
  | { readonly fault: string; readonly sweep?: undefined };

/**
 * Puts several values at one place of a file in turn and answers formulas with each. The file itself
 * is not touched.
 *
 * @param place with dots: "athlete.mass", "programs.deep squat.work.1.to"
 * @param values "60 kg : 5 kg : 80 kg" (from : step : to), or texts with commas between
 * @param memory of earlier runs
 */
export async function sweep(
  source: Source,
  place: string,
  values: string,
  formulas: readonly string[],
  memory = new Memory(),
): Promise<Swept> {
  const found = placeInText(source, place);
  if (!found.place) return { fault: found.fault };
  const list = sweptValues(values);
  if (typeof list === 'string') return { fault: list };
  const { path, written } = found.place;
  const steps: SweptStep[] = [];
  for (const value of list)
    steps.push({ value, ...(await stepAt(source, [[path, value]], formulas, memory)) });
  return { sweep: { place, written, formulas, steps } };
}
