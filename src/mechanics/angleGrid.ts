import { toDegrees, toRadians } from '../numeric/degrees.ts';
/** Shared grid of joint angles: −60 to 180 degrees, flexion positive, every 2.5 degrees. */
export const gridStepDeg = 2.5;
const firstDeg = -60;
export const gridDeg: readonly number[] = Array.from(
  { length: 97 },
  (_, i) => firstDeg + i * gridStepDeg,
);

/** The same grid in radians. */
export const gridAngles: readonly number[] = gridDeg.map(toRadians);

/** Values on the grid. */
export type OverAngles = readonly number[];

/**
 * Value between grid points by straight lines, held constant beyond the ends.
 *
 * @param angle radians
 */
export function atAngle(values: OverAngles, angle: number): number {
  const { index, share } = gridPlace(angle);
  const left = values[index] ?? 0;
  return left + share * ((values[index + 1] ?? left) - left);
}

/** Grid interval that holds an angle (radians) and how far into it the angle lies, 0 to 1. */
export function gridPlace(angle: number): { index: number; share: number } {
  const place = (toDegrees(angle) - firstDeg) / gridStepDeg;
  const index = Math.min(Math.max(Math.floor(place), 0), gridDeg.length - 2);
  return { index, share: Math.min(Math.max(place - index, 0), 1) };
}

/** Grid index nearest to an angle in radians. */
export function nearestIndex(angle: number): number {
  const { index, share } = gridPlace(angle);
  return share < 0.5 ? index : index + 1;
}
