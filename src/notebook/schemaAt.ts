import { z } from 'zod';
import type { Path } from './scenario.ts';
import { usualOptions } from './usualOptions.ts';

/**
 * Finds the branch that a value was evidently meant for: a list, a group known by its first key, or
 * else the usual one if the union has one.
 *
 * @returns the branch's place among the options, or -1; never throws
 */
export function meantOption(union: z.ZodUnion, value: unknown): number {
  const { options } = union;
  if (Array.isArray(value)) return options.findIndex((option) => option instanceof z.ZodArray);
  const usual = options.findIndex((option) => usualOptions.has(option));
  if (!isGroup(value)) return usual;
  const groups = options.filter((option) => option instanceof z.ZodObject);
  const [only] = groups;
  if (groups.length === 1 && only) return options.indexOf(only);
  const named = options.findIndex((option) => {
    const [head = ''] = option instanceof z.ZodObject ? Object.keys(option.shape) : [];
    return !usualOptions.has(option) && Object.hasOwn(value, head);
  });
  return named < 0 ? usual : named;
}

/**
 * Gives the schema that rules the value at a path.
 *
 * @param value the whole file's, by which branches of unions are chosen
 * @param asUnion stops before choosing a last branch
 * @returns undefined if the path leads out of the schema; never throws
 */
export function schemaAt(
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

/** The schema without its being optional; never throws. */
export function unwrap(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
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
