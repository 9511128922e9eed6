import { z } from 'zod';
import { didYouMean } from './didYouMean.ts';
import type { Problem } from './problem.ts';
import type { Path } from './scenario.ts';
import type { Source } from './source.ts';
import { lastName, pathName } from './valueName.ts';

type Issue = z.core.$ZodIssue;

/**
 * Turns what a schema found wrong into located problems.
 *
 * Unions are not reported as such: the branch that the coach evidently meant is followed, known
 * by its first key (`lift:` or `hold:`).
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
      for (const key of issue.keys) {
        keep([...path, key], unknownKey(schema, path, key, source));
      }
    } else keep(path, valueProblem(issue, path, source));
  };
  for (const issue of issues) visit(issue, []);
  const entries = [...found.values()];
  return { problems: entries.map((e) => e.problem), broken: entries.map((e) => e.path) };
}

const plainPath = (path: readonly PropertyKey[]): Path =>
  path.map((step) => (typeof step === 'number' ? step : String(step)));

function valueProblem(issue: Issue, path: Path, source: Source): Problem {
  const value = valueAt(source.value, path);
  const isMissing = value === undefined;
  // zod calls 2.5 for a whole number a wrong type too; to a coach it is a wrong number.
  const isFraction = issue.code === 'invalid_type' && issue.expected === 'int';
  const isWrongKind = (issue.code === 'invalid_type' && !isFraction) || isMissing || value === null;
  const name = isWrongKind ? pathName(path) : lastName(path);
  const hint = valueHint(issue, value);
  return {
    code: isMissing ? 'missing' : isWrongKind ? 'wrong-kind' : 'bad-value',
    message: `${name} ${issue.message}`,
    at: source.at(path),
    ...(hint === undefined ? {} : { hint }),
  };
}

function valueHint(issue: Issue, value: unknown): string | undefined {
  if (issue.code === 'invalid_value' && typeof value === 'string') {
    const names = issue.values.map(String);
    const meant = didYouMean(value, names);
    if (meant !== undefined) return `did you mean "${meant}"?`;
    return names.length > 1 ? `known: ${names.join(', ')}` : undefined;
  }
  if (issue.code !== 'invalid_type') return undefined;
  if (issue.expected !== 'string' && typeof value === 'string') return colonHint(value);
  const isGlued = issue.expected === 'array' && Object.keys(Object(value))[0]?.startsWith('-');
  return isGlued ? 'write a space after each dash: "- lift: back squat"' : undefined;
}

/** `code:SN-04` without a space is one text to YAML, not a name and a value. */
function colonHint(written: string): string | undefined {
  const parts = /^([A-Za-z][^:]*):(\S.*)$/s.exec(written);
  return parts ? `write a space after the colon: "${parts[1]}: ${parts[2]}"` : undefined;
}

function unknownKey(schema: z.core.$ZodType, path: Path, key: string, source: Source): Problem {
  const parent = schemaAt(schema, path, source.value);
  const known = parent instanceof z.ZodObject ? Object.keys(parent.shape) : [];
  const meant = didYouMean(key, known);
  const where = path.length > 0 ? ` in ${pathName(path)}` : '';
  const hint = slipHint(key) ?? (meant ? `did you mean "${meant}"?` : `known: ${known.join(', ')}`);
  const at = source.at([...path, key], { key: true });
  return { code: 'unknown-key', message: `unknown name "${key}"${where}`, at, hint };
}

function slipHint(key: string): string | undefined {
  if (/^-\S/.test(key)) return 'write a space after the dash';
  // `{ thigh: 41,5 cm }`: the comma ends the entry and the rest becomes a name.
  if (/^\d/.test(key)) return 'if a decimal comma stands before it, write a point, such as 41.5 cm';
  return colonHint(key);
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

/** Which branch a value was evidently meant for: a list, or a group known by its first key. */
function meantOption(union: z.ZodUnion, value: unknown): number {
  const { options } = union;
  if (Array.isArray(value)) return options.findIndex((option) => option instanceof z.ZodArray);
  if (!isGroup(value)) return -1;
  const groups = options.filter((option) => option instanceof z.ZodObject);
  const [only] = groups;
  if (groups.length === 1 && only) return options.indexOf(only);
  return options.findIndex((option) => {
    const [head = ''] = option instanceof z.ZodObject ? Object.keys(option.shape) : [];
    return Object.hasOwn(value, head);
  });
}

/** The schema that rules the value at a path; `asUnion` stops before choosing a last branch. */
function schemaAt(
  schema: z.core.$ZodType,
  path: Path,
  value: unknown,
  asUnion = false,
): z.core.$ZodType | undefined {
  let here: z.core.$ZodType | undefined = schema;
  for (const [index, step] of path.entries()) {
    here = chosen(here, valueAt(value, path.slice(0, index)));
    if (here instanceof z.ZodObject) here = here.shape[step];
    else if (here instanceof z.ZodRecord) here = here.valueType;
    else if (here instanceof z.ZodArray) here = here.element;
    else return undefined;
  }
  return asUnion ? here : chosen(here, valueAt(value, path));
}

function unwrap(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  return schema instanceof z.ZodOptional ? unwrap(schema.unwrap()) : schema;
}

function chosen(schema: z.core.$ZodType | undefined, value: unknown): z.core.$ZodType | undefined {
  const bare = unwrap(schema);
  if (!(bare instanceof z.ZodUnion)) return bare;
  return bare.options[meantOption(bare, value)];
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Gives the value at a path of plain data.
 *
 * @returns undefined if the path leads nowhere; never throws
 */
export function valueAt(value: unknown, path: Path): unknown {
  let here = value;
  for (const step of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) return undefined;
    here = Reflect.get(here, step);
  }
  return here;
}
