import { meanTorque, type OwnStrength, residualAt, tiltAt } from '../physiology/strengthCurve.ts';
import type { ActionName } from '../tables/actions.ts';
import { strengthSpread } from '../tables/strengthSpread.ts';

/** The parameters of a fitted curve, counted in spreads: size, place, tilt, then the residual's. */

/** Derivative of log torque at an angle by each parameter, at a place of the curve. */
export function logRow(action: ActionName, shift: number, deg: number): number[] {
  const { logScale, shiftDeg, tilt } = strengthSpread(action);
  const log = (at: number) => Math.log(meanTorque(action, 'pooled', 1, at - shift));
  // Over two degrees: some tables are straight lines, whose corners are not meant.
  const slope = (log(deg + 1) - log(deg - 1)) / 2;
  return [logScale, -slope * shiftDeg, tilt * tiltAt(action, deg), ...residualAt(action, deg)];
}

/** Parameters in spreads between persons as a strength. */
export function strengthOf(action: ActionName, parameters: readonly number[]): OwnStrength {
  const { logScale, shiftDeg, tilt } = strengthSpread(action);
  const [size = 0, place = 0, slant = 0, ...residual] = parameters;
  return {
    scale: Math.exp(size * logScale),
    shiftDeg: place * shiftDeg,
    tilt: slant * tilt,
    residual,
  };
}
