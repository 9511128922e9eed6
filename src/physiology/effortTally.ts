/** Slices in which efforts from 0 to 1 are kept. */
const slices = 64;

/** Up to twice the effort of a hold: what a machine draws out of muscle stays below. */
const count = 2 * slices + 1;

/**
 * Amounts of work by effort, so that their sum weighed by any power of effort can be told later.
 *
 * An amount at an effort e is split over the three nearest slices so that Σ amount, Σ amount·e and
 * Σ amount·e² stay (Lagrange's weights). Σ amount·e^p is then off by h³/(9√3)·|p(p−1)(p−2)|·e^(p−3)
 * of the amount, h the slice: for p from 1 to 3 less than 2e-5 from e = 0.05 upward, 3e-4 below.
 */
export class EffortTally {
  private readonly amounts = new Float64Array(count);

  /** @param effort 0 to 2; beyond is taken as 2 */
  add(effort: number, amount: number): void {
    const at = Math.min(Math.max(effort, 0) * slices, count - 1);
    const middle = Math.min(Math.max(Math.round(at), 1), count - 2);
    const d = at - middle;
    (this.amounts[middle - 1] as number) += (amount * d * (d - 1)) / 2;
    (this.amounts[middle] as number) += amount * (1 - d * d);
    (this.amounts[middle + 1] as number) += (amount * d * (d + 1)) / 2;
  }

  /**
   * Σ amount · effort^power; efforts next to nothing may come out negative by a rounding’s size.
   */
  weighed(power: number): number {
    const powers = powersOf(power);
    let sum = 0;
    for (let i = 1; i < count; i++) sum += (this.amounts[i] as number) * (powers[i] as number);
    return sum;
  }
}

/** Powers kept: two are asked for in turn, and a fit goes through many. */
const mostKept = 8;
const kept = new Map<number, Float64Array>();

function powersOf(power: number): Float64Array {
  const known = kept.get(power);
  if (known) return known;
  const values = Float64Array.from({ length: count }, (_, slice) => (slice / slices) ** power);
  if (kept.size === mostKept) kept.clear();
  kept.set(power, values);
  return values;
}
