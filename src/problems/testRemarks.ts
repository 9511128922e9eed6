import { type Calibration, isPlausible } from '../inference/calibrateLifts.ts';
import type { LiftTest } from '../notebook/tests/strengthTest.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { notModelled } from '../tables/partlyModelled.ts';
import { degreesOf, kg } from './amounts.ts';

/** Tested singles that sit oddly beside the other tests: allowed, but worth a look. */
export function testRemarks(
  source: Source,
  test: LiftTest,
  calibrations: readonly Calibration[],
  place: number,
): Problem[] {
  const own = calibrations[place];
  if (!own) return [];
  const missing = notModelled(test.lift);
  if (missing !== undefined) return [notJudged(source, test, missing)];
  if (isPlausible(own.factor, calibrations, test.lift)) return [];
  return [
    {
      code: 'odd-test',
      message: `the ${test.estimated ? 'estimated' : 'tested'} ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)} does not fit what is known of this athlete’s strength: expected about ${kg(own.predicted)}`,
      at: source.at([...test.path, test.estimated ? 'load' : 'best']),
      hint: 'check unit, depth and date; forecasts for this lift rest on it',
    },
  ];
}

/** A test that the model has nothing to set against. */
function notJudged(source: Source, test: LiftTest, missing: string): Problem {
  return {
    code: 'not-judged',
    message: `the model cannot judge the tested ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)}: ${missing} are not in the tables`,
    at: source.at([...test.path, test.estimated ? 'load' : 'best']),
    hint: 'nothing to correct; what is said of this lift rests on the test alone',
  };
}
