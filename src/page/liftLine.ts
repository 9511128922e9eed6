import type { LiftWork, Scenario } from '../notebook/scenario.ts';
import type { Control } from '../physiology/planLowering.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import { actions, jointWords } from '../tables/actions.ts';
import { barLifts, emptyBar } from '../tables/barLifts.ts';
import { loweringStrength } from '../tables/movingStrength.ts';
import { notModelled } from '../tables/partlyModelled.ts';
import { heightSentences } from './heightWords.ts';
import { angleOf, liftOver } from './jointAngles.ts';
import { feltSentence, isRubberEstimate, rigClause } from './rigWords.ts';
import { degrees, kilograms, percent } from './words.ts';
import { asWritten, eachSide, jointOf, usualValues } from './workWords.ts';

/** The line of a lift: its dose, how heavy it is and what that was taken from. */
export function liftLine(work: LiftWork, planned: PlannedExercise, scenario: Scenario): string {
  if (planned.exercise.kind !== 'lift') return '';
  const over = liftOver(planned.exercise.range.lift, work.from, work.to);
  const head = `${over}${asWritten(work.to, planned, scenario)}`;
  const rig = rigClause(work);
  const felt = feltSentence(planned, isRubberEstimate(work, scenario));
  const heights = heightSentences(work, jointOf(planned));
  const doubts = `${beyondTheModel(work, planned)}${lighterThanBar(work, planned)}`;
  return work.lowerOnly
    ? `${head}, lowered only: ${loweredDose(work, planned)}${loweredLoad(planned, rig, felt)}${heights}${doubts}`
    : `${head}: ${liftedDose(work, planned)}${liftedLoad(planned, rig, felt)}${heights}${nearlyStraight(planned)}${doubts}`;
}

function liftedDose(work: LiftWork, planned: PlannedExercise): string {
  const tempo = `tempo ${work.tempo.join('-')}`;
  return `${work.sets} × ${work.reps}${eachSide(planned)}, ${tempo}, rest ${work.rest} s${usualValues(work)}`;
}

function loweredDose(work: LiftWork, planned: PlannedExercise): string {
  const [down, pause, up] = work.tempo;
  const held = pause > 0 ? `, ${pause} s held at the low end` : '';
  return `${work.sets} × ${work.reps}${eachSide(planned)}, ${down} s down${held}, ${up} s to be brought up, rest ${work.rest} s${usualValues(work)}`;
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
  return ` ${weight}${rig}, ${overSingle(planned, load, heaviest, alike)}.${felt} The heaviest single would be lost at ${angleOf(exercise.range.lift, single.at.angle)}, by the ${actions[single.at.action].muscles}.${lowered}`;
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

/** To the kilogram below, as the hint of a load that is too much advises it. */
const roughly = (mass: number) => `about ${kilograms(Math.floor(mass))}`;

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
function nearlyStraight({ exercise, heaviest }: PlannedExercise): string {
  if (exercise.kind !== 'lift' || !heaviest) return '';
  if (heaviest.at.action === 'knee extension' && heaviest.at.angle < nearStraight)
    return ' So near straight, strength is little known: treat this load as a guess and enter your own in kg.';
  return '';
}

/** What the coach must know before trusting a load of a lift that is modelled only in part. */
function beyondTheModel({ lift }: LiftWork, { tested }: PlannedExercise): string {
  const missing = notModelled(lift);
  if (missing === undefined) return '';
  const rest = tested ? 'this load rests on the tested single alone' : 'test it before planning it';
  return ` The model cannot judge this lift, because ${missing} are not in the tables: ${rest}.`;
}

/** A load of a barbell lift that no bar is light enough for; work with the body alone has no bar. */
function lighterThanBar({ lift }: LiftWork, { exercise }: PlannedExercise): string {
  if (exercise.kind !== 'lift' || !barLifts.has(lift)) return '';
  if (exercise.load === 0 || exercise.load >= emptyBar) return '';
  return ` ${kilograms(exercise.load)} is less than an empty bar (${kilograms(emptyBar)}): test the lift before planning it.`;
}
