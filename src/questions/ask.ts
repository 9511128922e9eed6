import { modelFunctions, modelNames, modelScope } from '../functions/modelScope.ts';
import { typeText } from '../notebook/formula/compiled.ts';
import { askFormula } from '../notebook/formula/evaluateCells.ts';
import { loadParser } from '../notebook/formula/mathjsParser.ts';
import { number } from '../notebook/formula/values.ts';
import type { Results } from '../run.ts';

/**
 * Answers one formula about a scenario that has been evaluated.
 *
 * @returns what it came to, or what is wrong with it in words that follow "the formula"
 */
export async function ask(results: Results, formula: string) {
  return askFormula(formula, results.cells, modelScope(results), await loadParser());
}

/** What formulas may name and call, for the printed table, with what each gives in words. */
export async function vocabulary(results: Results) {
  const names = modelNames(results).map((entry) => ({
    ...entry,
    type: typeText(number(entry.exponents)),
  }));
  const functions = await Promise.all(
    modelFunctions(results).map(async (entry) => {
      const found = await ask(results, entry.example.formula);
      return { ...entry, type: 'result' in found ? typeText(found.result.type) : '' };
    }),
  );
  return { names, functions };
}
