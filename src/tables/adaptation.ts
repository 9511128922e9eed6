import type { Sourced } from './sourced.ts';

/** Coefficients of the adaptation model; how each is used stands in `physiology/adaptation.ts`. */
export const adaptation = {
  driveAmplitude: prior(0.35, 'share', 0.1),
  driveHalfDose: prior(3, 'hard sets a week', 1.5),
  driveEffortPower: prior(2, 'exponent', 0.5),
  driveTensionPower: prior(0.3, 'exponent', 0.2),
  driveFadePerDeg: prior(0.004, 'share per degree', 0.002),
  widthShorterAt40: prior(12, 'degrees', 5),
  widthShorterAt90: prior(40, 'degrees', 12),
  widthLongerAt40: prior(15, 'degrees', 5),
  widthLongerAt90: prior(25, 'degrees', 10),
  driveWeeks: prior(4, 'weeks', 1),
  growthAmplitude: prior(0.25, 'share', 0.08),
  growthHalfDose: prior(5, 'hard sets a week', 2),
  growthTensionPower: prior(1, 'exponent', 0.3),
  growthLengthSlope: prior(0.33, 'share', 0.12),
  growthDistalTilt: prior(0.25, 'share', 0.15),
  growthWeeks: prior(20, 'weeks', 6),
  seriesLong: prior(0.08, 'share', 0.03),
  seriesShort: prior(0.03, 'share', 0.02),
  seriesHalfDose: prior(5, 'hard sets a week', 2),
  seriesWeeks: prior(4, 'weeks', 1),
  transferAcross: prior(0.45, 'share', 0.15),
  practiceAmplitude: prior(0.25, 'share', 0.1),
  practicePower: prior(2, 'exponent', 0.5),
  practiceHalfDose: prior(2, 'sets a week', 1),
  trainedShare: prior(0.5, 'share', 0.15),
} as const satisfies Readonly<Record<string, Sourced>>;

export type Coefficients = Readonly<Record<keyof typeof adaptation, number>>;

/** The coefficients as plain numbers. */
export const coefficients = Object.fromEntries(
  Object.entries(adaptation).map(([name, row]) => [name, row.value]),
) as Coefficients;

function prior(value: number, unit: string, spread: number): Sourced {
  return { value, unit, spread, known: 'prior', source: 'to be fitted' };
}

/** Difference of mean gain (share) below which two programs cannot be told apart. */
export const modelResolution: Sourced = prior(0.02, 'share', 0.01);

/** Root mean square miss of the model on a published group's mean gain, share. */
export const modelMiss: Sourced = prior(0.06, 'share', 0.02);
