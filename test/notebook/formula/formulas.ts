/** Formulas on their own, without a scenario. */
import { compile, type Scope } from '../../../src/notebook/formula/compile.ts';
import { library } from '../../../src/notebook/formula/library.ts';
import { loadParser } from '../../../src/notebook/formula/mathjsParser.ts';
import { parseFormula } from '../../../src/notebook/formula/parseFormula.ts';
import { FormulaError, type Value } from '../../../src/notebook/formula/values.ts';

export const parser = await loadParser();

export const bare: Scope = {
  named: () => undefined,
  names: [],
  functions: new Map(library.map((entry) => [entry.name, entry])),
};

/** The value of a formula, or what is said of it after "the formula". */
export function told(text: string, scope = bare): Value | { readonly says: string } {
  const parsed = parseFormula(text, parser);
  const says = (message: string, hint?: string) => ({
    says: hint === undefined ? message : `${message} | ${hint}`,
  });
  if (parsed.fault) return says(parsed.fault.message, parsed.fault.hint);
  try {
    return compile(parsed.expression, scope).run();
  } catch (error) {
    if (error instanceof FormulaError) return says(error.message, error.hint);
    throw error;
  }
}

/** The value of a formula that is right. */
export function given(text: string): Value {
  const value = told(text);
  if (typeof value === 'object' && 'says' in value) throw new Error(`${text}: ${value.says}`);
  return value;
}
