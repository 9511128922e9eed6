import { describe, expect, it } from 'vitest';
import { solvePositiveDefinite } from '../src/numeric/solvePositiveDefinite.ts';
import { adaptation, coefficients } from '../src/tables/adaptation.ts';
import { adaptationPriors, coefficientNames } from '../src/tables/adaptationPriors.ts';
import { coefficientCovariance } from '../src/tables/coefficientCovariance.ts';
import { fittedCoefficients } from '../src/tables/fittedCoefficients.ts';

describe('fitted coefficients', () => {
  const covariance = coefficientCovariance();

  it('have a covariance that is symmetric and positive definite, also after rounding', () => {
    covariance.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(value).toBe(covariance[j]?.[i]);
      });
      const unit = covariance.map((_, k) => (k === i ? 1 : 0));
      // The inverse of a positive definite matrix has a positive diagonal.
      expect(solvePositiveDefinite(covariance, unit)[i]).toBeGreaterThan(0);
    });
  });

  it('are no less sure than their priors: studies can only add', () => {
    for (const name of coefficientNames)
      expect(fittedCoefficients[name].logError).toBeLessThanOrEqual(
        1.001 * adaptationPriors[name].logSpread,
      );
  });

  it('count as fitted only where the studies narrowed the prior, and keep its source elsewhere', () => {
    for (const name of coefficientNames) {
      const { known, source } = adaptation[name];
      if (known === 'prior') expect(source).toBe(adaptationPriors[name].source);
    }
    expect(adaptation.growthDistalTilt.known).toBe('prior');
    expect(coefficientNames.some((name) => adaptation[name].known === 'fitted')).toBe(true);
  });

  it('stay within their bounds and are all positive', () => {
    for (const name of coefficientNames) {
      expect(coefficients[name]).toBeGreaterThan(0);
      const prior = adaptationPriors[name];
      if ('most' in prior) expect(coefficients[name]).toBeLessThanOrEqual(prior.most);
    }
  });
});
