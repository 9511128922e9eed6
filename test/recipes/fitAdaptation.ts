/**
 * Refits the coefficients of the adaptation model that the squat and knee studies can inform and
 * prints them with their spread. Run: `node --import tsx test/recipes/fitAdaptation.ts` (minutes).
 * The values in `src/tables/adaptation.ts` marked "fitted" were copied from its output.
 *
 * Least squares over all observations: (observed − a·predicted) / √(se² + 4²), growth / √(se² + 2²), a the study's own
 * amplitude with a prior of ln a = 0 ± 0.35, plus one residual a coefficient, (ln p − ln p₀) / σ, that
 * holds it to its prior. The 4 and 2 points stand for what the model leaves out.
 */
import { leastSquares } from '../../src/numeric/leastSquares.ts';
import { solvePositiveDefinite } from '../../src/numeric/solvePositiveDefinite.ts';
import { type Coefficients, coefficients } from '../../src/tables/adaptation.ts';
import { predictGroup } from '../studies/predictGroup.ts';
import { kneeStudies, type StudyGroup, squatStudies } from '../studies/studies.ts';

/** What the model leaves out, points: of strength and of growth. */
const left = { strength: 4, growth: 2 };
const amplitudeSpread = 0.35;

/** Prior centre and spread of the logarithm of each coefficient that is fitted. */
const priors: Partial<Record<keyof Coefficients, readonly [number, number]>> = {
  driveAmplitude: [0.35, 0.4],
  driveHalfDose: [3, 0.6],
  driveEffortPower: [2, 0.3],
  driveTensionPower: [0.3, 0.5],
  driveFadePerDeg: [0.004, 0.7],
  widthShorterAt40: [12, 0.4],
  // Trained at 90°, gains reach 15–105° (Bandy 1993) and show no specificity (Noorkõiv 2014):
  // direction only, so held more tightly.
  widthShorterAt90: [40, 0.2],
  widthLongerAt40: [15, 0.4],
  widthLongerAt90: [25, 0.4],
  growthAmplitude: [0.25, 0.5],
  growthLengthSlope: [0.33, 0.4],
  // A share: must stay below one.
  transferAcross: [0.45, 0.2],
  practiceAmplitude: [0.25, 0.5],
  practicePower: [2, 0.3],
  trainedShare: [0.5, 0.3],
};

/** Coefficients these studies cannot tell; they stay at their priors. */
const held = {
  driveWeeks: 4,
  growthHalfDose: 5,
  growthTensionPower: 1,
  growthDistalTilt: 0.25,
  growthWeeks: 20,
  seriesLong: 0.065,
  seriesShort: 0.03,
  seriesHalfDose: 5,
  seriesWeeks: 4,
  practiceHalfDose: 2,
};

const names = Object.keys(priors) as (keyof Coefficients)[];
const groups = [...squatStudies, ...kneeStudies];
const studies = [...new Set(groups.map((group) => group.study))];

function coefficientsOf(logs: readonly number[]): Coefficients {
  const fitted = Object.fromEntries(names.map((name, i) => [name, Math.exp(logs[i] ?? 0)]));
  return { ...held, ...fitted } as Coefficients;
}

interface Row {
  readonly change: number;
  readonly predicted: number;
  readonly sigma: number;
}

/** Logarithm of the study's own amplitude that minimises its sum of squares with the prior. */
function bestLogAmplitude(rows: readonly Row[]): number {
  let log = 0;
  for (let step = 0; step < 30; step++) {
    let slope = log / amplitudeSpread ** 2;
    let bend = 1 / amplitudeSpread ** 2;
    for (const { change, predicted, sigma } of rows) {
      const scaled = Math.exp(log) * predicted;
      slope -= ((change - scaled) * scaled) / sigma ** 2;
      bend += (scaled / sigma) ** 2;
    }
    log -= slope / bend;
  }
  return log;
}

function studyResiduals(ofStudy: readonly StudyGroup[], c: Coefficients): number[] {
  const rows = ofStudy.flatMap((group) => {
    const predicted = predictGroup(group, c);
    return group.observed.map(({ kind, change, se }, i) => ({
      change,
      predicted: predicted[i] ?? 0,
      sigma: Math.hypot(se, kind === 'growth' ? left.growth : left.strength),
    }));
  });
  const log = bestLogAmplitude(rows);
  return [
    ...rows.map((r) => (r.change - Math.exp(log) * r.predicted) / r.sigma),
    log / amplitudeSpread,
  ];
}

let calls = 0;
function residuals(logs: readonly number[]): number[] {
  if (++calls % 31 === 0) process.stderr.write(`${calls} evaluations\n`);
  const c = coefficientsOf(logs);
  const fromStudies = studies.flatMap((study) =>
    studyResiduals(
      groups.filter((group) => group.study === study),
      c,
    ),
  );
  const fromPriors = names.map((name, i) => {
    const [centre, spread] = priors[name] ?? [1, 1];
    return ((logs[i] ?? 0) - Math.log(centre)) / spread;
  });
  return [...fromStudies, ...fromPriors];
}

// Starts from the values in the tables, so a second run should change nothing.
const start = names.map((name) => Math.log(coefficients[name]));
const fit = leastSquares(residuals, start, { tolerance: 2e-3 });

/** Spread of each logarithm from the normal matrix at the solution. */
function spreads(logs: readonly number[]): number[] {
  const h = 1e-4;
  const columns = logs.map((_, j) => {
    const moved = (d: number) => residuals(logs.map((p, k) => (k === j ? p + d : p)));
    const [after, before] = [moved(h), moved(-h)];
    return after.map((r, i) => (r - (before[i] ?? 0)) / (2 * h));
  });
  const normal = columns.map((a) =>
    columns.map((b) => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0)),
  );
  return logs.map((_, j) => {
    const unit = logs.map((__, k) => (k === j ? 1 : 0));
    return Math.sqrt(solvePositiveDefinite(normal, unit)[j] ?? 0);
  });
}

const spread = spreads(fit.parameters);
console.log(`sum of squares ${fit.sumOfSquares.toFixed(2)}, settled: ${fit.converged}`);
names.forEach((name, i) => {
  const value = Math.exp(fit.parameters[i] ?? 0);
  console.log(`${name}: ${value.toPrecision(3)} ± ${(value * (spread[i] ?? 0)).toPrecision(2)}`);
});
