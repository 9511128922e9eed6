import type { Lift } from '../mechanics/lift.ts';
import { isAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { liftNamed } from '../tables/lifts.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { type Exercise, type Sample, samplesOf } from './exercise.ts';
import {
  bodyTooHeavy,
  type SharedPosture,
  sharedAtHardest,
  type TooHeavyBody,
} from './hardPostures.ts';
import type { Range } from './heaviestLoad.ts';
import { bestWhileMoving } from './isokinetic.ts';
import { loadOf, loweringLoadOf } from './load.ts';
import { loweringLimit } from './lowering.ts';
import { type HeldLoad, planHold } from './planHold.ts';
import { type PlannedLowering, planLowering } from './planLowering.ts';
import { type Equipment, rigOf } from './rigOf.ts';
import { type RigUse, rigUse } from './rigUse.ts';
import {
  type HeaviestSingle,
  heaviestSingles,
  restingCapacity,
  untrainedState,
} from './trainedState.ts';
import type { Block } from './training.ts';
import type { WrittenIsokinetic, WrittenLift, WrittenProgram } from './writtenProgram.ts';

/** A single the athlete has really lifted: range in radians, by default from its first angle; kg. */
export interface MeasuredSingle {
  readonly lift: string;
  readonly from?: number;
  readonly to: number;
  readonly best: number;
}

/** An exercise with what its load was taken from. */
export interface PlannedExercise {
  readonly exercise: Exercise;
  /** Heaviest single of its range by the model; only for lifts. */
  readonly heaviest?: HeaviestSingle;
  /** Efforts along the range with the first week's load, fresh; only for lifts. */
  readonly samples: readonly Sample[];
  /** What the muscles give in the lift over the torque of their curves; only for lifts. */
  readonly strength?: number;
  /** The way down, where more is lowered than lifted or nothing is lifted. */
  readonly lowering?: PlannedLowering;
  /** For work at a set speed: the largest torque in the range in each of its ways, N·m. */
  readonly moving?: ReturnType<typeof bestWhileMoving>;
  /** For a hold of a lift: the load that asks the effort, or as near as comes. */
  readonly hold?: HeldLoad;
  /** Where the body's own weight is already too much, if it is. */
  readonly weak?: TooHeavyBody;
  /** How muscles share the hardest posture of the first week; only for lifts. */
  readonly shared?: SharedPosture;
  /** What chains and bands add along the range; only where there are any. */
  readonly rigUse?: RigUse;
  /** True when the range's own tested single was used for the load. */
  readonly tested: boolean;
}

export interface Plan {
  readonly block: Block;
  readonly exercises: readonly PlannedExercise[];
}

/** Whether a set works one side only and is done again with the other. */
export function isOneSided(planned: PlannedExercise | undefined): boolean {
  if (!planned || planned.exercise.kind === 'isokinetic') return false;
  const { exercise } = planned;
  const held = exercise.kind === 'lift' ? exercise : exercise.of;
  return 'range' in held && held.range.lift.sides === 1;
}

/** Where the range of a tested single begins, radians: the first angle of the lift. */
export function firstAngle(lift: Lift): number {
  return (lift.rangeDeg[0] * Math.PI) / 180;
}

/**
 * Whether a program's range is the one a single was tested over: ends within 1° and 10°, and no
 * chains or bands, because singles are tested with the plain bar.
 */
function isTestedRange(single: MeasuredSingle, work: WrittenLift, lift: Lift): boolean {
  const degree = Math.PI / 180;
  return (
    single.lift === work.lift &&
    work.chains === undefined &&
    work.bands === undefined &&
    Math.abs(single.to - work.to) < degree &&
    Math.abs((single.from ?? firstAngle(lift)) - work.from) < 10 * degree
  );
}

/**
 * Turns a written program into a block with loads in kilograms.
 *
 * A share, a repetition maximum or a reserve refers to the heaviest single of the same lift over
 * the same range with the same chains or bands: the tested one if there is a test over it, else
 * the one the model predicts.
 *
 * @param catalogue the lifts that work may name
 */
export function planProgram(
  program: WrittenProgram,
  athlete: Athlete,
  equipment: Equipment,
  singles: readonly MeasuredSingle[],
  coefficients: Coefficients,
  catalogue: readonly Lift[],
): Plan {
  const exercises = program.work.map((work) =>
    work.kind === 'lift'
      ? planLift(work, athlete, equipment, singles, coefficients, catalogue)
      : work.kind === 'hold'
        ? planHold(work, athlete, catalogue)
        : planIsokinetic(work, athlete),
  );
  const { weeks, sessionsPerWeek, progress, deloads } = program;
  const block = { weeks, sessionsPerWeek, progress, deloads };
  return { block: { ...block, exercises: exercises.map(({ exercise }) => exercise) }, exercises };
}

function planLift(
  work: WrittenLift,
  athlete: Athlete,
  equipment: Equipment,
  singles: readonly MeasuredSingle[],
  coefficients: Coefficients,
  catalogue: readonly Lift[],
): PlannedExercise {
  const lift = liftNamed(work.lift, catalogue);
  const rig = rigOf(work, equipment);
  const range: Range = { lift, from: work.from, to: work.to, ...(rig ? { rig } : {}) };
  const [predicted] = heaviestSingles(athlete, [range], untrainedState(athlete), coefficients);
  if (!predicted) throw new Error('one range asked for, none answered');
  const measured = singles.find((single) => isTestedRange(single, work, lift));
  const heaviest = measured?.best ?? predicted.load;
  const { sets, reps, tempo } = work;
  const load = loadOf(work.load, heaviest, reps);
  const strength = liftFactor(athlete, lift.name, range.to);
  const used = rigUse(range, athlete.body, { first: load, heaviest });
  const added = used ? { rigUse: used } : {};
  const common = { kind: 'lift', range, load, heaviest, sets, reps, tempo } as const;
  const tested = measured !== undefined;
  if (work.lowerOnly) {
    const lowering = planLowering(range, athlete, load, strength);
    const exercise = { ...common, heaviest: lowering.heaviest, lowerOnly: true } as const;
    const shared = sharedWhileLowering(range, athlete, lowering, strength);
    const { samples } = lowering;
    const limited = strength * loweringLimit;
    const told = { samples, strength: limited, lowering, tested, ...added };
    return { exercise, heaviest: predicted, ...told, ...optionalShare(shared) };
  }
  const lowered = work.loweringLoad && loweringLoadOf(work.loweringLoad, load);
  const lowering =
    lowered === undefined ? undefined : planLowering(range, athlete, lowered, strength);
  const samples = samplesOf(range, athlete.body, restingCapacity(athlete), load, strength);
  const shared = sharedAtHardest(range, athlete, load, strength);
  const weak = heaviest > 0 ? undefined : bodyTooHeavy(range, athlete);
  return {
    exercise: { ...common, ...(lowering ? { lowering } : {}) },
    heaviest: predicted,
    samples,
    strength,
    ...(lowering ? { lowering } : {}),
    ...optionalShare(shared),
    ...(weak ? { weak } : {}),
    ...added,

    tested,
  };
}

const optionalShare = (shared: SharedPosture | undefined) => (shared ? { shared } : {});

/** The shared posture of the part that is lowered under control. */
function sharedWhileLowering(
  range: Range,
  athlete: Athlete,
  { load, samples }: PlannedLowering,
  strength: number,
): SharedPosture | undefined {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  if (!first || !last) return undefined;
  const controlled = { ...range, from: first.leading, to: last.leading };
  return sharedAtHardest(controlled, athlete, load, strength * loweringLimit);
}

function planIsokinetic(work: WrittenIsokinetic, athlete: Athlete): PlannedExercise {
  const { action, from, to, speed, ways, effort, sets, reps } = work;
  if (!isAction(action)) throw new Error(`no action "${action}"`);
  const exercise = {
    kind: 'isokinetic',
    action,
    from,
    to,
    speed,
    ways,
    effort,
    sets,
    reps,
  } as const;
  const moving = bestWhileMoving(exercise, restingCapacity(athlete));
  return { exercise, moving, samples: [], tested: false };
}
