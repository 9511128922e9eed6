import { modelFunctions, modelNames, modelScope } from '../../functions/modelScope.ts';
import type { Step } from '../../functions/step.ts';
import { formulaName } from '../../notebook/formula/cellProblems.ts';
import { cellText } from '../../notebook/formula/cellText.ts';
import { askFormula, type CellResult } from '../../notebook/formula/evaluateCells.ts';
import type { Expression } from '../../notebook/formula/expression.ts';
import { expressionText } from '../../notebook/formula/expressionText.ts';
import { loadParser } from '../../notebook/formula/mathjsParser.ts';
import {
  type FormulaFault,
  formulaText,
  type ParseTree,
  parseFormula,
} from '../../notebook/formula/parseFormula.ts';
import type { Source } from '../../notebook/text/source.ts';
import type { Results } from '../../run.ts';
import { type Tracing, tracing } from './modelSteps.ts';
import type { TraceNode } from './traceNode.ts';

/**
 * The tree behind a formula's answer: the cells, values and functions it uses, the steps of the model
 * behind those, down to what the file says, what was assumed, and the tables with their sources.
 *
 * @param source the file as it was evaluated, for the lines
 * @returns the tree, or what is wrong with the formula in words that follow "the formula"
 */
export async function trace(
  results: Results,
  source: Source,
  formula: string,
): Promise<{ readonly tree: TraceNode } | { readonly fault: FormulaFault }> {
  const tree = new Tree(results, source, await loadParser());
  const found = tree.answer(formula);
  if ('fault' in found) return found;
  const { cell, ...result } = found.result;
  const parts = tree.partsOf(formula);
  const [only] = parts;
  // A formula that is one call has one answer, not an answer that rests on itself.
  if (only && parts.length === 1 && only.what === cell.formula) return { tree: only };
  return { tree: { what: cell.formula, value: cellText({ cell, ...result }), parts } };
}

/** Grows the tree of one run; a cell or a step that is used twice is one object. */
class Tree {
  private readonly results: Results;
  private readonly source: Source;
  private readonly parse: ParseTree;
  private readonly model: Tracing;
  private readonly cells = new Map<string, TraceNode>();

  constructor(results: Results, source: Source, parse: ParseTree) {
    this.results = results;
    this.source = source;
    this.parse = parse;
    this.model = tracing(results, source, (formula) => this.partsOf(formula));
  }

  answer(formula: string) {
    return askFormula(formula, this.results.cells, modelScope(this.results), this.parse);
  }

  /** What a formula rests on: the names and calls in it, each once, in the order of writing. */
  partsOf(formula: string): readonly TraceNode[] {
    const { expression } = parseFormula(formulaText(formula), this.parse);
    return expression ? [...new Set(this.nodesIn(expression))] : [];
  }

  private nodesIn(expression: Expression): readonly TraceNode[] {
    if (expression.kind === 'name') return this.nameNodes(expression.name);
    const inside = 'args' in expression ? expression.args.flatMap((arg) => this.nodesIn(arg)) : [];
    if (expression.kind !== 'call') return inside;
    const called = this.callNode(expression);
    return called ? [called, ...inside] : inside;
  }

  /** A call of the model; functions of numbers add nothing to their arguments. */
  private callNode(call: Expression & { readonly kind: 'call' }): TraceNode | undefined {
    const found = modelFunctions(this.results).find(({ name }) => name === call.name);
    if (!found || !('rests' in found)) return undefined;
    const text = expressionText(call);
    const args = call.args.map((arg) => {
      const answer = this.answer(expressionText(arg));
      return 'result' in answer ? answer.result.value : '';
    });
    const steps: readonly Step[] = found.rests(args);
    const answer = this.answer(text);
    return {
      what: text,
      ...('result' in answer ? { value: cellText(answer.result) } : {}),
      parts: steps.map((step) => this.model.step(step)),
    };
  }

  private nameNodes(name: string): readonly TraceNode[] {
    const cell = this.results.cells.find((result) => formulaName(result.cell.name) === name);
    if (cell) return [this.cellNode(cell)];
    const path = modelNames(this.results).find((entry) => entry.name === name)?.path;
    return path ? this.model.input(path) : [];
  }

  private cellNode(result: CellResult): TraceNode {
    const { name, formula, path } = result.cell;
    const known = this.cells.get(name);
    if (known) return known;
    const node: TraceNode = {
      what: `cells.${name}: = ${formula}`,
      value: cellText(result),
      at: this.source.at(path),
      parts: this.partsOf(formula),
    };
    this.cells.set(name, node);
    return node;
  }
}
