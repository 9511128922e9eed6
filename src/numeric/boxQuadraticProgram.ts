import { requireBox, rowSizes } from './box.ts';
import {
  type DualPoint,
  type DualProblem,
  exactStep,
  newtonDirection,
  pointAt,
} from './boxDual.ts';

/** Least weighted squares within bounds, or a proof that nothing fits. */
export interface BoxQuadraticSolution {
  /** Length n, each within 0..upper: the answer, or if not feasible the last point tried. */
  readonly x: readonly number[];
  /**
   * Length m. If feasible, λ = ∂(least Σ w·x²)/∂b. If not, a direction d with d·b greater than
   * d·(R·x) for every x within the bounds (Farkas' proof that none meets R·x = b), or, see below,
   * the last point tried.
   */
  readonly multipliers: readonly number[];
  /**
   * Whether `residual` is below 1e-9. False without proof is possible, though not seen among 300,000
   * problems of usual scale: with columns and weights 1e6 apart, rounding stalled 1 in 7,000.
   */
  readonly feasible: boolean;
  /** Largest |R·x − b| of a row over |b| + Σ|R|·u of that row. */
  readonly residual: number;
}

interface Descent {
  readonly point: DualPoint;
  readonly proof: readonly number[] | undefined;
  readonly settled: boolean;
}

/** A residual below this counts as met. */
const tolerance = 1e-9;
/** Steps end here: the last step is exact up to rounding, so this costs little more. */
const finest = 1e-13;
/**
 * Damping of a step over the residual. The first settles all problems of usual scale tried (300,000),
 * the others nearly all of those with sizes 1e6 apart on which rounding may stall the first.
 */
const dampingShares = [1e-7, 1e-9, 1e-5] as const;

/**
 * Minimises Σ w_i·x_i² subject to R·x = b and 0 ≤ x_i ≤ u_i, through its dual.
 *
 * Stationarity gives x_i(λ) = clip((Rᵀλ)_i / (2·w_i), 0, u_i), so only the m multipliers are sought.
 * They minimise a convex, piecewise quadratic function with gradient R·x(λ) − b: semismooth Newton
 * steps (Qi and Sun 1993, Math. Program. 58:353) with an exact line search along each. A function
 * falling without end along a step proves that no x fits.
 *
 * @param rows R as m rows of n, m about 1..4; rows may be redundant, columns zero
 * @param target b, length m
 * @param weights w, length n, each above 0
 * @param upper u, length n, each finite and at least 0, and of the size x can really take: residuals
 *   are judged against |R|·u
 */
export function minimiseWeightedSquares(
  rows: readonly (readonly number[])[],
  target: readonly number[],
  weights: readonly number[],
  upper: readonly number[],
): BoxQuadraticSolution {
  requireBox(rows, [target], upper);
  if (weights.length !== upper.length || !weights.every((w) => w > 0 && w < Infinity))
    throw new RangeError('each unknown needs a weight above 0');
  const sizes = rowSizes(rows, target, upper);
  const unscaled = (d: readonly number[]) => d.map((value, r) => value / (sizes[r] as number));
  const problem: DualProblem = {
    rows: rows.map((row, r) => row.map((value) => value / (sizes[r] as number))),
    target: unscaled(target),
    gains: weights.map((w) => 0.5 / w),
    upper,
  };
  let end = descend(problem, dampingShares[0]);
  for (let k = 1; k < dampingShares.length && !end.settled; k++)
    end = descend(problem, dampingShares[k] as number);
  const { x, residual } = end.point;
  const feasible = residual <= tolerance;
  return { x, multipliers: unscaled(end.proof ?? end.point.multipliers), feasible, residual };
}

/** Newton steps from λ = 0; `proof` is the direction that shows that nothing fits. */
function descend(problem: DualProblem, dampingShare: number): Descent {
  let point = pointAt(
    problem,
    problem.target.map(() => 0),
  );
  for (let iteration = 0; iteration < 100 && point.residual > finest; iteration++) {
    const direction = newtonDirection(problem, point, dampingShare);
    const full = pointAt(problem, moved(point.multipliers, direction, 1));
    if (full.residual <= finest) point = full;
    else if (point.residual <= tolerance) {
      // Near rounding a line search sees only noise: go on while plain steps gain.
      if (full.residual > point.residual / 2) break;
      point = full;
    } else {
      const { step, gap } = exactStep(problem, point, direction);
      if (gap > tolerance) return { point, proof: direction, settled: true };
      point = pointAt(problem, moved(point.multipliers, direction, step));
    }
  }
  return { point, proof: undefined, settled: point.residual <= tolerance };
}

const moved = (from: readonly number[], direction: readonly number[], step: number) =>
  from.map((value, r) => value + step * (direction[r] as number));
