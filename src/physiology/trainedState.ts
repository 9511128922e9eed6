import { gridStepDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Joint } from '../mechanics/lift.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import {
  coefficientsFor,
  type GroupChange,
  type Mechanism,
  mechanisms,
  torqueRatio,
  untouched,
} from './adaptation.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import type { Contraction, WeeklyDose } from './dose.ts';
import {
  type Capacity,
  heaviestLoad,
  type Range,
  type StickingPoint,
  stickingPoint,
} from './heaviestLoad.ts';

/** The athlete after some weeks. */
export interface TrainedState {
  /** Dose of the first week by joint; none before it. */
  readonly firstWeek?: Readonly<Record<Joint, WeeklyDose>>;
  readonly changes: Readonly<Record<Joint, GroupChange>>;
  /** Gain from practising a lift, share, by leading-joint angle, for each lift by name. */
  readonly practice: Readonly<Record<string, OverAngles>>;
  /** Repetitions that could not be done: week, place in the program, done of wanted. */
  readonly shortfalls: readonly {
    readonly week: number;
    readonly exercise: number;
    readonly done: number;
    readonly wanted: number;
  }[];
}

const all: ReadonlySet<Mechanism> = new Set(mechanisms);

/** The athlete before the first week. */
export function untrainedState(athlete: Athlete): TrainedState {
  const { knee, hip, ankle } = athlete.groups;
  const changes = { knee: untouched(knee), hip: untouched(hip), ankle: untouched(ankle) };
  return { changes, practice: {}, shortfalls: [] };
}

/** Torque by angle of every joint before training. */
export function restingCapacity(athlete: Athlete): Capacity {
  const { knee, hip, ankle } = athlete.groups;
  return { knee: knee.torque, hip: hip.torque, ankle: ankle.torque };
}

/** Torque by angle of every joint in a given state, as a test of one kind would find it. */
export function capacityAfter(
  athlete: Athlete,
  state: TrainedState,
  test: Contraction,
  c: Coefficients,
): Capacity {
  const after = (joint: Joint) => {
    const group = athlete.groups[joint];
    const ratio = torqueRatio(group, state.changes[joint], test, c, all);
    return group.torque.map((torque, i) => torque * (ratio[i] ?? 1));
  };
  return { knee: after('knee'), hip: after('hip'), ankle: after('ankle') };
}

/** A range's heaviest single, kg, and where and at which joint it is lost. */
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
  const c = coefficientsFor(athlete.trained, coefficients);
  const capacity = capacityAfter(athlete, state, 'dynamic', c);
  return ranges.map((range) => {
    const { name } = range.lift;
    const load = heaviestLoad(range, athlete.body, capacity, liftFactor(athlete, name, range.to));
    const at = stickingPoint(range, athlete.body, capacity, load);
    const nearest = Math.round((at.angle * 180) / Math.PI / gridStepDeg);
    return { range, load: load * (1 + (state.practice[name]?.[nearest] ?? 0)), at };
  });
}
