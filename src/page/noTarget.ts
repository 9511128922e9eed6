import type { Results } from '../run.ts';

/** Why a retest says nothing of the target. */
export const noTarget = ({ question }: Results): string =>
  `The target’s own action, ${question.action}, was not tested both times: nothing can be said of the target.`;
