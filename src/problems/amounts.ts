import type { Lift } from '../mechanics/lift.ts';
import { toDegrees } from '../numeric/degrees.ts';

/** Amounts as a problem says them: whole degrees, and no more digits than a gym reads. */
export const degreesOf = (angle: number) => `${Math.round(toDegrees(angle))}°`;
export const metres = (length: number) => `${length.toFixed(2)} m`;
/** To half kilograms, as the reports say it. */
export const kg = (mass: number) => `${Math.round(2 * mass) / 2} kg`;

/** A load that is more than another: to a tenth upward where half kilograms do not tell them apart. */
export const kgAbove = (load: number, most: number) =>
  kg(load) === kg(most) ? `${Math.ceil(10 * load - 1e-9) / 10} kg` : kg(load);

/** Where balance is looked for: over the foot, under the bar, or on a seat, nowhere. */
export const overWhat = ({ support }: Lift): string =>
  support === 'seat' ? '' : support === 'bar' ? ', hanging from the bar,' : ' over the foot';

/** "from 0° to 110°". */
export const stretchOf = ({ from, to }: { readonly from: number; readonly to: number }) =>
  `from ${degreesOf(from)} to ${degreesOf(to)}`;
