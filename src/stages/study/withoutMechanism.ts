import { fitCalibration } from '../../inference/calibration/fitCalibration.ts';
import { leaveOneOut } from '../../inference/calibration/leaveOneOut.ts';
import type { Coefficients } from '../../tables/adaptation.ts';
import type { Calibration } from './calibrate.ts';
import { predictorOf } from './calibrate.ts';

/** What is switched off in turn, by the amplitude that carries it. */
export const mechanismsOff: readonly {
  readonly name: string;
  readonly held: Partial<Coefficients>;
}[] = [
  { name: 'neural drive', held: { driveAmplitude: 0 } },
  { name: 'regional growth', held: { growthAmplitude: 0 } },
  { name: 'sarcomeres in series', held: { seriesLong: 0, seriesShort: 0 } },
  { name: 'practice of the lift', held: { practiceAmplitude: 0 } },
];

/**
 * Left-out predictions of a model without one mechanism, the others fitted anew (two sets of slopes
 * from the full fit, work as recorded for it).
 */
export function withoutMechanism(
  { studies, rows, problem, fit }: Calibration,
  held: Partial<Coefficients>,
): number[] {
  const predict = predictorOf(studies, rows, held);
  const less = { ...problem, predict };
  const refitted = fitCalibration(less, fit, 2);
  return leaveOneOut(less, refitted, 1).map(({ predicted }) => predicted);
}
