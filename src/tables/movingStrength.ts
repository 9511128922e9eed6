import type { Sourced } from './sourced.ts';

/** How strong people are while they move, beside a hold. */

/**
 * Strength while lowering over isometric strength. In vivo 0.9 (Stotz 2022; read) to 1.2
 * (recalled range); isolated muscle far more. The middle, with the conflict as spread.
 */
export const loweringStrength: Sourced = {
  value: 1.05,
  unit: 'ratio',
  spread: 0.15,
  known: 'derived',
  source: 'Stotz 2022, BMC Sports Sci Med Rehabil 14:13, against isolated-muscle work',
};

/**
 * Strength in the sticking region of a heaviest single over strength in a hold, for lifts without
 * a test: 0.77 at 60°/s (Stotz 2022; read) and 1 at standstill; near the sticking point a heaviest
 * single moves slower than that, so between the two.
 */
export const liftingStrength: Sourced = {
  value: 0.87,
  unit: 'ratio',
  spread: 0.1,
  known: 'derived',
  source: 'Stotz 2022, BMC Sports Sci Med Rehabil 14:13',
};
