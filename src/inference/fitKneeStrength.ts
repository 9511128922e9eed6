import { toDegrees } from '../numeric/degrees.ts';
import { leastSquares } from '../numeric/leastSquares.ts';
import { type KneeStrength, kneeExtension, meanKneeStrength } from '../physiology/athlete.ts';
import { kneeExtensionSpread } from '../tables/strength.ts';

/** One measured isometric torque: degrees of flexion, N·m. */
export interface MeasuredTorque {
  readonly deg: number;
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
  return { deg: toDegrees(angle), torque: score === 'best' ? best : mean };
}

export interface KneeFit {
  readonly measured: readonly MeasuredTorque[];
  /** Whether the tests told the shape of the curve, or only its size. */
  readonly isShaped: boolean;
  readonly strength: KneeStrength;
  /** The fitted curve at each measured angle, N·m, in the order given. */
  readonly fitted: readonly number[];
}

/** Fewer distinct angles than this cannot tell a curve's shape from its size. */
const anglesForShape = 3;

/**
 * Fits scale, shift and tilt of the mean person's curve to one athlete's tests by penalised least
 * squares on log torque.
 *
 * With fewer than three distinct angles only the scale is fitted and the shape stays the mean
 * person's. Without points the mean person is returned.
 */
export function fitKneeStrength(
  reference: 'female' | 'male' | 'pooled',
  bodyMass: number,
  measured: readonly MeasuredTorque[],
): KneeFit {
  if (measured.length === 0)
    return { measured, isShaped: false, strength: meanKneeStrength, fitted: [] };
  const strengthOf = (p: readonly number[]): KneeStrength => ({
    scale: Math.exp((p[0] ?? 0) * kneeExtensionSpread.logScale),
    shiftDeg: (p[1] ?? 0) * kneeExtensionSpread.shiftDeg,
    tilt: (p[2] ?? 0) * kneeExtensionSpread.tilt,
  });
  const torqueAt = (strength: KneeStrength, kneeDeg: number) =>
    kneeExtension(reference, bodyMass, strength, kneeDeg);
  const residuals = (p: readonly number[]) => {
    const strength = strengthOf(p);
    const misses = measured.map(
      ({ deg, torque }) =>
        Math.log(torque / torqueAt(strength, deg)) / kneeExtensionSpread.logPoint,
    );
    return [...misses, ...p];
  };
  const isShaped = new Set(measured.map(({ deg }) => deg)).size >= anglesForShape;
  const start = isShaped ? [0, 0, 0] : [0];
  const strength = strengthOf(leastSquares(residuals, start).parameters);
  const fitted = measured.map(({ deg }) => torqueAt(strength, deg));
  return { measured, isShaped, strength, fitted };
}
