import { fitFromStarts } from '../numeric/fitFromStarts.ts';
import {
  choleskyFactor,
  forwardSolved,
  solvePositiveDefinite,
} from '../numeric/solvePositiveDefinite.ts';
import {
  meanTorque,
  type OwnStrength,
  ownTorque,
  type Reference,
  residualAt,
} from '../physiology/strengthCurve.ts';
import type { ActionName } from '../tables/actions.ts';
import { strengthSpread } from '../tables/strengthSpread.ts';
import { logRow, strengthOf } from './curveParameters.ts';

/** One measured isometric torque: degrees of flexion, N·m, one side. */
export interface MeasuredTorque {
  readonly deg: number;
  readonly torque: number;
  /** How far this one scatters, share of the torque; left out: as tests of the action do. */
  readonly error?: number;
}

/** Who was tested in what, and how far a repeated test scatters (share of the torque). */
export interface Tested {
  readonly action: ActionName;
  readonly reference: Reference;
  /** kg */
  readonly bodyMass: number;
  readonly testError: number;
}

/** One athlete's curve, and how sure it is. Parameters count in spreads between persons. */
export interface FittedCurve extends Tested {
  readonly measured: readonly MeasuredTorque[];
  /** Whether the tests told the shape of the curve, or only its size. */
  readonly isShaped: boolean;
  /** Size, place, tilt, then the bumps of the residual. */
  readonly parameters: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly strength: OwnStrength;
  /** Squared misses in test errors and squared parameters, summed: less is likelier. */
  readonly penalty: number;
  /** Whether several first guesses ended in the same curve. */
  readonly agreed: boolean;
}

/** Fewer distinct angles than this cannot tell a curve's shape from its size. */
const anglesForShape = 3;

/**
 * Fits one athlete's curve to tests of one action by penalised least squares on log torque: the
 * mean person's curve, with size, place, tilt and a smooth residual each held toward the mean
 * person as persons differ (normal priors), and tests of known error.
 *
 * With fewer than three distinct angles only the size is fitted. The covariance is that of the
 * miss, true minus fitted, linearised; for a shape held at the mean person's it holds what the
 * shape may hide.
 *
 * @param measured at least one
 */
export function fitStrengthCurve(tested: Tested, measured: readonly MeasuredTorque[]): FittedCurve {
  const isShaped = new Set(measured.map(({ deg }) => deg)).size >= anglesForShape;
  const fit = isShaped ? wholeFit(tested, measured) : sizeFit(tested, measured);
  return {
    ...tested,
    measured,
    isShaped,
    ...fit,
    strength: strengthOf(tested.action, fit.parameters),
  };
}

type Found = Pick<FittedCurve, 'parameters' | 'covariance' | 'penalty' | 'agreed'>;

/** First guesses of the place, in spreads between persons. */
const startPlaces = [[0], [1.5], [-1.5]];

/**
 * All parameters. Only the place is not linear: at a given place the others have their best values
 * at once, so the search is over the place alone (variable projection, Golub and Pereyra 1973,
 * SIAM J Numer Anal 10:413). What they take up widens the scatter of the points, K = ΦΦᵀ + σ²I
 * without the place's column; the penalty is then place² + |K^(−1/2)·(log ratios)|².
 */
function wholeFit(tested: Tested, measured: readonly MeasuredTorque[]): Found {
  const { action, reference, bodyMass } = tested;
  const { shiftDeg } = strengthSpread(action);
  const linear = measured.map(({ deg }) => logRow(action, 0, deg).map(withoutPlace));
  const errors = errorsOf(tested, measured);
  const scatter = choleskyFactor(scatterOf(linear, errors));
  const ratios = (place: number) =>
    measured.map(({ deg, torque }) =>
      Math.log(torque / meanTorque(action, reference, bodyMass, deg - place * shiftDeg)),
    );
  const fit = fitFromStarts(
    ([place = 0]) => [...forwardSolved(scatter, ratios(place)), place],
    startPlaces,
    { tolerance: 1e-7, variance: 1 },
  );
  const [place = 0] = fit.parameters;
  const pulls = solvePositiveDefinite(scatterOf(linear, errors), ratios(place));
  const rows = measured.map(({ deg }) => logRow(action, place * shiftDeg, deg));
  return {
    parameters: (linear[0] ?? []).map((_, j) =>
      j === 1 ? place : linear.reduce((sum, row, i) => sum + (row[j] ?? 0) * (pulls[i] ?? 0), 0),
    ),
    covariance: posterior(rows, errors),
    penalty: fit.sumOfSquares,
    agreed: fit.agreed,
  };
}

const withoutPlace = (entry: number, j: number) => (j === 1 ? 0 : entry);

const errorsOf = ({ testError }: Tested, measured: readonly MeasuredTorque[]) =>
  measured.map(({ error = testError }) => error);

/** Scatter of log torques about the mean person's: what parameters of spread 1 add, and test error. */
function scatterOf(rows: readonly (readonly number[])[], errors: readonly number[]): number[][] {
  return rows.map((a, i) => rows.map((b, k) => dot(a, b) + (i === k ? (errors[i] ?? 0) ** 2 : 0)));
}

/** Covariance of parameters of prior spread 1 after tests: I − Φᵀ(ΦΦᵀ + σ²I)⁻¹Φ. */
function posterior(rows: readonly (readonly number[])[], errors: readonly number[]): number[][] {
  const scatter = choleskyFactor(scatterOf(rows, errors));
  const columns = (rows[0] ?? []).map((_, j) =>
    forwardSolved(
      scatter,
      rows.map((row) => row[j] ?? 0),
    ),
  );
  return columns.map((a, i) => columns.map((b, j) => (i === j ? 1 : 0) - dot(a, b)));
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/**
 * The size alone, the shape as the mean person's: a point then scatters by its error and the
 * residual there. With p̂₀ = Σ wᵢ·yᵢ and y = Φp + ε the miss is p₀ − Σ aⱼpⱼ − Σ wᵢεᵢ, a = wΦ, and
 * all other parameters keep their spread of 1.
 */
function sizeFit(tested: Tested, measured: readonly MeasuredTorque[]): Found {
  const { action, reference, bodyMass } = tested;
  const errors = errorsOf(tested, measured);
  const { logScale } = strengthSpread(action);
  const points = measured.map(({ deg, torque }, i) => ({
    row: logRow(action, 0, deg),
    log: Math.log(torque / meanTorque(action, reference, bodyMass, deg)),
    certainty: 1 / ((errors[i] ?? 0) ** 2 + dot(residualAt(action, deg), residualAt(action, deg))),
  }));
  const known = points.reduce((sum, { certainty }) => sum + certainty, 0) * logScale ** 2;
  const weights = points.map(({ certainty }) => (certainty * logScale) / (1 + known));
  const size = points.reduce((sum, { log }, i) => sum + (weights[i] ?? 0) * log, 0);
  const count = points[0]?.row.length ?? 0;
  const taken = Array.from({ length: count }, (_, j) =>
    points.reduce((sum, { row }, i) => sum + (weights[i] ?? 0) * (row[j] ?? 0), 0),
  );
  const miss = taken.map((a, j) => (j === 0 ? 1 - a : -a));
  const scatter = weights.map((weight, i) => weight * (errors[i] ?? 0));
  const ownVariance = dot(miss, miss) + dot(scatter, scatter);
  const covariance = miss.map((_, i) =>
    miss.map((__, j) => {
      if (i === j) return i === 0 ? ownVariance : 1;
      return i === 0 || j === 0 ? (miss[Math.max(i, j)] ?? 0) : 0;
    }),
  );
  const misses = points.map(({ log, certainty }) => (log - size * logScale) ** 2 * certainty);
  return {
    parameters: miss.map((_, j) => (j === 0 ? size : 0)),
    covariance,
    penalty: misses.reduce((sum, value) => sum + value, size ** 2),
    agreed: true,
  };
}

/** The fitted torque at an angle, N·m. */
export function fittedTorque(curve: FittedCurve, deg: number): number {
  const { action, reference, bodyMass, strength } = curve;
  return ownTorque(action, reference, bodyMass, strength, deg);
}

/** How far a test lies from a curve fitted without it, in errors of that difference. */
export function errorsOff(curve: FittedCurve, { deg, torque }: MeasuredTorque): number {
  return Math.log(torque / fittedTorque(curve, deg)) / predictiveError(curve, deg);
}

/** Standard error of one more test at an angle about the fitted curve, log torque. */
export function predictiveError(curve: FittedCurve, deg: number): number {
  return Math.hypot(logErrorAt(curve, deg), curve.testError);
}

/**
 * Standard error of the fitted log torque at an angle (delta method): near the tests what the
 * tests leave open, far from them the spread between persons.
 */
export function logErrorAt(curve: FittedCurve, deg: number): number {
  const row = logRow(curve.action, curve.strength.shiftDeg, deg);
  const variance = curve.covariance.reduce(
    (sum, line, i) => sum + (row[i] ?? 0) * dot(line, row),
    0,
  );
  return Math.sqrt(Math.max(variance, 0));
}
