import { toRadians } from '../../numeric/degrees.ts';
import { didYouMean } from '../didYouMean.ts';
import { type Compiled, numberType, same } from './compiled.ts';
import { type Exponents, formulaUnits, isSame, plain } from './dimensions.ts';
import type { Expression } from './expression.ts';
import { choice, operation } from './operations.ts';
import { FormulaError, longestVector, number, type Value, type ValueType } from './values.ts';

/** A value that a formula may name: its type is known before it can be read. */
export interface Named {
  readonly type: ValueType;
  readonly read: () => Value;
}

/** A function that a formula may call. */
export interface FormulaFunction {
  readonly name: string;
  /** Type of the result. @throws FormulaError if the arguments are not what it takes */
  readonly typeOf: (args: readonly ValueType[]) => ValueType;
  readonly run: (args: readonly Value[]) => Value;
}

/** What a formula can see. */
export interface Scope {
  readonly named: (name: string) => Named | undefined;
  readonly names: readonly string[];
  readonly functions: ReadonlyMap<string, FormulaFunction>;
}

/**
 * Turns a checked expression into a function over SI numbers, with every dimension checked once.
 *
 * @throws FormulaError with what is wrong, in words that follow "the formula"
 */
export function compile(expression: Expression, scope: Scope): Compiled {
  switch (expression.kind) {
    case 'number':
      return constant(number(plain), expression.value);
    case 'text':
      return constant({ kind: 'text' }, expression.value);
    case 'truth':
      return constant({ kind: 'truth' }, expression.value);
    case 'name':
      return nameValue(expression.name, scope);
    case 'operation':
      return operation(
        expression.operator,
        expression.args.map((arg) => compile(arg, scope)),
        expression.args[1],
      );
    case 'call':
      return call(
        expression.name,
        expression.args.map((arg) => compile(arg, scope)),
        scope,
      );
    case 'choice':
      return choice(expression.args.map((arg) => compile(arg, scope)));
    case 'list':
      return list(expression.args.map((arg) => compile(arg, scope)));
    case 'range':
      return range(expression.args.map((arg) => compile(arg, scope)));
  }
}

const constant = (type: ValueType, value: Value): Compiled => ({ type, run: () => value });

function nameValue(name: string, scope: Scope): Compiled {
  const named = scope.named(name);
  if (named) return { type: named.type, run: named.read };
  const unit = formulaUnits.get(name);
  if (unit) return constant(number(unit.exponents), unit.size);
  if (name === 'pi') return constant(number(plain), Math.PI);
  const meant = didYouMean(name, [...scope.names, ...formulaUnits.keys()]);
  const hint = scope.functions.has(name)
    ? `${name} is a function: write ${name}(…)`
    : meant && `did you mean ${meant}?`;
  throw new FormulaError(`uses "${name}", which is neither a value of this file nor a unit`, hint);
}

function call(name: string, args: readonly Compiled[], scope: Scope): Compiled {
  if (name === 'if') {
    if (args.length === 3) return choice(args);
    throw new FormulaError('calls if with other than a comparison and two values');
  }
  const found = scope.functions.get(name);
  if (!found) {
    const meant = didYouMean(name, ['if', ...scope.functions.keys()]);
    throw new FormulaError(
      `calls "${name}", which is no function here`,
      meant && `did you mean ${meant}(…)?`,
    );
  }
  const type = found.typeOf(args.map((arg) => arg.type));
  return { type, run: () => found.run(args.map(({ run }) => run())) };
}

function list(args: readonly Compiled[]): Compiled {
  const types = args.map(({ type }) => numberType(type, 'a list'));
  const [first] = types;
  if (!first) throw new FormulaError('holds an empty list');
  for (const type of types) {
    same(first, type, ',');
    if (type.isVector) throw new FormulaError('puts a list into a list');
  }
  return {
    type: number(first.exponents, true),
    run: () => args.map(({ run }) => Number(run())),
  };
}

/** Step of a range of angles without one: the grid's, 2.5 degrees; of plain numbers: 1. */
const angleStep = toRadians(2.5);
const angle: Exponents = [0, 0, 0, 1];

function range(args: readonly Compiled[]): Compiled {
  const types = args.map(({ type }) => numberType(type, '":"'));
  const [first] = types;
  if (!first) throw new FormulaError('is incomplete');
  for (const type of types) {
    same(first, type, ':');
    if (type.isVector) throw new FormulaError('has a list as an end of a range');
  }
  const isAngle = isSame(first.exponents, angle);
  if (args.length === 2 && !isAngle && !isSame(first.exponents, plain))
    throw new FormulaError('has a range without a step', 'write from : step : to');
  return {
    type: number(first.exponents, true),
    run: () => {
      const numbers = args.map(({ run }) => Number(run()));
      const [from, to] = [numbers[0] ?? 0, numbers.at(-1) ?? 0];
      const step = numbers.length === 3 ? (numbers[1] ?? 0) : isAngle ? angleStep : 1;
      const count = Math.floor((to - from) / step + 1e-9) + 1;
      if (!(step > 0) || !(count >= 1) || count > longestVector)
        throw new FormulaError(
          'has a range that is empty or too long',
          `from the smaller to the larger in at most ${longestVector} steps`,
        );
      return Array.from({ length: count }, (_, i) => from + i * step);
    },
  };
}
