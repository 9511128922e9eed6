import { toDegrees } from '../numeric/degrees.ts';
import { fastestTurnDeg, hillCurvature } from '../tables/forceVelocity.ts';
import { loweringStrength } from '../tables/movingStrength.ts';

/** Muscles shorten while lifting and are drawn out while lowering. */
export type Way = 'lifting' | 'lowering';

/**
 * Largest torque while a joint turns over the largest in a hold at the same angle.
 *
 * Lifting: Hill's relation (1 − v/vmax) / (1 + v/(k·vmax)), nothing from vmax on. Lowering: the
 * table's ratio at any speed; the studies disagree too much for a slope. Both are what the will
 * brings out, so that the few per cent of activation lost while moving (95 % held, 90 % lifting,
 * 88 % lowering at 20°/s: Babault 2001, J Appl Physiol 91:2628; read) are in them already.
 *
 * @param speed radians a second, not negative
 */
export function torqueWhileMoving(way: Way, speed: number): number {
  if (way === 'lowering') return loweringStrength.value;
  const share = toDegrees(speed) / fastestTurnDeg.value;
  return Math.max((1 - share) / (1 + share / hillCurvature.value), 0);
}
