import type { Lift } from '../mechanics/lift.ts';

/**
 * Whether a lift moves trunk and head and adds a weight to them, so that it can be done without
 * any: squats, step-ups, calf raises, Nordics, back extensions, chin-ups. A curl moves an arm only.
 */
export function carriesBody({ resistance, chain }: Lift): boolean {
  return resistance.kind === 'mass' && chain.some(({ segment }) => segment.startsWith('trunk'));
}

/**
 * Whether the body is the main weight of a lift: it hangs, stands on one leg or on the balls of the
 * feet, or turns about held shanks or hips. Lifts under a bar stand on two flat feet or have a
 * second support (bench, rail). A working rule; no source sorts lifts so.
 */
export function isBodyLift(lift: Lift): boolean {
  const isOnTwoFeet = lift.support === 'feet' && lift.sides === 2;
  return carriesBody(lift) && !isOnTwoFeet && lift.contact === undefined;
}

/**
 * Whether repetitions are counted on all that a lift asks, body included, over what its heaviest
 * single asks, and not on the added weight alone.
 *
 * Charts of repetitions were made with bars, by the share of the bar; 5 of 20 added kilograms is
 * not a quarter of a chin-up. That the same chart holds for the whole torque is a working value.
 *
 * @param heaviest heaviest single, kg; at 0 the single is the body itself and has no shares
 */
export function countsWholeEffort(lift: Lift, heaviest: number): boolean {
  return isBodyLift(lift) || (carriesBody(lift) && heaviest <= 0);
}
