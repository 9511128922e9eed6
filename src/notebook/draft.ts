import type { Path } from './scenario.ts';

/**
 * A value of the file's shape with holes: what was missing or of the wrong kind is undefined,
 * because that was already reported and the rest is to be checked all the same.
 */
export type Draft<T> = T extends string | number
  ? T | undefined
  : T extends readonly (infer Item)[]
    ? readonly Draft<Item>[] | undefined
    : { readonly [Key in keyof T]?: Draft<T[Key]> | undefined } | undefined;

/**
 * Makes a draft: a copy of plain data in which the values at some paths are undefined.
 *
 * @param value plain data of shape T but for the broken paths
 * @param broken paths whose values cannot be used; places in lists are kept
 * @returns the copy; never throws
 */
export function draftOf<T>(value: unknown, broken: readonly Path[]): Draft<T> {
  if (broken.some((path) => path.length === 0)) return undefined as Draft<T>;
  const copy: unknown = structuredClone(value);
  for (const path of broken) blank(copy, path);
  // The only cast of the file's data: the schema has refused or blanked whatever is not T.
  return copy as Draft<T>;
}

/** Made undefined, not deleted: a deleted entry of a list would move the others up. */
function blank(value: unknown, path: Path): void {
  const [step = '', ...rest] = path;
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return;
  if (rest.length === 0) Reflect.set(value, step, undefined);
  else blank(Reflect.get(value, step), rest);
}
