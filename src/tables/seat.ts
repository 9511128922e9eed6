import type { Sourced } from './sourced.ts';

/** How far the hip joint lies above what one sits on, so that a box can be told from a hip height. */
export const seatToHipJoint: Sourced = {
  value: 0.085,
  unit: 'm',
  spread: 0.005,
  known: 'prior',
  source: 'working value, 8 to 9 cm of soft tissue and bone; no table read',
};
