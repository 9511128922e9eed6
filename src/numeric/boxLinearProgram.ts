import { climb, type Tableau, valueAt } from './boundedSimplex.ts';
import { requireBox, rowSizes } from './box.ts';

/** The multiples λ ≥ 0 at which R·x = offset + λ·slope can be met within the bounds. */
export interface MultipleRange {
  /** Least such λ; Infinity if there is none. */
  readonly low: number;
  /** Largest such λ; -Infinity if there is none; Infinity if and only if feasible and slope is 0. */
  readonly high: number;
  /** Length n: a solution at `high` (at every λ if that is Infinity), or the nearest found if none. */
  readonly x: readonly number[];
  readonly feasible: boolean;
}

/** Largest sum of violations, each over the size of its row, that counts as met. */
const tolerance = 1e-9;

/**
 * Finds the range of λ ≥ 0 for which R·x = offset + λ·slope has a solution with 0 ≤ x ≤ u.
 *
 * Bounded simplex method: first the violations are driven out, then λ down, then up; exact up to
 * rounding. R·x is bounded, so λ is too unless slope is 0.
 *
 * @param rows R as m rows of n, m about 1..4; rows may be redundant, columns zero
 * @param offset length m
 * @param slope length m
 * @param upper u, length n, each finite and at least 0
 */
export function largestMultiple(
  rows: readonly (readonly number[])[],
  offset: readonly number[],
  slope: readonly number[],
  upper: readonly number[],
): MultipleRange {
  requireBox(rows, [offset, slope], upper);
  const n = upper.length;
  const sizes = rowSizes(rows, offset, upper);
  const steepest = Math.max(...slope.map((q, r) => Math.abs(q / (sizes[r] as number)))) || 1;
  const tableau = startingTableau(rows, offset, slope, upper, sizes, steepest);

  climb(tableau, (variable) => (variable > n ? -1 : 0));
  const violation = tableau.basis.reduce(
    (sum, variable, r) => sum + (variable > n ? (tableau.side[r] as number) : 0),
    0,
  );
  const here = () => upper.map((u, i) => u * valueAt(tableau, i));
  if (violation > tolerance) return { low: Infinity, high: -Infinity, x: here(), feasible: false };
  tableau.basis.forEach((variable, r) => {
    if (variable > n) tableau.side[r] = 0;
  });
  tableau.limits.fill(0, n + 1);

  climb(tableau, (variable) => (variable === n ? -1 : 0));
  const low = valueAt(tableau, n) / steepest;
  const bounded = climb(tableau, (variable) => (variable === n ? 1 : 0));
  const high = bounded ? valueAt(tableau, n) / steepest : Infinity;
  return { low, high, x: here(), feasible: true };
}

/**
 * Columns x_i / u_i, then λ in its own scale; rows in their sizes. All are at 0 and each row is held by
 * an artificial variable, its violation.
 */
function startingTableau(
  rows: readonly (readonly number[])[],
  offset: readonly number[],
  slope: readonly number[],
  upper: readonly number[],
  sizes: readonly number[],
  steepest: number,
): Tableau {
  const n = upper.length;
  const signs = offset.map((p, r) => (p < 0 ? -1 : 1) / (sizes[r] as number));
  return {
    lines: rows.map((row, r) => {
      const sign = signs[r] as number;
      const line = row.map((value, i) => sign * value * (upper[i] as number));
      return [...line, (-sign * (slope[r] as number)) / steepest];
    }),
    side: offset.map((p, r) => p * (signs[r] as number)),
    basis: rows.map((_, r) => n + 1 + r),
    limits: [...upper.map(() => 1), Infinity, ...rows.map(() => Infinity)],
    flipped: [...upper.map(() => false), false],
  };
}
