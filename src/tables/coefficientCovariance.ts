import { coefficientNames } from './adaptationPriors.ts';
import { fittedCoefficients, fittedCorrelations } from './fittedCoefficients.ts';

/**
 * Covariance of the coefficients' natural logarithms, rows and columns in the order of
 * `coefficientNames`: errorᵢ · errorⱼ · correlationᵢⱼ.
 */
export function coefficientCovariance(): number[][] {
  const triangle = fittedCorrelations.map((row) => row.split(' ').map(Number));
  const error = coefficientNames.map((name) => fittedCoefficients[name].logError);
  return coefficientNames.map((_, i) =>
    coefficientNames.map((__, j) => {
      const correlation = triangle[Math.max(i, j)]?.[Math.min(i, j)] ?? 0;
      return (error[i] ?? 0) * (error[j] ?? 0) * correlation;
    }),
  );
}
