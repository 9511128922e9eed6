/**
 * Passes on an object if none of its values is undefined.
 *
 * Values that the coach got wrong are undefined and reported; an object with such a hole is not
 * used, but its other values were checked all the same.
 *
 * @returns the same object, or undefined; never throws
 */
export function complete<T extends object>(
  parts: {
    readonly [Key in keyof T]: T[Key] | undefined;
  },
): T | undefined {
  return hasNoHoles<T>(parts) ? parts : undefined;
}

function hasNoHoles<T extends object>(parts: object): parts is T {
  return Object.values(parts).every((value) => value !== undefined);
}

/**
 * Gives an optional entry to spread into an object.
 *
 * @returns `{ [name]: value }`, or an empty object for undefined; never throws
 */
export function optional<Name extends string, Value>(
  name: Name,
  value: Value | undefined,
): { readonly [Key in Name]?: Value } {
  const entry: { [Key in Name]?: Value } = {};
  if (value !== undefined) entry[name] = value;
  return entry;
}
