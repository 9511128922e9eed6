/**
 * A formula as this project understands it: what the checked tree may hold, and nothing else. Text
 * becomes one in `parseFormula.ts`; `compile.ts` turns it into a function.
 */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'truth'; readonly value: boolean }
  /** A cell, a value of the scenario, or a unit. */
  | { readonly kind: 'name'; readonly name: string }
  | {
      readonly kind: 'operation';
      readonly operator: Operator;
      readonly args: readonly Expression[];
    }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly Expression[] }
  /** `condition ? yes : no`. */
  | { readonly kind: 'choice'; readonly args: readonly [Expression, Expression, Expression] }
  | { readonly kind: 'list'; readonly args: readonly Expression[] }
  /** `from : to` in steps of one grid angle, or `from : step : to`. */
  | { readonly kind: 'range'; readonly args: readonly Expression[] };

/** Operators by mathjs's name for them, with the sign a coach writes. */
export const operators = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  pow: '^',
  unaryMinus: '-',
  unaryPlus: '+',
  smaller: '<',
  smallerEq: '<=',
  larger: '>',
  largerEq: '>=',
  equal: '==',
  unequal: '!=',
  and: 'and',
  or: 'or',
  not: 'not',
} as const;

export type Operator = keyof typeof operators;

/** Names that an expression uses, each once, in the order they appear. */
export function namesIn(expression: Expression): readonly string[] {
  const names = new Set<string>();
  visit(expression, (part) => {
    if (part.kind === 'name') names.add(part.name);
  });
  return [...names];
}

/** Calls that an expression makes. */
export function callsIn(expression: Expression): readonly (Expression & { kind: 'call' })[] {
  const calls: (Expression & { kind: 'call' })[] = [];
  visit(expression, (part) => {
    if (part.kind === 'call') calls.push(part);
  });
  return calls;
}

function visit(expression: Expression, see: (part: Expression) => void): void {
  see(expression);
  if ('args' in expression) for (const arg of expression.args) visit(arg, see);
}
