import { didYouMean } from '../notebook/didYouMean.ts';
import { typeText } from '../notebook/formula/compiled.ts';
import { dimensionText, type Exponents, isSame } from '../notebook/formula/dimensions.ts';
import type { DescribedFunction } from '../notebook/formula/library.ts';
import {
  FormulaError,
  type NumberType,
  type Value,
  type ValueType,
} from '../notebook/formula/values.ts';
import type { Step } from './step.ts';

/** One argument of a function: its name in the printed table, and what it must be. */
interface Parameter {
  readonly name: string;
  readonly is: 'text' | Exponents | 'list';
  readonly optional?: true;
}

export const asText = (name: string): Parameter => ({ name, is: 'text' });
export const asNumber = (name: string, is: Exponents): Parameter => ({ name, is });
export const asList = (name: string): Parameter => ({ name, is: 'list' });
export const orNone = (parameter: Parameter): Parameter => ({ ...parameter, optional: true });

/** A function of the model, with the steps of the model that its answer rests on. */
export interface ModelFunction extends DescribedFunction {
  readonly rests: (args: readonly Value[]) => readonly Step[];
}

/**
 * A function of the model that formulas may call, from a description of its arguments.
 *
 * @param returns type of the result by how many arguments are given, or by their types
 * @param run gets the arguments as they were declared: texts, numbers in SI, lists
 */
export function modelFunction(described: {
  readonly name: string;
  readonly parameters: readonly Parameter[];
  readonly gives: string;
  readonly returns: (args: readonly ValueType[]) => NumberType;
  readonly run: (args: readonly Value[]) => number | readonly number[];
  readonly example: DescribedFunction['example'];
  readonly rests: ModelFunction['rests'];
}): ModelFunction {
  const { name, parameters, gives, returns, run, example, rests } = described;
  const takes = parameters
    .map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name))
    .join(', ');
  return {
    name,
    takes,
    gives,
    example,
    run,
    rests,
    typeOf: (args) => {
      const least = parameters.filter(({ optional }) => !optional).length;
      if (args.length < least || args.length > parameters.length)
        throw new FormulaError(
          `calls ${name} with ${args.length} values`,
          `write ${name}(${takes})`,
        );
      args.forEach((type, i) => {
        const parameter = parameters[i];
        if (parameter && !isTaken(type, parameter))
          throw new FormulaError(
            `gives ${name} ${typeText(type)} as ${parameter.name}, which is ${wanted(parameter)}`,
            `write ${name}(${takes})`,
          );
      });
      return returns(args);
    },
  };
}

function isTaken(type: ValueType, { is }: Parameter): boolean {
  if (is === 'text') return type.kind === 'text';
  if (is === 'list') return type.kind === 'number' && type.isVector;
  return type.kind === 'number' && !type.isVector && isSame(type.exponents, is);
}

function wanted({ is }: Parameter): string {
  if (is === 'text') return 'a name in quotes';
  return is === 'list' ? 'a list' : dimensionText(is);
}

/** One of some things by its name. @throws FormulaError with the nearest name if there is none */
export function named<T extends { readonly name: string }>(
  kind: string,
  name: Value | undefined,
  among: readonly T[],
): T {
  const found = among.find((entry) => entry.name === name);
  if (found) return found;
  const names = among.map((entry) => entry.name);
  const meant = didYouMean(String(name), names);
  throw new FormulaError(
    `names the ${kind} "${String(name)}", which is not there`,
    meant
      ? `did you mean "${meant}"?`
      : names.length < 12
        ? `known: ${names.join(', ')}`
        : undefined,
  );
}
