import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import type { Problem } from '../text/problem.ts';
import type { Source } from '../text/source.ts';
import { lastName } from '../valueName.ts';
import { formulaName } from './cellProblems.ts';
import { typeText } from './compiled.ts';
import { day, type Exponents, isSame, plain, year } from './dimensions.ts';
import { callsIn, type Expression, namesIn } from './expression.ts';
import { type FormulaFault, formulaText, type ParseTree, parseFormula } from './parseFormula.ts';
import type { Value, ValueType } from './values.ts';

/** A field of the file whose value is a formula. */
export interface FieldFormula {
  readonly path: Path;
  /** The name by which other formulas may use it, for body measures; else one that none can write. */
  readonly name: string;
  readonly expression: Expression;
}

/** Words of the file that are never numbers. */
const texts: ReadonlySet<string | number> = new Set([
  'title',
  'note',
  'code',
  'name',
  'source',
  'assumed',
  'like',
]);

/** Body measures that formulas may name. */
const bodyNames: ReadonlySet<string | number> = new Set(['mass', 'stature', 'training']);

/** Paths of the values that begin with "=", outside cells and texts. */
export function formulaPaths(value: unknown, path: Path = []): readonly Path[] {
  const last = path.at(-1);
  if (last !== undefined && texts.has(last)) return [];
  if (path[0] === 'cells' || path[0] === 'notebook') return [];
  if (typeof value === 'string') return value.trimStart().startsWith('=') ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  const entries = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return entries.flatMap(([key, item]) => formulaPaths(item, [...path, key]));
}

/** Reads the formulas of fields; what cannot be read is a problem at its place. */
export function readFieldFormulas(
  source: Source,
  paths: readonly Path[],
  parse: ParseTree,
): { readonly fields: readonly FieldFormula[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const fields = paths.flatMap((path): FieldFormula[] => {
    const text = formulaText(String(valueAt(source.value, path)));
    const { expression, fault } = parseFormula(text, parse);
    if (fault) problems.push(fieldProblem(source, path, fault));
    return expression ? [{ path, name: nameOf(path), expression }] : [];
  });
  return { fields, problems };
}

function nameOf(path: Path): string {
  const [owner, last] = path;
  const isBody = (owner === 'athlete' || owner === 'group') && path.length === 2;
  return isBody && last !== undefined && bodyNames.has(last) ? String(last) : path.join(' / ');
}

export function fieldProblem(source: Source, path: Path, { message, hint }: FormulaFault): Problem {
  return {
    code: 'formula',
    message: `the formula of ${lastName(path)} ${message}`,
    at: source.at(path),
    ...(hint === undefined ? {} : { hint }),
  };
}

/** Functions that formulas call, themselves or through the others they name. */
export function callsBehind(
  expression: Expression,
  formulas: ReadonlyMap<string, Expression>,
): ReadonlySet<string> {
  const [calls, seen] = [new Set<string>(), new Set<string>()];
  const waiting = [expression];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    for (const { name } of callsIn(next)) calls.add(name);
    for (const name of namesIn(next)) {
      const behind = formulas.get(formulaName(name));
      if (behind && !seen.has(name)) waiting.push(behind);
      seen.add(name);
    }
  }
  return calls;
}

/** Fields that hold bare numbers; other plain numbers are shares and written in per cent. */
const bareNumbers: ReadonlySet<string | number> = new Set([
  'sets',
  'reps',
  'weeks',
  'sessions per week',
  'week',
  'seconds',
  'reserve',
  'minutes per week',
  'along',
  'gain of the pull',
  'per leading',
  'count',
]);

const exponentsOf = (list: readonly number[]) => list as unknown as Exponents;
const degree = Math.PI / 180;

/** Units in which the reader takes each dimension. */
const written: readonly {
  readonly exponents: Exponents;
  readonly unit: string;
  readonly size: number;
}[] = [
  { exponents: exponentsOf([1, 0, 0, 0]), unit: 'kg', size: 1 },
  { exponents: exponentsOf([0, 1, 0, 0]), unit: 'm', size: 1 },
  { exponents: exponentsOf([0, 0, 1, 0]), unit: 's', size: 1 },
  { exponents: exponentsOf([0, 0, 0, 1]), unit: 'deg', size: degree },
  { exponents: exponentsOf([0, 0, -1, 1]), unit: 'deg/s', size: degree },
  { exponents: exponentsOf([1, 1, -2, 0]), unit: 'N', size: 1 },
  { exponents: exponentsOf([1, 2, -2, 0]), unit: 'N m', size: 1 },
  { exponents: exponentsOf([1, -1, 0, 0]), unit: 'kg/m', size: 1 },
];

/**
 * What a formula came to, as the reader of the field takes it: a bare number, or a number with its
 * unit as a coach would write it.
 *
 * @returns the value to put into the field, or what is wrong
 */
export function fieldValue(
  path: Path,
  type: ValueType,
  value: Value,
): { readonly value: number | string } | { readonly fault: FormulaFault } {
  const field = path.at(-1) ?? '';
  if (type.kind !== 'number' || typeof value !== 'number')
    return { fault: { message: `gives ${typeText(type)}, where one number is wanted` } };
  if (isSame(type.exponents, plain)) {
    return { value: bareNumbers.has(field) || isTrial(path) ? value : `${100 * value} %` };
  }
  if (field === 'within') return { value: `${value / (7 * day)} weeks` };
  if (field === 'training') return { value: `${value / year} years` };
  const unit = written.find(({ exponents }) => isSame(exponents, type.exponents));
  return unit
    ? { value: `${value / unit.size} ${unit.unit}` }
    : { fault: { message: `gives ${typeText(type)}, which no field of a file is measured in` } };
}

const isTrial = ([top, ...rest]: Path) =>
  (top === 'tests' || top === 'retests' || top === 'repeatability') &&
  (rest.includes('trials') || rest.includes('days') || rest.includes('people'));

/** The same plain data with other values at some paths. */
export function withValuesAt(
  value: unknown,
  values: readonly { readonly path: Path; readonly value: unknown }[],
): unknown {
  const copy: unknown = structuredClone(value);
  for (const { path, value: put } of values) {
    const owner = Object(valueAt(copy, path.slice(0, -1)));
    owner[path.at(-1) ?? ''] = put;
  }
  return copy;
}
