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
  driveAmplitude: { value: 0.2864, logError: 0.234 },
  driveHalfDose: { value: 1.419, logError: 0.499 },
  driveEffortPower: { value: 1.455, logError: 0.275 },
  driveTensionPower: { value: 0.227, logError: 0.493 },
  driveFadePerDeg: { value: 0.01206, logError: 0.438 },
  widthShorterAt40: { value: 20.6, logError: 0.352 },
  widthShorterAt90: { value: 39.61, logError: 0.195 },
  widthLongerAt40: { value: 17.12, logError: 0.277 },
  widthLongerAt90: { value: 15.24, logError: 0.358 },
  driveWeeks: { value: 4.986, logError: 0.237 },
  growthAmplitude: { value: 0.3054, logError: 0.315 },
  growthHalfDose: { value: 5.247, logError: 0.37 },
  growthTensionPower: { value: 1.442, logError: 0.203 },
  growthLengthSlope: { value: 0.3138, logError: 0.391 },
  growthDistalTilt: { value: 0.2504, logError: 0.497 },
  growthWeeks: { value: 18.59, logError: 0.28 },
  seriesLong: { value: 0.2581, logError: 0.233 },
  seriesLowering: { value: 2.106, logError: 0.534 },
  seriesShort: { value: 0.02906, logError: 0.598 },
  seriesEffect: { value: 0.3926, logError: 0.271 },
  seriesHalfDose: { value: 5.399, logError: 0.355 },
  seriesWeeks: { value: 3.271, logError: 0.239 },
  transferAcross: { value: 0.5492, logError: 0.167 },
  practiceAmplitude: { value: 0.1987, logError: 0.328 },
  practicePower: { value: 2.148, logError: 0.291 },
  practiceHalfDose: { value: 1.809, logError: 0.395 },
  trainedShare: { value: 0.5349, logError: 0.204 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.388 1',
  '0.033 -0.133 1',
  '0.018 -0.041 -0.038 1',
  '0.064 -0.299 -0.017 0.058 1',
  '0.001 0.12 0.08 0.065 -0.137 1',
  '-0.006 0.007 -0.006 -0.006 0.057 0.007 1',
  '-0.049 0.213 0.037 0.004 -0.039 0.071 0.021 1',
  '0.062 0.053 -0.052 -0.018 0.215 0.052 0.015 -0.107 1',
  '0.288 -0.064 0.013 0.002 -0.022 0.007 0.002 -0.007 0.008 1',
  '-0.124 0.053 0.009 0.008 0.079 -0.026 -0.014 -0.003 -0.009 0.012 1',
  '0.02 -0.026 -0.013 -0.004 -0.004 0.004 -0.001 0.028 0.006 0.001 0.355 1',
  '-0.001 -0.021 0.01 0.009 0.013 -0.004 -0.003 0.06 0.012 -0.027 0.102 -0.138 1',
  '0.007 -0.001 -0.002 -0.006 0.057 0.015 -0.006 0.041 -0.007 -0.005 0.026 -0.035 -0.04 1',
  '0.002 0.001 0 0 0 0 0 0.004 -0.001 -0.001 -0.002 -0.003 -0.002 0 1',
  '0.061 -0.022 0.001 -0.001 -0.03 0.008 0.006 0.009 0.006 -0.01 0.444 -0.094 0.007 -0.005 0 1',
  '0.121 -0.02 0.05 0.018 -0.072 -0.04 -0.002 0.039 0.038 -0.023 -0.043 -0.04 -0.082 -0.022 0 0 1',
  '-0.022 -0.033 -0.026 -0.007 0.058 0.028 -0.01 0.008 -0.013 -0.002 0.056 -0.01 0.304 0.007 0 -0.018 -0.551 1',
  '-0.013 -0.001 -0.003 -0.002 -0.001 0.003 0 0.002 -0.003 0 0.008 -0.001 -0.008 -0.003 0 0 0.021 0.011 1',
  '0.203 -0.092 -0.035 -0.018 -0.046 0.059 0.026 0.037 -0.035 -0.014 -0.345 0.093 0.085 0.004 0.002 0.134 -0.1 -0.025 -0.006 1',
  '0.016 0 0.029 0.014 -0.029 -0.031 -0.002 0.009 0.033 -0.006 -0.049 0.016 -0.18 0.014 0.001 0.01 0.402 0.196 -0.003 0.048 1',
  '-0.002 -0.004 -0.005 -0.003 0.003 0.004 -0.003 0.016 -0.002 0.024 0.005 -0.007 0.071 -0.001 0 -0.003 0.226 0.046 0.002 -0.043 -0.013 1',
  '-0.203 0.003 0.039 0.012 -0.049 0.02 0.004 -0.043 0.01 -0.034 -0.05 0.028 -0.036 0.005 0.002 0.021 0.011 0.001 -0.006 0.059 -0.013 0.019 1',
  '-0.069 0.142 0.02 0.018 0.033 -0.038 0.03 0.002 -0.079 0.118 0.065 -0.014 0.048 -0.009 -0.001 -0.031 -0.041 0.044 -0.004 0.108 -0.007 0.025 0.138 1',
  '0.013 -0.027 -0.012 0.005 -0.063 -0.013 0.001 -0.006 -0.006 -0.012 -0.01 -0.001 -0.011 0.007 0 0.005 0.013 -0.011 0.001 -0.034 0.003 -0.006 -0.031 0.161 1',
  '-0.003 -0.025 -0.015 -0.011 0.003 0.026 -0.005 -0.01 0.004 -0.014 -0.004 0 -0.003 -0.001 0 0.002 0.009 -0.006 0 -0.007 0.005 -0.002 -0.011 0.143 -0.017 1',
  '-0.047 0.032 0.017 -0.003 0.044 0.013 0.005 0.018 -0.01 0.014 -0.031 0.027 -0.012 -0.004 -0.001 0.013 -0.055 -0.004 0 -0.081 0 -0.002 0.002 -0.139 0.033 0.003 1',
];
