import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult } from '../run.ts';

/** A program's exercises, but of lifts done again with the same range and load, as in a later phase, only the first. */
export function distinctLifts({ plan }: ProgramResult): readonly PlannedExercise[] {
  const seen = new Set<string>();
  return plan.exercises.filter(({ exercise, rigUse }) => {
    if (exercise.kind !== 'lift' || rigUse) return true;
    const { range, load, lowerOnly, lowering } = exercise;
    const { lift, from, to } = range;
    const key = JSON.stringify([lift.name, from, to, load, lowerOnly, lowering]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
