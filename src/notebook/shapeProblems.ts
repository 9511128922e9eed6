import { z } from 'zod';
import { didYouMean } from './didYouMean.ts';
import { exampleAt, exampleText } from './exampleAt.ts';
import { fittingExample } from './fittingExample.ts';
import { colonHint, isCutFormula, meantName, quoteFormula, unknownNameHint } from './nameHint.ts';
import { bareNumberHint, tempoHint } from './quantitySlips.ts';
import type { Path } from './scenario.ts';
import { meantOption, schemaAt, unwrap, valueAt } from './schemaAt.ts';
import type { Problem } from './text/problem.ts';
import type { Source } from './text/source.ts';
import { lastName, pathName } from './valueName.ts';

type Issue = z.core.$ZodIssue;

/**
 * Turns what a schema found wrong into located problems.
 *
 * Unions are not reported as such: the branch that the coach evidently meant is followed, known
 * by its first key (`lift:`, `hold:` or `isokinetic:`).
 *
 * @param schema the schema that refused the value
 * @param issues what zod reported
 * @param source the file
 * @returns one problem a place, and the paths whose values cannot be used; never throws
 */
export function shapeProblems(
  schema: z.core.$ZodType,
  issues: readonly Issue[],
  source: Source,
): { readonly problems: readonly Problem[]; readonly broken: readonly Path[] } {
  const found = new Map<string, { problem: Problem; path: Path }>();
  const keep = (path: Path, problem: Problem): void => {
    const place = JSON.stringify(path);
    // One value may break several rules at once (0.5 is not whole and below 1): the first is kept.
    if (!found.has(place)) found.set(place, { problem, path });
  };
  const visit = (issue: Issue, above: Path): void => {
    const path = [...above, ...plainPath(issue.path)];
    const branch = issue.code === 'invalid_union' ? meantBranch(schema, issue, path, source) : [];
    if (branch.length > 0) for (const inner of branch) visit(inner, path);
    else if (issue.code === 'unrecognized_keys') {
      const isCut = Object.values(Object(valueAt(source.value, path))).some(isCutFormula);
      for (const key of issue.keys) {
        keep([...path, key], unknownKey(schema, path, key, source, isCut));
      }
    } else keep(path, valueProblem(schema, issue, path, source));
  };
  for (const issue of issues) visit(issue, []);
  const entries = [...found.values()];
  return { problems: entries.map((e) => e.problem), broken: entries.map((e) => e.path) };
}

const plainPath = (path: readonly PropertyKey[]): Path =>
  path.map((step) => (typeof step === 'number' ? step : String(step)));

function valueProblem(schema: z.core.$ZodType, issue: Issue, path: Path, source: Source): Problem {
  const value = valueAt(source.value, path);
  const isMissing = value === undefined;
  const isEmpty = isMissing || value === null;
  // zod calls 2.5 for a whole number a wrong type too; to a coach it is a wrong number.
  const isFraction = issue.code === 'invalid_type' && issue.expected === 'int';
  const isWrongKind = (issue.code === 'invalid_type' && !isFraction) || isEmpty;
  const name = isWrongKind ? pathName(path) : lastName(path);
  const hint = isEmpty ? missingHint(schema, path, source) : valueHint(schema, issue, path, source);
  return {
    code: isMissing ? 'missing' : isWrongKind ? 'wrong-kind' : 'bad-value',
    message: `${name} ${ownExample(schema, issue.message, path, source)}`,
    at: source.at(path),
    ...(hint === undefined ? {} : { hint }),
  };
}

/** Messages give examples in flexion; the file may write angles as included ones. */
function ownExample(schema: z.core.$ZodType, message: string, path: Path, source: Source): string {
  const plain = exampleAt(schema, path, source.value, 'flexion');
  const own = exampleAt(schema, path, source.value);
  return typeof plain === 'string' ? message.replace(`"${plain}"`, () => `"${own}"`) : message;
}

function missingHint(schema: z.core.$ZodType, path: Path, source: Source): string | undefined {
  const name = path.at(-1);
  const own = exampleAt(schema, path, source.value, 'flexion');
  const fitting = fittingExample(path, source.value, own);
  const example = fitting === own ? exampleAt(schema, path, source.value) : fitting;
  if (typeof name !== 'string' || example === undefined) return undefined;
  return `add for example "${name}: ${exampleText(example)}"`;
}

function valueHint(
  schema: z.core.$ZodType,
  issue: Issue,
  path: Path,
  source: Source,
): string | undefined {
  const value = valueAt(source.value, path);
  if (issue.code === 'invalid_value' && typeof value === 'string') {
    const names = issue.values.map(String);
    const meant = didYouMean(value, names);
    if (meant !== undefined) return `did you mean "${meant}"?`;
    return names.length > 1 ? `known: ${names.join(', ')}` : undefined;
  }
  if (issue.code === 'invalid_union') return headHint(schema, path, source);
  if (issue.code !== 'invalid_type') return undefined;
  if (path.at(-1) === 'tempo' && typeof value === 'number') return tempoHint(String(value));
  if (issue.expected !== 'string' && typeof value === 'string') {
    const name = path.at(-1);
    const isNumber = issue.expected === 'number' || issue.expected === 'int';
    const number = isNumber && typeof name === 'string' ? bareNumberHint(value, name) : undefined;
    return number ?? colonHint(value);
  }
  const isGlued = issue.expected === 'array' && Object.keys(Object(value))[0]?.startsWith('-');
  return isGlued ? 'write a space after each dash: "- lift: back squat"' : undefined;
}

/** A group that is of no kind because the name that tells its kind is misspelt. */
function headHint(schema: z.core.$ZodType, path: Path, source: Source): string | undefined {
  const union = unwrap(schemaAt(schema, path, source.value, true));
  if (!(union instanceof z.ZodUnion)) return undefined;
  const heads = union.options.flatMap((option) =>
    option instanceof z.ZodObject ? Object.keys(option.shape).slice(0, 1) : [],
  );
  for (const name of Object.keys(Object(valueAt(source.value, path)))) {
    const meant = meantName(name, heads);
    if (meant !== undefined) return `did you mean "${meant}" instead of "${name}"?`;
  }
  return undefined;
}

/** @param isCut whether a formula beside the name was cut off by a comma, which makes such names */
function unknownKey(
  schema: z.core.$ZodType,
  path: Path,
  key: string,
  source: Source,
  isCut: boolean,
): Problem {
  const parent = schemaAt(schema, path, source.value);
  const known = parent instanceof z.ZodObject ? Object.keys(parent.shape) : [];
  const where = path.length > 0 ? ` in ${pathName(path)}` : '';
  const inside = parent instanceof z.ZodObject ? groupOf(parent, key) : undefined;
  const hint = isCut
    ? quoteFormula
    : inside === undefined
      ? unknownNameHint(key, known)
      : `it belongs inside ${inside}: write ${inside}: { ${key}: … }`;
  const at = source.at([...path, key], { key: true });
  return { code: 'unknown-key', message: `unknown name "${key}"${where}`, at, hint };
}

/** The group among a group's values that holds a name, if one does. */
function groupOf({ shape }: z.ZodObject, key: string): string | undefined {
  return Object.keys(shape).find((name) => {
    const child = unwrap(shape[name]);
    return child instanceof z.ZodObject && Object.hasOwn(child.shape, key);
  });
}

function meantBranch(
  schema: z.core.$ZodType,
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  source: Source,
): readonly Issue[] {
  const union = unwrap(schemaAt(schema, path, source.value, true));
  if (!(union instanceof z.ZodUnion)) return [];
  const index = meantOption(union, valueAt(source.value, path));
  return issue.errors[index] ?? [];
}
