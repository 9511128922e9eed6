import type { Cell } from '../scenario.ts';
import { type Problem, sortProblems } from '../text/problem.ts';
import type { Source } from '../text/source.ts';
import {
  cycleProblem,
  faultOf,
  formulaName,
  formulaProblem,
  nameProblem,
  unquoted,
  withBlankNames,
} from './cellProblems.ts';
import { cellText, expectationText } from './cellText.ts';
import { compile, type Scope } from './compile.ts';
import { type Compiled, typeText } from './compiled.ts';
import { type FormulaFault, formulaText, type ParseTree, parseFormula } from './parseFormula.ts';
import { Sheet } from './sheet.ts';
import { FormulaError, isSameType, type Value, type ValueType } from './values.ts';

/** A cell with what it came to. */
export interface CellResult {
  readonly cell: Cell;
  readonly type: ValueType;
  /** SI. */
  readonly value: Value;
  /** Size of the unit to show it in, SI. */
  readonly unitSize?: number;
  /** Bounds it should lie between, SI, and whether it does. */
  readonly expected?: { readonly least?: number; readonly most?: number; readonly holds: boolean };
}

/** The cells that came to something, and what is wrong with the others, located. */
export interface Cells {
  readonly results: readonly CellResult[];
  readonly problems: readonly Problem[];
}

/**
 * Computes the cells of a scenario in the order of their needs.
 *
 * @param scope values and functions that cells may use besides each other
 * @param parse mathjs's parser
 */
export function evaluateCells(
  cells: readonly Cell[],
  scope: Scope,
  source: Source,
  parse: ParseTree,
): Cells {
  const problems: Problem[] = cells.flatMap((cell) => nameProblem(cell, cells, scope, source));
  const report = (cell: Cell, fault: FormulaFault) =>
    problems.push(formulaProblem(cell, withBlankNames(cell.formula, fault, cells), source));
  const formulas = cells.flatMap((cell) => {
    const { expression, fault } = parseFormula(cell.formula, parse);
    if (fault) report(cell, unquoted(cell, fault));
    return expression ? [{ name: formulaName(cell.name), expression }] : [];
  });
  const sheet = new Sheet(formulas, scope);
  if (sheet.cycle) problems.push(cycleProblem(sheet.cycle, cells, source));
  sheet.computeAll();
  const results = cells.flatMap((cell): CellResult[] => {
    const { type, value, error } = { value: undefined, ...sheet.outcome(formulaName(cell.name)) };
    if (error instanceof FormulaError) report(cell, faultOf(error));
    if (!type || value === undefined) return [];
    try {
      return [
        {
          cell,
          type,
          value,
          ...shown(cell, type, scope, parse),
          ...kept(cell, type, value, scope, parse),
        },
      ];
    } catch (problem) {
      if (!(problem instanceof FormulaError)) throw problem;
      report(cell, faultOf(problem));
      return [];
    }
  });
  return { results, problems: sortProblems(problems) };
}

/**
 * One formula asked of a scenario that has been computed; it may use the cells.
 *
 * @returns what it came to, or what is wrong with it
 */
export function askFormula(
  formula: string,
  cells: readonly CellResult[],
  scope: Scope,
  parse: ParseTree,
): { readonly result: CellResult } | { readonly fault: FormulaFault } {
  const known = new Map(
    cells.map(({ cell, type, value }) => [formulaName(cell.name), { type, read: () => value }]),
  );
  const names = [...known.keys(), ...scope.names];
  const named = (name: string) => known.get(name) ?? scope.named(name);
  const cell: Cell = {
    name: formula,
    formula: formulaText(formula),
    chart: false,
    path: [],
  };
  const { expression, fault } = parseFormula(cell.formula, parse);
  const all = cells.map((one) => one.cell);
  if (fault) return { fault: withBlankNames(cell.formula, fault, all) };
  const sheet = new Sheet([{ name: 'asked', expression }], { ...scope, names, named });
  sheet.computeAll();
  const { type, value, error } = { value: undefined, ...sheet.outcome('asked') };
  if (type && value !== undefined) return { result: { cell, type, value } };
  return error instanceof FormulaError
    ? { fault: withBlankNames(cell.formula, faultOf(error), all) }
    : { fault: { message: 'has no value' } };
}

/** Cells that do not lie where they are expected, each at its expectation. */
export function brokenExpectations(cells: readonly CellResult[], source: Source): Problem[] {
  return cells
    .filter(({ expected }) => expected && !expected.holds)
    .map((result) => ({
      code: 'broken-expectation',
      message: `"${result.cell.name}" is ${cellText(result)}, expected ${expectationText(result)}`,
      at: source.at([...result.cell.path.slice(0, -1), 'expect']),
      hint: 'look for what changed, or change the expectation',
    }));
}

/** The unit to show a cell in; it must measure what the cell is. */
function shown(
  { unit }: Cell,
  type: ValueType,
  scope: Scope,
  parse: ParseTree,
): { readonly unitSize?: number } {
  if (unit === undefined) return {};
  const { type: measures, run } = compiled(unit === '%' ? '1/100' : `1 ${unit}`, scope, parse);
  if (type.kind !== 'number' || !isSameType({ ...type, isVector: false }, measures))
    throw new FormulaError(`gives ${typeText(type)}, which cannot be shown in ${unit}`);
  return { unitSize: Number(run()) };
}

/** Whether a cell lies where it is expected. */
function kept(
  { expect }: Cell,
  type: ValueType,
  value: Value,
  scope: Scope,
  parse: ParseTree,
): Pick<CellResult, 'expected'> {
  if (!expect) return {};
  const bound = (text: string | undefined) => {
    if (text === undefined) return undefined;
    const { type: measures, run } = compiled(text, scope, parse);
    if (type.kind !== 'number' || !isSameType({ ...type, isVector: false }, measures))
      throw new FormulaError(
        `gives ${typeText(type)}, but is expected to be ${typeText(measures)}`,
        'give the bounds in a unit of the same kind',
      );
    return Number(run());
  };
  const [least, most] = [bound(expect.least), bound(expect.most)];
  const values = [value].flat().map(Number);
  const holds = values.every((x) => x >= (least ?? -Infinity) && x <= (most ?? Infinity));
  return {
    expected: {
      ...(least === undefined ? {} : { least }),
      ...(most === undefined ? {} : { most }),
      holds,
    },
  };
}

function compiled(text: string, scope: Scope, parse: ParseTree): Compiled {
  const { expression, fault } = parseFormula(text, parse);
  if (fault) throw new FormulaError(`has "${text}" beside it, which ${fault.message}`, fault.hint);
  return compile(expression, scope);
}
