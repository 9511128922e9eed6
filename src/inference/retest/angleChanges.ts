import type { Between } from '../reliability/between.ts';
import { asShare, direction, logChange, type Noise, torqueBetween } from './logChange.ts';
import type { PairedAngle } from './pairedAngles.ts';

/** One angle tested on both occasions; torques N·m. */
export interface AngleChange {
  readonly angle: number;
  readonly inTarget: boolean;
  readonly before: number;
  readonly after: number;
  readonly change: number;
  /** Change that noise does not reach more often than the level allows, N·m. */
  readonly minimalDetectableChange: number;
  /** The change as a share, with its interval. */
  readonly gain: Between;
  readonly says: 'gain beyond noise' | 'loss beyond noise' | 'cannot say';
  /** True if it also passes the limit that all angles together keep (Bonferroni). */
  readonly standsAmongAll: boolean;
  readonly days: { readonly before: number; readonly after: number };
}

/**
 * Each angle tested on both occasions, judged alone.
 *
 * @param reachOfAll standard errors at which all angles together keep the level
 */
export function angleChanges(
  common: readonly PairedAngle[],
  noise: Noise,
  reachOfAll: number,
): AngleChange[] {
  const says = {
    up: 'gain beyond noise',
    down: 'loss beyond noise',
    none: 'cannot say',
  } as const;
  return common.map((pair) => {
    const change = logChange([{ pair, weight: 1 }], noise);
    const strict = { ...change, reach: reachOfAll };
    return {
      angle: pair.angle,
      inTarget: pair.inTarget,
      before: pair.before,
      after: pair.after,
      change: pair.after - pair.before,
      minimalDetectableChange: change.reach * change.standardError * torqueBetween(pair),
      gain: asShare(change),
      says: says[direction(change)],
      standsAmongAll: direction(strict) !== 'none',
      days: { before: pair.scores.before.days.length, after: pair.scores.after.days.length },
    };
  });
}
