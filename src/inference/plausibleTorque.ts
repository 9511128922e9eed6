import { piecewiseLinear } from '../numeric/interpolation.ts';
import { meanTorque } from '../physiology/strengthCurve.ts';
import type { ActionName } from '../tables/actions.ts';
import { kneeExtensionShape } from '../tables/strength.ts';
import { strengthSpread } from '../tables/strengthSpread.ts';

/**
 * Between these times the mean person's torque lies what people make in mid-range: 0.4 and 5 N·m
 * for a kilogram of body mass, over 2.8, the mean of both sexes (Šarabon 2021). The ends are working
 * values: 5 is above any mean that was read, 0.4 is a leg that hardly pushes.
 */
const usual = { least: 0.4 / 2.8, most: 5 / 2.8 } as const;

/** Spread of the shape where it is known best, near its peak; there the band is as above. */
const leastUnsure = 0.05;

const kneeSpread = piecewiseLinear(
  kneeExtensionShape.anglesDeg,
  kneeExtensionShape.spread.map((spread, i) => spread / (kneeExtensionShape.share[i] ?? 1)),
);

/** Spread of a shape that no table gives by angle: tilt and residual together. */
function shapeSpread(action: ActionName): number {
  const { tilt, residual } = strengthSpread(action);
  return Math.hypot(tilt, residual.log[0] ?? 0);
}

/** Torque of the mean person of both sexes in any action, N·m, one side. */
function meanOf(action: ActionName, bodyMass: number, deg: number): number {
  return meanTorque(action, 'pooled', bodyMass, deg);
}

/**
 * What people make in an action at an angle, N·m, one side: least and most. Wider where the shape
 * of the curve is less sure than near its peak, by two standard deviations of that.
 *
 * @param bodyMass kg
 * @param deg joint angle, degrees
 */
export function plausibleTorque(
  action: ActionName,
  bodyMass: number,
  deg: number,
): readonly [least: number, most: number] {
  const mean = meanOf(action, bodyMass, deg);
  const unsure = action === 'knee extension' ? kneeSpread(deg) : shapeSpread(action);
  const widened = 1 + 2 * Math.max(0, unsure - leastUnsure);
  return [(mean * usual.least) / widened, mean * usual.most * widened];
}

/** Half to one and a half of the mean: two standard deviations between persons, each way. */
const likelyShare = [0.5, 1.5] as const;

/** Whether a torque is about what one would expect of a person, N·m, not only possible. */
export function isLikely(
  action: ActionName,
  bodyMass: number,
  deg: number,
  torque: number,
): boolean {
  const share = torque / meanOf(action, bodyMass, deg);
  return share >= likelyShare[0] && share <= likelyShare[1];
}

/**
 * How far torques miss the mean person's curve once it is scaled to them: root mean square of log
 * ratios (0.1 is about 10 %).
 *
 * @param points degrees and N·m, at least two
 */
export function missOfShape(
  action: ActionName,
  points: readonly { readonly deg: number; readonly torque: number }[],
): number {
  const logs = points.map(({ deg, torque }) => Math.log(torque / meanOf(action, 1, deg)));
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  return Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / logs.length);
}
