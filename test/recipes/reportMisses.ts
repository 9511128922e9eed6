/**
 * Prints how far the forecast, with the coefficients in the tables, misses the groups it was
 * fitted to. Run: `node --import tsx test/recipes/reportMisses.ts` (seconds). The shares go into
 * `src/tables/adaptation.ts` as `gainMiss` and `contrastMiss`.
 */
import { coefficients } from '../../src/tables/adaptation.ts';
import { predictGroup } from '../studies/predictGroup.ts';
import { kneeStudies, squatStudies } from '../studies/studies.ts';

const groups = [...squatStudies, ...kneeStudies];
const studies = [...new Set(groups.map((group) => group.study))];

const rows = groups.flatMap((group) => {
  const predicted = predictGroup(group, coefficients);
  return group.observed.map((observed, i) => ({
    study: group.study,
    group: group.group,
    outcome: `${observed.kind} ${'toDeg' in observed ? observed.toDeg : ''}${'atDeg' in observed ? observed.atDeg : ''}`,
    change: observed.change,
    predicted: predicted[i] ?? 0,
    miss: observed.change - (predicted[i] ?? 0),
  }));
});
const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
const strength = rows.filter(({ outcome }) => !outcome.startsWith('growth'));
const missed = rms(strength.map(({ miss }) => miss));
const gained = rms(strength.map(({ change }) => change));
console.log(
  `strength missed by ${missed.toFixed(1)} points, ${(missed / gained).toFixed(2)} of the gain`,
);
for (const study of studies) {
  const own = rows.filter((row) => row.study === study).map(({ miss }) => miss);
  const mean = own.reduce((sum, v) => sum + v, 0) / own.length;
  console.log(
    `  ${study}: ${rms(own).toFixed(1)}; within the study ${rms(own.map((v) => v - mean)).toFixed(1)}`,
  );
}

/** Differences between two groups of one study in the same outcome: what a ranking rests on. */
const contrasts = rows.flatMap((a, i) =>
  rows
    .slice(i + 1)
    .filter((b) => b.study === a.study && b.group !== a.group && b.outcome === a.outcome)
    .filter((b) => !b.outcome.startsWith('growth'))
    .map((b) => ({
      study: a.study,
      observed: a.change - b.change,
      predicted: a.predicted - b.predicted,
      size: Math.max(a.predicted, b.predicted),
    })),
);
const off = rms(contrasts.map(({ observed, predicted }) => observed - predicted));
const size = rms(contrasts.map(({ size: larger }) => larger));
const clear = contrasts.filter(({ observed }) => Math.abs(observed) >= 4);
const right = clear.filter(({ observed, predicted }) => observed * predicted > 0);
console.log(
  `between groups: miss ${off.toFixed(1)} points, ${(off / size).toFixed(2)} of the larger gain; direction right in ${right.length} of ${clear.length} differences of 4 points or more`,
);
