import type { ResistanceTable } from '../mechanics/demand.ts';
import type { Lift } from '../mechanics/lift.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';
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
import { heaviestLoad, type Range, stickingPoint } from './heaviestLoad.ts';
import { type LoadRule, loadOf } from './load.ts';
import {
  type HeaviestSingle,
  heaviestSingles,
  restingCapacity,
  untrainedState,
} from './trainedState.ts';
import type { Block } from './training.ts';

/** A lift of a program as the coach wrote it; angles in radians, names of the catalogue. */
export interface WrittenLift {
  readonly kind: 'lift';
  readonly lift: string;
  readonly from: number;
  readonly to: number;
  readonly load: LoadRule;
  readonly sets: number;
  readonly reps: number;
  readonly tempo: readonly [number, number, number];
  readonly machine?: string;
}

/** A hold as the coach wrote it: of an action or of a lift by name. */
export interface WrittenHold {
  readonly kind: 'hold';
  readonly of: string;
  readonly at: number;
  readonly effort: number;
  readonly sets: number;
  readonly reps: number;
  readonly seconds: number;
}

export interface WrittenProgram extends Omit<Block, 'exercises'> {
  readonly work: readonly (WrittenLift | WrittenHold)[];
}

/** A machine as measured: torques (N·m) by angle (rad) with one load (kg). */
export interface WrittenMachine {
  readonly load: number;
  readonly points: readonly { readonly angle: number; readonly torque: number }[];
}

/** A single the athlete has really lifted: range in radians, by default from its first angle; kg. */
export interface MeasuredSingle {
  readonly lift: string;
  readonly from?: number;
  readonly to: number;
  readonly best: number;
}

/** The load of a held lift, kg, and the effort it asks; more than wanted if the body alone asks it. */
export interface HeldLoad {
  readonly load: number;
  readonly effort: number;
  readonly state: 'found' | 'unbalanced' | 'nothing asked' | 'too heavy';
}

/** An exercise with what its load was taken from. */
export interface PlannedExercise {
  readonly exercise: Exercise;
  /** Heaviest single of its range by the model; only for lifts. */
  readonly heaviest?: HeaviestSingle;
  /** Efforts along the range with the first week's load, fresh; only for lifts. */
  readonly samples: readonly Sample[];
  /** For a hold of a lift: the load that asks the effort, or as near as comes. */
  readonly hold?: HeldLoad;
  /** Where the body's own weight is already too much, if it is. */
  readonly weak?: TooHeavyBody;
  /** How muscles share the hardest posture of the first week; only for lifts. */
  readonly shared?: SharedPosture;
  /** True when the range's own tested single was used for the load. */
  readonly tested: boolean;
}

export interface Plan {
  readonly block: Block;
  readonly exercises: readonly PlannedExercise[];
}

/** Where the range of a tested single begins, radians: the first angle of the lift. */
export function firstAngle(lift: Lift): number {
  return (lift.rangeDeg[0] * Math.PI) / 180;
}

/** Whether a program's range is the one a single was tested over: ends within 1° and 10°. */
function isTestedRange(single: MeasuredSingle, work: WrittenLift, lift: Lift): boolean {
  const degree = Math.PI / 180;
  return (
    single.lift === work.lift &&
    Math.abs(single.to - work.to) < degree &&
    Math.abs((single.from ?? firstAngle(lift)) - work.from) < 10 * degree
  );
}

/**
 * Turns a written program into a block with loads in kilograms.
 *
 * A share, a repetition maximum or a reserve refers to the heaviest single of the same lift over
 * the same range: the tested one if there is a test over it, else the one the model predicts.
 *
 * @param catalogue the lifts that work may name
 */
export function planProgram(
  program: WrittenProgram,
  athlete: Athlete,
  machines: Readonly<Record<string, WrittenMachine>>,
  singles: readonly MeasuredSingle[],
  coefficients: Coefficients,
  catalogue: readonly Lift[],
): Plan {
  const exercises = program.work.map((work) =>
    work.kind === 'hold'
      ? planHold(work, athlete, catalogue)
      : planLift(work, athlete, machines, singles, coefficients, catalogue),
  );
  const { weeks, sessionsPerWeek, progress, deloads } = program;
  const block = { weeks, sessionsPerWeek, progress, deloads };
  return { block: { ...block, exercises: exercises.map(({ exercise }) => exercise) }, exercises };
}

function planLift(
  work: WrittenLift,
  athlete: Athlete,
  machines: Readonly<Record<string, WrittenMachine>>,
  singles: readonly MeasuredSingle[],
  coefficients: Coefficients,
  catalogue: readonly Lift[],
): PlannedExercise {
  const lift = liftNamed(work.lift, catalogue);
  const machine = work.machine === undefined ? undefined : machines[work.machine];
  const range: Range = {
    lift,
    from: work.from,
    to: work.to,
    ...(machine ? { machine: resistanceOf(machine) } : {}),
  };
  const [predicted] = heaviestSingles(athlete, [range], untrainedState(athlete), coefficients);
  if (!predicted) throw new Error('one range asked for, none answered');
  const measured = singles.find((single) => isTestedRange(single, work, lift));
  const heaviest = measured?.best ?? predicted.load;
  const { sets, reps, tempo } = work;
  const load = loadOf(work.load, heaviest, reps);
  const strength = liftFactor(athlete, lift.name, range.to);
  const capacity = restingCapacity(athlete);
  const samples = samplesOf(range, athlete.body, capacity, load, strength);
  const shared = sharedAtHardest(range, athlete, { first: load, heaviest }, strength);
  const weak = heaviest > 0 ? undefined : bodyTooHeavy(range, athlete);
  return {
    exercise: { kind: 'lift', range, load, heaviest, sets, reps, tempo },
    heaviest: predicted,
    samples,
    ...(shared ? { shared } : {}),
    ...(weak ? { weak } : {}),
    tested: measured !== undefined,
  };
}

function planHold(
  work: WrittenHold,
  athlete: Athlete,
  catalogue: readonly Lift[],
): PlannedExercise {
  const { at, effort, sets, reps, seconds } = work;
  const common = { kind: 'hold', at, effort, sets, reps, seconds } as const;
  if (isAction(work.of))
    return { exercise: { ...common, of: { action: work.of } }, samples: [], tested: false };
  const lift = liftNamed(work.of, catalogue);
  const range = { lift, from: at, to: at };
  const strength = liftFactor(athlete, lift.name, at);
  const capacity = restingCapacity(athlete);
  const load = heaviestLoad(range, athlete.body, capacity, effort * strength);
  const reached = stickingPoint(range, athlete.body, capacity, load).effort / strength;
  return {
    exercise: { ...common, of: { range, load } },
    samples: [],
    hold: { load, effort: reached, state: holdState(reached, effort) },
    tested: false,
  };
}

function holdState(reached: number, wanted: number): HeldLoad['state'] {
  if (!Number.isFinite(reached)) return 'unbalanced';
  if (reached > 1.001) return 'too heavy';
  return reached > wanted - 0.01 ? 'found' : 'nothing asked';
}

function resistanceOf(machine: WrittenMachine): ResistanceTable {
  const points = [...machine.points].sort((a, b) => a.angle - b.angle);
  return {
    load: machine.load,
    torqueAt: piecewiseLinear(
      points.map(({ angle }) => angle),
      points.map(({ torque }) => torque),
    ),
  };
}
