import type { Scenario, Work } from '../notebook/scenario.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import { actions, type jointWords } from '../tables/actions.ts';
import { degrees, listInWords, rangeDegrees } from './words.ts';

/** What the lines of a program say alike of every kind of work. */

/** Where work is done, "0–110°", its far end also as the file writes it where that differs. */
export function whereDone(
  work: Work,
  planned: PlannedExercise,
  scenario: Pick<Scenario, 'convention'>,
): string {
  const [text, end] =
    work.kind === 'hold'
      ? [degrees(work.at), work.at]
      : [rangeDegrees(work.from, work.to), work.to];
  return `${text}${asWritten(end, planned, scenario)}`;
}

/** An angle as the file writes it, in brackets, where that differs from flexion. */
export function asWritten(
  angle: number,
  planned: PlannedExercise,
  { convention }: Pick<Scenario, 'convention'>,
): string {
  const differs = convention === 'included' && turned.has(jointOf(planned));
  return differs ? ` (${degrees(Math.PI - angle)} included)` : '';
}

/** What follows the repetitions of work that is done with one side and then the other. */
export const eachSide = (planned: PlannedExercise) => (planned.oneSided ? ' each side' : '');

/** Joints that the included convention turns round. */
const turned: ReadonlySet<string> = new Set(['knee', 'hip', 'elbow']);

/** Joint whose angles the work is written in. */
export function jointOf({ exercise }: PlannedExercise): keyof typeof jointWords {
  if (exercise.kind === 'lift') return exercise.range.lift.leading;
  if (exercise.kind === 'isokinetic') return actions[exercise.action].joint;
  return 'action' in exercise.of
    ? actions[exercise.of.action].joint
    : exercise.of.range.lift.leading;
}

/** What usual values stand for, in brackets. */
export function usualValues({ assumed = [] }: Work): string {
  return assumed.length > 0 ? ` (${listInWords(assumed)} not written: usual values taken)` : '';
}
