import type { LiftWork, Scenario } from '../notebook/scenario.ts';
import type { Control } from '../physiology/planLowering.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import { actions, jointWords } from '../tables/actions.ts';
import { loweringStrength } from '../tables/movingStrength.ts';
import { heightSentences } from './heightWords.ts';
import { feltSentence, isRubberEstimate, rigClause } from './rigWords.ts';
import { capital, degrees, kilograms, percent } from './words.ts';
import { jointOf, usualValues, whereDone } from './workWords.ts';

/** The line of a lift: its dose, how heavy it is and what that was taken from. */
export function liftLine(work: LiftWork, planned: PlannedExercise, scenario: Scenario): string {
  const head = `${capital(work.lift)} ${whereDone(work, planned, scenario)}`;
  const rig = rigClause(work);
  const felt = feltSentence(planned, isRubberEstimate(work, scenario));
  const heights = heightSentences(work, jointOf(planned));
  return work.lowerOnly
    ? `${head}, lowered only: ${loweredDose(work)}${loweredLoad(planned, rig, felt)}${heights}`
    : `${head}: ${liftedDose(work)}${liftedLoad(planned, rig, felt)}${heights}${unsure(planned)}`;
}

function liftedDose(work: LiftWork): string {
  const tempo = `tempo ${work.tempo.join('-')}`;
  return `${work.sets} × ${work.reps}, ${tempo}, rest ${work.rest} s${usualValues(work)}`;
}

function loweredDose(work: LiftWork): string {
  const [down, pause, up] = work.tempo;
  const held = pause > 0 ? `, ${pause} s held at the low end` : '';
  return `${work.sets} × ${work.reps}, ${down} s down${held}, ${up} s to be brought up, rest ${work.rest} s${usualValues(work)}`;
}

function liftedLoad(planned: PlannedExercise, rig: string, felt: string): string {
  const { exercise, heaviest: single, lowering } = planned;
  if (exercise.kind !== 'lift' || !single) return '.';
  const { load, heaviest } = exercise;
  const alike = rig === '' ? '' : ' with the same on';
  const lowered = lowering
    ? ` Lowered with ${kilograms(lowering.load)}; the most under control is ${roughly(lowering.heaviest)}.`
    : '';
  const weight = load === 0 ? 'with the body alone' : `with ${kilograms(load)}`;
  return ` ${weight}${rig}, ${overSingle(planned, load, heaviest, alike)}.${felt} The heaviest single would be lost at ${degrees(single.at.angle)}, by the ${actions[single.at.action].muscles}.${lowered}`;
}

/** The load over the heaviest single: by kilograms, or by all that is asked where the body counts. */
function overSingle(
  planned: PlannedExercise,
  load: number,
  heaviest: number,
  alike: string,
): string {
  const { wholeShare } = planned;
  if (wholeShare === undefined)
    return `${load === 0 ? 'none' : percent(load / heaviest)} of the heaviest single over this range${alike} (${kilograms(heaviest)}, ${howKnown(planned)})`;
  const single = heaviest > 0 ? `${kilograms(heaviest)} added` : 'the body alone';
  return `${percent(wholeShare)} of what the heaviest single over this range${alike} asks, body included (${single}, ${howKnown(planned)}); how often it can be lifted is read from that share`;
}

function loweredLoad(planned: PlannedExercise, rig: string, felt: string): string {
  const { lowering, heaviest: single } = planned;
  if (!lowering || !single) return '.';
  const { load, heaviest, control } = lowering;
  if (load === 0) return `, with the body alone${rig}.${felt} ${underControl(control, planned)}`;
  const share =
    single.load > 0
      ? ` (the heaviest single over this range is ${kilograms(single.load)}, ${howKnown(planned)})`
      : '';
  return `, with ${kilograms(load)}${rig}${share}.${felt} The most under control is ${roughly(heaviest)}.`;
}

const howKnown = ({ tested }: PlannedExercise) => (tested ? 'tested' : 'predicted, not tested');

/** To five kilograms: strength while lowering is not known better than by a seventh. */
const roughly = (mass: number) => `about ${kilograms(5 * Math.floor(mass / 5))}`;

/** How far the body is lowered under control, with the doubt about strength while lowering. */
function underControl(control: Control, planned: PlannedExercise): string {
  if (control.state !== 'lost') return 'It stays under control over the whole range.';
  const { name, motion } = jointWords[jointOf(planned)];
  const { value, spread } = loweringStrength;
  const [weak, strong] = control.between;
  return `It is lowered under control to about ${degrees(control.at)} of ${name} ${motion} (${degrees(weak)} or ${degrees(strong)} if strength while lowering is ${(value - spread).toFixed(1)} or ${(value + spread).toFixed(1)} of that in a hold); beyond that it drops, and only the way before counts.`;
}

/** Below this knee angle (rad) the strength table is continued by eye: 20 degrees. */
const nearStraight = 0.36;

/** Loads that rest on thin ground. */
function unsure({ exercise, heaviest, wholeShare }: PlannedExercise): string {
  if (exercise.kind !== 'lift' || !heaviest) return '';
  if (heaviest.at.action === 'knee extension' && heaviest.at.angle < nearStraight)
    return ' So near straight, strength is little known: treat this load as a guess and enter your own in kg.';
  const { load, range } = exercise;
  const isUnderBar = range.lift.support === 'feet' && wholeShare === undefined && load > 0;
  if (isUnderBar && load < 20)
    return ' That is less than an empty bar: test the lift before planning it.';
  return '';
}
