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
  driveAmplitude: { value: 0.2693, logError: 0.243 },
  driveHalfDose: { value: 1.641, logError: 0.5 },
  driveEffortPower: { value: 1.464, logError: 0.276 },
  driveTensionPower: { value: 0.2419, logError: 0.492 },
  driveFadePerDeg: { value: 0.01197, logError: 0.456 },
  widthShorterAt40: { value: 22.2, logError: 0.366 },
  widthShorterAt90: { value: 39.02, logError: 0.195 },
  widthLongerAt40: { value: 17.38, logError: 0.282 },
  widthLongerAt90: { value: 15.12, logError: 0.362 },
  driveWeeks: { value: 4.978, logError: 0.237 },
  growthAmplitude: { value: 0.3404, logError: 0.293 },
  growthHalfDose: { value: 5.369, logError: 0.366 },
  growthTensionPower: { value: 1.244, logError: 0.231 },
  growthLengthSlope: { value: 0.3241, logError: 0.386 },
  growthDistalTilt: { value: 0.2499, logError: 0.497 },
  growthWeeks: { value: 18.06, logError: 0.278 },
  seriesLong: { value: 0.2016, logError: 0.214 },
  seriesLowering: { value: 4.465, logError: 0.531 },
  seriesShort: { value: 0.02719, logError: 0.598 },
  seriesEffect: { value: 0.4151, logError: 0.401 },
  loweringEffect: { value: 0.2123, logError: 0.408 },
  seriesHalfDose: { value: 4.405, logError: 0.362 },
  seriesWeeks: { value: 3.223, logError: 0.241 },
  transferAcross: { value: 0.5735, logError: 0.17 },
  practiceAmplitude: { value: 0.1991, logError: 0.323 },
  practicePower: { value: 2.127, logError: 0.291 },
  practiceHalfDose: { value: 1.799, logError: 0.395 },
  trainedShare: { value: 0.5338, logError: 0.204 },
} as const;

/** Correlations of the logarithms: lower triangle by rows, in the order above. */
export const fittedCorrelations: readonly string[] = [
  '1',
  '0.412 1',
  '0.033 -0.127 1',
  '0.023 -0.043 -0.044 1',
  '0.068 -0.275 -0.003 0.06 1',
  '-0.011 0.093 0.065 0.054 -0.106 1',
  '-0.002 0.014 -0.003 -0.004 0.052 -0.002 1',
  '-0.046 0.208 0.031 0.004 -0.035 0.058 0.021 1',
  '0.049 0.04 -0.052 -0.021 0.206 0.042 0.015 -0.099 1',
  '0.269 -0.069 0.013 0.003 -0.024 0.005 0.002 -0.006 0.009 1',
  '-0.089 0.032 0.024 0.006 0.078 -0.014 -0.016 -0.002 0.004 0.007 1',
  '0.017 -0.029 -0.01 0 0.002 -0.002 -0.003 0.041 0.009 0 0.386 1',
  '0 -0.013 -0.001 0.007 0.025 -0.009 -0.004 0.064 0.012 -0.023 0.114 -0.139 1',
  '0.013 -0.019 0.002 -0.005 0.062 0.014 -0.012 0.047 0.001 -0.005 0.04 -0.054 -0.04 1',
  '0.002 0.001 0 0 0 0 0 0.004 -0.001 -0.001 -0.002 -0.004 -0.004 0 1',
  '0.051 -0.016 -0.001 0 -0.027 0.004 0.006 0.011 0.003 -0.009 0.521 -0.096 0.008 -0.011 0 1',
  '0.117 -0.017 0.026 0.01 -0.089 -0.028 -0.004 0.043 0.026 -0.014 -0.032 -0.031 0.028 -0.027 0 -0.009 1',
  '-0.012 -0.052 -0.006 0.003 0.083 0.02 -0.006 0.015 -0.008 -0.009 0.033 -0.043 0.19 -0.026 0.001 -0.017 -0.455 1',
  '-0.018 0.003 -0.005 -0.002 0.001 0.002 0 -0.004 -0.005 0 0.014 -0.001 -0.004 -0.003 0 0 0.027 0.03 1',
  '0.033 -0.027 -0.031 -0.016 -0.076 0.028 0.035 -0.019 -0.044 -0.005 -0.104 -0.019 -0.014 -0.086 -0.001 0.049 -0.09 0.112 -0.02 1',
  '0.188 -0.084 -0.053 -0.007 -0.014 0.025 0.014 0.075 -0.038 -0.015 -0.258 0.11 0.075 0.063 0.001 0.085 -0.065 0.026 0.005 -0.072 1',
  '0.008 0.005 0.031 0.013 -0.034 -0.024 -0.004 0.015 0.03 0 -0.027 0.01 -0.095 0.018 0.001 0.001 0.46 0.197 0.002 0.089 0.051 1',
  '-0.003 -0.005 -0.008 -0.003 0.008 0.004 -0.003 0.013 -0.005 0.019 0.002 -0.007 0.049 -0.005 0 -0.002 0.214 0.059 0.002 0.003 -0.029 -0.026 1',
  '-0.187 0.013 0.028 0.01 -0.047 0.014 0.007 -0.042 0.005 -0.029 -0.056 0.022 -0.015 -0.006 0.002 0.023 0.027 0 -0.008 0.024 0.079 -0.027 0.017 1',
  '-0.055 0.138 0.024 0.02 0.057 -0.03 0.022 0.001 -0.073 0.127 0.069 -0.011 0.055 -0.003 -0.001 -0.033 -0.014 0.013 -0.001 -0.054 0.139 -0.003 0.018 0.135 1',
  '0.008 -0.026 -0.01 0.005 -0.068 -0.012 0.001 -0.006 -0.002 -0.013 -0.008 -0.001 -0.01 0.007 0 0.005 0.002 0.001 0 0.007 -0.045 0 -0.005 -0.031 0.166 1',
  '-0.005 -0.023 -0.015 -0.011 0.002 0.019 -0.003 -0.01 0.004 -0.015 -0.003 -0.001 -0.004 0 0 0.002 0.006 -0.004 -0.001 -0.002 -0.008 0.005 -0.002 -0.01 0.152 -0.017 1',
  '-0.042 0.029 0.016 -0.004 0.042 0.012 0.005 0.016 -0.007 0.014 -0.043 0.025 -0.016 -0.014 -0.001 0.017 -0.065 0.004 0.001 -0.022 -0.07 0.004 -0.003 0.002 -0.143 0.034 0.003 1',
];
