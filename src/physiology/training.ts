import { gridAngles, gridStepDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { demandOf } from '../mechanics/demand.ts';
import type { Joint } from '../mechanics/lift.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import {
  coefficientsFor,
  type GroupChange,
  type Mechanism,
  mechanisms,
  oneWeekLater,
  torqueRatio,
  untouched,
} from './adaptation.ts';
import type { Athlete } from './athlete.ts';
import { type Contraction, DoseCollector, type WeeklyDose } from './dose.ts';
import {
  type Exercise,
  freshness,
  type HoldExercise,
  hardestEffort,
  type LiftExercise,
  samplesOf,
  setMoments,
} from './exercise.ts';
import {
  type Capacity,
  heaviestLoad,
  jointEffort,
  type Range,
  type StickingPoint,
  stickingPoint,
} from './heaviestLoad.ts';

/** A training program in the model's terms. */
export interface Block {
  readonly weeks: number;
  readonly sessionsPerWeek: number;
  readonly exercises: readonly Exercise[];
  /** Change of load from one week to the next, share. */
  readonly progress: number;
  readonly deloads: readonly { readonly week: number; readonly sets: number }[];
}

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

const joints = ['knee', 'hip', 'ankle'] as const;
const all: ReadonlySet<Mechanism> = new Set(mechanisms);

/** The athlete before the first week. */
export function untrainedState(athlete: Athlete): TrainedState {
  const { knee, hip, ankle } = athlete.groups;
  const changes = { knee: untouched(knee), hip: untouched(hip), ankle: untouched(ankle) };
  return { changes, practice: {}, shortfalls: [] };
}

/** Runs a block week by week. */
export function train(athlete: Athlete, block: Block, coefficients: Coefficients): TrainedState {
  const c = coefficientsFor(athlete.trained, coefficients);
  let state = untrainedState(athlete);
  for (let week = 1; week <= block.weeks; week++)
    state = trainOneWeek(athlete, block, week, state, c);
  return state;
}

function trainOneWeek(
  athlete: Athlete,
  block: Block,
  week: number,
  state: TrainedState,
  c: Coefficients,
): TrainedState {
  const session = new WeekOfTraining(athlete, block, week, state, c);
  block.exercises.forEach((exercise, place) => {
    if (exercise.kind === 'lift') session.addLift(exercise, place);
    else session.addHold(exercise);
  });
  return session.result();
}

/** Collects what one week's exercises do to one athlete. */
class WeekOfTraining {
  private readonly doses: Readonly<Record<Joint, DoseCollector>>;
  private readonly capacity: Capacity;
  private readonly practised = new Map<string, number[]>();
  private readonly shortfalls: TrainedState['shortfalls'][number][] = [];
  private readonly athlete: Athlete;
  private readonly block: Block;
  private readonly week: number;
  private readonly state: TrainedState;
  private readonly c: Coefficients;
  /** Times a week that each written set is done. */
  private readonly perWeek: number;

  constructor(athlete: Athlete, block: Block, week: number, state: TrainedState, c: Coefficients) {
    this.athlete = athlete;
    this.block = block;
    this.week = week;
    this.state = state;
    this.c = c;
    this.capacity = capacityAfter(athlete, state, 'dynamic', c);
    const collector = (joint: Joint) => new DoseCollector(athlete.groups[joint], c);
    this.doses = { knee: collector('knee'), hip: collector('hip'), ankle: collector('ankle') };
    const deload = block.deloads.find((entry) => entry.week === week)?.sets ?? 1;
    this.perWeek = block.sessionsPerWeek * deload;
  }

  /**
   * Effort is counted against strength before training, so that getting stronger by one exercise
   * never takes dose from another; what has been gained decides how much load and how many
   * repetitions of the plan can be done.
   */
  addLift(exercise: LiftExercise, place: number): void {
    const { athlete, block } = this;
    const { range, reps, heaviest } = exercise;
    const strength = athlete.liftFactors[range.lift.name] ?? 1;
    const planned = exercise.load * (1 + block.progress) ** (this.week - 1);
    const samplesWith = (capacity: Capacity, load: number) =>
      samplesOf(range, athlete.body, capacity, load, strength);
    let samples = samplesWith(restingCapacity(athlete), planned);
    // Strength gained so far, seen as the fall of effort under the same load; saves solving for
    // the heaviest load each week.
    const stronger = hardestEffort(samples) / hardestEffort(samplesWith(this.capacity, planned));
    const load = Math.min(planned, heaviest * stronger);
    if (load < planned) samples = samplesWith(restingCapacity(athlete), load);
    const fresh = freshness(reps, {
      share: load / heaviest,
      shareNow: load / (heaviest * stronger),
      hardest: hardestEffort(samples),
    });
    if (fresh.length < reps)
      this.shortfalls.push({
        week: this.week,
        exercise: place,
        done: fresh.length,
        wanted: reps,
      });
    const times = exercise.sets * this.perWeek;
    for (const joint of joints)
      this.doses[joint].add(setMoments(joint, samples, exercise.tempo, fresh), times, 'dynamic');
    this.practise(exercise, samples, times);
  }

  /** Practice goal at each angle of the range: K · effort^r, filled by the number of sets. */
  private practise(
    exercise: LiftExercise,
    samples: ReturnType<typeof samplesOf>,
    sets: number,
  ): void {
    const name = exercise.range.lift.name;
    const goal = this.practised.get(name) ?? gridAngles.map(() => 0);
    const half = (gridStepDeg * Math.PI) / 360;
    const filled = sets / (sets + this.c.practiceHalfDose);
    gridAngles.forEach((angle, i) => {
      const near = samples.find(({ leading }) => Math.abs(leading - angle) <= half);
      if (!near) return;
      const effort = Math.min(Math.max(near.effort.knee, near.effort.hip, near.effort.ankle), 1);
      const gain = this.c.practiceAmplitude * filled * effort ** this.c.practicePower;
      goal[i] = Math.max(goal[i] ?? 0, gain);
    });
    this.practised.set(name, goal);
  }

  addHold(exercise: HoldExercise): void {
    const times = exercise.sets * this.perWeek;
    const seconds = exercise.reps * exercise.seconds;
    const { of, at, effort } = exercise;
    if ('joint' in of) {
      this.doses[of.joint].add([{ angle: at, seconds, effort }], times, 'isometric');
      return;
    }
    const held = { ...of.range, from: at, to: at };
    const load = heaviestLoad(held, this.athlete.body, this.capacity, effort);
    const asked = demandOf(held.lift, this.athlete.body, load, held.machine)(at);
    if ('impossible' in asked) return;
    for (const joint of joints) {
      const moment = {
        angle: asked.angles[joint],
        seconds,
        effort: Math.min(jointEffort(asked, this.capacity, joint), 1),
      };
      this.doses[joint].add([moment], times, 'isometric');
    }
  }

  result(): TrainedState {
    const { athlete, state, c } = this;
    const later = (joint: Joint) =>
      oneWeekLater(athlete.groups[joint], state.changes[joint], this.doses[joint].total(), c);
    const rate = 1 - Math.exp(-1 / c.driveWeeks);
    const practice: Record<string, OverAngles> = {};
    for (const name of new Set([...Object.keys(state.practice), ...this.practised.keys()])) {
      const goal = this.practised.get(name);
      practice[name] = gridAngles.map((_, i) => {
        const now = state.practice[name]?.[i] ?? 0;
        return now + rate * ((goal?.[i] ?? 0) - now);
      });
    }
    const { knee, hip, ankle } = this.doses;
    const firstWeek = state.firstWeek ?? {
      knee: knee.total(),
      hip: hip.total(),
      ankle: ankle.total(),
    };
    return {
      firstWeek,
      changes: { knee: later('knee'), hip: later('hip'), ankle: later('ankle') },
      practice,
      shortfalls: [...state.shortfalls, ...this.shortfalls],
    };
  }
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
    const load = heaviestLoad(range, athlete.body, capacity, athlete.liftFactors[name] ?? 1);
    const at = stickingPoint(range, athlete.body, capacity, load);
    const nearest = Math.round((at.angle * 180) / Math.PI / gridStepDeg);
    return { range, load: load * (1 + (state.practice[name]?.[nearest] ?? 0)), at };
  });
}
