import { describe, expect, it } from 'vitest';
import { fitFromStarts } from '../../src/numeric/fitFromStarts.ts';
import { leastSquares } from '../../src/numeric/leastSquares.ts';
import { type CertifiedSet, certifiedSets } from './certifiedSets.ts';

const residualsOf =
  ({ model, points }: CertifiedSet) =>
  (b: readonly number[]) =>
    points.map(([y, x]) => y - model(b, x));

/** Relative distance of the worst entry. */
const worst = (found: readonly number[], certified: readonly number[]) =>
  Math.max(...certified.map((value, i) => Math.abs((found[i] ?? Number.NaN) / value - 1)));

const named = (name: string) => {
  const set = certifiedSets.find((each) => each.name === name);
  if (!set) throw new Error(`no set ${name}`);
  return set;
};

describe('least squares on certified sets of NIST', () => {
  const cases = certifiedSets.flatMap((set) =>
    set.starts.map((start, i) => ({ name: set.name, set, start, from: i + 1 })),
  );
  it.each(cases.filter(({ name, from }) => name !== 'BoxBOD' || from === 2))(
    '$name from start $from: parameters to six digits (five if hard), deviations to five',
    ({ set, start }) => {
      const fit = leastSquares(residualsOf(set), start);
      const tolerance = set.level === 'higher' ? 1e-5 : 1e-6;
      expect(fit.converged).toBe(true);
      expect(fit.determined).not.toContain(false);
      expect(fit.moved).not.toContain(false);
      expect(worst(fit.parameters, set.parameters)).toBeLessThan(tolerance);
      expect(worst(fit.standardErrors, set.standardDeviations)).toBeLessThan(1e-5);
      expect(worst([fit.sumOfSquares], [set.sumOfSquares])).toBeLessThan(1e-6);
    },
  );

  it('BoxBOD from its far start ends where the data no longer tell the rate, and says so', () => {
    const set = named('BoxBOD');
    const fit = leastSquares(residualsOf(set), set.starts[0]);
    // Certified sum of squares 1168.0; with the rate gone to infinity the mean is left: 9771.5.
    expect(fit.sumOfSquares).toBeGreaterThan(5 * set.sumOfSquares);
    expect(fit.determined[1]).toBe(false);
    expect(fit.standardErrors[1]).toBe(Number.POSITIVE_INFINITY);
  });

  it('BoxBOD from both starts is right, and the starts are said to disagree', () => {
    const set = named('BoxBOD');
    const fit = fitFromStarts(residualsOf(set), set.starts);
    expect(worst(fit.parameters, set.parameters)).toBeLessThan(1e-5);
    expect(fit.agreed).toBe(false);
    expect(fitFromStarts(residualsOf(named('Eckerle4')), named('Eckerle4').starts).agreed).toBe(
      true,
    );
  });
});

describe('least squares', () => {
  // Torque at five angles; solved by the normal equations in exact arithmetic: a −0.0508928571,
  // optimum −b/2a = 70.4421053, peak 251.7242331, RSS 44.1142857; standard error of the optimum by
  // the delta method, gradient (b/2a², −1/2a) with s² = RSS/2: 0.7300637.
  const angles = [30, 50, 70, 90, 110];
  const torques = [168, 233, 247, 236, 171];
  const parabola = leastSquares(
    ([a = 0, b = 0, c = 0]) => angles.map((x, i) => (torques[i] ?? 0) - (a * x * x + b * x + c)),
    [0, 0, 0],
  );

  it('fits a parabola through five torques, with the standard error of its peak', () => {
    const [a = 0, b = 0, c = 0] = parabola.parameters;
    expect(a).toBeCloseTo(-0.0508928571, 9);
    expect(-b / (2 * a)).toBeCloseTo(70.4421053, 6);
    expect(c - (b * b) / (4 * a)).toBeCloseTo(251.7242331, 6);
    expect(parabola.sumOfSquares).toBeCloseTo(44.1142857, 6);
    const gradient = [b / (2 * a * a), -1 / (2 * a), 0];
    const variance = gradient.reduce(
      (sum, g, i) =>
        sum + g * gradient.reduce((s, h, j) => s + h * (parabola.covariance[i]?.[j] ?? 0), 0),
      0,
    );
    expect(Math.sqrt(variance)).toBeCloseTo(0.7300637, 6);
  });

  it('takes a known variance for that of the residuals', () => {
    // Mean of four values with error 2: standard error 2/√4 = 1 (hand calculation), whatever the scatter.
    const mean = leastSquares(([m = 0]) => [1, 2, 3, 10].map((y) => y - m), [0], { variance: 4 });
    expect(mean.standardErrors[0]).toBeCloseTo(1, 9);
    // From the residuals: √(50/3)/√4 (Σ(y − 4)² = 9 + 4 + 1 + 36 = 50; hand calculation).
    const own = leastSquares(([m = 0]) => [1, 2, 3, 10].map((y) => y - m), [0]);
    expect(own.standardErrors[0]).toBeCloseTo(Math.sqrt(50 / 3) / 2, 9);
  });

  it('says which parameters the data do not tell apart, which do not act, and which stayed', () => {
    // Only a + b acts; c is known; d acts on nothing.
    const fit = leastSquares(
      ([a = 0, b = 0, c = 0]) => [1, 2, 3].map((x) => 5 + 2 * x - (a + b + c * x)),
      [1, 1, 0, 7],
    );
    expect(fit.determined).toEqual([false, false, true, false]);
    expect(fit.moved).toEqual([true, true, true, false]);
    expect(fit.parameters[2]).toBeCloseTo(2, 8);
    expect(Number.isFinite(fit.standardErrors[2])).toBe(false);
  });

  it('has no error to give where there are as many parameters as data', () => {
    const exact = leastSquares(([a = 0]) => [3 - a], [1]);
    expect(exact.standardErrors[0]).toBe(Number.POSITIVE_INFINITY);
  });
});
