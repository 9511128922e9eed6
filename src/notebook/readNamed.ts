import type { Path } from './scenario.ts';

/**
 * Reads each entry of a group that the coach names, such as chains or machines.
 *
 * @param key where the group stands in the file
 * @param read what reads one entry; undefined if it could not
 * @returns name → entry, those that could be read; never throws
 */
export function readNamed<Written, Read>(
  group: Readonly<Record<string, Written>> | undefined,
  key: string,
  read: (draft: NonNullable<Written>, path: Path) => Read | undefined,
): Readonly<Record<string, Read>> {
  const entries = Object.entries(group ?? {}).flatMap(([name, draft]): [string, Read][] => {
    const entry = draft ? read(draft, [key, name]) : undefined;
    return entry === undefined ? [] : [[name, entry]];
  });
  return Object.fromEntries(entries);
}
