import { actions } from '../tables/actions.ts';
import {
  errorsOff,
  type FittedCurve,
  fitStrengthCurve,
  fittedTorque,
  type MeasuredTorque,
  predictiveError,
} from './fitStrengthCurve.ts';

/** What may have gone wrong with tests that the curve does not explain, worth checking. */
export type Cause =
  /** Written from the straight limb (180°) instead of from 0°, or the other way round. */
  | { readonly kind: 'angle' }
  /** The torque belongs multiplied by this, in the unit it was taken for. */
  | { readonly kind: 'unit'; readonly slip: UnitSlip['name'] }
  /** Off by little: the pad or the axis of the rig may have stood elsewhere. */
  | { readonly kind: 'lever' }
  | { readonly kind: 'slip' };

/**
 * Factors that put a torque right which was written in another unit or converted once too often.
 * Exact definitions: pound 0.45359237 kg, foot-pound 1.3558179483 N·m, standard gravity 9.80665.
 */
export const unitSlips = [
  { name: 'foot-pounds as newton metres', factor: 1.3558179483 },
  { name: 'foot-pounds converted twice', factor: 1 / 1.3558179483 },
  { name: 'kilograms as newtons', factor: 9.80665 },
  { name: 'newtons as kilograms', factor: 1 / 9.80665 },
  { name: 'kilograms as pounds', factor: 1 / 0.45359237 },
  { name: 'pounds as kilograms', factor: 0.45359237 },
  { name: 'a decimal place too small', factor: 10 },
  { name: 'a decimal place too large', factor: 0.1 },
] as const;

type UnitSlip = (typeof unitSlips)[number];

interface Reading {
  readonly cause: Cause;
  readonly read: (point: MeasuredTorque) => MeasuredTorque;
}

/** Other ways to read a test; 180° − x only where both are angles of the action. */
function otherReadings({ action }: FittedCurve, points: readonly MeasuredTorque[]): Reading[] {
  const { rangeDeg, joint } = actions[action];
  const fromStraight = ['knee', 'elbow', 'hip'].includes(joint);
  const turned = points.every(({ deg }) => 180 - deg >= rangeDeg[0] && 180 - deg <= rangeDeg[1]);
  const byAngle: Reading = {
    cause: { kind: 'angle' },
    read: ({ deg, torque }) => ({ deg: 180 - deg, torque }),
  };
  const byUnit = unitSlips.map(
    ({ name, factor }): Reading => ({
      cause: { kind: 'unit', slip: name },
      read: ({ deg, torque }) => ({ deg, torque: torque * factor }),
    }),
  );
  return [...(fromStraight && turned ? [byAngle] : []), ...byUnit];
}

/**
 * Fall of the penalty that makes another reading worth a question: 9 is odds of e^4.5, ninety to
 * one, which outweighs that slips are rarer than tests that are right (working value).
 */
const worthAsking = 9;
/**
 * Squared errors off, with twice the log of how vague the curve is there over one test's error: a
 * reading below this is expected (working value). Without the second part a reading that falls
 * where nothing is known would always do.
 */
const expected = 3;

/**
 * A rig pad a few centimetres off on a lever of 30 to 40 cm, with the axis off too, does not change
 * a torque by more than this (working value; 10 % a misplaced axis).
 */
const mostByLever = 1.3;

/**
 * The other reading of all tests of an action that fits far better, if there is one and it fits as
 * tests of known error should.
 */
export function seriesCause(curve: FittedCurve): Cause | undefined {
  const tried = otherReadings(curve, curve.measured).map(({ cause, read }) => ({
    cause,
    penalty: fitStrengthCurve(curve, curve.measured.map(read)).penalty,
  }));
  const best = tried.reduce((a, b) => (b.penalty < a.penalty ? b : a));
  const fits = best.penalty < curve.measured.length + worthAsking;
  return fits && curve.penalty - best.penalty >= worthAsking ? best.cause : undefined;
}

/**
 * What would make one test agree with the others, the likeliest first: other readings that they
 * would let expect; a lever arm where it is off by little; a slip where nothing else explains it.
 *
 * @param others curve fitted to the other tests
 */
export function causesOf(point: MeasuredTorque, others: FittedCurve): Cause[] {
  const unexpected = (read: MeasuredTorque) =>
    errorsOff(others, read) ** 2 +
    2 * Math.log(predictiveError(others, read.deg) / others.testError);
  const fits = otherReadings(others, [point])
    .map(({ cause, read }) => ({ cause, doubt: unexpected(read(point)) }))
    .filter(({ doubt }) => doubt < expected)
    .sort((a, b) => a.doubt - b.doubt);
  const readings = fits.slice(0, 2).map(({ cause }) => cause);
  const off = Math.abs(Math.log(point.torque / fittedTorque(others, point.deg)));
  if (off < Math.log(mostByLever)) return [...readings, { kind: 'lever' }];
  return readings.length > 0 ? readings : [{ kind: 'slip' }];
}
