import { type Exponents, isSame } from './dimensions.ts';

/** One number in SI, one an angle of the grid or of a list, a text, or yes or no. */
export type Value = number | readonly number[] | string | boolean;

/** What a value is, known before anything is computed. */
export type ValueType =
  | { readonly kind: 'number'; readonly exponents: Exponents; readonly isVector: boolean }
  | { readonly kind: 'text' }
  | { readonly kind: 'truth' };

export type NumberType = ValueType & { kind: 'number' };

export const number = (exponents: Exponents, isVector = false): NumberType => ({
  kind: 'number',
  exponents,
  isVector,
});

export function isSameType(a: ValueType, b: ValueType): boolean {
  if (a.kind !== 'number' || b.kind !== 'number') return a.kind === b.kind;
  return isSame(a.exponents, b.exponents) && a.isVector === b.isVector;
}

/** Longest vector a formula may make. */
export const longestVector = 2000;

/** A mistake that shows only when a formula is computed, in words that follow "the formula". */
export class FormulaError extends Error {
  readonly hint: string | undefined;

  constructor(message: string, hint?: string) {
    super(message);
    this.hint = hint;
  }
}

/** Applies a function of numbers entry by entry; a single number goes with every entry. */
export function entrywise(
  f: (...numbers: number[]) => number,
  args: readonly Value[],
): number | readonly number[] {
  const vectors = args.filter((arg): arg is readonly number[] => Array.isArray(arg));
  const [first] = vectors;
  if (!first) return f(...(args as number[]));
  const other = vectors.find(({ length }) => length !== first.length);
  if (other)
    throw new FormulaError(
      `puts a list of ${first.length} and one of ${other.length} numbers together`,
      'lists must be of one length',
    );
  return first.map((_, i) =>
    f(...args.map((arg) => (Array.isArray(arg) ? (arg[i] as number) : (arg as number)))),
  );
}
