import { naturalSpline, piecewiseLinear } from '../numeric/interpolation.ts';
import { type ActionName, actions } from '../tables/actions.ts';
import {
  kneeExtensionPerKg,
  kneeExtensionReferenceDeg,
  kneeExtensionShape,
  strengthCurves,
} from '../tables/strength.ts';
import { residualReachDeg, strengthSpread } from '../tables/strengthSpread.ts';

/** Torque by angle: the mean person's of a kind, and one athlete's as a change of it. */

export type Reference = 'female' | 'male' | 'pooled';

/** How an athlete's strength in one action differs from the mean person's. */
export interface OwnStrength {
  /** Torque over the mean person's. */
  readonly scale: number;
  /** Degrees by which the whole curve lies further into flexion. */
  readonly shiftDeg: number;
  /** Log torque added per 40° of flexion from the middle and taken on the other side. */
  readonly tilt: number;
  /** Weights, in spreads, of the residual's bumps by rising angle, then of the continued ends. */
  readonly residual: readonly number[];
}

export const meanStrength: OwnStrength = { scale: 1, shiftDeg: 0, tilt: 0, residual: [] };

/** Own strength of the tested actions; the others are the mean person's. */
export type Strengths = Readonly<Partial<Record<ActionName, OwnStrength>>>;

const kneeShape = naturalSpline(kneeExtensionShape.anglesDeg, kneeExtensionShape.share);

/**
 * Maximal isometric torque of the mean person of a kind in one action, N·m, one side.
 *
 * @param bodyMass kg
 * @param deg flexion; beyond the action's `rangeDeg` the tables are continued by eye
 */
export function meanTorque(
  action: ActionName,
  reference: Reference,
  bodyMass: number,
  deg: number,
): number {
  if (action === 'knee extension') {
    const perKg = kneeExtensionPerKg[reference].value / kneeShape(kneeExtensionReferenceDeg);
    return perKg * bodyMass * Math.max(kneeShape(deg), 0.02);
  }
  const { anglesDeg, share, perKg, atDeg } = strengthCurves[action];
  const shape = piecewiseLinear(anglesDeg, share);
  return (perKg[reference].value * bodyMass * shape(deg)) / shape(atDeg);
}

/** Share of the tilt that acts at an angle: 1 at 40° of flexion beyond the middle. */
export function tiltAt(action: ActionName, deg: number): number {
  return (deg - strengthSpread(action).middleDeg) / 40;
}

/**
 * Log torque at an angle for one spread of each part of the residual: its bumps, then the ends.
 *
 * Bumps exp(−½((θ − c)/w)²) with centres w apart over the action's range, together scaled to the
 * tabled spread at every angle: independent weights then make a smooth random curve of that spread,
 * with correlation exp(−(Δ/2w)²) over a distance Δ.
 */
export function residualAt(action: ActionName, deg: number): number[] {
  const [least, most] = actions[action].rangeDeg;
  const { residual, continued } = strengthSpread(action);
  const spreadOf = ({ anglesDeg, log }: typeof residual) => piecewiseLinear(anglesDeg, log)(deg);
  const count = Math.round((most - least) / residualReachDeg.value) + 1;
  const bumps = Array.from({ length: count }, (_, k) => {
    const away = (deg - least) / residualReachDeg.value - k;
    return Math.exp((-away * away) / 2);
  });
  const size = spreadOf(residual) / Math.hypot(...bumps);
  return [...bumps.map((bump) => bump * size), ...continued.map(spreadOf)];
}

/** Torque of one athlete, N·m, one side: the mean person's scaled, shifted, tilted and bent. */
export function ownTorque(
  action: ActionName,
  reference: Reference,
  bodyMass: number,
  own: OwnStrength,
  deg: number,
): number {
  const bumps = own.residual.length > 0 ? residualAt(action, deg) : [];
  const bent = own.residual.reduce((sum, weight, k) => sum + weight * (bumps[k] ?? 0), 0);
  const change = own.scale * Math.exp(own.tilt * tiltAt(action, deg) + bent);
  return change * meanTorque(action, reference, bodyMass, deg - own.shiftDeg);
}
