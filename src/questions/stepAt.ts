import { reachOf } from '../functions/askedAthlete.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { withValuesAt } from '../notebook/formula/fieldFormulas.ts';
import type { Path } from '../notebook/scenario.ts';
import { scalarOf } from '../notebook/text/placeInText.ts';
import type { Source } from '../notebook/text/source.ts';
import { toDegrees } from '../numeric/degrees.ts';
import { type Results, runSource } from '../run.ts';
import type { Memory } from '../stages/memory.ts';
import { ask } from './ask.ts';
import { shortOf } from './changes.ts';

/** What formulas came to with some values put in a file, or why there is no answer. */
export interface Step {
  /** Empty where there is no answer. */
  readonly answers: readonly CellResult[];
  /** What the file or a formula says against these values. */
  readonly says?: string;
  /** Programs with sets that cannot be done as written with these values. */
  readonly short?: readonly string[];
  /** What lists over all angles stand over: the angles of the target's action, and the target. */
  readonly over?: { readonly deg: readonly number[]; readonly targetDeg: readonly number[] };
}

/** Values at places of a file, each as it would be written there. */
export type Put = readonly (readonly [path: Path, value: string])[];

/**
 * Evaluates a file with other values at some places and answers formulas. The file is not touched.
 *
 * @param memory of earlier runs
 */
export async function stepAt(
  source: Source,
  values: Put,
  formulas: readonly string[],
  memory: Memory,
): Promise<Step> {
  const put = values.map(([path, value]) => ({ path, value: scalarOf(value) }));
  const changed = { ...source, value: withValuesAt(source.value, put) };
  const { results, problems } = { results: undefined, ...(await runSource(changed, memory)) };
  if (!results)
    return { answers: [], says: (problems ?? []).map(({ message }) => message).join('; ') };
  const answers: CellResult[] = [];
  for (const formula of formulas) {
    const found = await ask(results, formula);
    if ('fault' in found)
      return { answers: [], says: `the formula ${formula} ${found.fault.message}` };
    answers.push(found.result);
  }
  return { answers, over: overOf(results), short: shortOf(results) };
}

function overOf(results: Results): NonNullable<Step['over']> {
  const { action, target } = results.question;
  return {
    deg: reachOf(action, results).map(toDegrees),
    targetDeg: [target.from, target.to].map(toDegrees),
  };
}
