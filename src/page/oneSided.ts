import type { PlannedExercise } from '../physiology/planProgram.ts';

/** Whether a set of an exercise works one side only and is done again with the other. */
export function oneSided({ exercise }: PlannedExercise): boolean {
  if (exercise.kind === 'isokinetic') return false;
  const held = exercise.kind === 'lift' ? exercise : exercise.of;
  return 'range' in held && held.range.lift.sides === 1;
}
