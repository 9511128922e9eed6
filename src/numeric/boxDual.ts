import { solvePositiveDefinite } from './solvePositiveDefinite.ts';

/** The problem with scaled rows: residuals, and multipliers against each other, lose their units. */
export interface DualProblem {
  readonly rows: readonly (readonly number[])[];
  readonly target: readonly number[];
  /** 1 / (2w): change of an unknown with its price, between its bounds. */
  readonly gains: readonly number[];
  readonly upper: readonly number[];
}

export interface DualPoint {
  readonly multipliers: readonly number[];
  /** What each unknown would be without its bounds: (Rᵀλ) / (2w). */
  readonly wanted: readonly number[];
  readonly x: readonly number[];
  /** b − R·x. */
  readonly shortfall: readonly number[];
  readonly residual: number;
}

/** Rᵀ·λ. */
function prices({ rows, upper }: DualProblem, multipliers: readonly number[]): number[] {
  const sums = new Array<number>(upper.length).fill(0);
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r] as readonly number[];
    const multiplier = multipliers[r] as number;
    for (let i = 0; i < sums.length; i++) (sums[i] as number) += multiplier * (row[i] as number);
  }
  return sums;
}

/** What the unknowns are at given multipliers, and what R·x then lacks of b. */
export function pointAt(problem: DualProblem, multipliers: readonly number[]): DualPoint {
  const { rows, target, gains, upper } = problem;
  const wanted = prices(problem, multipliers);
  const x = new Array<number>(wanted.length).fill(0);
  for (let i = 0; i < x.length; i++) {
    const value = (wanted[i] as number) * (gains[i] as number);
    wanted[i] = value;
    x[i] = value > 0 ? Math.min(value, upper[i] as number) : 0;
  }
  const shortfall: number[] = [];
  let residual = 0;
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r] as readonly number[];
    let rest = target[r] as number;
    for (let i = 0; i < x.length; i++) rest -= (row[i] as number) * (x[i] as number);
    shortfall.push(rest);
    residual = Math.max(residual, Math.abs(rest));
  }
  return { multipliers, wanted, x, shortfall, residual };
}

/**
 * Solves (H + D)·d = b − R·x with H = Σ over free unknowns of r_i·r_iᵀ / (2w_i). An unknown sitting
 * at a bound counts as free, or the first step from λ = 0 would have no H at all. D is diagonal,
 * positive where H may be singular, and shrinks with the residual so that steps stay quadratic.
 */
export function newtonDirection(
  problem: DualProblem,
  point: DualPoint,
  dampingShare: number,
): number[] {
  const { rows, gains, upper } = problem;
  const damping = Math.max(dampingShare * point.residual, 1e-14);
  const free = gains.map((gain, i) => {
    const value = point.wanted[i] as number;
    return value >= 0 && value <= (upper[i] as number) ? gain : 0;
  });
  const matrix: number[][] = [];
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r] as readonly number[];
    const line: number[] = [];
    for (let s = 0; s <= r; s++) {
      const other = rows[s] as readonly number[];
      let sum = 0;
      for (let i = 0; i < row.length; i++)
        if (upper[i] !== 0) sum += (free[i] as number) * (row[i] as number) * (other[i] as number);
      line.push(sum);
    }
    let whole = 0;
    for (let i = 0; i < row.length; i++)
      if (upper[i] !== 0) whole += (gains[i] as number) * (row[i] as number) ** 2;
    line[r] = (line[r] as number) + damping * whole || 1;
    matrix.push(line);
  }
  return solvePositiveDefinite(matrix, point.shortfall);
}

/**
 * Step to the minimum of the dual along a direction d: its slope −d·(b − R·x) rises with the step,
 * straight between the steps at which an unknown enters or leaves its bounds.
 *
 * @returns the step, and if the slope stays below 0 for ever the gap: |R·x − b| of the worst row
 *   (scaled) is at least this for every x within the bounds; 0 otherwise
 */
export function exactStep(problem: DualProblem, point: DualPoint, direction: readonly number[]) {
  const { gains, upper } = problem;
  const changes = prices(problem, direction);
  let length = 0;
  let slope = 0;
  for (let r = 0; r < direction.length; r++) {
    length += Math.abs(direction[r] as number);
    slope -= (direction[r] as number) * (point.shortfall[r] as number);
  }
  const enter: number[] = [];
  const leave: number[] = [];
  const rise: number[] = [];
  for (let i = 0; i < changes.length; i++) {
    const change = changes[i] as number;
    const limit = upper[i] as number;
    const pace = change * (gains[i] as number);
    // Rounding of a column square to the direction would put a bend absurdly far out.
    if (limit === 0 || Math.abs(change) * limit <= 1e-15 * length) continue;
    const value = point.wanted[i] as number;
    enter.push(((pace > 0 ? 0 : limit) - value) / pace);
    leave.push(((pace > 0 ? limit : 0) - value) / pace);
    rise.push(change * pace);
  }
  let step = 0;
  for (;;) {
    let bend = Infinity;
    let curvature = 0;
    for (let i = 0; i < rise.length; i++) {
      const [from, to] = [enter[i] as number, leave[i] as number];
      if (from <= step && step < to) curvature += rise[i] as number;
      if (from > step && from < bend) bend = from;
      if (to > step && to < bend) bend = to;
    }
    if (slope + curvature * (bend - step) >= 0 && curvature > 0)
      return { step: step - slope / curvature, gap: 0 };
    if (bend === Infinity) return { step: 1, gap: supported(problem, direction, changes) / length };
    slope += curvature * (bend - step);
    step = bend;
    // Flat but for rounding: walking on would only blow the multipliers up.
    if (-slope <= 1e-12 * length) return { step, gap: 0 };
  }
}

/** d·b less the most that d·(R·x) can be within the bounds, from Rᵀ·d. */
function supported(
  { target, upper }: DualProblem,
  d: readonly number[],
  changes: readonly number[],
) {
  let rest = 0;
  for (let r = 0; r < d.length; r++) rest += (d[r] as number) * (target[r] as number);
  for (let i = 0; i < upper.length; i++)
    rest -= Math.max(0, changes[i] as number) * (upper[i] as number);
  return rest;
}
