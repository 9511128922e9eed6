import { type Compiled, numberType, same, typeText } from './compiled.ts';
import { combined, dimensionText, type Exponents, isSame, plain, raised } from './dimensions.ts';
import { type Expression, type Operator, operators } from './expression.ts';
import {
  entrywise,
  FormulaError,
  isSameType,
  type NumberType,
  number,
  type Value,
} from './values.ts';

/** What operators do to values that are ready to run, with their dimensions checked once. */

const comparisons: Readonly<Partial<Record<Operator, (a: Value, b: Value) => boolean>>> = {
  smaller: (a, b) => a < b,
  smallerEq: (a, b) => a <= b,
  larger: (a, b) => a > b,
  largerEq: (a, b) => a >= b,
  equal: (a, b) => a === b,
  unequal: (a, b) => a !== b,
};

export function operation(
  operator: Operator,
  args: readonly Compiled[],
  right?: Expression,
): Compiled {
  const [a, b] = args;
  if (operator === 'and' || operator === 'or' || operator === 'not') return logic(operator, a, b);
  const compare = comparisons[operator];
  if (compare && a && b) return comparison(operator, compare, a, b);
  const types = args.map((arg) => numberType(arg.type, `"${operators[operator]}"`));
  const [left, other] = types;
  if (!left) throw new FormulaError('is incomplete');
  const isVector = types.some((type) => type.isVector);
  const made = (exponents: Exponents, f: (x: number, y: number) => number): Compiled => ({
    type: number(exponents, isVector),
    run: isVector
      ? () =>
          entrywise(
            f,
            args.map(({ run }) => run()),
          )
      : scalar(f, a, b),
  });
  if (!other) return made(left.exponents, operator === 'unaryMinus' ? (x) => -x : (x) => x);
  switch (operator) {
    case 'add':
      return made(same(left, other, '+'), (x, y) => x + y);
    case 'subtract':
      return made(same(left, other, '-'), (x, y) => x - y);
    case 'multiply':
      return made(combined(left.exponents, other.exponents, 1), (x, y) => x * y);
    case 'divide':
      return made(combined(left.exponents, other.exponents, -1), (x, y) => x / y);
    default:
      return made(powerOf(left, other, right), (x, y) => x ** y);
  }
}

/** A power of something with a unit must be a plain number written out, so that its unit is known. */
function powerOf(base: NumberType, power: NumberType, written: Expression | undefined): Exponents {
  if (!isSame(power.exponents, plain))
    throw new FormulaError(`raises to a power with a unit: ${dimensionText(power.exponents)}`);
  if (isSame(base.exponents, plain)) return plain;
  const value = written && writtenNumber(written);
  if (value !== undefined) return raised(base.exponents, value);
  throw new FormulaError(
    `raises ${dimensionText(base.exponents)} to a power that is not written out as a number`,
    'divide by its unit first',
  );
}

function writtenNumber(expression: Expression): number | undefined {
  if (expression.kind === 'number') return expression.value;
  if (expression.kind !== 'operation') return undefined;
  const [a, b] = expression.args.map(writtenNumber);
  if (expression.operator === 'unaryMinus' && a !== undefined) return -a;
  if (expression.operator === 'divide' && a !== undefined && b !== undefined) return a / b;
  return undefined;
}

/** Numbers alone need no list to be looked for: the way of nearly every formula. */
function scalar(f: (x: number, y: number) => number, a?: Compiled, b?: Compiled): () => number {
  const [left, right] = [a?.run, b?.run];
  if (!left) throw new FormulaError('is incomplete');
  return right ? () => f(Number(left()), Number(right())) : () => f(Number(left()), 0);
}

function comparison(
  operator: Operator,
  compare: (a: Value, b: Value) => boolean,
  a: Compiled,
  b: Compiled,
): Compiled {
  const run = () => compare(a.run(), b.run());
  const isText = a.type.kind === 'text' && b.type.kind === 'text';
  if (isText && (operator === 'equal' || operator === 'unequal'))
    return { type: { kind: 'truth' }, run };
  const sign = operators[operator];
  const [left, right] = [numberType(a.type, `"${sign}"`), numberType(b.type, `"${sign}"`)];
  same(left, right, sign);
  if (left.isVector || right.isVector)
    throw new FormulaError(
      `compares a whole list with "${sign}"`,
      'take one number of it first: min(…), max(…), mean(…) or at(…)',
    );
  return { type: { kind: 'truth' }, run };
}

function logic(
  operator: 'and' | 'or' | 'not',
  a: Compiled | undefined,
  b: Compiled | undefined,
): Compiled {
  for (const arg of [a, b])
    if (arg && arg.type.kind !== 'truth')
      throw new FormulaError(`gives a number or text to "${operator}", which takes comparisons`);
  const runs = {
    and: () => a?.run() === true && b?.run() === true,
    or: () => a?.run() === true || b?.run() === true,
    not: () => a?.run() !== true,
  };
  return { type: { kind: 'truth' }, run: runs[operator] };
}

export function choice(args: readonly Compiled[]): Compiled {
  const [condition, yes, no] = args;
  if (!condition || !yes || !no) throw new FormulaError('is incomplete');
  if (condition.type.kind !== 'truth')
    throw new FormulaError('chooses by something that is not a comparison');
  if (!isSameType(yes.type, no.type)) {
    const [one, other] = [yes, no].map(({ type }) => typeText(type));
    throw new FormulaError(`gives ${one} in one case and ${other} in the other`);
  }
  return { type: yes.type, run: () => (condition.run() === true ? yes : no).run() };
}
