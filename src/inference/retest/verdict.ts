import type { Between } from '../reliability/between.ts';
import { isRefusal, type Refusal } from '../reliability/refusal.ts';
import { asShare, direction, type LogChange } from './logChange.ts';

/** A verdict with its numbers. */
export interface Judged {
  readonly says: 'yes' | 'loss' | 'cannot say';
  /**
   * Share with its interval: of the target, the geometric mean gain; of the contrast, how much
   * more the target's torques grew than the others' (1.10/1.05 − 1).
   */
  readonly gain: Between;
  /** Of the logarithm, about a share. */
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  /** Smallest share of gain that would have been a yes. */
  readonly detectableGain: number;
}

/** A verdict that the numbers do not allow. */
export interface NotJudged extends Refusal {
  readonly says: 'cannot say';
}

/** The verdict on a change, or on why there is none to judge. */
export function judged(change: LogChange | Refusal): Judged | NotJudged {
  if (isRefusal(change)) return { says: 'cannot say', ...change };
  const says = { up: 'yes', down: 'loss', none: 'cannot say' } as const;
  return {
    says: says[direction(change)],
    gain: asShare(change),
    standardError: change.standardError,
    degreesOfFreedom: change.degreesOfFreedom,
    detectableGain: Math.expm1(change.reach * change.standardError),
  };
}
