import { nearestIndex } from '../mechanics/angleGrid.ts';
import { type ActionName, byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';
import {
  type Changes,
  coefficientsFor,
  isUntouched,
  torqueRatio,
  unchangedDrive,
} from './adaptation.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import type { Contraction } from './dose.ts';
import { heaviestLoad, type Range, type StickingPoint } from './heaviestLoad.ts';
import type { Capacity } from './jointEfforts.ts';
import { unchangedMuscle } from './muscleChange.ts';
import type { Practice } from './practice.ts';
import type { WeekDose } from './weekOfWork.ts';

/** The athlete after some weeks. */
export interface TrainedState {
  /** Dose of the first week; none before it. */
  readonly firstWeek?: WeekDose;
  readonly changes: Changes;
  readonly practice: Practice;
  /** Repetitions that could not be done: week, place in the program, done of wanted. */
  readonly shortfalls: readonly {
    readonly week: number;
    readonly exercise: number;
    readonly done: number;
    readonly wanted: number;
  }[];
}

/** Before the first week. */
export const untrainedState: TrainedState = {
  changes: {
    drive: byAction(() => unchangedDrive),
    muscles: trainedMuscles.map(() => unchangedMuscle),
  },
  practice: {},
  shortfalls: [],
};

/** Torque by angle of every action before training. */
export function restingCapacity(athlete: Athlete): Capacity {
  return byAction((action) => athlete.groups[action].torque);
}

/** Torque by angle of every action in a given state, as a test of one kind would find it. */
export function capacityAfter(
  athlete: Athlete,
  state: TrainedState,
  test: Contraction,
  c: Coefficients,
): Capacity {
  const after = (action: ActionName) => {
    const { torque } = athlete.groups[action];
    if (isUntouched(action, state.changes)) return torque;
    const ratio = torqueRatio(action, state.changes, test, c);
    return torque.map((before, i) => before * (ratio[i] ?? 1));
  };
  return byAction(after);
}

/** A range's heaviest single, kg, and where and by which action it is lost. */
export interface HeaviestSingle {
  readonly range: Range;
  readonly load: number;
  readonly at: StickingPoint;
}

/**
 * Heaviest singles of ranges in a given state: statics against capacity times the athlete's own
 * factor in the lift, then times the practice gained at the sticking point.
 */
export function heaviestSingles(
  athlete: Athlete,
  ranges: readonly Range[],
  state: TrainedState,
  coefficients: Coefficients,
): HeaviestSingle[] {
  const c = coefficientsFor(athlete, coefficients);
  const capacity = capacityAfter(athlete, state, 'dynamic', c);
  return ranges.map((range) => {
    const strength = liftFactor(athlete, range);
    const { load, at } = heaviestLoad(range, athlete.body, capacity, strength);
    const practised = state.practice[range.lift.name]?.[nearestIndex(at.angle)] ?? 0;
    return { range, load: load * (1 + practised), at };
  });
}
