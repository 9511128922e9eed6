import { amplitudeSpread } from '../../tables/calibrationValues.ts';
import { bestAmplitudes } from './bestAmplitudes.ts';
import { type Calibrated, discrepancyOf } from './fitCalibration.ts';
import { inverseOf, normalEquations, stepFrom } from './normalEquations.ts';
import { costOf, type Parameters, type Problem, priors } from './problem.ts';

/** A row predicted from all studies but its own, and the variances of that prediction. */
export interface LeftOut {
  readonly predicted: number;
  /** From the coefficients, from what studies differ in, from what the model leaves out. */
  readonly variance: {
    readonly coefficients: number;
    readonly amplitude: number;
    readonly discrepancy: number;
    readonly error: number;
  };
}

/**
 * Predicts every study's rows from the others, its amplitude at its prior middle.
 *
 * From the full fit, Gauss–Newton steps with the slopes of the full fit; held against full refits by
 * a test of the calibration.
 *
 * @param steps Gauss–Newton steps; each but the last costs one prediction of all studies
 */
export function leaveOneOut(problem: Problem, fit: Calibrated, steps: number): LeftOut[] {
  const left: LeftOut[] = [];
  for (let study = 0; study < problem.studies; study++) {
    const refitted = refitWithout(problem, fit, study, steps);
    for (const [i, found] of leftOutRows(problem, fit, study, refitted)) left[i] = found;
  }
  return left;
}

/** Parameters without a study. */
export function refitWithout(
  problem: Problem,
  fit: Calibrated,
  study: number,
  steps: number,
): Parameters {
  let predicted = fit.predicted;
  let at: Parameters = {
    logs: fit.logs,
    amplitudes: bestAmplitudes(problem, predicted, study),
  };
  for (let step = 0; step < steps; step++) {
    const equations = normalEquations(problem, at, predicted, fit.slopes, study);
    if (step === steps - 1 && steps === 1) return stepFrom(at, equations, 1e-3);
    const cost = costOf(problem, at, predicted, study);
    let damping = 1e-3;
    for (; damping < 1e4; damping *= 30) {
      const { logs } = stepFrom(at, equations, damping);
      const then = problem.predict(logs);
      const trial = { logs, amplitudes: bestAmplitudes(problem, then, study) };
      if (costOf(problem, trial, then, study) > cost) continue;
      [at, predicted] = [trial, then];
      break;
    }
    if (damping >= 1e4) break;
  }
  return at;
}

/** The left-out study's rows with the coefficients of the others. */
export function leftOutRows(
  problem: Problem,
  fit: Calibrated,
  study: number,
  { logs, amplitudes }: Parameters,
): Map<number, LeftOut> {
  const equations = normalEquations(problem, fit, fit.predicted, fit.slopes, study);
  const covariance = inverseOf(equations);
  const between = amplitudeVariance(amplitudes, covariance, study);
  const discrepancy = discrepancyOf(problem, fit, study);
  const predicted = problem.predict(logs, study);
  const rows = new Map<number, LeftOut>();
  problem.rows.forEach((row, i) => {
    if (row.study !== study) return;
    const change = predicted[i] ?? 0;
    let coefficients = 0;
    for (let j = 0; j < priors.length; j++)
      for (let k = 0; k < priors.length; k++)
        coefficients +=
          (fit.slopes[j]?.[i] ?? 0) * (covariance[j]?.[k] ?? 0) * (fit.slopes[k]?.[i] ?? 0);
    rows.set(i, {
      predicted: change,
      variance: {
        coefficients,
        amplitude: between * change ** 2,
        discrepancy: discrepancy[row.family] ** 2,
        error: row.error ** 2,
      },
    });
  });
  return rows;
}

/**
 * Variance of ln amplitude between studies: the mean of b² plus b's own variance over the studies
 * that count (one step of expectation and maximisation, Dempster, Laird and Rubin 1977).
 */
export function amplitudeVariance(
  amplitudes: readonly number[],
  covariance: readonly Float64Array[],
  without?: number,
): number {
  const squares = amplitudes.flatMap((b, s) => {
    const own = covariance[priors.length + s]?.[priors.length + s] ?? amplitudeSpread.value ** 2;
    return s === without ? [] : [b * b + own];
  });
  return squares.reduce((sum, square) => sum + square, 0) / Math.max(squares.length, 1);
}
