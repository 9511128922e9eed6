import type { TrainedState } from './trainedState.ts';

type Shortfall = TrainedState['shortfalls'][number];

/**
 * Sets with at most this share of their repetitions cannot be done as written; what lacks less lies
 * within the spread between people at one load (working value).
 */
const seriousFrom = 0.75;

export const isSerious = ({ done, wanted }: Shortfall) => done <= seriousFrom * wanted;

/** Whether sets of a program cannot be done as written. */
export const fallsShort = ({ shortfalls }: Pick<TrainedState, 'shortfalls'>) =>
  shortfalls.some(isSerious);
