import type { HoldExercise } from './exercise.ts';
import type { IsokineticExercise } from './isokinetic.ts';
import type { LoadRule, LoweringRule } from './load.ts';
import type { RigNames } from './rigOf.ts';
import type { Block } from './training.ts';

/** A lift of a program as the coach wrote it; angles in radians, names of the catalogue. */
export interface WrittenLift extends RigNames {
  readonly kind: 'lift';
  readonly lift: string;
  readonly from: number;
  readonly to: number;
  readonly load: LoadRule;
  readonly sets: number;
  readonly reps: number;
  readonly tempo: readonly [number, number, number];
  readonly lowerOnly?: true;
  readonly loweringLoad?: LoweringRule;
}

/** A hold as the coach wrote it: of an action or of a lift by name. */
export interface WrittenHold extends Omit<HoldExercise, 'of'> {
  readonly of: string;
}

/** Work at a set speed as the coach wrote it, the action by name. */
export interface WrittenIsokinetic extends Omit<IsokineticExercise, 'action'> {
  readonly action: string;
}

export interface WrittenProgram extends Omit<Block, 'exercises'> {
  readonly work: readonly (WrittenLift | WrittenHold | WrittenIsokinetic)[];
}
