import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Reference, Strengths } from '../physiology/strengthCurve.ts';
import { type ActionName, actionNames } from '../tables/actions.ts';
import { testErrors } from '../tables/testError.ts';
import { type Finding, fitFindings } from './fitFindings.ts';
import {
  type FittedCurve,
  fitStrengthCurve,
  fittedTorque,
  logErrorAt,
  type MeasuredTorque,
} from './fitStrengthCurve.ts';
import type { TestError } from './retest/testError.ts';

/** A measured isometric torque and the action it tests. */
export interface MeasuredAction extends MeasuredTorque {
  readonly action: string;
}

/** One tested action: its curve, the curve at each test, the 90 % band by angle, and what to know. */
export interface StrengthFit extends FittedCurve {
  /** N·m, in the order of `measured`. */
  readonly fitted: readonly number[];
  /** N·m over the angle grid. */
  readonly torque: OverAngles;
  /** Edges of the band that holds the true torque at an angle in nine of ten such athletes, N·m. */
  readonly low: OverAngles;
  readonly high: OverAngles;
  readonly findings: readonly Finding[];
  readonly errorFrom: TestError['known'];
}

/** Typical error of a test, share of the torque, and how it is known. */
export interface ErrorOfTest {
  readonly share: number;
  readonly known: TestError['known'];
  /** The same at an angle (degrees) of a torque (N·m); left out: everywhere alike. */
  readonly at?: (deg: number, torque: number) => number;
}

/** Normal deviate of the middle 90 % (tables). */
const deviateOf90 = 1.6449;

/**
 * Fits every tested action of one athlete; an action without tests stays the mean person's and has
 * no fit.
 *
 * @param bodyMass kg
 * @param errorOf by how much a repeated test of an action scatters
 */
export function fitStrength(
  reference: Reference,
  bodyMass: number,
  measured: readonly MeasuredAction[],
  errorOf: (action: ActionName) => ErrorOfTest = usualError,
): StrengthFit[] {
  return actionNames.flatMap((action) => {
    const tests = measured.filter((test) => test.action === action);
    if (tests.length === 0) return [];
    const { share, known, at } = errorOf(action);
    const tested = { action, reference, bodyMass, testError: share };
    const points = at
      ? tests.map((test) => ({ ...test, error: at(test.deg, test.torque) }))
      : tests;
    return [described(fitStrengthCurve(tested, points), known)];
  });
}

const usualError = (): ErrorOfTest => ({
  share: testErrors['single-joint dynamometer'].value,
  known: 'borrowed',
});

function described(curve: FittedCurve, errorFrom: TestError['known']): StrengthFit {
  const torque = gridDeg.map((deg) => fittedTorque(curve, deg));
  const edge = (side: 1 | -1) =>
    gridDeg.map(
      (deg, i) => (torque[i] ?? 0) * Math.exp(side * deviateOf90 * logErrorAt(curve, deg)),
    );
  return {
    ...curve,
    fitted: curve.measured.map(({ deg }) => fittedTorque(curve, deg)),
    torque,
    low: edge(-1),
    high: edge(1),
    findings: fitFindings(curve),
    errorFrom,
  };
}

/** One angle's trials as one torque, N·m; at least one trial. */
export function scored(trials: readonly number[], score: 'best' | 'mean'): number {
  if (score === 'best') return Math.max(...trials);
  return trials.reduce((sum, trial) => sum + trial, 0) / trials.length;
}

/** The strengths an athlete is built from. */
export function strengthsOf(fits: readonly StrengthFit[]): Strengths {
  return Object.fromEntries(fits.map(({ action, strength }) => [action, strength]));
}
