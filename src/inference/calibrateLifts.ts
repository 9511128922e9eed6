import type { Lift } from '../mechanics/lift.ts';
import type { Athlete, LiftFactors } from '../physiology/athlete.ts';
import { heaviestLoad, stickingPoint } from '../physiology/heaviestLoad.ts';
import { firstAngle, type MeasuredSingle } from '../physiology/measuredSingle.ts';
import { restingCapacity } from '../physiology/trainedState.ts';
import { liftNamed } from '../tables/lifts.ts';
import { liftingStrength } from '../tables/movingStrength.ts';

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
  catalogue: readonly Lift[],
): Calibration[] {
  const capacity = restingCapacity(athlete);
  return singles.map((single) => {
    const lift = liftNamed(single.lift, catalogue);
    const range = { lift, from: single.from ?? firstAngle(lift), to: single.to };
    return {
      single,
      predicted: heaviestLoad(range, athlete.body, capacity).load,
      factor: stickingPoint(range, athlete.body, capacity, single.best).effort,
    };
  });
}

/** Factors outside this, or this far from another test of the same lift, are asked about. */
const usualFactors = { least: 0.55, most: 1.6, ratio: 1.25 };

/** Whether a tested single sits well beside the torque tests and the other singles of its lift. */
export function isPlausible(
  factor: number,
  calibrations: readonly Calibration[],
  lift: string,
): boolean {
  const { least, most, ratio } = usualFactors;
  const others = calibrations.filter(({ single }) => single.lift === lift);
  const apart = others.some((other) => Math.abs(Math.log(other.factor / factor)) > Math.log(ratio));
  return factor >= least && factor <= most && !apart;
}

/** Lifts that stand or sit alike and are led by the same joint lend each other their factor. */
function isAlike(a: Lift, b: Lift): boolean {
  return a.support === b.support && a.leading === b.leading;
}

/**
 * Strength factors of every lift of the catalogue: its own tests by range end; without a test the
 * geometric mean over tested lifts of its kind; else lifting over holding strength.
 */
export function liftFactors(
  calibrations: readonly Calibration[],
  catalogue: readonly Lift[],
): LiftFactors {
  const factorsOf = (lift: Lift) => {
    const own = calibrations.filter(({ single }) => single.lift === lift.name);
    if (own.length > 0)
      return own
        .map(({ single, factor }) => ({ to: single.to, factor }))
        .sort((a, b) => a.to - b.to);
    const alike = calibrations.filter(({ single }) =>
      isAlike(liftNamed(single.lift, catalogue), lift),
    );
    const logs = alike.map(({ factor }) => Math.log(factor));
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    return [{ to: 0, factor: logs.length > 0 ? Math.exp(mean) : liftingStrength.value }];
  };
  return Object.fromEntries(catalogue.map((lift) => [lift.name, factorsOf(lift)]));
}
