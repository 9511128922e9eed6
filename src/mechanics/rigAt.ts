import type { Lift } from './lift.ts';
import { type Body, type Impossible, Stance } from './posture.ts';
import { addedMass, addedPull, heightOfLoad, type Rig, towardPulley } from './rig.ts';

/** A rig in one posture. */
export interface RigAt {
  /** Mass (kg) by which it makes the load heavier; below 0 where bands help. */
  readonly added: number;
  /** Length of the bands, metres, slack or not; missing without bands. */
  readonly bandLength?: number;
}

/**
 * What chains and bands do along a lift, as a function of its leading angle, radians.
 *
 * @param load kg
 * @returns for an angle: what they add, or why the posture cannot be taken
 */
export function rigAlong(
  lift: Lift,
  body: Body,
  load: number,
  rig: Rig,
): (leading: number) => RigAt | Impossible {
  const stance = new Stance(lift, body, load, rig);
  const bands = rig.find((device) => device.kind === 'bands');
  return (leading) => {
    const held = stance.posture(leading);
    if ('impossible' in held) return held;
    const toward = towardPulley(lift, held.placement);
    if (toward) {
      const bandLength = Math.hypot(toward.x, toward.y);
      return { added: addedPull(rig, bandLength), ...(bands && { bandLength }) };
    }
    const height = heightOfLoad(lift, body, held.placement);
    const bandLength = bands && Math.abs(height - bands.anchor);
    return { added: addedMass(rig, height), ...(bandLength !== undefined && { bandLength }) };
  };
}
