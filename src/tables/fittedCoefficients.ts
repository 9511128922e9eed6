/**
 * Written by `npm run calibrate`; not to be changed by hand.
 *
 * Fitted to 324 findings of 34 of the 46 studies in scenarios/studies: every finding that has a
 * size, is for the fit and can be predicted by the model. `logError` is the standard error of the
 * natural logarithm, priors of `adaptationPriors.ts` included.
 */
export const fittedCoefficients = {
  driveAmplitude: { value: 0.3305, logError: 0.262 },
  driveHalfDose: { value: 1.895, logError: 0.496 },
  driveEffortPower: { value: 1.632, logError: 0.274 },
  driveTensionPower: { value: 0.2407, logError: 0.49 },
  driveFadePerDeg: { value: 0.01228, logError: 0.432 },
  widthShorterAt40: { value: 20.71, logError: 0.371 },
  widthShorterAt90: { value: 38.42, logError: 0.196 },
  widthLongerAt40: { value: 15.79, logError: 0.309 },
  widthLongerAt90: { value: 17.85, logError: 0.364 },
  driveWeeks: { value: 4.328, logError: 0.242 },
  growthAmplitude: { value: 0.4575, logError: 0.267 },
  growthHalfDose: { value: 5.383, logError: 0.359 },
  growthTensionPower: { value: 1.145, logError: 0.246 },
  growthLengthSlope: { value: 0.2922, logError: 0.386 },
  growthDistalTilt: { value: 0.2524, logError: 0.495 },
  growthWeeks: { value: 16.4, logError: 0.275 },
  seriesLong: { value: 0.07027, logError: 0.43 },
  seriesLowering: { value: 0.5, logError: 0.8 },
  seriesShort: { value: 0.02738, logError: 0.596 },
  seriesEffect: { value: 0.5, logError: 0.5 },
  seriesHalfDose: { value: 4.885, logError: 0.38 },
  seriesWeeks: { value: 3.967, logError: 0.249 },
  transferAcross: { value: 0.4905, logError: 0.178 },
  practiceAmplitude: { value: 0.1849, logError: 0.349 },
  practicePower: { value: 2.295, logError: 0.291 },
  practiceHalfDose: { value: 1.878, logError: 0.395 },
  trainedShare: { value: 0.4667, logError: 0.205 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.465 1',
  '0.061 -0.16 1',
  '0.035 -0.052 -0.049 1',
  '0.106 -0.259 -0.022 0.084 1',
  '-0.02 0.1 0.087 0.071 -0.144 1',
  '-0.012 0.016 0.001 -0.008 0.059 0.011 1',
  '-0.06 0.178 0.028 -0.005 -0.045 0.045 0.013 1',
  '0.052 0.025 -0.052 -0.019 0.176 0.048 0.013 -0.114 1',
  '0.19 -0.069 0.004 0 -0.032 0.004 0.005 -0.002 0.005 1',
  '0.022 0.004 0.002 -0.002 0.06 -0.003 -0.003 0.011 -0.007 -0.001 1',
  '0.005 -0.006 -0.006 0.001 -0.016 -0.015 -0.001 0.02 0.02 0.001 0.456 1',
  '-0.01 -0.011 -0.047 -0.012 0.067 0.01 -0.004 0.038 0.008 -0.005 0.17 -0.182 1',
  '0.013 -0.002 -0.002 -0.011 0.077 0.016 -0.01 0.047 -0.004 -0.005 0.031 -0.039 -0.039 1',
  '0.002 0.001 0.001 0 0 -0.001 0 0.005 0 0 -0.003 -0.007 -0.007 -0.001 1',
  '0.018 -0.005 0.001 -0.002 -0.013 0.001 0.001 -0.004 0.002 -0.004 0.609 -0.099 0.019 -0.002 0.001 1',
  '0.045 -0.031 -0.053 -0.026 0.027 0.061 0 0.022 -0.068 0.002 -0.045 -0.019 0.07 -0.059 0 0.016 1',
  '-0.026 0 0.004 0.005 -0.008 -0.002 -0.001 0.019 0.006 -0.002 0.011 -0.007 -0.035 -0.009 -0.001 0.005 0.006 1',
  '-0.02 0.022 0.034 0.017 -0.018 -0.041 0.001 -0.013 0.044 -0.003 0.015 0 -0.053 0.028 0 -0.003 0.186 -0.006 1',
  '-0.004 0.003 0.005 0.002 -0.002 -0.006 0 -0.002 0.006 0.001 0.006 0.004 -0.004 0.007 0 -0.004 0.039 0 -0.019 1',
  '-0.181 0.031 0.011 0.012 -0.005 0.006 0.006 -0.037 0.002 -0.014 -0.015 0.001 -0.003 -0.008 0.002 0.015 0.001 -0.014 0 0.001 1',
  '-0.088 0.155 0.013 0.025 0.049 -0.05 0.033 -0.008 -0.074 0.088 0.055 -0.015 0.039 -0.002 -0.002 -0.023 -0.037 0.001 0.017 0.004 0.108 1',
  '0.022 -0.04 -0.018 0.004 -0.074 -0.01 0.004 -0.009 -0.009 -0.008 -0.009 0.001 -0.001 0.013 0 0.005 -0.001 0 0.002 0 -0.031 0.117 1',
  '0.002 -0.022 -0.011 -0.01 -0.001 0.021 -0.004 -0.008 0.005 -0.012 -0.005 -0.001 -0.01 0 0 0.001 0.001 0 0 0 -0.009 0.13 -0.015 1',
  '-0.039 0.042 0.008 -0.006 0.05 0.012 0.008 0.011 -0.027 0.017 -0.058 0.044 -0.002 -0.009 -0.001 0.024 -0.006 -0.004 0.006 0.001 0.023 -0.122 0.032 0.002 1',
];
