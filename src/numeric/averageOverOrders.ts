/**
 * Splits a joint effect between causes by averaging each cause's addition over all orders in
 * which the causes can be added (Shapley 1953).
 *
 * @param causes names, few: the cost is 2ⁿ evaluations
 * @param effect vector effect of a set of causes; the effect of no cause is the zero of the split
 * @returns for each cause a vector; they sum to effect(all) − effect(none)
 */
export function averageOverOrders<C extends string>(
  causes: readonly C[],
  effect: (counted: ReadonlySet<C>) => readonly number[],
): ReadonlyMap<C, number[]> {
  const n = causes.length;
  const subsets = Array.from({ length: 2 ** n }, (_, bits) =>
    effect(new Set(causes.filter((__, j) => bits & (1 << j)))),
  );
  const factorial = (k: number): number => (k < 2 ? 1 : k * factorial(k - 1));
  const size = (bits: number) => causes.filter((_, j) => bits & (1 << j)).length;
  const parts = new Map<C, number[]>();
  causes.forEach((cause, j) => {
    const share = (subsets[0] ?? []).map(() => 0);
    subsets.forEach((without, bits) => {
      if (bits & (1 << j)) return;
      const within = subsets[bits | (1 << j)] ?? [];
      const weight = (factorial(size(bits)) * factorial(n - size(bits) - 1)) / factorial(n);
      share.forEach((_, i) => {
        share[i] = (share[i] ?? 0) + weight * ((within[i] ?? 0) - (without[i] ?? 0));
      });
    });
    parts.set(cause, share);
  });
  return parts;
}
