import { compile, type Scope } from './compile.ts';
import type { Compiled } from './compiled.ts';
import { type Expression, namesIn } from './expression.ts';
import { Graph } from './graph.ts';
import { FormulaError, type Value, type ValueType } from './values.ts';

/** One formula of a sheet by the name that others use. */
export interface SheetFormula {
  readonly name: string;
  readonly expression: Expression;
}

/** What became of a formula: a value, a mistake of its own, or waiting for another that has one. */
export type Outcome =
  | { readonly type: ValueType; readonly value: Value; readonly error?: undefined }
  | { readonly error: FormulaError | 'waiting'; readonly type?: undefined };

/** Where one formula stands while a sheet is computed. */
interface Slot {
  readonly formula: SheetFormula;
  readonly index: number;
  compiled: Compiled | undefined;
}

/**
 * Formulas that may use one another, in any order of writing, and values from outside.
 *
 * Each is compiled once, when what it needs has a type, and run again only when something it needs
 * changed.
 */
export class Sheet {
  /** Names along a circle of formulas that need each other; undefined if there is none. */
  readonly cycle: readonly string[] | undefined;
  private readonly slots: ReadonlyMap<string, Slot>;
  private readonly graph: Graph;
  private readonly scope: Scope;
  private readonly values: (Value | undefined)[];
  private readonly errors: (FormulaError | 'waiting' | undefined)[];

  /** @param outside names, functions and units that formulas see besides each other */
  constructor(formulas: readonly SheetFormula[], outside: Scope) {
    this.slots = new Map(
      formulas.map((formula, index) => [
        formula.name,
        { formula, index, compiled: undefined } satisfies Slot,
      ]),
    );
    this.values = formulas.map(() => undefined);
    this.errors = formulas.map(() => 'waiting');
    this.scope = {
      functions: outside.functions,
      names: [...this.slots.keys(), ...outside.names],
      named: (name) => this.fromSheet(name) ?? outside.named(name),
    };
    this.graph = new Graph(
      [...this.slots.values()].map((slot) => ({
        key: slot.formula.name,
        needs: namesIn(slot.formula.expression).filter((name) => this.slots.has(name)),
        compute: () => this.compute(slot),
      })),
    );
    this.cycle = this.graph.cycle;
  }

  /** Computes every formula that is not kept waiting by a circle. */
  computeAll(): void {
    this.graph.computeAll();
  }

  /** What a formula came to. */
  outcome(name: string): Outcome {
    const slot = this.slots.get(name);
    const error = slot ? this.errors[slot.index] : 'waiting';
    const value = slot && this.values[slot.index];
    if (error !== undefined || value === undefined || !slot?.compiled)
      return { error: error ?? 'waiting' };
    return { type: slot.compiled.type, value };
  }

  /** Puts another number (SI) in the place of a formula and computes what depends on it. */
  change(name: string, value: number): void {
    const slot = this.slots.get(name);
    if (!slot?.compiled) return;
    slot.compiled = { type: slot.compiled.type, run: () => value };
    this.values[slot.index] = value;
    this.graph.recompute([name]);
  }

  private fromSheet(name: string) {
    const slot = this.slots.get(name);
    if (!slot) return undefined;
    if (!slot.compiled) throw waiting;
    const { index } = slot;
    const read = () => {
      const value = this.values[index];
      if (value === undefined) throw waiting;
      return value;
    };
    return { type: slot.compiled.type, read };
  }

  /** Computes one formula; answers whether its value is another than before. */
  private compute(slot: Slot): boolean {
    const { index, formula } = slot;
    const before = this.values[index];
    try {
      slot.compiled ??= compile(formula.expression, this.scope);
      const value = slot.compiled.run();
      this.values[index] = checked(value);
      this.errors[index] = undefined;
      return value !== before;
    } catch (error) {
      if (error !== waiting && !(error instanceof FormulaError)) throw error;
      this.errors[index] = error instanceof FormulaError && error !== waiting ? error : 'waiting';
      this.values[index] = undefined;
      return true;
    }
  }
}

/** Thrown where a formula needs one that has no value. */
const waiting = new FormulaError('waits for another formula');

/** A number that is none is a mistake to be told, never a value to be passed on. */
function checked(value: Value): Value {
  const isNumber = Array.isArray(value) ? value.every(Number.isFinite) : !Number.isNaN(value);
  if (isNumber && value !== Infinity && value !== -Infinity) return value;
  throw new FormulaError(
    'has no finite value',
    'something is divided by zero, or a root or logarithm is taken of a negative number',
  );
}
