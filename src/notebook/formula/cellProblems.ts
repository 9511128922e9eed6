import { isCutFormula, quoteFormula } from '../nameHint.ts';
import type { Cell } from '../scenario.ts';
import type { Place, Problem } from '../text/problem.ts';
import type { Source } from '../text/source.ts';
import type { Scope } from './compile.ts';
import { formulaUnits } from './dimensions.ts';
import type { FormulaFault } from './parseFormula.ts';
import type { FormulaError } from './values.ts';

/** What is wrong with cells and their formulas, each at its place in the file. */

/** A cell's name as formulas write it: blanks and hyphens become underscores. */
export function formulaName(name: string): string {
  return name.trim().replace(/[\s-]+/g, '_');
}

/** A mistake found while computing, as one found while reading. */
export const faultOf = ({ message, hint }: FormulaError): FormulaFault => ({
  message,
  ...(hint === undefined ? {} : { hint }),
});

/** A name with blanks cannot be written as it is: says how. */
export function withBlankNames(
  formula: string,
  fault: FormulaFault,
  cells: readonly Cell[],
): FormulaFault {
  const blank = cells.find(
    ({ name }) =>
      name !== formulaName(name) && formula.includes(name) && !formula.includes(`"${name}`),
  );
  return blank
    ? { ...fault, hint: `in a formula "${blank.name}" is written ${formulaName(blank.name)}` }
    : fault;
}

/** A formula cut off at a comma was written inside braces or brackets without quotes. */
export function unquoted({ formula }: Cell, fault: FormulaFault): FormulaFault {
  return isCutFormula(`=${formula}`) ? { ...fault, hint: quoteFormula } : fault;
}

export function formulaProblem(
  cell: Cell,
  { message, hint, offset }: FormulaFault,
  source: Source,
): Problem {
  return {
    code: 'formula',
    message: `the formula of "${cell.name}" ${message}`,
    at: placeIn(cell, offset, source),
    ...(hint === undefined ? {} : { hint }),
  };
}

/** The place inside a formula where it stands on one line as it is read, else the whole of it. */
function placeIn(cell: Cell, offset: number | undefined, source: Source): Place {
  const at = source.at(cell.path);
  if (offset === undefined) return at;
  const line = source.texts.get(at.file)?.split('\n')[at.line - 1] ?? '';
  const start = line.indexOf(cell.formula, at.col - 1);
  return start < 0 ? at : { file: at.file, line: at.line, col: start + offset + 1 };
}

/** Names that formulas could not use, or that mean something already. */
export function nameProblem(
  cell: Cell,
  cells: readonly Cell[],
  scope: Scope,
  source: Source,
): Problem[] {
  const name = formulaName(cell.name);
  const at = source.at(['cells', cell.name], { key: true });
  const refuse = (message: string, hint: string): Problem[] => [
    { code: 'cell-name', message: `the cell "${cell.name}" ${message}`, at, hint },
  ];
  if (!/^[\p{L}_][\p{L}\p{N}_]*$/u.test(name))
    return refuse(
      'has a name that formulas cannot write',
      'use letters, digits and blanks, a letter first',
    );
  if (scope.functions.has(name) || name === 'if' || name === 'pi')
    return refuse('is called like a function', `call it otherwise, for example "my ${cell.name}"`);
  if (scope.named(name))
    return refuse(
      'is called like a value of the file',
      `call it otherwise, for example "my ${cell.name}"`,
    );
  if (formulaUnits.has(name))
    return refuse('is called like a unit', `call it otherwise, for example "my ${cell.name}"`);
  const twin = cells.find((other) => other !== cell && formulaName(other.name) === name);
  return twin && cells.indexOf(twin) < cells.indexOf(cell)
    ? refuse(`is the same in formulas as "${twin.name}"`, 'give one of them another name')
    : [];
}

export function cycleProblem(
  cycle: readonly string[],
  cells: readonly Cell[],
  source: Source,
): Problem {
  const lines = cycle.map((name) => {
    const cell = cells.find((entry) => formulaName(entry.name) === name);
    if (!cell) return name;
    const { file, line } = source.at(cell.path);
    return `${cell.name} (line ${line}${file === source.file ? '' : ` of ${file}`})`;
  });
  const first = cells.find((entry) => formulaName(entry.name) === cycle[0]);
  return {
    code: 'formula-circle',
    message: `cells need each other in a circle: ${lines.join(' → ')}`,
    at: source.at(first?.path ?? ['cells']),
    hint: 'break the circle by giving one of them a number',
  };
}
