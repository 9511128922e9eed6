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
  driveAmplitude: { value: 0.2682, logError: 0.242 },
  driveHalfDose: { value: 1.636, logError: 0.498 },
  driveEffortPower: { value: 1.464, logError: 0.276 },
  driveTensionPower: { value: 0.2402, logError: 0.492 },
  driveFadePerDeg: { value: 0.01112, logError: 0.461 },
  widthShorterAt40: { value: 22.41, logError: 0.368 },
  widthShorterAt90: { value: 38.81, logError: 0.195 },
  widthLongerAt40: { value: 17.34, logError: 0.283 },
  widthLongerAt90: { value: 15.18, logError: 0.361 },
  driveWeeks: { value: 5.003, logError: 0.237 },
  growthAmplitude: { value: 0.3385, logError: 0.293 },
  growthHalfDose: { value: 5.375, logError: 0.366 },
  growthTensionPower: { value: 1.248, logError: 0.231 },
  growthLengthSlope: { value: 0.3227, logError: 0.386 },
  growthDistalTilt: { value: 0.2499, logError: 0.497 },
  growthWeeks: { value: 18.08, logError: 0.278 },
  seriesLong: { value: 0.2029, logError: 0.214 },
  seriesLowering: { value: 4.477, logError: 0.529 },
  seriesShort: { value: 0.02718, logError: 0.598 },
  seriesEffect: { value: 0.4178, logError: 0.399 },
  loweringEffect: { value: 0.2123, logError: 0.406 },
  seriesHalfDose: { value: 4.448, logError: 0.362 },
  seriesWeeks: { value: 3.219, logError: 0.241 },
  transferAcross: { value: 0.573, logError: 0.169 },
  practiceAmplitude: { value: 0.1948, logError: 0.326 },
  practicePower: { value: 2.139, logError: 0.291 },
  practiceHalfDose: { value: 1.804, logError: 0.395 },
  trainedShare: { value: 0.5332, logError: 0.204 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.411 1',
  '0.033 -0.133 1',
  '0.022 -0.043 -0.043 1',
  '0.078 -0.259 0.008 0.066 1',
  '-0.012 0.093 0.062 0.051 -0.124 1',
  '-0.002 0.016 -0.001 -0.003 0.051 -0.003 1',
  '-0.046 0.208 0.03 0.004 -0.053 0.057 0.021 1',
  '0.05 0.041 -0.052 -0.02 0.225 0.039 0.016 -0.099 1',
  '0.272 -0.07 0.013 0.002 -0.023 0.006 0.002 -0.006 0.009 1',
  '-0.092 0.034 0.024 0.006 0.066 -0.014 -0.017 -0.003 0.005 0.008 1',
  '0.017 -0.028 -0.01 0 -0.003 -0.001 -0.004 0.041 0.008 0 0.385 1',
  '-0.001 -0.013 0 0.007 0.02 -0.009 -0.004 0.063 0.013 -0.023 0.114 -0.139 1',
  '0.012 -0.019 0.002 -0.005 0.066 0.011 -0.012 0.045 0.002 -0.004 0.04 -0.054 -0.04 1',
  '0.002 0.001 0 0 0 0 0 0.004 -0.001 -0.001 -0.002 -0.004 -0.004 0 1',
  '0.052 -0.016 -0.001 -0.001 -0.024 0.004 0.006 0.012 0.003 -0.01 0.519 -0.096 0.008 -0.011 0 1',
  '0.12 -0.02 0.027 0.011 -0.076 -0.027 -0.004 0.041 0.026 -0.015 -0.03 -0.031 0.027 -0.027 0 -0.009 1',
  '-0.013 -0.05 -0.006 0.003 0.077 0.018 -0.006 0.015 -0.008 -0.008 0.032 -0.044 0.191 -0.026 0.001 -0.017 -0.454 1',
  '-0.018 0.003 -0.005 -0.002 0.001 0.002 0.001 -0.003 -0.004 0 0.014 -0.001 -0.004 -0.003 0 0 0.027 0.03 1',
  '0.036 -0.035 -0.032 -0.015 -0.048 0.026 0.037 -0.018 -0.042 -0.007 -0.102 -0.018 -0.013 -0.084 -0.001 0.049 -0.094 0.117 -0.02 1',
  '0.192 -0.087 -0.052 -0.006 -0.001 0.023 0.015 0.075 -0.039 -0.016 -0.259 0.11 0.076 0.062 0.002 0.085 -0.067 0.027 0.006 -0.072 1',
  '0.008 0.006 0.031 0.012 -0.04 -0.022 -0.005 0.014 0.029 0 -0.027 0.011 -0.096 0.017 0.001 0.001 0.461 0.197 0.002 0.09 0.05 1',
  '-0.003 -0.005 -0.007 -0.003 0.008 0.004 -0.003 0.013 -0.005 0.019 0.002 -0.007 0.049 -0.005 0 -0.002 0.214 0.06 0.002 0.004 -0.029 -0.026 1',
  '-0.187 0.009 0.028 0.01 -0.04 0.014 0.008 -0.042 0.004 -0.03 -0.056 0.022 -0.016 -0.006 0.002 0.023 0.025 0 -0.008 0.023 0.079 -0.027 0.018 1',
  '-0.059 0.145 0.025 0.021 0.043 -0.031 0.022 0.002 -0.074 0.124 0.068 -0.011 0.055 -0.003 -0.001 -0.032 -0.014 0.012 -0.001 -0.052 0.139 -0.003 0.018 0.137 1',
  '0.009 -0.027 -0.011 0.004 -0.071 -0.009 0.001 -0.006 -0.004 -0.013 -0.008 0 -0.01 0.006 0 0.005 0.002 0.001 0 0.005 -0.046 0.001 -0.005 -0.032 0.162 1',
  '-0.005 -0.024 -0.015 -0.011 0.005 0.019 -0.003 -0.01 0.004 -0.015 -0.003 -0.001 -0.004 0 0 0.002 0.006 -0.004 -0.001 -0.002 -0.009 0.005 -0.002 -0.011 0.149 -0.017 1',
  '-0.042 0.029 0.017 -0.004 0.052 0.01 0.005 0.015 -0.006 0.014 -0.042 0.025 -0.016 -0.013 -0.001 0.017 -0.065 0.004 0.001 -0.021 -0.07 0.003 -0.003 0.002 -0.14 0.032 0.003 1',
];
