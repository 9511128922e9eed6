import type { ResistanceTable } from '../mechanics/demand.ts';
import type { Lift } from '../mechanics/lift.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';
import { isAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { lifts } from '../tables/lifts.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { type Exercise, type Sample, samplesOf } from './exercise.ts';
import {
  demandsOver,
  effortsOf,
  hardest,
  heaviestLoad,
  type Range,
  stickingPoint,
} from './heaviestLoad.ts';
import { type LoadRule, loadOf } from './load.ts';
import { type SharedLoad, sharedLoad } from './sharing.ts';
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

/** A single the athlete has really lifted: range end in radians, kg. */
export interface MeasuredSingle {
  readonly lift: string;
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
  /** For a hold of a lift: whether a load was found that asks the effort. */
  readonly holdLoad?: 'found' | 'unbalanced' | 'nothing asked';
  /**
   * Where the body's own weight is already too much: the worst angle, and the first and last angle
   * of the range that can still be held, radians; the latter missing if none can.
   */
  readonly weak?: { readonly at: number; readonly held?: readonly [number, number] };
  /** How muscles share the hardest posture of the first week; only for lifts. */
  readonly shared?: {
    readonly at: number;
    /** What the joints of the heaviest single give together over what each gives alone. */
    readonly together: number;
    readonly efforts: SharedLoad['efforts'];
  };
  /** True when the range's own tested single was used for the load. */
  readonly tested: boolean;
}

export interface Plan {
  readonly block: Block;
  readonly exercises: readonly PlannedExercise[];
}

/** The lift of a name; the names were checked when the file was read. */
export function liftNamed(name: string): Lift {
  const lift = lifts.find((entry) => entry.name === name);
  if (!lift) throw new Error(`no lift "${name}" in the catalogue`);
  return lift;
}

/** Where the range of a tested single begins, radians: straight, or the first angle of the lift. */
export function firstAngle(lift: Lift): number {
  return Math.max((lift.rangeDeg[0] * Math.PI) / 180, 0);
}

/**
 * Turns a written program into a block with loads in kilograms.
 *
 * A share, a repetition maximum or a reserve refers to the heaviest single of the same lift over
 * the same range: the tested one if there is a test to the same angle (within a degree), else the
 * one the model predicts.
 */
export function planProgram(
  program: WrittenProgram,
  athlete: Athlete,
  machines: Readonly<Record<string, WrittenMachine>>,
  singles: readonly MeasuredSingle[],
  coefficients: Coefficients,
): Plan {
  const exercises = program.work.map((work) =>
    work.kind === 'hold'
      ? planHold(work, athlete)
      : planLift(work, athlete, machines, singles, coefficients),
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
): PlannedExercise {
  const lift = liftNamed(work.lift);
  const machine = work.machine === undefined ? undefined : machines[work.machine];
  const range: Range = {
    lift,
    from: work.from,
    to: work.to,
    ...(machine ? { machine: resistanceOf(machine) } : {}),
  };
  const [predicted] = heaviestSingles(athlete, [range], untrainedState(athlete), coefficients);
  if (!predicted) throw new Error('one range asked for, none answered');
  const measured = singles.find(
    (single) => single.lift === work.lift && Math.abs(single.to - work.to) < Math.PI / 180,
  );
  const heaviest = measured?.best ?? predicted.load;
  const { sets, reps, tempo } = work;
  const load = loadOf(work.load, heaviest, reps);
  const strength = liftFactor(athlete, lift.name, range.to);
  const capacity = restingCapacity(athlete);
  const samples = samplesOf(range, athlete.body, capacity, load, strength);
  return {
    exercise: { kind: 'lift', range, load, heaviest, sets, reps, tempo },
    heaviest: predicted,
    samples,
    ...sharedAtHardest(range, athlete, { first: load, heaviest }, strength),
    ...(heaviest > 0 ? {} : bodyTooHeavy(range, athlete)),
    tested: measured !== undefined,
  };
}

/**
 * How the muscles share the hardest posture of the first week.
 *
 * Muscles over two joints pull against each other, so the joints together give less than one by
 * one. The heaviest single is known to be possible: strength is raised until it just is, and the
 * loss is told.
 */
function sharedAtHardest(
  range: Range,
  athlete: Athlete,
  loads: { readonly first: number; readonly heaviest: number },
  strength: number,
): Pick<PlannedExercise, 'shared'> {
  const capacity = restingCapacity(athlete);
  const askedAt = (load: number) => {
    const at = stickingPoint(range, athlete.body, capacity, load).angle;
    const found = demandsOver(range, athlete.body, load).find(({ leading }) => leading === at);
    return found && !('impossible' in found.asked) ? { at, asked: found.asked } : undefined;
  };
  const [single, first] = [askedAt(loads.heaviest), askedAt(loads.first)];
  const together = single && sharedLoad(single.asked, capacity, strength)?.multiple;
  if (!first || !together) return {};
  const load = sharedLoad(first.asked, capacity, strength / Math.min(together, 1));
  return load
    ? { shared: { at: first.at, together: Math.min(together, 1), efforts: load.efforts } }
    : {};
}

/** Where a range cannot be held with no load at all, and where it can. */
function bodyTooHeavy(range: Range, athlete: Athlete): Pick<PlannedExercise, 'weak'> {
  const capacity = restingCapacity(athlete);
  const strength = liftFactor(athlete, range.lift.name, range.to);
  const worst = stickingPoint(range, athlete.body, capacity, 0);
  if (!Number.isFinite(worst.effort)) return {};
  const held = demandsOver(range, athlete.body, 0).filter(
    ({ asked }) =>
      !('impossible' in asked) && (hardest(effortsOf(asked, capacity, strength))?.effort ?? 0) <= 1,
  );
  const [first, last] = [held[0]?.leading, held[held.length - 1]?.leading];
  const ends = first === undefined || last === undefined ? {} : { held: [first, last] as const };
  return { weak: { at: worst.angle, ...ends } };
}

function planHold(work: WrittenHold, athlete: Athlete): PlannedExercise {
  const { at, effort, sets, reps, seconds } = work;
  const common = { kind: 'hold', at, effort, sets, reps, seconds } as const;
  if (isAction(work.of))
    return { exercise: { ...common, of: { action: work.of } }, samples: [], tested: false };
  const range = { lift: liftNamed(work.of), from: at, to: at };
  const load = heaviestLoad(range, athlete.body, restingCapacity(athlete), effort);
  const { effort: reached } = stickingPoint(range, athlete.body, restingCapacity(athlete), load);
  // More than asked is fine: the body's own weight may be enough.
  const isFound = Number.isFinite(reached) && reached > effort - 0.01;
  const holdLoad = isFound ? 'found' : Number.isFinite(reached) ? 'nothing asked' : 'unbalanced';
  return { exercise: { ...common, of: { range } }, samples: [], holdLoad, tested: false };
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
