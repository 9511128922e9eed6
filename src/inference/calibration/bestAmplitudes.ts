import { amplitudeSpread } from '../../tables/calibrationValues.ts';
import { type Problem, varianceOf } from './problem.ts';

/**
 * The ln amplitude b of each study that suits given predictions best: the minimum of
 * Σ w·(y − e^b·p)²/σ² + (b/τ)², by Newton's steps with the curvature of Gauss and Newton.
 *
 * @param without a study whose b is its prior middle, 0
 */
export function bestAmplitudes(
  problem: Problem,
  predicted: readonly number[],
  without?: number,
): number[] {
  const tightness = 1 / amplitudeSpread.value ** 2;
  let amplitudes = new Array<number>(problem.studies).fill(0);
  for (let step = 0; step < 25; step++) {
    const slope = amplitudes.map((b) => -b * tightness);
    const bend = amplitudes.map(() => tightness);
    problem.rows.forEach((row, i) => {
      const s = row.study;
      if (s === without) return;
      const scaled = Math.exp(amplitudes[s] ?? 0) * (predicted[i] ?? 0);
      const w = row.weight / varianceOf(row, problem);
      slope[s] = (slope[s] ?? 0) + w * scaled * (row.observed - scaled);
      bend[s] = (bend[s] ?? 0) + w * scaled ** 2;
    });
    // Half a unit at most: the curve of e^b is steep far from the answer.
    const moved = (b: number, s: number) =>
      b + Math.min(Math.max((slope[s] ?? 0) / (bend[s] ?? 1), -0.5), 0.5);
    amplitudes = amplitudes.map(moved);
  }
  return amplitudes;
}
