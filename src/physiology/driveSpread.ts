import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { type ActionName, actions, byAction } from '../tables/actions.ts';
import { type Coefficients, kernel } from '../tables/adaptation.ts';

/** End of the scale from short (0) to long. */
export const longest = 110;

/**
 * Muscle length at each grid angle on the scale of knee flexion: 0 where an action's muscles are
 * shortest, 110 where they are longest, straight between. The kernel was fitted on the knee
 * extensors, whose own angle this is; for other actions that scale is an assumption.
 */
export const lengthScales = byAction((name) => {
  const { shortDeg, longDeg } = actions[name];
  return gridDeg.map((deg) => (longest * (deg - shortDeg)) / (longDeg - shortDeg));
});

const known = new WeakMap<Coefficients, Partial<Record<ActionName, Float64Array[]>>>();

/**
 * What one hard set at a grid angle counts at every grid angle, h·K(θ − θ'); `saturatedDrive` has
 * the equation. Kept by coefficients, since every week asks again.
 *
 * @param source index of the trained angle on the grid
 */
export function driveSpread(action: ActionName, source: number, c: Coefficients): Float64Array {
  const byActionKnown = known.get(c) ?? {};
  known.set(c, byActionKnown);
  const spreads = byActionKnown[action] ?? [];
  byActionKnown[action] = spreads;
  const spread = spreads[source] ?? spreadFrom(source, lengthScales[action], c);
  spreads[source] = spread;
  return spread;
}

/** h·K of work at one grid angle, by grid angle. */
function spreadFrom(source: number, length: OverAngles, c: Coefficients): Float64Array {
  const trained = length[source] ?? 0;
  const beyond = Math.max(trained - kernel.shortAtDeg, 0);
  const fade = Math.max(1 - c.driveFadePerDeg * beyond, kernel.leastFade);
  const shorter = width(c.widthShorterAt40, c.widthShorterAt90, trained);
  const longer = width(c.widthLongerAt40, c.widthLongerAt90, trained);
  return Float64Array.from(length, (at) => {
    const z = (at - trained) / (at < trained ? shorter : longer);
    return fade * Math.exp(-0.5 * z * z);
  });
}

/** Kernel width (degrees) by trained angle: a straight line through its two known values. */
function width(atShort: number, atLong: number, trained: number): number {
  const { shortAtDeg, longAtDeg, fromDeg, toDeg, leastWidthDeg } = kernel;
  const inside = Math.min(Math.max(trained, fromDeg), toDeg);
  const share = (inside - shortAtDeg) / (longAtDeg - shortAtDeg);
  return Math.max(atShort + (atLong - atShort) * share, leastWidthDeg);
}
