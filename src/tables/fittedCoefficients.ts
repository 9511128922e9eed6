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
  driveAmplitude: { value: 0.2705, logError: 0.24 },
  driveHalfDose: { value: 1.518, logError: 0.499 },
  driveEffortPower: { value: 1.436, logError: 0.276 },
  driveTensionPower: { value: 0.2333, logError: 0.493 },
  driveFadePerDeg: { value: 0.01189, logError: 0.453 },
  widthShorterAt40: { value: 20.69, logError: 0.352 },
  widthShorterAt90: { value: 39.97, logError: 0.195 },
  widthLongerAt40: { value: 16.66, logError: 0.282 },
  widthLongerAt90: { value: 15.29, logError: 0.359 },
  driveWeeks: { value: 4.987, logError: 0.237 },
  growthAmplitude: { value: 0.3548, logError: 0.288 },
  growthHalfDose: { value: 5.324, logError: 0.363 },
  growthTensionPower: { value: 1.349, logError: 0.222 },
  growthLengthSlope: { value: 0.3188, logError: 0.385 },
  growthDistalTilt: { value: 0.2502, logError: 0.496 },
  growthWeeks: { value: 17.79, logError: 0.277 },
  seriesLong: { value: 0.2303, logError: 0.213 },
  seriesLowering: { value: 4.044, logError: 0.522 },
  seriesShort: { value: 0.02775, logError: 0.598 },
  seriesEffect: { value: 0.4169, logError: 0.374 },
  loweringEffect: { value: 0.187, logError: 0.421 },
  seriesHalfDose: { value: 4.478, logError: 0.354 },
  seriesWeeks: { value: 3.211, logError: 0.241 },
  transferAcross: { value: 0.5647, logError: 0.169 },
  practiceAmplitude: { value: 0.2019, logError: 0.321 },
  practicePower: { value: 2.156, logError: 0.29 },
  practiceHalfDose: { value: 1.779, logError: 0.395 },
  trainedShare: { value: 0.5245, logError: 0.203 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.403 1',
  '0.032 -0.13 1',
  '0.02 -0.041 -0.039 1',
  '0.078 -0.29 -0.013 0.059 1',
  '-0.004 0.119 0.081 0.066 -0.139 1',
  '-0.003 0.008 -0.008 -0.007 0.055 0.009 1',
  '-0.048 0.207 0.033 0.005 -0.046 0.068 0.02 1',
  '0.048 0.048 -0.051 -0.02 0.213 0.056 0.011 -0.101 1',
  '0.275 -0.067 0.014 0.003 -0.024 0.006 0.003 -0.004 0.008 1',
  '-0.087 0.023 0.017 0.008 0.065 -0.021 -0.018 0.01 0.006 0.004 1',
  '0.019 -0.025 -0.008 -0.001 0.009 -0.002 -0.003 0.039 0.01 0.002 0.402 1',
  '0.005 -0.016 0.003 0.01 0.02 -0.019 -0.003 0.072 0.017 -0.024 0.108 -0.157 1',
  '0.015 -0.019 0.002 -0.005 0.066 0.018 -0.015 0.051 0.002 -0.004 0.035 -0.054 -0.044 1',
  '0.002 0.001 0 0 0 0 0 0.004 -0.001 -0.001 -0.002 -0.004 -0.004 0 1',
  '0.05 -0.012 0.002 0 -0.023 0.005 0.007 0.009 0.003 -0.01 0.54 -0.098 0.013 -0.009 0 1',
  '0.127 -0.019 0.025 0.007 -0.092 -0.028 0.003 0.034 0.018 -0.012 -0.037 -0.024 0.013 -0.023 0 -0.006 1',
  '-0.024 -0.038 -0.008 0.003 0.087 0.018 -0.012 0.019 -0.002 -0.01 0.046 -0.051 0.199 -0.028 0.001 -0.02 -0.507 1',
  '-0.019 0.003 -0.004 -0.002 0 0.002 0 -0.002 -0.005 -0.001 0.013 0 -0.003 -0.003 0 0 0.026 0.026 1',
  '0.06 -0.032 -0.034 -0.018 -0.086 0.043 0.049 -0.012 -0.062 -0.006 -0.128 -0.008 0.003 -0.085 0 0.059 -0.133 0.149 -0.021 1',
  '0.206 -0.073 -0.045 -0.012 0.029 0.041 0.013 0.06 -0.038 -0.006 -0.216 0.102 0.102 0.075 0.001 0.068 -0.036 -0.003 0.013 0.004 1',
  '-0.008 0.013 0.022 0.01 -0.032 -0.028 -0.003 0.007 0.027 0.001 -0.017 0.019 -0.122 0.023 0.001 0 0.359 0.253 -0.006 0.096 0.027 1',
  '-0.004 -0.004 -0.007 -0.004 0.008 0.005 -0.003 0.013 -0.004 0.022 0.004 -0.01 0.051 -0.005 0 -0.002 0.212 0.062 0.002 0 -0.033 -0.022 1',
  '-0.187 0.008 0.031 0.009 -0.046 0.023 0.008 -0.044 0.003 -0.032 -0.056 0.027 -0.017 -0.004 0.002 0.022 0.028 0.006 -0.009 0.036 0.094 -0.023 0.021 1',
  '-0.051 0.14 0.02 0.02 0.053 -0.042 0.024 0.003 -0.075 0.129 0.07 -0.009 0.044 0 -0.001 -0.034 -0.02 0.018 0.001 -0.047 0.143 -0.006 0.019 0.134 1',
  '0.01 -0.028 -0.011 0.005 -0.07 -0.014 0.002 -0.008 -0.005 -0.013 -0.011 0 -0.011 0.007 0 0.006 0.003 -0.001 0 0.004 -0.043 0 -0.005 -0.032 0.166 1',
  '-0.008 -0.022 -0.014 -0.01 0.002 0.025 -0.004 -0.01 0.003 -0.015 -0.001 -0.002 0.001 0 0 0.002 0.007 -0.005 -0.001 -0.004 -0.01 0.005 -0.002 -0.01 0.156 -0.018 1',
  '-0.042 0.029 0.015 -0.003 0.042 0.014 0.004 0.017 -0.008 0.014 -0.049 0.027 -0.019 -0.014 -0.001 0.018 -0.066 0.004 0.001 -0.029 -0.056 0.006 -0.003 0.004 -0.143 0.034 0.002 1',
];
