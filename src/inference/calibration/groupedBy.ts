/** Lists of equal keys, in the order in which keys first come. */
export function groupedBy<T>(list: readonly T[], key: (item: T) => unknown): T[][] {
  const groups = new Map<unknown, T[]>();
  for (const item of list) {
    const own = groups.get(key(item)) ?? [];
    own.push(item);
    groups.set(key(item), own);
  }
  return [...groups.values()];
}
