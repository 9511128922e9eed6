import { dimensionText, type Exponents, isSame } from './dimensions.ts';
import { FormulaError, type NumberType, type Value, type ValueType } from './values.ts';

/** A formula ready to run: its type, and its value whenever it is asked. */
export interface Compiled {
  readonly type: ValueType;
  readonly run: () => Value;
}

/** A type as messages name it. */
export function typeText(type: ValueType): string {
  if (type.kind === 'text') return 'a text';
  if (type.kind === 'truth') return 'a yes or no';
  return `${type.isVector ? 'a list of ' : ''}${dimensionText(type.exponents)}`;
}

/** The type of a number or list. @throws FormulaError for texts and comparisons, naming where they stand */
export function numberType(type: ValueType, where: string): NumberType {
  if (type.kind === 'number') return type;
  const what = type.kind === 'text' ? 'a text' : 'a yes or no';
  throw new FormulaError(`gives ${what} to ${where}, which takes numbers`);
}

/** The dimension that two numbers share. @throws FormulaError naming both if they differ */
export function same(a: NumberType, b: NumberType, sign: string): Exponents {
  if (isSame(a.exponents, b.exponents)) return a.exponents;
  const [left, right] = [dimensionText(a.exponents), dimensionText(b.exponents)];
  throw new FormulaError(
    `does not fit: ${left} ${sign} ${right}`,
    'both sides must be of one kind',
  );
}
