import type { TrainedState } from './trainedState.ts';
import type { WeekDose, WeekOfWork } from './weekOfWork.ts';

/** Told after each week what was done and what became of it. */
export type Onlooker = (week: {
  /** From 1. */
  readonly week: number;
  readonly work: WeekOfWork;
  readonly dose: WeekDose;
  readonly state: TrainedState;
}) => void;
