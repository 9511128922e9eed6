import { type Fit, type FitOptions, leastSquares } from './leastSquares.ts';

/** The best of several fits, and whether they ended in the same place. */
export interface FitFromStarts extends Fit {
  /**
   * Whether every start led to the same fit: a sum of squares within a millionth of the least, or
   * parameters within a thousandth of their standard errors.
   */
  readonly agreed: boolean;
}

/**
 * Least squares from several first guesses, the least sum of squares taken: a guard against local
 * minima, of which a single descent cannot know.
 *
 * @param starts first guesses, at least one, each of length p
 * @param options as for `leastSquares`
 */
export function fitFromStarts(
  residuals: (parameters: readonly number[]) => readonly number[],
  starts: readonly (readonly number[])[],
  options: FitOptions = {},
): FitFromStarts {
  const fits = starts.map((start) => leastSquares(residuals, start, options));
  const [first] = fits;
  if (!first) throw new Error('a fit needs a start');
  const best = fits.reduce((a, b) => (b.sumOfSquares < a.sumOfSquares ? b : a), first);
  const isSame = ({ sumOfSquares, parameters }: Fit) =>
    sumOfSquares - best.sumOfSquares <= 1e-6 * best.sumOfSquares ||
    parameters.every(
      (p, j) => Math.abs(p - (best.parameters[j] ?? 0)) <= 1e-3 * (best.standardErrors[j] ?? 0),
    );
  return { ...best, agreed: fits.every((fit) => fit.converged && isSame(fit)) };
}
