import type { Lift } from '../mechanics/lift.ts';
import { armLifts } from './armLifts.ts';
import { hipLifts } from './hipLifts.ts';
import { kneeExtensions, legMachineLifts } from './legMachineLifts.ts';
import { barSquats, otherSquats } from './squatLifts.ts';

/**
 * The lift catalogue, by part of the body. Adding a lift means adding one value to one of the
 * tables (and, if it is new, its follow rule in mechanics). Statements under `assumed` are printed
 * in the report.
 */
export const lifts: readonly Lift[] = [
  ...barSquats,
  ...kneeExtensions,
  ...otherSquats,
  ...hipLifts,
  ...legMachineLifts,
  ...armLifts,
];

/**
 * The lift of a name; names in a scenario are checked when it is read.
 *
 * @param among the lifts to look in: the catalogue, or that with a scenario's own
 */
export function liftNamed(name: string, among: readonly Lift[] = lifts): Lift {
  const lift = among.find((entry) => entry.name === name);
  if (!lift) throw new Error(`no lift "${name}" in the catalogue`);
  return lift;
}

/** Whether chains can hang from a lift's load: it is a weight, and it is known where the floor is. */
export function takesChains({ resistance, support, aboveFloor }: Lift): boolean {
  return resistance.kind === 'mass' && (support === 'feet' || aboveFloor !== undefined);
}

/** Whether bands can pull on a lift: as chains do, or beside the cable to its pulley. */
export function takesBands(lift: Lift): boolean {
  return lift.resistance.kind === 'cable' || takesChains(lift);
}
