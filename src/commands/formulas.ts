import { cellText } from '../notebook/formula/cellText.ts';
import type { FormulaFault } from '../notebook/formula/parseFormula.ts';
import type { Source } from '../notebook/text/source.ts';
import { soughtText } from '../page/soughtText.ts';
import { sweepOfTwoPage } from '../page/sweepOfTwoPage.ts';
import { sweepPage } from '../page/sweepPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { traceText } from '../page/traceText.ts';
import { vocabularyPage } from '../page/vocabularyPage.ts';
import { wrapWords } from '../page/wrap.ts';
import { ask, vocabulary } from '../questions/ask.ts';
import { type Sought, seek } from '../questions/seek.ts';
import { type SoughtExtreme, seekExtreme } from '../questions/seekExtreme.ts';
import { sweep } from '../questions/sweep.ts';
import { type AskedPlace, sweepTwo } from '../questions/sweepTwo.ts';
import { trace } from '../questions/trace/trace.ts';
import { evaluate, evaluateWithPlaces, open } from './evaluate.ts';
import { read } from './files.ts';
import { printableLines } from './printable.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';
import { writeFound } from './writeFound.ts';

/** Prints the value of a formula, or the names and functions that formulas have. */
export async function answer(file: string, formula?: string): Promise<void> {
  const [scenario] = read([file]);
  const results = scenario && (await evaluate(scenario));
  if (!results) return;
  if (formula === undefined) {
    process.stdout.write(`${renderTerminal(vocabularyPage(await vocabulary(results)), width())}\n`);
    return;
  }
  const found = await ask(results, formula);
  if ('fault' in found) refuseFormula(found.fault);
  else process.stdout.write(`${printableLines(cellText(found.result))}\n`);
}

/** Prints the tree behind a formula's answer, down to lines of the file and sources. */
export async function explain(file: string, formula: string): Promise<void> {
  const [scenario] = read([file]);
  const known = scenario && (await evaluateWithPlaces(scenario));
  if (!known) return;
  const found = await trace(known.results, known.source, formula);
  if ('fault' in found) refuseFormula(found.fault);
  else process.stdout.write(`${printableLines(traceText(found.tree, file, width()))}\n`);
}

function refuseFormula({ message, hint }: FormulaFault): void {
  refuse(`the formula ${message}${hint === undefined ? '' : `\n  hint: ${hint}`}`);
}

/**
 * Prints what formulas come to with several values at one place, or one formula with those of two.
 *
 * @param by the second place and its values, "athlete.mass = 60 kg : 5 kg : 70 kg"
 */
export async function vary(
  file: string,
  place: string,
  values: string,
  formulas: readonly string[],
  by?: string,
): Promise<void> {
  const source = read([file]).map(open)[0];
  if (!source) return;
  if (by !== undefined) {
    await varyTwo(source, { place, values }, formulas, by);
    return;
  }
  const swept = await sweep(source, place, values, formulas);
  if (swept.fault !== undefined) refuse(swept.fault);
  else {
    process.stdout.write(`${renderTerminal(sweepPage(swept.sweep), width())}\n`);
    if (swept.sweep.steps.every(({ answers }) => answers.length === 0)) process.exitCode = 1;
  }
}

async function varyTwo(
  source: Source,
  byRow: AskedPlace,
  [formula = '', ...others]: readonly string[],
  by: string,
): Promise<void> {
  const [, place, second] = /^(.*?)\s*=\s*(.*)$/.exec(by) ?? [];
  if (place === undefined || second === undefined) {
    refuse(`--by is "${by}"; write place = values, such as "athlete.mass = 60 kg : 5 kg : 70 kg"`);
    return;
  }
  if (others.length > 0) {
    refuse('with --by one formula is answered; leave out the others');
    return;
  }
  const swept = await sweepTwo(source, byRow, { place, values: second }, formula);
  if (swept.fault !== undefined) refuse(swept.fault);
  else process.stdout.write(`${renderTerminal(sweepOfTwoPage(swept.sweep), width())}\n`);
}

/** Prints where a formula meets a goal, or is least or most; writes it if asked; exits 1 if nowhere. */
export async function find(
  file: string,
  place: string,
  range: string,
  formula: string,
  goal: string,
  options: { write?: true } = {},
): Promise<void> {
  const [scenario] = read([file]);
  const source = scenario && open(scenario);
  if (!source) return;
  const found =
    goal === 'least' || goal === 'most'
      ? await seekExtreme(source, place, range, formula, goal)
      : await seek(source, place, range, formula, goal);
  if ('fault' in found) {
    refuse(found.fault);
    return;
  }
  const { sought } = found;
  const said = wrapWords(soughtText(sought), width()).join('\n');
  process.stdout.write(`${printableLines(said)}\n`);
  const places = 'extremes' in sought ? sought.extremes : sought.solutions;
  if (places.length === 0) process.exitCode = 1;
  if (options.write) await writeFound(scenario, place, valuesOf(sought), formula);
}

/** The values at which it is so: all of a level, none where it is so only just beside a jump. */
function valuesOf(sought: Sought | SoughtExtreme): string[] {
  if (!('extremes' in sought)) return sought.solutions.map(({ value }) => value);
  return sought.extremes.flatMap(({ value, lies, other }) => {
    if (lies === 'jump') return [];
    return lies === 'level' && other ? [value, other.value] : [value];
  });
}
