import type { ActionName } from '../tables/actions.ts';
import { tendonArmGrowth } from '../tables/tendonArmGrowth.ts';

/**
 * Relative growth of a tendon's arm with the area of its muscle: (1 + growth)^e − 1, e by action;
 * 0 where nothing is known.
 *
 * @param growth of area, a share
 */
export function armGrowth(action: ActionName, growth: number): number {
  return (1 + growth) ** (tendonArmGrowth[action]?.value ?? 0) - 1;
}
