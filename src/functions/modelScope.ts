import type { Named, Scope } from '../notebook/formula/compile.ts';
import { type Exponents, plain, year } from '../notebook/formula/dimensions.ts';
import { type DescribedFunction, library } from '../notebook/formula/library.ts';
import { number } from '../notebook/formula/values.ts';
import type { Path } from '../notebook/scenario.ts';
import type { Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import { turnAngle } from './angleConvention.ts';
import { athleteFunctions } from './athleteFunctions.ts';
import type { ModelFunction } from './modelFunction.ts';
import { programFunctions } from './programFunctions.ts';
import { angle, length, mass, time } from './quantities.ts';

/** A value of the scenario that formulas may name. */
export interface DescribedName {
  readonly name: string;
  readonly gives: string;
  readonly exponents: Exponents;
  readonly value: number;
  /** Where the file says it. */
  readonly path: Path;
}

/** Values of the scenario that formulas may name, in the order of the printed table. */
export function modelNames({ scenario, question }: Results): readonly DescribedName[] {
  const { subject, target, convention } = scenario;
  const { joint } = actions[question.action];
  const end = (at: number) => turnAngle(convention, joint, at);
  const of = (name: string, gives: string, exponents: Exponents, value: number, ...path: Path) => ({
    name,
    gives,
    exponents,
    value,
    path,
  });
  return [
    of('mass', 'body mass', mass, subject.mass, ...subject.path, 'mass'),
    of('stature', 'stature', length, subject.stature, ...subject.path, 'stature'),
    of(
      'training',
      'time trained so far',
      time,
      subject.trainingYears * year,
      ...subject.path,
      'training',
    ),
    of('target_from', 'start of the target range', angle, end(target.from), 'target', 'from'),
    of('target_to', 'end of the target range', angle, end(target.to), 'target', 'to'),
    ...(target.gain === undefined
      ? []
      : [of('wanted_gain', 'gain wanted inside it', plain, target.gain, 'target', 'gain')]),
  ];
}

/** Functions that formulas may call, in the order of the printed table. */
export function modelFunctions(results: Results): readonly (DescribedFunction | ModelFunction)[] {
  return [...athleteFunctions(results), ...programFunctions(results), ...library];
}

/** Everything that the formulas of a scenario can see besides each other. */
export function modelScope(results: Results): Scope {
  const names = new Map(
    modelNames(results).map(({ name, exponents, value }): [string, Named] => [
      name,
      { type: number(exponents), read: () => value },
    ]),
  );
  return {
    named: (name) => names.get(name),
    names: [...names.keys()],
    functions: new Map(modelFunctions(results).map((entry) => [entry.name, entry])),
  };
}
