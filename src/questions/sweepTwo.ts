import { placeInText, type ValuePlace } from '../notebook/text/placeInText.ts';
import type { Source } from '../notebook/text/source.ts';
import { Memory } from '../stages/memory.ts';
import { type Step, stepAt } from './stepAt.ts';
import { sweptValues } from './sweptValues.ts';

/** A place of a file and the values put there. */
export interface SweptPlace {
  readonly place: string;
  /** What stands in the file. */
  readonly written: string;
  readonly values: readonly string[];
}

export interface SweepOfTwo {
  readonly formula: string;
  readonly rows: SweptPlace;
  readonly columns: SweptPlace;
  /** A row for each value of `rows`, in it a step for each value of `columns`. */
  readonly steps: readonly (readonly Step[])[];
}

/** A place and its values as a coach asks for them. */
export interface AskedPlace {
  readonly place: string;
  readonly values: string;
}

/** Most evaluations: some half a minute where the body changes, less where only a program does. */
const mostSteps = 144;

/**
 * Puts all pairs of values at two places of a file in turn and answers a formula with each. The file
 * is not touched.
 *
 * @returns a grid of steps, or what is wrong with the places, the values or the formula
 */
export async function sweepTwo(
  source: Source,
  byRow: AskedPlace,
  byColumn: AskedPlace,
  formula: string,
  memory = new Memory(),
): Promise<
  | { readonly sweep: SweepOfTwo; readonly fault?: undefined }
  | { readonly fault: string; readonly sweep?: undefined }
> {
  const rows = opened(source, byRow);
  if (typeof rows === 'string') return { fault: rows };
  const columns = opened(source, byColumn);
  if (typeof columns === 'string') return { fault: columns };
  if (rows.place === columns.place)
    return { fault: `${rows.place} is named twice; name another place after --by` };
  const [down, across] = [rows.values.length, columns.values.length];
  if (down * across > mostSteps)
    return {
      fault: `that is ${down} × ${across} = ${down * across} evaluations, at most ${mostSteps} are taken; make a step wider`,
    };
  const steps: Step[][] = [];
  for (const value of rows.values) {
    const row: Step[] = [];
    for (const other of columns.values) {
      const pair = [[rows.path, value] as const, [columns.path, other] as const];
      const step = await stepAt(source, pair, [formula], memory);
      const [answer] = step.answers;
      if (answer && typeof answer.value !== 'number')
        return { fault: `${formula} is not a single number; two places need one for each pair` };
      row.push(step);
    }
    steps.push(row);
  }
  return { sweep: { formula, rows, columns, steps } };
}

function opened(
  source: Source,
  { place, values }: AskedPlace,
): (SweptPlace & Pick<ValuePlace, 'path'>) | string {
  const found = placeInText(source, place);
  if (!found.place) return found.fault;
  const list = sweptValues(values);
  if (typeof list === 'string') return list;
  const { path, written } = found.place;
  return { place, written, values: list, path };
}
