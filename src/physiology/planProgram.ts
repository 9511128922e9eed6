import type { Lift } from '../mechanics/lift.ts';
import { isAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import type { Athlete } from './athlete.ts';
import type { Exercise, Sample } from './exercise.ts';
import type { SharedPosture, TooHeavyBody } from './hardPostures.ts';
import { bestWhileMoving } from './isokinetic.ts';
import type { MeasuredSingle } from './measuredSingle.ts';
import { type HeldLoad, planHold } from './planHold.ts';
import { planLift } from './planLift.ts';
import type { PlannedLowering } from './planLowering.ts';
import type { Equipment } from './rigOf.ts';
import type { RigUse } from './rigUse.ts';
import { type HeaviestSingle, restingCapacity } from './trainedState.ts';
import type { Block } from './training.ts';
import type { WrittenIsokinetic, WrittenProgram } from './writtenProgram.ts';

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
  readonly lowering?: PlannedLowering | undefined;
  /** For work at a set speed: the largest torque in the range in each of its ways, N·m. */
  readonly moving?: ReturnType<typeof bestWhileMoving>;
  /** For a hold of a lift: the load that asks the effort, or as near as comes. */
  readonly hold?: HeldLoad;
  /** Where the body's own weight is already too much, if it is. */
  readonly weak?: TooHeavyBody | undefined;
  /** How muscles share the hardest posture of the first week; only for lifts. */
  readonly shared?: SharedPosture | undefined;
  /** What chains and bands add along the range; only where there are any. */
  readonly rigUse?: RigUse | undefined;
  /**
   * What is asked at the hardest angle over what the heaviest single asks, body included; where
   * repetitions are counted on that.
   */
  readonly wholeShare?: number;
  /** Repetitions that the load was to allow, and those possible with the body alone, if fewer. */
  readonly lessThanBody?: { readonly wanted: number; readonly possible: number };
  /** Whether a set works one side only and is done again with the other. */
  readonly oneSided: boolean;
  /** True when the range's own tested single was used for the load. */
  readonly tested: boolean;
}

export interface Plan {
  readonly block: Block;
  readonly exercises: readonly PlannedExercise[];
}

/**
 * Turns a written program into a block with loads in kilograms. Shares of a single and repetition
 * maxima mean the single before the program, also in a later phase: a coach writes them down then.
 *
 * @param singles tested ones, from which shares of the same range are taken
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
  const setting = { athlete, equipment, singles, coefficients, catalogue };
  const exercises = program.work.map((work) =>
    work.kind === 'lift'
      ? planLift(work, setting)
      : work.kind === 'hold'
        ? planHold(work, athlete, catalogue)
        : planIsokinetic(work, athlete),
  );
  const { weeks, sessionsPerWeek, progress, deloads, phases } = program;
  const block = {
    ...{ weeks, sessionsPerWeek, progress, deloads },
    ...(phases ? { phases } : {}),
    exercises: exercises.map(({ exercise }) => exercise),
  };
  return { block, exercises };
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
  return { exercise, moving, samples: [], oneSided: false, tested: false };
}
