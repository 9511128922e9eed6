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
  driveAmplitude: { value: 0.2681, logError: 0.251 },
  driveHalfDose: { value: 1.792, logError: 0.502 },
  driveEffortPower: { value: 1.492, logError: 0.278 },
  driveTensionPower: { value: 0.2391, logError: 0.493 },
  driveFadePerDeg: { value: 0.01082, logError: 0.477 },
  widthShorterAt40: { value: 20.26, logError: 0.357 },
  widthShorterAt90: { value: 39.49, logError: 0.195 },
  widthLongerAt40: { value: 16.35, logError: 0.294 },
  widthLongerAt90: { value: 16.28, logError: 0.364 },
  driveWeeks: { value: 4.907, logError: 0.238 },
  growthAmplitude: { value: 0.3726, logError: 0.286 },
  growthHalfDose: { value: 5.319, logError: 0.362 },
  growthTensionPower: { value: 1.316, logError: 0.225 },
  growthLengthSlope: { value: 0.3239, logError: 0.384 },
  growthDistalTilt: { value: 0.2502, logError: 0.496 },
  growthWeeks: { value: 17.59, logError: 0.277 },
  seriesLong: { value: 0.2315, logError: 0.213 },
  seriesLowering: { value: 4.084, logError: 0.519 },
  seriesShort: { value: 0.0281, logError: 0.598 },
  seriesEffect: { value: 0.3969, logError: 0.423 },
  loweringEffect: { value: 0.1923, logError: 0.402 },
  seriesHalfDose: { value: 4.446, logError: 0.355 },
  seriesWeeks: { value: 3.221, logError: 0.241 },
  transferAcross: { value: 0.5565, logError: 0.173 },
  practiceAmplitude: { value: 0.2186, logError: 0.31 },
  practicePower: { value: 2.155, logError: 0.29 },
  practiceHalfDose: { value: 1.745, logError: 0.394 },
  trainedShare: { value: 0.5226, logError: 0.205 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.412 1',
  '0.034 -0.114 1',
  '0.021 -0.032 -0.035 1',
  '0.101 -0.265 -0.01 0.057 1',
  '-0.004 0.094 0.066 0.056 -0.137 1',
  '-0.003 0.012 -0.004 -0.005 0.054 0.003 1',
  '-0.042 0.194 0.027 0.007 -0.066 0.06 0.018 1',
  '0.036 0.05 -0.043 -0.017 0.203 0.044 0.012 -0.094 1',
  '0.251 -0.073 0.011 0.002 -0.022 0.007 0.002 -0.002 0.007 1',
  '-0.09 0.027 0.021 0.008 0.047 -0.02 -0.016 0.003 0.008 0.004 1',
  '0.016 -0.031 -0.011 -0.003 0.002 0.002 -0.003 0.037 0.008 0.002 0.402 1',
  '0.006 -0.019 -0.004 0.006 0.014 -0.013 -0.004 0.066 0.015 -0.015 0.113 -0.167 1',
  '0.014 -0.022 0.001 -0.006 0.063 0.019 -0.013 0.048 0.002 -0.005 0.026 -0.055 -0.053 1',
  '0.003 0.001 0 0 0 0 0 0.004 -0.001 -0.001 -0.002 -0.005 -0.004 0 1',
  '0.05 -0.015 0 -0.001 -0.017 0.007 0.006 0.012 0.002 -0.01 0.549 -0.096 0.013 -0.005 0 1',
  '0.121 -0.035 0.016 0.005 -0.072 -0.022 0.006 0.03 0.015 -0.011 -0.037 -0.03 0.016 -0.038 0 -0.006 1',
  '-0.022 -0.031 -0.005 0.004 0.072 0.015 -0.016 0.02 0.001 -0.009 0.052 -0.049 0.214 -0.009 0.001 -0.02 -0.5 1',
  '-0.017 0.004 -0.003 -0.001 0.001 0.001 0 -0.002 -0.004 -0.001 0.011 -0.001 -0.005 -0.004 0 0 0.025 0.022 1',
  '0.046 -0.029 -0.023 -0.014 -0.021 0.031 0.049 -0.014 -0.046 -0.004 -0.062 -0.005 0.008 -0.057 -0.001 0.033 -0.07 0.093 -0.013 1',
  '0.205 -0.094 -0.062 -0.017 0.036 0.049 0.018 0.066 -0.052 -0.01 -0.245 0.096 0.084 0.045 0.002 0.079 -0.089 0.025 0.009 0.014 1',
  '-0.006 0.008 0.016 0.008 -0.041 -0.022 -0.004 0.007 0.023 0.001 -0.028 0.022 -0.121 0.014 0.001 0.003 0.351 0.263 -0.006 0.056 0.005 1',
  '-0.006 -0.002 -0.007 -0.003 0.008 0.004 -0.003 0.011 -0.003 0.02 0.007 -0.01 0.048 -0.003 0 -0.002 0.214 0.061 0.002 0.003 -0.033 -0.024 1',
  '-0.163 0.014 0.034 0.012 -0.034 0.013 0.008 -0.04 0.007 -0.027 -0.053 0.024 -0.01 -0.005 0.002 0.02 0.027 0.005 -0.007 0.025 0.098 -0.02 0.019 1',
  '-0.047 0.143 0.026 0.021 0.038 -0.046 0.027 -0.006 -0.068 0.139 0.06 -0.015 0.034 -0.01 -0.001 -0.031 -0.031 0.027 0 -0.036 0.129 -0.009 0.02 0.123 1',
  '0.008 -0.03 -0.014 0.004 -0.074 -0.011 0.002 -0.006 -0.008 -0.014 -0.008 0.001 -0.01 0.009 0 0.005 0.005 -0.002 0 0.009 -0.046 -0.001 -0.005 -0.031 0.179 1',
  '-0.008 -0.02 -0.015 -0.011 0.006 0.025 -0.004 -0.009 0.002 -0.016 0 -0.002 0.001 -0.001 0 0.001 0.007 -0.005 -0.001 -0.005 -0.011 0.006 -0.002 -0.008 0.169 -0.018 1',
  '-0.031 0.028 0.016 -0.003 0.051 0.011 0.005 0.013 -0.007 0.015 -0.046 0.029 -0.018 -0.013 -0.001 0.017 -0.063 0 0.001 -0.005 -0.066 0 -0.003 0.003 -0.154 0.036 0.001 1',
];
