import type { Sourced } from './sourced.ts';

/**
 * How torque falls with speed while muscles shorten: the two numbers of Hill's relation
 * F/F0 = (1 − v/vmax) / (1 + v/(k·vmax)).
 */

/** Slowest and fastest turning for which the relation is used, deg/s (working values). */
export const speedBoundsDeg = { least: 5, most: 400 } as const;

/**
 * k = a/F0, how straight the curve is: 0.15 in slow to 0.5 in fast muscle, 0.2–0.48 in human elbow
 * flexors (Wilkie 1950); all recalled.
 */
export const hillCurvature: Sourced = {
  value: 0.25,
  unit: 'ratio',
  spread: 0.12,
  known: 'recalled',
  source: 'Hill 1938; 0.15–0.5 by kind of muscle, elbow flexors Wilkie 1950',
};

/**
 * vmax, the speed of turning at which no torque is left, deg/s, for every joint alike.
 *
 * From lifting over holding strength 0.773 at 60°/s, ankle, knee and hip pooled (Stotz 2022: log
 * coefficients 0.258 of holding and 0 of lifting, exp(−0.258) = 0.773; read). With k = 0.25 and
 * x = 60/vmax: (1 − x)/(1 + 4x) = 0.773, so x = 0.227/4.092 = 0.0555 and vmax = 1080. The spread
 * is that of k: 0.5 gives 673 and 0.15 gives 1626.
 */
export const fastestTurnDeg: Sourced = {
  value: 1080,
  unit: 'deg/s',
  spread: 480,
  known: 'derived',
  source: 'Stotz 2022, BMC Sports Sci Med Rehabil 14:13, through Hill’s relation',
};
