import type { Expected } from './reading.ts';

/** What every kind of work states alike. */

/** Time between sets. */
export const rest: Expected = {
  dimension: 'time',
  example: '120 s',
  least: 0,
  most: 3600,
  bounds: 'a rest lies between 0 s and 60 min',
};

/** Rest of work that does not state one. */
export const defaultRest = '120 s';

/** Share of the strongest effort possible. */
export const effort: Expected = {
  dimension: 'share',
  example: '90 %',
  least: 1e-6,
  most: 1,
  bounds: 'an effort lies above 0 % and up to 100 %',
};
