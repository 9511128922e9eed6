import type { ActionName } from './actions.ts';
import type { Sourced } from './sourced.ts';

/**
 * How a tendon's arm grows with its muscle: relative growth of the arm for a small relative growth
 * of area. A thicker triceps lifts its tendon off the bone; the quadriceps pulls over the kneecap.
 */
export const tendonArmGrowth: Readonly<Partial<Record<ActionName, Sourced>>> = {
  'elbow extension': {
    value: 0.185,
    unit: 'ln arm per ln area',
    spread: 0.13,
    known: 'derived',
    source: 'Sugisaki 2015: area +33.6 ± 11.9 %, arm +5.5 ± 4.0 %; ln 1.055 / ln 1.336',
  },
  'knee extension': {
    value: 0,
    unit: 'ln arm per ln area',
    spread: 0.1,
    known: 'prior',
    source: 'nothing published; the kneecap sets the arm',
  },
};
