import type { Coefficients } from '../tables/adaptation.ts';
import { coefficientsFor } from './adaptation.ts';
import type { Athlete } from './athlete.ts';
import { type TrainedState, untrainedState } from './trainedState.ts';
import { type Block, train } from './training.ts';
import { weekLater } from './weekLater.ts';
import type { WeekOfWork } from './weekOfWork.ts';

/**
 * The work of a block as it was done once, so that it can be weighed again with other coefficients
 * without solving statics anew.
 */
export interface RecordedWork {
  readonly athlete: Athlete;
  readonly weeks: readonly WeekOfWork[];
}

/** Trains once with the coefficients given and keeps the work that was done. */
export function recordWork(
  athlete: Athlete,
  block: Block,
  coefficients: Coefficients,
): RecordedWork {
  const weeks: WeekOfWork[] = [];
  train(athlete, block, coefficients, ({ work }) => weeks.push(work));
  return { athlete, weeks };
}

/**
 * What the recorded work makes of the athlete with other coefficients; the same equations as
 * `train`, given the same loads and repetitions.
 *
 * @param weeks how many of the recorded weeks to train
 */
export function replay(
  work: RecordedWork,
  coefficients: Coefficients,
  weeks = work.weeks.length,
): TrainedState {
  const c = coefficientsFor(work.athlete, coefficients);
  return work.weeks
    .slice(0, weeks)
    .reduce((state, week) => weekLater(state, week, c).state, untrainedState);
}
