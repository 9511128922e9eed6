/** One lift of the catalogue as a usual person would stand in it, at both ends of its range. */
import type { Lift } from '../mechanics/lift.ts';
import type { Placement } from '../mechanics/linkage.ts';
import { Stance } from '../mechanics/posture.ts';
import { didYouMean } from '../notebook/didYouMean.ts';
import { toRadians } from '../numeric/degrees.ts';
import { bodyOf } from '../physiology/body.ts';
import { lifts } from '../tables/lifts.ts';

export interface LookedUp {
  readonly lift: Lift;
  /** Postures at the first and last angle at which this person can be placed, and those angles. */
  readonly postures: readonly { readonly deg: number; readonly placement: Placement }[];
}

/** The person drawn: between the sexes, 1.75 m and 75 kg, with a bar of 40 kg where there is one. */
const usualBody = bodyOf({ reference: 'pooled', stature: 1.75, mass: 75, lengths: {}, limits: {} });
const usualLoad = 40;

/** Names of lifts by the joint that leads, in the order of the tables; by default the catalogue's. */
export function liftsByJoint(
  among: readonly Lift[] = lifts,
): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { leading, name } of among) names.set(leading, [...(names.get(leading) ?? []), name]);
  return names;
}

/**
 * Finds a lift and places the usual person in it.
 *
 * @param among the lifts to look in; by default the catalogue's
 * @returns the lift with its end postures, or the nearest name if there is no such lift
 */
export function lookUpLift(
  name: string,
  among: readonly Lift[] = lifts,
): LookedUp | { readonly suggestion: string | undefined } {
  const lift = among.find((entry) => entry.name === name);
  if (!lift) {
    const names = among.map((entry) => entry.name);
    return { suggestion: didYouMean(name, names) };
  }
  const stance = new Stance(lift, usualBody, usualLoad);
  const [first, last] = lift.rangeDeg;
  const steps = Array.from({ length: 31 }, (_, i) => first + ((last - first) * i) / 30);
  const placed = steps.flatMap((deg) => {
    const held = stance.posture(toRadians(deg));
    return 'impossible' in held ? [] : [{ deg, placement: held.placement }];
  });
  const ends = [placed[0], placed[placed.length - 1]];
  return { lift, postures: ends.flatMap((end) => (end ? [end] : [])) };
}
