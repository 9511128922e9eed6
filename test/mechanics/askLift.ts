import { demandOf } from '../../src/mechanics/demand.ts';
import type { Lift, MuscledJoint } from '../../src/mechanics/lift.ts';
import { type Body, Stance } from '../../src/mechanics/posture.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { bodyOf } from '../../src/physiology/body.ts';

/** A man of 80 kg and 1.80 m with the segments of the tables. */
export const man = bodyOf({ reference: 'male', stature: 1.8, mass: 80, lengths: {}, limits: {} });

/** Extension torque of one joint, one side, N·m. */
export function torque(
  lift: Lift,
  joint: MuscledJoint,
  deg: number,
  load: number,
  body: Body = man,
) {
  const asked = demandOf(lift, body, load)(toRadians(deg));
  if ('impossible' in asked) throw new Error(`${lift.name}: ${asked.impossible}`);
  return asked.torques[joint] ?? Number.NaN;
}

/** Knee angle (degrees) at which a squat's thigh is level, by halving. */
export function thighLevelDeg(lift: Lift, load: number): number {
  const stance = new Stance(lift, man, load);
  let [low, high] = [60, 150];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    const held = stance.posture(toRadians(middle));
    const thigh = 'impossible' in held ? undefined : held.placement.links[1];
    if ((thigh?.direction ?? Number.NaN) > -Math.PI / 2) low = middle;
    else high = middle;
  }
  return low;
}
