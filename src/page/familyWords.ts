import type { Family } from '../tables/calibrationValues.ts';

/** Kinds of findings as a reader knows them. */
export const familyWords: Readonly<Record<Family, string>> = {
  strength: 'strength',
  growth: 'growth',
  fibres: 'fibre length',
  optimum: 'strongest angle',
  arm: 'tendon arm',
};
