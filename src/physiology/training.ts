import { demandOf } from '../mechanics/demand.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { countsWholeEffort } from '../tables/bodyLifts.ts';
import { coefficientsFor } from './adaptation.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import {
  type Exercise,
  freshness,
  type HoldExercise,
  hardestEffort,
  type LiftExercise,
  type Sample,
  samplesOf,
} from './exercise.ts';
import { stickingPoint } from './heaviestLoad.ts';
import { type IsokineticExercise, isokineticMoments } from './isokinetic.ts';
import type { Capacity } from './jointEfforts.ts';
import { fromTheTop, loweredPasses, loweringLimit } from './lowering.ts';
import type { Onlooker } from './onlooker.ts';
import { setPasses } from './passes.ts';
import { sharedLoad } from './sharing.ts';
import {
  capacityAfter,
  restingCapacity,
  type TrainedState,
  untrainedState,
} from './trainedState.ts';
import { weekLater } from './weekLater.ts';
import { WeekOfWork } from './weekOfWork.ts';
import { type Phase, type WeekPlan, weekPlan } from './weekPlan.ts';

/** A training program in the model's terms. */
export interface Block {
  readonly weeks: number;
  readonly sessionsPerWeek: number;
  readonly exercises: readonly Exercise[];
  /** Change of load from one week to the next, share. */
  readonly progress: number;
  readonly deloads: readonly { readonly week: number; readonly sets: number }[];
  /** Where the weeks are not alike: they stand in place of the block's own rhythm. */
  readonly phases?: readonly Phase[];
}

/** Runs a block week by week. */
export function train(
  athlete: Athlete,
  block: Block,
  coefficients: Coefficients,
  onlooker?: Onlooker,
): TrainedState {
  const c = coefficientsFor(athlete, coefficients);
  let state = untrainedState;
  for (let week = 1; week <= block.weeks; week++) {
    const session = new WeekOfTraining(athlete, weekPlan(block, week), week, state, c);
    const after = session.result(c);
    state = after.state;
    onlooker?.({ week, work: session.work, ...after });
  }
  return state;
}

/** A lift as it is done in one week. */
interface LiftToday {
  /** kg. */
  readonly load: number;
  /** Strength over that before training, at least 1. */
  readonly stronger: number;
  readonly samples: readonly Sample[];
  /** The same with the load of the way down. */
  readonly lowered: readonly Sample[];
}

/** Does one week's exercises, as far as the athlete can. */
class WeekOfTraining {
  readonly work: WeekOfWork;
  private readonly capacity: Capacity;
  private readonly shortfalls: TrainedState['shortfalls'][number][] = [];
  private readonly athlete: Athlete;
  private readonly plan: WeekPlan;
  private readonly week: number;
  private readonly state: TrainedState;

  constructor(
    athlete: Athlete,
    plan: WeekPlan,
    week: number,
    state: TrainedState,
    c: Coefficients,
  ) {
    this.athlete = athlete;
    this.plan = plan;
    this.week = week;
    this.state = state;
    this.capacity = capacityAfter(athlete, state, 'dynamic', c);
    this.work = new WeekOfWork(athlete);
    for (const { exercise, place } of plan.exercises) {
      if (exercise.kind === 'lift') this.addLift(exercise, place);
      else if (exercise.kind === 'hold') this.addHold(exercise);
      else this.addIsokinetic(exercise);
    }
  }

  /**
   * Effort is counted against strength before training, so that getting stronger by one exercise
   * never takes dose from another; what has been gained decides how much load and how many
   * repetitions of the plan can be done.
   */
  private addLift(exercise: LiftExercise, place: number): void {
    const { sets, tempo, lowerOnly, heaviest } = exercise;
    const today = this.liftToday(exercise);
    const { samples, lowered } = today;
    const fresh = this.repetitionsDone(exercise, place, today);
    const times = sets * this.plan.perWeek;
    // A body that cannot be held over the whole range has no heaviest load: it is lowered as far
    // as control goes, at every repetition alike.
    const control = heaviest > 0 ? Number.POSITIVE_INFINITY : loweringLimit * today.stronger;
    const passes = lowerOnly
      ? loweredPasses(fromTheTop(samples), control, tempo, fresh)
      : setPasses(samples, tempo, fresh, fromTheTop(lowered));
    this.work.addPasses(passes, times, 'dynamic');
    // No source was found for lowering alone as practice of a single: it counts as none.
    if (!lowerOnly) this.work.practised.push({ lift: exercise.range.lift, samples, sets: times });
  }

  /** What is really lifted and lowered this week. */
  private liftToday(exercise: LiftExercise): LiftToday {
    const { athlete } = this;
    const { progressed } = this.plan;
    const { range, load, heaviest, lowering } = exercise;
    const strength = liftFactor(athlete, range);
    const samplesWith = (kg: number) => samplesOf(range, athlete, kg, strength);
    const planned = load * progressed;
    const asPlanned = samplesWith(planned);
    // Strength gained so far, seen as the fall of effort under the same load; saves solving for
    // the heaviest load each week.
    const now = stickingPoint(range, athlete.body, this.capacity, planned).effort / strength;
    const stronger = Math.max(hardestEffort(asPlanned) / now, 1);
    const lifted =
      countsBody(exercise) && now <= 1 ? planned : Math.min(planned, heaviest * stronger);
    const samples = lifted < planned ? samplesWith(lifted) : asPlanned;
    const lowered = lowering
      ? samplesWith(Math.min(lowering.load * progressed, lowering.heaviest * stronger))
      : samples;
    return { load: lifted, stronger, samples, lowered };
  }

  /** Capacity left at each repetition that can be done of a set; fewer than wanted are told. */
  private repetitionsDone(
    lift: LiftExercise,
    exercise: number,
    { load, stronger, samples }: LiftToday,
  ): number[] {
    const { reps, heaviest, lowerOnly } = lift;
    const hardest = hardestEffort(samples) / (lowerOnly ? loweringLimit : 1);
    const share = countsBody(lift) ? hardest : heaviest > 0 ? load / heaviest : 0;
    const fresh = freshness(reps, { share, shareNow: share / stronger, hardest });
    const done = fresh.length;
    if (done < reps) this.shortfalls.push({ week: this.week, exercise, done, wanted: reps });
    return fresh;
  }

  private addHold(exercise: HoldExercise): void {
    const times = exercise.sets * this.plan.perWeek;
    const seconds = exercise.reps * exercise.seconds;
    const { of, at, effort } = exercise;
    if ('action' in of) {
      this.work.addAlone(of.action, [{ angle: at, seconds, effort }], times, 'isometric');
      return;
    }
    const { lift, rig } = of.range;
    const asked = demandOf(lift, this.athlete.body, of.load, rig)(at);
    if ('impossible' in asked) return;
    const strength = liftFactor(this.athlete, of.range);
    const shared = sharedLoad(asked, restingCapacity(this.athlete), strength);
    const posture = { asked, effort: shared.actions, muscles: shared.muscles };
    this.work.addPasses([{ posture, seconds, left: 1 }], times, 'isometric');
  }

  private addIsokinetic(exercise: IsokineticExercise): void {
    const times = exercise.sets * exercise.reps * this.plan.perWeek;
    this.work.addAlone(exercise.action, isokineticMoments(exercise), times, 'dynamic');
  }

  /** The athlete after the week, and what it counted. */
  result(c: Coefficients): ReturnType<typeof weekLater> {
    const { state, dose } = weekLater(this.state, this.work, c);
    return { state: { ...state, shortfalls: [...state.shortfalls, ...this.shortfalls] }, dose };
  }
}

/** Whether repetitions count on all that is asked, body included. */
const countsBody = ({ range, heaviest, lowerOnly }: LiftExercise) =>
  !lowerOnly && countsWholeEffort(range.lift, heaviest);
