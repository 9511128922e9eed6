import type { Lift } from '../mechanics/lift.ts';
import type { ActionName } from '../tables/actions.ts';
import type { Contraction, Moment, WeeklyDose } from './dose.ts';
import type { Sample } from './exercise.ts';
import type { TrainedState } from './trainedState.ts';

/** Told of the work as it is done, week after week. */
export interface Onlooker {
  readonly worked: (
    week: number,
    action: ActionName,
    moments: readonly Moment[],
    times: number,
    contraction: Contraction,
  ) => void;
  readonly practised: (week: number, lift: Lift, samples: readonly Sample[], sets: number) => void;
  /** After each week: what it did and what became of it. */
  readonly weekDone: (
    week: number,
    doses: Readonly<Record<ActionName, WeeklyDose>>,
    state: TrainedState,
  ) => void;
}
