import { leastSquares } from '../numeric/leastSquares.ts';
import { type KneeStrength, kneeExtension, meanKneeStrength } from '../physiology/athlete.ts';

/** One measured isometric knee extension torque: degrees of flexion, N·m. */
export interface MeasuredTorque {
  readonly kneeDeg: number;
  readonly torque: number;
}

/**
 * One angle's trials as one torque.
 *
 * @param angle radians
 * @param trials N·m, at least one
 */
export function scored(
  angle: number,
  trials: readonly number[],
  score: 'best' | 'mean',
): MeasuredTorque {
  const best = Math.max(...trials);
  const mean = trials.reduce((sum, trial) => sum + trial, 0) / trials.length;
  return { kneeDeg: (angle * 180) / Math.PI, torque: score === 'best' ? best : mean };
}

export interface KneeFit {
  readonly measured: readonly MeasuredTorque[];
  readonly strength: KneeStrength;
  /** The fitted curve at each measured angle, N·m, in the order given. */
  readonly fitted: readonly number[];
}

/**
 * Spreads of the penalised fit. Scale: 22 % between persons (Šarabon 2021 gives 20–25 %). Shift:
 * the peak lies between 57° and 80° across studies, so 8° either way. Tilt: 16 % at 20° of flexion
 * (Marginson and Eston 2001, spread of the share there). Points: 4 % test error of a clinic rig
 * and 5 % for what a smooth curve leaves out, together 6.4 % (working values).
 */
const spreads = { logScale: 0.22, shiftDeg: 8, tilt: 0.13, logPoint: 0.064 };

/**
 * Fits scale, shift and tilt of the mean person's curve to one athlete's tests by penalised least
 * squares on log torque.
 *
 * With few points the penalty holds what they cannot tell to the mean person. Without points the
 * mean person is returned.
 */
export function fitKneeStrength(
  reference: 'female' | 'male' | 'pooled',
  bodyMass: number,
  measured: readonly MeasuredTorque[],
): KneeFit {
  if (measured.length === 0) return { measured, strength: meanKneeStrength, fitted: [] };
  const strengthOf = (p: readonly number[]): KneeStrength => ({
    scale: Math.exp((p[0] ?? 0) * spreads.logScale),
    shiftDeg: (p[1] ?? 0) * spreads.shiftDeg,
    tilt: (p[2] ?? 0) * spreads.tilt,
  });
  const torqueAt = (strength: KneeStrength, kneeDeg: number) =>
    kneeExtension(reference, bodyMass, strength, kneeDeg);
  const residuals = (p: readonly number[]) => {
    const strength = strengthOf(p);
    const misses = measured.map(
      ({ kneeDeg, torque }) => Math.log(torque / torqueAt(strength, kneeDeg)) / spreads.logPoint,
    );
    return [...misses, ...p];
  };
  const strength = strengthOf(leastSquares(residuals, [0, 0, 0]).parameters);
  const fitted = measured.map(({ kneeDeg }) => torqueAt(strength, kneeDeg));
  return { measured, strength, fitted };
}
