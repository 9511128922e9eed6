import { standardGravity } from '../mechanics/forces.ts';
import type { Body } from '../mechanics/posture.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';

/** What is known of the weight of the limb in a torque test; `pulls` is 1 against the effort. */
export type LimbWeight =
  | { readonly kind: 'corrected' | 'none' }
  | { readonly kind: 'estimated'; readonly pulls: 1 | -1 }
  | { readonly kind: 'weighed'; readonly level: number; readonly pulls: 1 | -1 }
  | {
      readonly kind: 'relaxed';
      readonly points: readonly { readonly angle: number; readonly against: number }[];
    };

/**
 * Torque of shank and foot about the knee with the shank held level, N·m: mass × g × distance of
 * the mass centre from the knee, from the body's own segments (de Leva 1996, or Dempster 1955 by
 * Winter 2009).
 */
export function levelShank({ segments }: Body): number {
  const { mass, centre, length } = segments['shank and foot'];
  return mass * standardGravity * centre * length;
}

/**
 * Torque by which the weight of the limb works against the effort, N·m.
 *
 * Seated knee: the torque with the shank level × cos(flexion), against extension, with flexion
 * (standard in knee dynamometry, from memory; Winter 2009 for the segments). A relaxed trial is
 * read off a straight line between its angles, at its ends the end's value.
 *
 * @param angle radians, knee flexion where the weight was estimated or weighed
 */
export function pullOfLimb(weight: LimbWeight | undefined, angle: number, body: Body): number {
  if (weight?.kind === 'relaxed')
    return piecewiseLinear(
      weight.points.map((point) => point.angle),
      weight.points.map(({ against }) => against),
    )(angle);
  if (weight?.kind === 'weighed') return weight.pulls * weight.level * Math.cos(angle);
  if (weight?.kind === 'estimated') return weight.pulls * levelShank(body) * Math.cos(angle);
  return 0;
}

/** How one torque trial was taken. */
export interface TrialSetup {
  readonly gravity?: LimbWeight;
  readonly side?: 'left' | 'right' | 'both';
}

/**
 * Torque that the muscles of one side made, N·m, from what the device showed: the pull of the limb's
 * weight added, and half of it taken where both limbs pushed together. A pull that was measured is
 * that of both limbs, an estimated one that of one.
 *
 * @param angle radians
 */
export function muscleTorque(
  shown: number,
  angle: number,
  { gravity: weight, side }: TrialSetup,
  body: Body,
): number {
  const pull = pullOfLimb(weight, angle, body);
  if (side !== 'both') return shown + pull;
  return weight?.kind === 'estimated' ? shown / 2 + pull : (shown + pull) / 2;
}
