import type { Sourced } from './sourced.ts';

/** What was measured, by how its errors are pooled. Optimum is in degrees, the rest in points. */
export type Family = 'strength' | 'growth' | 'fibres' | 'optimum' | 'arm';

export const families: readonly Family[] = ['strength', 'growth', 'fibres', 'optimum', 'arm'];

/**
 * Standard error of a group's mean change where the source gives none. Strength, growth and arm: the
 * median of those given in the study files (3.9 of 89, 5.6 of 162, 1.2 of one); fibres: twice the
 * median of the seven given (1.0), some of which look too small; an optimum's is judged from SD 8° in
 * ten people (Kilgallon 2007).
 */
export const unknownError: Readonly<Record<Family, number>> = {
  strength: 3.9,
  growth: 5.6,
  fibres: 2,
  optimum: 2.5,
  arm: 1.2,
};

/**
 * What a finding told only by its direction is worth: the change meant by "clear rise" and by "no
 * clear change", and the error of either; points, degrees for an optimum. With an error of 3.9 points
 * a change is clear (5 % level) from about 8 points on and seldom above 25, and one that is not lies
 * between −4 and 8. Working values; such findings are fitted, never scored.
 */
export const toldByDirection: Readonly<
  Record<Family, { readonly rise: number; readonly none: number; readonly error: number }>
> = {
  strength: { rise: 14, none: 2, error: 6 },
  growth: { rise: 10, none: 2, error: 5 },
  fibres: { rise: 8, none: 1, error: 4 },
  optimum: { rise: 6, none: 0, error: 4 },
  arm: { rise: 5, none: 0, error: 3 },
};

/** People of a group whose number the source does not give. */
export const unknownPeople = 10;

/**
 * Correlation between the errors of two findings of one kind in one group: the same people, the same
 * weeks. Eight places along a muscle then count like 1.8 findings, not eight. A judgement: changes
 * at neighbouring angles or places share their people and their sessions.
 */
export const sharedError: Sourced = {
  value: 0.5,
  unit: 'correlation',
  spread: 0.3,
  known: 'prior',
  source: 'the same people, the same weeks; a judgement',
};

/** Spread of ln gain between studies of like training: what differs beside the program. */
export const amplitudeSpread: Sourced = {
  value: 0.5,
  unit: 'ln gain',
  spread: 0.15,
  known: 'prior',
  source: 'gains of like programs differ about twofold between studies; a judgement',
};

/** What the model is taken to leave out before it is estimated, by family. */
export const firstDiscrepancy: Readonly<Record<Family, number>> = {
  strength: 4,
  growth: 3,
  fibres: 4,
  optimum: 3,
  arm: 2,
};

/** The model is never taken to be better than this. */
export const leastDiscrepancy = 1;
