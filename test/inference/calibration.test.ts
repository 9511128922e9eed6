import { describe, expect, it } from 'vitest';
import { baselines, baselineWithout } from '../../src/inference/calibration/baselines.ts';
import { type FindingRow, weightAmong } from '../../src/inference/calibration/finding.ts';
import { discrepancyOf, fitCalibration } from '../../src/inference/calibration/fitCalibration.ts';
import { leaveOneOut, refitWithout } from '../../src/inference/calibration/leaveOneOut.ts';
import { type Problem, priors } from '../../src/inference/calibration/problem.ts';
import {
  contrastsOf,
  directionsOf,
  scoreOf,
  wilson,
} from '../../src/inference/calibration/scores.ts';
import { firstDiscrepancy } from '../../src/tables/calibrationValues.ts';

const row = (given: Partial<FindingRow>): FindingRow => ({
  study: 0,
  group: 0,
  family: 'strength',
  observed: 10,
  error: 1,
  weight: 1,
  trained: false,
  what: 'hold',
  ...given,
});

describe('weights', () => {
  it('n findings that share ρ count together like n/(1 + (n − 1)ρ); hand calculation: 4 at 0.5 like 1.6', () => {
    expect(4 * weightAmong(4, 0.5)).toBeCloseTo(1.6, 12);
    expect(weightAmong(1, 0.5)).toBe(1);
  });
});

/**
 * Six studies of eight rows whose gains go with two coefficients: e^(l₀)·x + e^(l₁)·z, exactly, in
 * the first study half as large.
 */
const [wantedFirst, wantedSecond] = [Math.log(0.5), Math.log(2)];
const [x, z] = [
  (i: number) => 10 + 3 * (i % 8) + Math.floor(i / 8),
  (i: number) => 2 + ((i * 5) % 7),
];
const gain = (i: number, a: number, b: number) => Math.exp(a) * x(i) + Math.exp(b) * z(i);
const rows = Array.from({ length: 48 }, (_, i) => {
  const study = Math.floor(i / 8);
  const scale = study === 0 ? 0.5 : 1;
  return row({
    study,
    group: study,
    error: 1,
    observed: scale * gain(i, wantedFirst, wantedSecond),
  });
});
const problem: Problem = {
  rows,
  studies: 6,
  predict: (logs) => rows.map((_, i) => gain(i, logs[0] ?? 0, logs[1] ?? 0)),
  discrepancy: { ...firstDiscrepancy, strength: 1 },
};
const start = { logs: priors.map(({ log }) => log), amplitudes: rows.slice(0, 6).map(() => 0) };

describe('fit', () => {
  const fit = fitCalibration(problem, start, 30);

  it('finds how gains go with coefficients; their common size is shared with the studies’ amplitudes', () => {
    const [first = 0, second = 0] = fit.logs;
    // The priors pull a little, by less than the error that the fit itself states.
    const spread = Math.sqrt(fit.covariance[0]?.[0] ?? 0);
    expect(Math.abs(first - second - (wantedFirst - wantedSecond))).toBeLessThan(spread);
    const half = (fit.amplitudes[0] ?? 0) - (fit.amplitudes[1] ?? 0);
    expect(Math.abs(half - Math.log(0.5))).toBeLessThan(spread);
  });

  it('leaves what no row tells at its prior, with the prior’s spread', () => {
    expect(fit.logs[5]).toBeCloseTo(priors[5]?.log ?? 0, 9);
    expect(Math.sqrt(fit.covariance[5]?.[5] ?? 0)).toBeCloseTo(priors[5]?.spread ?? 0, 9);
  });

  it('the short way to a fit without a study ends where a full fit without it does', () => {
    const without = rows.filter(({ study }) => study !== 0);
    const full = fitCalibration(
      {
        ...problem,
        rows: without,
        predict: (logs) => problem.predict(logs).filter((_, i) => rows[i]?.study !== 0),
      },
      start,
      30,
    );
    const short = refitWithout(problem, fit, 0, 3);
    for (const j of [0, 1]) expect(short.logs[j]).toBeCloseTo(full.logs[j] ?? 0, 2);
  });

  it('predicts a left-out study without its own amplitude: the first comes out twice what it is', () => {
    const left = leaveOneOut(problem, fit, 3);
    const ratio = (left[3]?.predicted ?? 0) / (rows[3]?.observed ?? 1);
    // The others' amplitudes are pulled to 1 together, by their prior.
    expect(ratio).toBeGreaterThan(1.9);
    expect(ratio).toBeLessThan(2.2);
  });

  it('what the model leaves out: misses of 5 with errors of 3 leave 4 (hand calculation)', () => {
    const off = rows.map((one) => ({ ...one, error: 3, observed: 0 }));
    const found = discrepancyOf(
      { ...problem, rows: off },
      { amplitudes: start.amplitudes, predicted: rows.map((_, i) => (i % 2 ? 5 : -5)) },
    );
    expect(found.strength).toBeCloseTo(4, 12);
  });
});

describe('scores', () => {
  const pair = [
    row({ group: 0, observed: 20, what: 'a' }),
    row({ group: 1, observed: 10, what: 'a', error: 2 }),
    row({ group: 0, observed: 6, what: 'b' }),
    row({ group: 1, observed: 7, what: 'b' }),
    row({ study: 1, group: 2, observed: 5, what: 'a' }),
  ];

  it('compares like with like inside a study only', () => {
    const contrasts = contrastsOf(pair, [12, 10, 1, 2, 9]);
    expect(contrasts.map(({ what, observed, predicted }) => [what, observed, predicted])).toEqual([
      ['a', 10, 2],
      ['b', -1, -1],
    ]);
    expect(contrasts[0]?.error).toBeCloseTo(Math.sqrt(5), 12);
    // The second is below 4 points.
    expect(directionsOf(contrasts)).toMatchObject({ right: 1, count: 1, studies: 1, weighted: 1 });
  });

  it('misses, hand calculation: 3 and 4 give a root mean square of √12.5; from their mean, 0.5', () => {
    const score = scoreOf(pair.slice(0, 2), [17, 6], 'strength');
    expect(score.miss).toBeCloseTo(Math.sqrt(12.5), 12);
    expect(score.shapeMiss).toBeCloseTo(0.5, 12);
    expect(score.relative).toBeCloseTo(Math.sqrt(12.5 / 250), 12);
  });

  it('the interval of 8 in 10 is 0.490 to 0.943 (Wilson 1927; hand calculation: (0.8 + 0.1921 ± 0.3135)/1.3842)', () => {
    const [low, high] = wilson(8, 10);
    expect(low).toBeCloseTo(0.4902, 3);
    expect(high).toBeCloseTo(0.9433, 3);
  });

  it('baselines have not seen the study they predict: hand calculation, mean of 5 from the other', () => {
    const [mean, , bell] = baselines;
    if (!mean || !bell) throw new Error('no baselines');
    expect(baselineWithout(mean, pair)[0]).toBe(5);
    expect(baselineWithout(bell, pair)[0]).toBeCloseTo(5, 12);
  });
});
