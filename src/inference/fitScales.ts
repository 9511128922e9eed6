import { meanTorque, type OtherAction, type Scales } from '../physiology/athlete.ts';
import { actionNames } from '../tables/actions.ts';
import { curveSpread } from '../tables/strength.ts';
import type { MeasuredTorque } from './fitKneeStrength.ts';

/** A measured isometric torque and the action it tests. */
export interface MeasuredAction extends MeasuredTorque {
  readonly action: string;
}

/**
 * Strength of one athlete over the mean person's in the actions other than knee extension.
 *
 * One size for each action: the mean log ratio of measured to tabled torque, held toward the mean
 * person as far as few points and the unsure shape leave it open (normal prior and scatter).
 */
export function fitScales(
  reference: 'female' | 'male' | 'pooled',
  bodyMass: number,
  measured: readonly MeasuredAction[],
): Scales {
  const scales: Partial<Record<OtherAction, number>> = {};
  for (const action of actionNames) {
    if (action === 'knee extension') continue;
    const logs = measured
      .filter((point) => point.action === action)
      .map(({ deg, torque }) => Math.log(torque / meanTorque(action, reference, bodyMass, deg)));
    if (logs.length === 0) continue;
    const sum = logs.reduce((total, log) => total + log, 0);
    scales[action] = Math.exp(sum / (logs.length + (curveSpread.point / curveSpread.person) ** 2));
  }
  return scales;
}
