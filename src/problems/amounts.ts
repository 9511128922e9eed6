import { toDegrees } from '../numeric/degrees.ts';

/** Amounts as a problem says them: whole degrees, and no more digits than a gym reads. */
export const degreesOf = (angle: number) => `${Math.round(toDegrees(angle))}°`;
export const metres = (length: number) => `${length.toFixed(2)} m`;
export const kg = (mass: number) => `${mass.toFixed(mass < 100 ? 1 : 0)} kg`;

/** "from 0° to 110°". */
export const stretchOf = ({ from, to }: { readonly from: number; readonly to: number }) =>
  `from ${degreesOf(from)} to ${degreesOf(to)}`;
