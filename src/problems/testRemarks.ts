import { type Calibration, isPlausible } from '../inference/calibrateLifts.ts';
import type { Problem } from '../notebook/problem.ts';
import type { LiftTest } from '../notebook/scenario.ts';
import type { Source } from '../notebook/source.ts';
import { degreesOf, kg } from './amounts.ts';

/** Tested singles that sit oddly beside the other tests: allowed, but worth a look. */
export function testRemarks(
  source: Source,
  test: LiftTest,
  calibrations: readonly Calibration[],
  place: number,
): Problem[] {
  const own = calibrations[place];
  if (!own || isPlausible(own.factor, calibrations, test.lift)) return [];
  return [
    {
      code: 'odd-test',
      message: `the tested ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)} does not fit what is known of this athlete’s strength: expected about ${kg(own.predicted)}`,
      at: source.at([...test.path, 'best']),
      hint: 'check unit, depth and date; forecasts for this lift rest on it',
    },
  ];
}
