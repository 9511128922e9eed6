import type { MathNode } from 'mathjs';
import { type Expression, type Operator, operators } from './expression.ts';

/** What is wrong with a formula, in words that follow "the formula". */
export interface FormulaFault {
  readonly message: string;
  readonly hint?: string;
  /** Place in the formula's text, from 0, where it is known. */
  readonly offset?: number;
}

export type Parsed =
  | { readonly expression: Expression; readonly fault?: undefined }
  | { readonly fault: FormulaFault; readonly expression?: undefined };

/** Turns text into mathjs's tree; the only thing of mathjs that a formula ever meets. */
export type ParseTree = (text: string) => MathNode;

/** Limits on one formula: far above what anyone writes, far below what could hold up a run. */
export const limits = { length: 1000, depth: 40, parts: 300 } as const;

/** A formula without its sign; a number with its unit needs none. */
export const formulaText = (written: string) => written.trim().replace(/^=\s*/, '');

/**
 * Reads a formula's text (without its "=") into a checked expression.
 *
 * mathjs parses, nothing more: its tree is walked against a list of what is allowed and rewritten,
 * so that no part of mathjs is left that could read files, define functions, or loop.
 *
 * @returns the expression, or what to say; never throws
 */
export function parseFormula(text: string, parseTree: ParseTree): Parsed {
  if (text.length > limits.length)
    return fault(
      `is ${text.length} characters long; at most ${limits.length} are read`,
      'split it into cells',
    );
  const strange = /[^\t\n\r\x20-\x7e\u00a0-\u024f\u0370-\u03ff\u2010-\u2212]/u.exec(text);
  if (strange)
    return fault(`has a character that is not read: "${strange[0]}"`, undefined, strange.index);
  if (nesting(text) > limits.depth) return fault(tooDeep);
  let tree: MathNode;
  try {
    tree = parseTree(text);
  } catch (error) {
    return syntaxFault(error);
  }
  try {
    return { expression: new Walk().rewrite(tree, 0) };
  } catch (error) {
    if (error instanceof Refused) return { fault: error.fault };
    throw error;
  }
}

const tooDeep = `is nested deeper than ${limits.depth} levels`;

const fault = (message: string, hint?: string, offset?: number): Parsed => ({
  fault: {
    message,
    ...(hint === undefined ? {} : { hint }),
    ...(offset === undefined ? {} : { offset }),
  },
});

/** Depth of brackets, and of signs in a row, before anything parses them. */
function nesting(text: string): number {
  let [depth, deepest] = [0, 0];
  for (const sign of text) {
    if ('([{'.includes(sign)) deepest = Math.max(deepest, ++depth);
    else if (')]}'.includes(sign)) depth--;
  }
  return deepest;
}

function syntaxFault(error: unknown): Parsed {
  const { message, char } = Object(error) as { message?: unknown; char?: unknown };
  const said = typeof message === 'string' ? message.replace(/ \(char \d+\)$/, '') : 'is not read';
  const plain = /unexpected end/i.test(said)
    ? 'ends too early'
    : `cannot be read: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
  return fault(plain, undefined, typeof char === 'number' ? Math.max(char - 1, 0) : undefined);
}

class Refused extends Error {
  readonly fault: FormulaFault;

  constructor(message: string, hint?: string) {
    super(message);
    this.fault = { message, ...(hint === undefined ? {} : { hint }) };
  }
}

/** Fields of mathjs's nodes that are looked at, whatever the kind. */
interface Tree {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: unknown;
  readonly fn?: unknown;
  readonly op?: unknown;
  readonly implicit?: unknown;
  readonly args?: readonly Tree[];
  readonly items?: readonly Tree[];
  readonly params?: readonly Tree[];
  readonly conditionals?: readonly string[];
  readonly content?: Tree;
  readonly condition?: Tree;
  readonly trueExpr?: Tree;
  readonly falseExpr?: Tree;
  readonly start?: Tree;
  readonly end?: Tree;
  readonly step?: Tree | null;
}

/** One walk over a tree, counting its parts. */
class Walk {
  private parts = 0;

  rewrite(node: MathNode | Tree, depth: number): Expression {
    if (++this.parts > limits.parts)
      throw new Refused(`has more than ${limits.parts} parts`, 'split it into cells');
    if (depth > limits.depth) throw new Refused(tooDeep);
    const tree = node as Tree;
    const all = (nodes: readonly (Tree | undefined)[]) =>
      nodes.map((part) => {
        if (!part) throw new Refused('is incomplete');
        return this.rewrite(part, depth + 1);
      });
    switch (tree.type) {
      case 'ConstantNode':
        return constant(tree.value);
      case 'SymbolNode':
        return { kind: 'name', name: String(tree.name) };
      case 'ParenthesisNode':
        return all([tree.content])[0] as Expression;
      case 'OperatorNode':
        return operation(tree, all(tree.args ?? []));
      case 'RelationalNode':
        return this.chain(tree, depth);
      case 'FunctionNode':
        return call(tree, all(tree.args ?? []));
      case 'ConditionalNode': {
        const [condition, yes, no] = all([tree.condition, tree.trueExpr, tree.falseExpr]);
        return {
          kind: 'choice',
          args: [condition, yes, no] as [Expression, Expression, Expression],
        };
      }
      case 'ArrayNode':
        return { kind: 'list', args: all(tree.items ?? []) };
      case 'RangeNode':
        return {
          kind: 'range',
          args: all(tree.step ? [tree.start, tree.step, tree.end] : [tree.start, tree.end]),
        };
      default:
        throw new Refused(...(notRead[tree.type] ?? ['holds something that formulas have not']));
    }
  }

  /** `a < b < c` means both. */
  private chain(tree: Tree, depth: number): Expression {
    const [params, signs] = [tree.params ?? [], tree.conditionals ?? []];
    const links = signs.map((sign, i): Expression => {
      const args = [params[i], params[i + 1]].map((part) => this.rewrite(part as Tree, depth + 2));
      return { kind: 'operation', operator: operatorOf(sign), args };
    });
    return links.reduce((left, right) => ({
      kind: 'operation',
      operator: 'and',
      args: [left, right],
    }));
  }
}

const notRead: Readonly<Record<string, readonly [string, string?]>> = {
  AssignmentNode: ['sets a name', 'give it a cell of its own; to compare, write =='],
  FunctionAssignmentNode: ['defines a function', 'formulas use the functions that are there'],
  BlockNode: ['holds several expressions', 'write one a cell'],
  AccessorNode: ['picks a part by a dot or square brackets', 'use at(vector, angle)'],
  IndexNode: ['picks a part by square brackets', 'use at(vector, angle)'],
  ObjectNode: ['holds braces', 'quote the whole formula if YAML made them'],
};

function constant(value: unknown): Expression {
  if (typeof value === 'boolean') return { kind: 'truth', value };
  if (typeof value === 'string') return { kind: 'text', value };
  if (typeof value === 'number' && Number.isFinite(value)) return { kind: 'number', value };
  throw new Refused('holds a number that is not finite');
}

function operation(tree: Tree, args: readonly Expression[]): Expression {
  const [left] = args;
  const isSlope =
    tree.implicit === true &&
    left?.kind === 'operation' &&
    left.operator === 'divide' &&
    tree.args?.[0]?.type === 'OperatorNode' &&
    left.args[1]?.kind === 'number' &&
    left.args[1].value !== 100;
  if (isSlope)
    throw new Refused(
      'divides by a number with a unit or name after it, which can be read two ways',
      'write brackets: a / (2 m) or (a / 2) * m',
    );
  if (tree.fn === 'mod')
    throw new Refused('has % between two values', 'write a share as 80 % * mass');
  return { kind: 'operation', operator: operatorOf(String(tree.fn)), args };
}

function operatorOf(name: string): Operator {
  if (Object.hasOwn(operators, name)) return name as Operator;
  const [message, hint] = otherOperators[name] ?? ['uses an operator that is not read'];
  throw new Refused(message, hint);
}

const otherOperators: Readonly<Record<string, readonly [string, string?]>> = {
  to: ['converts with "to" or "in"', 'say the unit to show under unit: of the cell'],
  dotMultiply: ['uses .*', 'plain * works angle by angle'],
  dotDivide: ['uses ./', 'plain / works angle by angle'],
  dotPow: ['uses .^', 'plain ^ works angle by angle'],
  factorial: ['uses !'],
};

function call(tree: Tree, args: readonly Expression[]): Expression {
  const fn = Object(tree.fn) as Tree;
  if (fn.type !== 'SymbolNode') throw new Refused('calls something that is not a function by name');
  return { kind: 'call', name: String(fn.name), args };
}
