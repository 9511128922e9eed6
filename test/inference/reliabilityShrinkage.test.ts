import { describe, expect, it } from 'vitest';
import {
  heterogeneity,
  jamesStein,
  pooled,
} from '../../src/inference/reliability/groupShrinkage.ts';
import {
  believedAbove,
  believedBetween,
  normalShrinkage,
  trueScore,
} from '../../src/inference/reliability/normalShrinkage.ts';
import { given, refusedAs, same } from './expectSame.ts';
import { batting, eightSchools, kelley, normalPrior } from './reliabilityNumbers.ts';

const schools = eightSchools.y.map((estimate, i) => ({
  estimate,
  standardError: eightSchools.sigma[i] ?? 0,
}));

describe('shrinkage', () => {
  it('normal prior and normal observation', () => {
    const prior = { mean: normalPrior.prior_mean, spread: normalPrior.prior_sd };
    const found = normalShrinkage(prior, normalPrior.obs, normalPrior.se);
    same(found.weight, normalPrior.weight);
    same(found.mean, normalPrior.post_mean);
    same(found.spread, normalPrior.post_sd);
    same(believedBetween(found).low, normalPrior.ci95[0]);
    same(believedBetween(found).high, normalPrior.ci95[1]);
    same(believedAbove(found, 0), normalPrior.p_gt0);
    same(believedAbove(found, 5), normalPrior.p_gt5);
  });

  it('Kelley’s true score', () => {
    const found = trueScore({ mean: kelley.mean, spread: kelley.sd }, kelley.icc, kelley.x);
    same(found.expected, kelley.true);
    same(found.standardErrorOfMeasurement, kelley.sem);
    same(found.standardErrorOfEstimate, kelley.se_estimate);
  });

  it.each(eightSchools.byTau)('eight schools with a spread of $tau', ({ tau, mu, se, theta }) => {
    const found = pooled(schools, tau);
    same(found.mean, mu);
    same(found.standardError, se);
    for (const [i, value] of found.shrunk.entries()) same(value, theta[i] ?? 0);
  });

  it('eight schools differ less than their errors: τ² is 0, and every school the mean', () => {
    const found = given(heterogeneity(schools));
    same(found.squares, eightSchools.Q);
    expect(found.degreesOfFreedom).toBe(eightSchools.df);
    expect(found.variance).toBe(eightSchools.tau2);
    for (const school of pooled(schools, 0).shrunk) same(school, eightSchools.byTau[0].mu);
    expect(refusedAs(heterogeneity(schools.slice(0, 1)))).toBe('one-unit');
  });

  it('two units of error 1 at 0 and 4: Q = 8, τ² = 7 (hand calculation)', () => {
    // Σw = 2, Σw²/Σw = 1, so τ² = (8 − 1)/(2 − 1).
    const units = [0, 4].map((estimate) => ({ estimate, standardError: 1 }));
    const found = given(heterogeneity(units));
    expect(found.squares).toBeCloseTo(8, 12);
    expect(found.variance).toBeCloseTo(7, 12);
  });

  it('James–Stein on batting averages: 0.212 kept (Efron and Morris 1977), errors a third or less', () => {
    const mean = batting.mean;
    const error = Math.sqrt((mean * (1 - mean)) / 45);
    const found = given(jamesStein(batting.first45, error));
    same(found.mean, mean);
    same(found.kept, batting.c);
    expect(found.kept).toBeCloseTo(0.212, 3);
    for (const [i, value] of found.shrunk.entries()) same(value, batting.est[i] ?? 0);
    const misses = (estimates: readonly number[]) =>
      estimates.reduce((sum, x, i) => sum + (x - (batting.rest[i] ?? 0)) ** 2, 0);
    same(misses(batting.first45), batting.sse_raw);
    same(misses(found.shrunk), batting.sse_js);
  });

  it('James–Stein stops at the mean where noise explains the spread, and refuses three units', () => {
    const found = given(jamesStein([1, 2, 3, 4], 10));
    expect(found.kept).toBe(0);
    expect(found.shrunk).toEqual([2.5, 2.5, 2.5, 2.5]);
    expect(refusedAs(jamesStein([1, 2, 3], 1))).toBe('few-units');
  });
});
