import { gridAngles, gridStepDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { demandOf } from '../mechanics/demand.ts';
import { type ActionName, actionNames, actions, byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { countsWholeEffort } from '../tables/bodyLifts.ts';
import { coefficientsFor, oneWeekLater } from './adaptation.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { DoseCollector } from './dose.ts';
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
import { sharedLoad } from './sharing.ts';
import {
  capacityAfter,
  restingCapacity,
  type TrainedState,
  untrainedState,
} from './trainedState.ts';

/** A training program in the model's terms. */
export interface Block {
  readonly weeks: number;
  readonly sessionsPerWeek: number;
  readonly exercises: readonly Exercise[];
  /** Change of load from one week to the next, share. */
  readonly progress: number;
  readonly deloads: readonly { readonly week: number; readonly sets: number }[];
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
    else if (exercise.kind === 'hold') session.addHold(exercise);
    else session.addIsokinetic(exercise);
  });
  return session.result();
}

/** Collects what one week's exercises do to one athlete. */
class WeekOfTraining {
  private readonly doses: Readonly<Record<ActionName, DoseCollector>>;
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
    this.doses = byAction((action) => new DoseCollector(athlete.groups[action], c));
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
    const { range, reps, heaviest, tempo, lowerOnly, lowering } = exercise;
    const strength = liftFactor(athlete, range.lift.name, range.to);
    const progressed = (1 + block.progress) ** (this.week - 1);
    const planned = exercise.load * progressed;
    const samplesWith = (load: number) =>
      samplesOf(range, athlete.body, restingCapacity(athlete), load, strength);
    let samples = samplesWith(planned);
    // Strength gained so far, seen as the fall of effort under the same load; saves solving for
    // the heaviest load each week.
    const now = stickingPoint(range, athlete.body, this.capacity, planned).effort / strength;
    const stronger = Math.max(hardestEffort(samples) / now, 1);
    const whole = !lowerOnly && countsWholeEffort(range.lift, heaviest);
    const load = whole && now <= 1 ? planned : Math.min(planned, heaviest * stronger);
    if (load < planned) samples = samplesWith(load);
    // A body that cannot be held over the whole range has no heaviest load: it is lowered as far
    // as control goes, at every repetition alike.
    const hardest = hardestEffort(samples) / (lowerOnly ? loweringLimit : 1);
    const share = whole ? hardest : heaviest > 0 ? load / heaviest : 0;
    const fresh = freshness(reps, { share, shareNow: share / stronger, hardest });
    if (fresh.length < reps)
      this.shortfalls.push({
        week: this.week,
        exercise: place,
        done: fresh.length,
        wanted: reps,
      });
    const times = exercise.sets * this.perWeek;
    const control = heaviest > 0 ? Number.POSITIVE_INFINITY : loweringLimit * stronger;
    const heavier = lowering && Math.min(lowering.load * progressed, lowering.heaviest * stronger);
    const lowered = heavier === undefined ? samples : samplesWith(heavier);
    for (const action of actionsAsked(samples)) {
      const moments = lowerOnly
        ? loweredMoments(action, fromTheTop(samples), control, tempo, fresh)
        : setMoments(action, samples, tempo, fresh, lowered);
      this.doses[action].add(moments, times, 'dynamic');
    }
    // No source was found for lowering alone as practice of a single: it counts as none.
    if (!lowerOnly) this.practise(exercise, samples, times);
  }

  /** Practice goal at each angle of the range: K · effort^r, filled by the number of sets. */
  private practise(exercise: LiftExercise, samples: readonly Sample[], sets: number): void {
    const name = exercise.range.lift.name;
    const goal = this.practised.get(name) ?? gridAngles.map(() => 0);
    // Samples stand at every second grid angle.
    const half = (1.01 * gridStepDeg * Math.PI) / 180;
    const filled = sets / (sets + this.c.practiceHalfDose);
    gridAngles.forEach((angle, i) => {
      const near = samples.find(({ leading }) => Math.abs(leading - angle) <= half);
      if (!near) return;
      const effort = Math.min(near.whole, 1);
      const gain = this.c.practiceAmplitude * filled * effort ** this.c.practicePower;
      goal[i] = Math.max(goal[i] ?? 0, gain);
    });
    this.practised.set(name, goal);
  }

  addHold(exercise: HoldExercise): void {
    const times = exercise.sets * this.perWeek;
    const seconds = exercise.reps * exercise.seconds;
    const { of, at, effort } = exercise;
    if ('action' in of) {
      this.doses[of.action].add([{ angle: at, seconds, effort }], times, 'isometric');
      return;
    }
    const { lift, rig } = of.range;
    const asked = demandOf(lift, this.athlete.body, of.load, rig)(at);
    if ('impossible' in asked) return;
    const strength = liftFactor(this.athlete, lift.name, at);
    const efforts = sharedLoad(asked, restingCapacity(this.athlete), strength).actions;
    for (const action of actionNames) {
      const asks = efforts[action];
      if (asks === undefined) continue;
      const angle = asked.angles[actions[action].joint] ?? 0;
      this.doses[action].add([{ angle, seconds, effort: Math.min(asks, 1) }], times, 'isometric');
    }
  }

  addIsokinetic(exercise: IsokineticExercise): void {
    const times = exercise.sets * exercise.reps * this.perWeek;
    this.doses[exercise.action].add(isokineticMoments(exercise), times, 'dynamic');
  }

  result(): TrainedState {
    const { athlete, state, c } = this;
    const doses = byAction((action) => this.doses[action].total());
    const later = (action: ActionName) =>
      oneWeekLater(athlete.groups[action], state.changes[action], doses[action], c);
    const rate = 1 - Math.exp(-1 / c.driveWeeks);
    const practice: Record<string, OverAngles> = {};
    for (const name of new Set([...Object.keys(state.practice), ...this.practised.keys()])) {
      const goal = this.practised.get(name);
      practice[name] = gridAngles.map((_, i) => {
        const now = state.practice[name]?.[i] ?? 0;
        return now + rate * ((goal?.[i] ?? 0) - now);
      });
    }
    return {
      firstWeek: state.firstWeek ?? doses,
      changes: byAction(later),
      practice,
      shortfalls: [...state.shortfalls, ...this.shortfalls],
    };
  }
}

/** Actions that any posture of a lift asks for. */
function actionsAsked(samples: readonly Sample[]): ActionName[] {
  return actionNames.filter((action) => samples.some(({ effort }) => effort[action] !== undefined));
}
