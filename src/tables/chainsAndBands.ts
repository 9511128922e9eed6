import type { Sourced } from './sourced.ts';

/** Mass of short-link chain by link diameter, and stiffness of rubber. */

/**
 * Kilograms a metre by diameter of the link's wire, mm: DIN 766, read in a dealer's table
 * (uulifting.com) and within 5 % of another's (chains.ie).
 */
const din766: ReadonlyMap<number, number> = new Map([
  [5, 0.5],
  [6, 0.8],
  [7, 1.1],
  [8, 1.4],
  [10, 2.2],
  [11, 2.7],
  [13, 3.8],
  [14, 4.4],
  [16, 5.7],
  [18, 7.3],
  [20, 9],
]);

/** How the chains' mass is known, for the list of sources. */
export const chainMassSource = {
  source:
    'DIN 766 short-link chain, two dealers’ tables; between its rows 0.022 · mm² (within 3 % from 6 to 20 mm)',
  known: 'read',
} as const;

/** Smallest and largest link of the table, mm. */
export const linkLimits = { least: 5, most: 20 } as const;

/**
 * Kilograms of one chain a metre: the table's row, or where it has none 0.022·d², a fit to the rows
 * within 3 % from 6 to 20 mm (derived).
 *
 * @param diameter of the link's wire, metres
 */
export function chainKgPerMetre(diameter: number): number {
  const millimetres = Number((1000 * diameter).toFixed(3));
  return din766.get(millimetres) ?? 0.022 * millimetres ** 2;
}

/**
 * Young's modulus of natural rubber, megapascals. Printed range 1 to 5; the value is the middle of
 * it by ratio, √(1·5), so that the truth lies within 2.2 times either way.
 */
export const rubberModulus: Sourced & { readonly range: readonly [number, number] } = {
  value: Math.sqrt(5),
  unit: 'MPa',
  spread: 2,
  range: [1, 5],
  known: 'read',
  source: 'natural rubber 1 to 5 MPa (University of Delaware, course notes 2017); law by Treloar',
};
