import { type Family, families, leastDiscrepancy } from '../../tables/calibrationValues.ts';
import { bestAmplitudes } from './bestAmplitudes.ts';
import { inverseOf, normalEquations, stepFrom } from './normalEquations.ts';
import { costOf, type Parameters, type Problem, slopesOf } from './problem.ts';

/** The best parameters, with what was worked out there. */
export interface Calibrated extends Parameters {
  readonly cost: number;
  readonly predicted: readonly number[];
  readonly slopes: readonly Float64Array[];
  /** Of coefficients' logarithms, then the studies' ln amplitudes. */
  readonly covariance: readonly Float64Array[];
  readonly settled: boolean;
}

/**
 * Least squares by the method of Levenberg and Marquardt (Marquardt 1963, SIAM J 11:431) over the
 * logarithms of the coefficients; the studies' amplitudes are the best ones at every step.
 *
 * @param rounds at most so many sets of slopes, each one prediction a coefficient
 */
export function fitCalibration(problem: Problem, start: Parameters, rounds: number): Calibrated {
  let predicted = problem.predict(start.logs);
  let at: Parameters = { logs: start.logs, amplitudes: bestAmplitudes(problem, predicted) };
  let cost = costOf(problem, at, predicted);
  let slopes = slopesOf(problem, at.logs, predicted);
  let damping = 1e-2;
  let settled = false;
  for (let round = 0; round < rounds && !settled; round++) {
    const equations = normalEquations(problem, at, predicted, slopes);
    const before = cost;
    for (; damping < 1e8; damping *= 8) {
      const { logs } = stepFrom(at, equations, damping);
      const then = problem.predict(logs);
      const trial = { logs, amplitudes: bestAmplitudes(problem, then) };
      const trialCost = costOf(problem, trial, then);
      if (trialCost > cost) continue;
      [at, predicted, cost] = [trial, then, trialCost];
      damping = Math.max(damping / 20, 1e-6);
      break;
    }
    settled = before - cost < 1e-4 * before;
    slopes = slopesOf(problem, at.logs, predicted);
  }
  const covariance = inverseOf(normalEquations(problem, at, predicted, slopes));
  return { ...at, cost, predicted, slopes, covariance, settled };
}

/**
 * What the model leaves out of each family, from the misses that remain after the studies' own
 * amplitudes: the square is the weighted mean of miss² less error², no less than a floor.
 *
 * @param without a study that may not speak
 */
export function discrepancyOf(
  problem: Problem,
  { amplitudes, predicted }: Pick<Calibrated, 'amplitudes' | 'predicted'>,
  without?: number,
): Record<Family, number> {
  const of = (family: Family) => {
    let [sum, weights] = [0, 0];
    problem.rows.forEach((row, i) => {
      if (row.family !== family || row.study === without || row.isDirection) return;
      const scaled = Math.exp(amplitudes[row.study] ?? 0) * (predicted[i] ?? 0);
      sum += row.weight * ((row.observed - scaled) ** 2 - row.error ** 2);
      weights += row.weight;
    });
    if (weights < 2) return problem.discrepancy[family];
    return Math.sqrt(Math.max(sum / weights, leastDiscrepancy ** 2));
  };
  return Object.fromEntries(families.map((family) => [family, of(family)])) as Record<
    Family,
    number
  >;
}
