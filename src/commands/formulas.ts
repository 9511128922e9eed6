import { cellText } from '../notebook/formula/cellText.ts';
import type { FormulaFault } from '../notebook/formula/parseFormula.ts';
import { soughtText } from '../page/soughtText.ts';
import { sweepPage } from '../page/sweepPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { traceText } from '../page/traceText.ts';
import { vocabularyPage } from '../page/vocabularyPage.ts';
import { ask, vocabulary } from '../questions/ask.ts';
import { seek } from '../questions/seek.ts';
import { sweep } from '../questions/sweep.ts';
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

/** Prints a table of what formulas come to with several values at one place. */
export async function vary(
  file: string,
  place: string,
  values: string,
  formulas: readonly string[],
): Promise<void> {
  const source = read([file]).map(open)[0];
  if (!source) return;
  const swept = await sweep(source, place, values, formulas);
  if (swept.fault !== undefined) refuse(swept.fault);
  else process.stdout.write(`${renderTerminal(sweepPage(swept.sweep), width())}\n`);
}

/** Prints where a formula meets a goal and writes the value if asked; exits 1 if nowhere. */
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
  const found = await seek(source, place, range, formula, goal);
  if ('fault' in found) {
    refuse(found.fault);
    return;
  }
  const { solutions } = found.sought;
  process.stdout.write(`${printableLines(soughtText(found.sought))}\n`);
  if (solutions.length === 0) process.exitCode = 1;
  if (!options.write) return;
  const values = solutions.map(({ value }) => value);
  await writeFound(scenario, place, values, formula);
}
