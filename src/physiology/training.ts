import { demandOf } from '../mechanics/demand.ts';
import { type ActionName, actionNames, actions, byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { countsWholeEffort } from '../tables/bodyLifts.ts';
import { coefficientsFor, oneWeekLater } from './adaptation.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { type Contraction, DoseCollector, type Moment } from './dose.ts';
import {
  type Exercise,
  freshness,
  type HoldExercise,
  hardestEffort,
  type LiftExercise,
  type Sample,
  samplesOf,
  setMoments,
} from './exercise.ts';
import { stickingPoint } from './heaviestLoad.ts';
import { type IsokineticExercise, isokineticMoments } from './isokinetic.ts';
import type { Capacity } from './jointEfforts.ts';
import { fromTheTop, loweredMoments, loweringLimit } from './lowering.ts';
import type { Onlooker } from './onlooker.ts';
import { WeekOfPractice } from './practice.ts';
import { sharedLoad } from './sharing.ts';
import {
  capacityAfter,
  restingCapacity,
  type TrainedState,
  untrainedState,
} from './trainedState.ts';
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
  onlooker?: Partial<Onlooker>,
): TrainedState {
  const c = coefficientsFor(athlete, coefficients);
  let state = untrainedState(athlete);
  for (let week = 1; week <= block.weeks; week++)
    state = trainOneWeek(athlete, block, week, state, c, onlooker);
  return state;
}

function trainOneWeek(
  athlete: Athlete,
  block: Block,
  week: number,
  state: TrainedState,
  c: Coefficients,
  onlooker?: Partial<Onlooker>,
): TrainedState {
  const plan = weekPlan(block, week);
  const session = new WeekOfTraining(athlete, plan, week, state, c, onlooker);
  for (const { exercise, place } of plan.exercises) {
    if (exercise.kind === 'lift') session.addLift(exercise, place);
    else if (exercise.kind === 'hold') session.addHold(exercise);
    else session.addIsokinetic(exercise);
  }
  return session.result();
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

/** Collects what one week's exercises do to one athlete. */
class WeekOfTraining {
  private readonly doses: Readonly<Record<ActionName, DoseCollector>>;
  private readonly capacity: Capacity;
  private readonly practice: WeekOfPractice;
  private readonly shortfalls: TrainedState['shortfalls'][number][] = [];
  private readonly athlete: Athlete;
  private readonly plan: WeekPlan;
  private readonly week: number;
  private readonly state: TrainedState;
  private readonly c: Coefficients;
  private readonly onlooker: Partial<Onlooker> | undefined;

  constructor(
    athlete: Athlete,
    plan: WeekPlan,
    week: number,
    state: TrainedState,
    c: Coefficients,
    onlooker?: Partial<Onlooker>,
  ) {
    this.athlete = athlete;
    this.plan = plan;
    this.week = week;
    this.state = state;
    this.c = c;
    this.onlooker = onlooker;
    this.capacity = capacityAfter(athlete, state, 'dynamic', c);
    this.doses = byAction((action) => new DoseCollector(athlete.groups[action], c));
    this.practice = new WeekOfPractice(c);
  }

  /**
   * Effort is counted against strength before training, so that getting stronger by one exercise
   * never takes dose from another; what has been gained decides how much load and how many
   * repetitions of the plan can be done.
   */
  addLift(exercise: LiftExercise, place: number): void {
    const { sets, tempo, lowerOnly, heaviest } = exercise;
    const today = this.liftToday(exercise);
    const { samples, lowered } = today;
    const fresh = this.repetitionsDone(exercise, place, today);
    const times = sets * this.plan.perWeek;
    // A body that cannot be held over the whole range has no heaviest load: it is lowered as far
    // as control goes, at every repetition alike.
    const control = heaviest > 0 ? Number.POSITIVE_INFINITY : loweringLimit * today.stronger;
    for (const action of actionsAsked(samples)) {
      const moments = lowerOnly
        ? loweredMoments(action, fromTheTop(samples), control, tempo, fresh)
        : setMoments(action, samples, tempo, fresh, lowered);
      this.work(action, moments, times, 'dynamic');
    }
    // No source was found for lowering alone as practice of a single: it counts as none.
    if (lowerOnly) return;
    this.practice.add(exercise.range.lift, samples, times);
    this.onlooker?.practised?.(this.week, exercise.range.lift, samples, times);
  }

  private work(
    action: ActionName,
    moments: readonly Moment[],
    times: number,
    contraction: Contraction,
  ): void {
    this.doses[action].add(moments, times, contraction);
    this.onlooker?.worked?.(this.week, action, moments, times, contraction);
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

  addHold(exercise: HoldExercise): void {
    const times = exercise.sets * this.plan.perWeek;
    const seconds = exercise.reps * exercise.seconds;
    const { of, at, effort } = exercise;
    if ('action' in of) {
      this.work(of.action, [{ angle: at, seconds, effort }], times, 'isometric');
      return;
    }
    const { lift, rig } = of.range;
    const asked = demandOf(lift, this.athlete.body, of.load, rig)(at);
    if ('impossible' in asked) return;
    const strength = liftFactor(this.athlete, of.range);
    const efforts = sharedLoad(asked, restingCapacity(this.athlete), strength).actions;
    for (const action of actionNames) {
      const asks = efforts[action];
      if (asks === undefined) continue;
      const angle = asked.angles[actions[action].joint] ?? 0;
      this.work(action, [{ angle, seconds, effort: Math.min(asks, 1) }], times, 'isometric');
    }
  }

  addIsokinetic(exercise: IsokineticExercise): void {
    const times = exercise.sets * exercise.reps * this.plan.perWeek;
    this.work(exercise.action, isokineticMoments(exercise), times, 'dynamic');
  }

  result(): TrainedState {
    const { athlete, state, c } = this;
    const doses = byAction((action) => this.doses[action].total());
    const later = (action: ActionName) =>
      oneWeekLater(athlete.groups[action], state.changes[action], doses[action], c);
    const after = {
      firstWeek: state.firstWeek ?? doses,
      changes: byAction(later),
      practice: this.practice.oneWeekLater(state.practice),
      shortfalls: [...state.shortfalls, ...this.shortfalls],
    };
    this.onlooker?.weekDone?.(this.week, doses, after);
    return after;
  }
}

/** Whether repetitions count on all that is asked, body included. */
const countsBody = ({ range, heaviest, lowerOnly }: LiftExercise) =>
  !lowerOnly && countsWholeEffort(range.lift, heaviest);

/** Actions that any posture of a lift asks for. */
function actionsAsked(samples: readonly Sample[]): ActionName[] {
  return actionNames.filter((action) => samples.some(({ effort }) => effort[action] !== undefined));
}
