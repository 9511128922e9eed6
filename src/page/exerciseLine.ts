import type { HoldWork, IsokineticWork, Work } from '../notebook/scenario.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { Results } from '../run.ts';
import { isAction } from '../tables/actions.ts';
import { heightSentences } from './heightWords.ts';
import { liftLine } from './liftLine.ts';
import {
  degrees,
  kilograms,
  listInWords,
  newtonMetres,
  newtons,
  percent,
  plural,
} from './words.ts';
import { eachSide, jointOf, usualValues, whereDone } from './workWords.ts';

/** One line of a program: what is done, how heavy it is and what that was taken from. */
export function exerciseLine(work: Work, planned: PlannedExercise, results: Results): string {
  if (work.kind === 'hold') return holdLine(work, planned, results);
  if (work.kind === 'isokinetic') return isokineticLine(work, planned, results);
  return liftLine(work, planned, results.scenario);
}

function holdLine(work: HoldWork, planned: PlannedExercise, results: Results): string {
  const what = work.against === undefined ? `Hold ${work.of}` : `Push the ${work.of} against pins`;
  const at = whereDone(work, planned, results.scenario);
  const against = planned.hold ? heldAgainst(work, planned.hold) : bestThere(work, results);
  const dose = `${plural(work.sets, 'set')} of ${work.reps} × ${work.seconds} s${eachSide(planned)}${usualValues(work)}`;
  return `${what} at ${at}, ${percent(work.effort)} effort${against}: ${dose}.${heightSentences(work, jointOf(planned))}`;
}

/** What is held or pushed, in brackets. */
function heldAgainst(work: HoldWork, held: NonNullable<PlannedExercise['hold']>): string {
  const what =
    work.against === undefined
      ? `with about ${kilograms(held.load)}`
      : `push up with about ${newtons(held.push)}, ${kilograms(Math.round(held.load))}`;
  const more =
    held.effort > work.effort + 0.01
      ? `; the body’s own weight alone makes it ${percent(held.effort)}`
      : '';
  return ` (${what}${more})`;
}

function bestThere(work: HoldWork, { athlete, anglesDeg }: Results): string {
  const index = anglesDeg.findIndex((deg) => deg >= toDegrees(work.at) - 1e-9);
  const best = isAction(work.of) ? athlete.groups[work.of].torque[index] : undefined;
  return best === undefined ? '' : ` (best there about ${newtonMetres(best)})`;
}

function isokineticLine(work: IsokineticWork, planned: PlannedExercise, results: Results): string {
  const { moving = [] } = planned;
  const best = listInWords(moving.map(({ way, torque }) => `${newtonMetres(torque)} ${way}`));
  const range = whereDone(work, planned, results.scenario);
  return `Isokinetic ${work.action} ${range} at ${degrees(work.speed)}/s, ${listInWords(work.ways)}, ${percent(work.effort)} effort (best there about ${best}): ${plural(work.sets, 'set')} of ${work.reps}${usualValues(work)}.`;
}
