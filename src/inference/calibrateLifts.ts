import type { Lift } from '../mechanics/lift.ts';
import type { Athlete } from '../physiology/athlete.ts';
import { heaviestLoad, stickingPoint } from '../physiology/heaviestLoad.ts';
import { liftNamed, type MeasuredSingle } from '../physiology/planProgram.ts';
import { restingCapacity } from '../physiology/trainedState.ts';
import { lifts } from '../tables/lifts.ts';
import { liftingStrength } from '../tables/strength.ts';

/** A tested single beside what the torque curves alone predict. */
export interface Calibration {
  readonly single: MeasuredSingle;
  /** kg by statics and the fitted torque curves, before calibration. */
  readonly predicted: number;
  /** Effort the tested single asks by those curves; infinite if it cannot be balanced. */
  readonly factor: number;
}

/**
 * Compares tested singles with the model.
 *
 * The factor is the effort that the tested load asks at its sticking point: capacity times factor
 * then makes that load the heaviest one. It takes up what the model leaves out of a lift (skill,
 * bounce, hip strength borrowed from tables).
 */
export function calibrateLifts(
  athlete: Athlete,
  singles: readonly MeasuredSingle[],
): Calibration[] {
  const capacity = restingCapacity(athlete);
  return singles.map((single) => {
    const range = { lift: liftNamed(single.lift), from: 0, to: single.to };
    return {
      single,
      predicted: heaviestLoad(range, athlete.body, capacity),
      factor: stickingPoint(range, athlete.body, capacity, single.best).effort,
    };
  });
}

/**
 * One factor for each lift of the catalogue: the geometric mean over its own tests; for a standing
 * lift without a test that over all tested standing lifts; else lifting over holding strength.
 */
export function liftFactors(calibrations: readonly Calibration[]): Record<string, number> {
  const factorOf = (lift: Lift) => {
    const own = calibrations.filter(({ single }) => single.lift === lift.name);
    const alike = lift.support === 'feet' ? calibrations : [];
    const used = own.length > 0 ? own : alike;
    if (used.length === 0) return liftingStrength.value;
    const logs = used.map(({ factor }) => Math.log(factor));
    return Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
  };
  return Object.fromEntries(lifts.map((lift) => [lift.name, factorOf(lift)]));
}
