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
  driveAmplitude: { value: 0.2792, logError: 0.243 },
  driveHalfDose: { value: 1.583, logError: 0.501 },
  driveEffortPower: { value: 1.451, logError: 0.276 },
  driveTensionPower: { value: 0.2376, logError: 0.492 },
  driveFadePerDeg: { value: 0.01191, logError: 0.454 },
  widthShorterAt40: { value: 21.39, logError: 0.361 },
  widthShorterAt90: { value: 39.26, logError: 0.195 },
  widthLongerAt40: { value: 17.32, logError: 0.283 },
  widthLongerAt90: { value: 15.64, logError: 0.361 },
  driveWeeks: { value: 5.004, logError: 0.237 },
  growthAmplitude: { value: 0.3513, logError: 0.297 },
  growthHalfDose: { value: 5.475, logError: 0.364 },
  growthTensionPower: { value: 1.381, logError: 0.218 },
  growthLengthSlope: { value: 0.3392, logError: 0.383 },
  growthDistalTilt: { value: 0.2501, logError: 0.497 },
  growthWeeks: { value: 17.84, logError: 0.278 },
  seriesLong: { value: 0.232, logError: 0.213 },
  seriesLowering: { value: 3.922, logError: 0.518 },
  seriesShort: { value: 0.02797, logError: 0.598 },
  seriesEffect: { value: 0.2777, logError: 0.302 },
  seriesHalfDose: { value: 4.332, logError: 0.355 },
  seriesWeeks: { value: 3.162, logError: 0.241 },
  transferAcross: { value: 0.5676, logError: 0.169 },
  practiceAmplitude: { value: 0.2201, logError: 0.309 },
  practicePower: { value: 2.124, logError: 0.29 },
  practiceHalfDose: { value: 1.756, logError: 0.394 },
  trainedShare: { value: 0.5227, logError: 0.205 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.396 1',
  '0.03 -0.127 1',
  '0.02 -0.039 -0.04 1',
  '0.071 -0.285 -0.011 0.058 1',
  '-0.002 0.098 0.068 0.057 -0.117 1',
  '0.002 0.012 -0.005 -0.005 0.058 0.001 1',
  '-0.048 0.207 0.033 0.003 -0.043 0.063 0.024 1',
  '0.043 0.046 -0.049 -0.02 0.205 0.046 0.014 -0.103 1',
  '0.272 -0.068 0.016 0.003 -0.025 0.006 0.002 -0.005 0.008 1',
  '-0.108 0.034 0.022 0.009 0.064 -0.021 -0.02 0.005 0.008 0.005 1',
  '0.023 -0.028 -0.011 -0.003 0.002 0.002 0 0.035 0.007 0.002 0.389 1',
  '0.015 -0.016 0.011 0.012 0.011 -0.018 -0.001 0.072 0.015 -0.024 0.101 -0.159 1',
  '0.013 -0.019 0 -0.008 0.052 0.019 -0.009 0.047 -0.002 -0.005 0.026 -0.057 -0.059 1',
  '0.003 0.001 0 0 0 0 0.001 0.004 -0.001 -0.001 -0.002 -0.004 -0.003 0 1',
  '0.054 -0.015 0 0 -0.024 0.006 0.007 0.01 0.001 -0.01 0.509 -0.097 0.012 -0.006 0 1',
  '0.118 -0.009 0.032 0.012 -0.094 -0.035 -0.001 0.039 0.023 -0.012 -0.04 -0.031 -0.013 -0.028 0 -0.006 1',
  '-0.01 -0.05 -0.018 -0.002 0.085 0.027 -0.011 0.019 -0.008 -0.01 0.046 -0.04 0.248 -0.017 0.001 -0.015 -0.502 1',
  '-0.011 0.002 -0.004 -0.001 0.001 0.002 0.001 -0.002 -0.004 -0.001 0.006 0.001 -0.003 -0.002 0 0.001 0.026 0.018 1',
  '0.232 -0.091 -0.061 -0.021 -0.023 0.054 0.043 0.051 -0.068 -0.009 -0.285 0.1 0.09 0.02 0.001 0.108 -0.126 0.009 -0.009 1',
  '-0.001 0.01 0.017 0.009 -0.039 -0.022 -0.005 0.01 0.022 0.001 -0.038 0.022 -0.134 0.013 0.001 0.006 0.339 0.277 -0.006 0.006 1',
  '-0.004 -0.003 -0.008 -0.004 0.01 0.003 -0.004 0.014 -0.003 0.023 0.008 -0.009 0.058 -0.002 0 -0.003 0.207 0.058 0.001 -0.041 -0.024 1',
  '-0.184 0.01 0.033 0.011 -0.045 0.019 0.01 -0.04 0.003 -0.032 -0.063 0.029 -0.014 -0.005 0.002 0.022 0.021 0.01 -0.004 0.108 -0.019 0.02 1',
  '-0.046 0.139 0.02 0.019 0.04 -0.033 0.03 -0.003 -0.077 0.14 0.056 -0.018 0.032 -0.02 -0.001 -0.029 -0.015 0.018 0 0.12 -0.002 0.023 0.144 1',
  '0.008 -0.027 -0.011 0.006 -0.068 -0.014 0 -0.006 -0.004 -0.014 -0.006 0.001 -0.011 0.011 0 0.004 0 -0.001 0 -0.04 -0.004 -0.006 -0.033 0.184 1',
  '-0.009 -0.021 -0.015 -0.011 0.003 0.022 -0.003 -0.01 0.003 -0.016 0 -0.002 0.004 -0.001 0 0.001 0.009 -0.007 -0.001 -0.011 0.005 -0.002 -0.01 0.168 -0.018 1',
  '-0.044 0.03 0.016 -0.003 0.043 0.012 0.004 0.016 -0.008 0.015 -0.04 0.026 -0.02 -0.01 -0.001 0.015 -0.064 -0.003 0.001 -0.078 -0.002 -0.003 0 -0.148 0.035 0.001 1',
];
