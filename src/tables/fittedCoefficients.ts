/**
 * Written by `npm run calibrate`; not to be changed by hand.
 *
 * Fitted to 373 findings of 45 of the 46 studies in scenarios/studies: every finding that is
 * for the fit and that the model predicts; those told only by a direction have working values.
 * `logError` is the standard error of the natural logarithm, priors of `adaptationPriors.ts` included.
 */
export const fittedFrom = { findings: 373, studies: 45 } as const;

/** Values and the errors of their logarithms. */
export const fittedCoefficients = {
  driveAmplitude: { value: 0.2962, logError: 0.229 },
  driveHalfDose: { value: 1.272, logError: 0.494 },
  driveEffortPower: { value: 1.387, logError: 0.273 },
  driveTensionPower: { value: 0.2282, logError: 0.492 },
  driveFadePerDeg: { value: 0.01285, logError: 0.408 },
  widthShorterAt40: { value: 20.82, logError: 0.343 },
  widthShorterAt90: { value: 40.37, logError: 0.195 },
  widthLongerAt40: { value: 18.3, logError: 0.257 },
  widthLongerAt90: { value: 13.74, logError: 0.35 },
  driveWeeks: { value: 5.149, logError: 0.235 },
  growthAmplitude: { value: 0.3182, logError: 0.309 },
  growthHalfDose: { value: 5.417, logError: 0.368 },
  growthTensionPower: { value: 1.427, logError: 0.203 },
  growthLengthSlope: { value: 0.3337, logError: 0.387 },
  growthDistalTilt: { value: 0.2499, logError: 0.497 },
  growthWeeks: { value: 18.26, logError: 0.28 },
  seriesLong: { value: 0.2601, logError: 0.233 },
  seriesLowering: { value: 2.043, logError: 0.521 },
  seriesShort: { value: 0.02909, logError: 0.598 },
  seriesEffect: { value: 0.3531, logError: 0.268 },
  seriesHalfDose: { value: 5.25, logError: 0.355 },
  seriesWeeks: { value: 3.186, logError: 0.238 },
  transferAcross: { value: 0.5882, logError: 0.162 },
  practiceAmplitude: { value: 0.187, logError: 0.332 },
  practicePower: { value: 2.152, logError: 0.292 },
  practiceHalfDose: { value: 1.845, logError: 0.395 },
  trainedShare: { value: 0.5415, logError: 0.203 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.373 1',
  '0.033 -0.154 1',
  '0.018 -0.05 -0.044 1',
  '0.027 -0.326 -0.016 0.05 1',
  '0.008 0.149 0.098 0.082 -0.121 1',
  '0.004 0.005 -0.009 -0.009 0.06 0.017 1',
  '-0.041 0.233 0.052 0.002 -0.011 0.081 0.028 1',
  '0.066 0.044 -0.065 -0.025 0.226 0.08 0.012 -0.109 1',
  '0.305 -0.06 0.018 0.004 -0.022 0.006 0.001 -0.015 0.013 1',
  '-0.137 0.03 0.006 0.004 0.077 -0.02 -0.023 0.002 0.003 0.014 1',
  '0.034 -0.025 -0.008 -0.003 0.008 0.003 0.002 0.034 0.007 0.001 0.364 1',
  '-0.005 -0.013 0.032 0.021 0.013 -0.033 0.001 0.073 0.019 -0.046 0.102 -0.144 1',
  '0.015 -0.015 -0.001 -0.008 0.041 0.025 -0.009 0.048 -0.006 -0.005 0.022 -0.044 -0.047 1',
  '0.002 0.001 0 0 -0.001 0 0.001 0.003 -0.001 -0.001 -0.002 -0.003 -0.002 0 1',
  '0.065 -0.013 0.004 0.001 -0.029 0.004 0.009 0.01 0.003 -0.012 0.462 -0.094 0.01 -0.004 0 1',
  '0.126 0.014 0.055 0.022 -0.092 -0.059 0.007 0.044 0.024 -0.028 -0.049 -0.043 -0.078 -0.032 0 0 1',
  '-0.024 -0.054 -0.025 -0.007 0.084 0.036 -0.018 0.014 -0.001 -0.003 0.052 -0.016 0.278 0.003 0.001 -0.017 -0.56 1',
  '-0.013 0 -0.005 -0.002 -0.001 0.003 0.001 -0.002 -0.005 -0.001 0.007 0 -0.007 -0.004 0 0.001 0.026 0.013 1',
  '0.278 -0.067 -0.021 -0.006 -0.057 0.046 0.045 0.051 -0.061 -0.025 -0.33 0.109 0.068 0.03 0.002 0.128 -0.108 -0.026 -0.007 1',
  '0.006 0.011 0.028 0.015 -0.019 -0.037 -0.002 0.014 0.031 -0.007 -0.04 0.01 -0.174 0.01 0.001 0.007 0.4 0.207 -0.002 0.019 1',
  '-0.001 -0.003 -0.006 -0.004 0.006 0.003 -0.004 0.022 -0.004 0.034 0.003 -0.007 0.074 0 0 -0.002 0.211 0.051 0.003 -0.043 -0.016 1',
  '-0.206 -0.003 0.034 0.009 -0.059 0.036 0.009 -0.032 -0.009 -0.045 -0.08 0.037 -0.048 -0.001 0.002 0.03 0.026 -0.013 -0.004 0.117 -0.016 0.024 1',
  '-0.065 0.13 0.01 0.015 0.042 -0.029 0.029 0.015 -0.104 0.115 0.06 -0.018 0.059 -0.022 -0.001 -0.029 -0.017 0.026 -0.002 0.116 0.001 0.031 0.166 1',
  '0.013 -0.026 -0.006 0.006 -0.055 -0.02 0.001 -0.009 0.003 -0.012 -0.008 0.001 -0.014 0.01 0 0.005 0.005 -0.005 0 -0.036 -0.001 -0.008 -0.038 0.16 1',
  '-0.004 -0.025 -0.013 -0.009 -0.001 0.024 -0.004 -0.011 0.008 -0.015 -0.005 0 -0.001 0.001 0 0.003 0.007 -0.004 0 -0.005 0.004 -0.002 -0.012 0.141 -0.017 1',
  '-0.066 0.042 0.016 -0.006 0.016 0.019 0.002 0.022 -0.012 0.014 -0.039 0.024 -0.021 -0.01 -0.001 0.016 -0.054 -0.005 0.001 -0.082 0.004 -0.004 0.003 -0.126 0.033 0.002 1',
];
