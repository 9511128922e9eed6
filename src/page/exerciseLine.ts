import type { HoldWork, IsokineticWork, LiftWork, Work } from '../notebook/scenario.ts';
import type { Control } from '../physiology/planLowering.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { Results } from '../run.ts';
import { actions, isAction, jointWords } from '../tables/actions.ts';
import { barLifts, emptyBar } from '../tables/barLifts.ts';
import { notModelled } from '../tables/partlyModelled.ts';
import { loweringStrength } from '../tables/strength.ts';
import { heightSentences } from './heightWords.ts';
import { angleOf, liftOver } from './jointAngles.ts';
import { oneSided } from './oneSided.ts';
import { feltSentence, isRubberEstimate, rigClause } from './rigWords.ts';
import {
  degrees,
  kilograms,
  listInWords,
  newtonMetres,
  newtons,
  percent,
  plural,
  rangeDegrees,
} from './words.ts';

/** One line of a program: what is done, how heavy it is and what that was taken from. */
export function exerciseLine(work: Work, planned: PlannedExercise, results: Results): string {
  if (work.kind === 'hold') return holdLine(work, planned, results);
  if (work.kind === 'isokinetic') return isokineticLine(work, planned, results);
  return work.lowerOnly
    ? loweredLine(work, planned, results)
    : liftLine(work, planned, results.scenario);
}

const eachSide = (planned: PlannedExercise) => (oneSided(planned) ? ' each side' : '');

/** What usual values stand for, in brackets. */
function filled({ assumed = [] }: Work): string {
  return assumed.length > 0 ? ` (${listInWords(assumed)} not written: usual values taken)` : '';
}

function holdLine(work: HoldWork, planned: PlannedExercise, results: Results): string {
  const { athlete, anglesDeg, scenario } = results;
  const index = anglesDeg.findIndex((deg) => deg >= (work.at * 180) / Math.PI - 1e-9);
  const best = isAction(work.of) ? athlete.groups[work.of].torque[index] : undefined;
  const held = planned.hold;
  const asked = held
    ? ` (${heldAgainst(work, held)}${held.effort > work.effort + 0.01 ? `; the body’s own weight alone makes it ${percent(held.effort)}` : ''})`
    : best === undefined
      ? ''
      : ` (best there about ${newtonMetres(best)})`;
  const what = work.against === undefined ? `Hold ${work.of}` : `Push the ${work.of} against pins`;
  const heights = heightSentences(work, jointOf(planned));
  return `${what} at ${degrees(work.at)}${asWritten(work.at, planned, scenario)}, ${percent(work.effort)} effort${asked}: ${plural(work.sets, 'set')} of ${work.reps} × ${work.seconds} s${eachSide(planned)}${filled(work)}.${heights}`;
}

function heldAgainst(work: HoldWork, held: NonNullable<PlannedExercise['hold']>): string {
  return work.against === undefined
    ? `with about ${kilograms(held.load)}`
    : `push up with about ${newtons(held.push)}, ${kilograms(Math.round(held.load))}`;
}

function isokineticLine(work: IsokineticWork, planned: PlannedExercise, results: Results): string {
  const { moving = [] } = planned;
  const best = listInWords(moving.map(({ way, torque }) => `${newtonMetres(torque)} ${way}`));
  const range = `${rangeDegrees(work.from, work.to)}${asWritten(work.to, planned, results.scenario)}`;
  return `Isokinetic ${work.action} ${range} at ${degrees(work.speed)}/s, ${listInWords(work.ways)}, ${percent(work.effort)} effort (best there about ${best}): ${plural(work.sets, 'set')} of ${work.reps}${filled(work)}.`;
}

function liftLine(work: LiftWork, planned: PlannedExercise, scenario: Results['scenario']): string {
  const dose = `${work.sets} × ${work.reps}${eachSide(planned)}, tempo ${work.tempo.join('-')}, rest ${work.rest} s${filled(work)}`;
  if (planned.exercise.kind !== 'lift' || !planned.heaviest) return `${work.lift}: ${dose}.`;
  const { load, heaviest, range } = planned.exercise;
  const head = `${liftOver(range.lift, work.from, work.to)}${asWritten(work.to, planned, scenario)}`;
  const known = planned.tested ? 'tested' : 'predicted, not tested';
  const { at } = planned.heaviest;
  const { lowering } = planned;
  const rig = rigClause(work);
  const alike = rig === '' ? '' : ' with the same on';
  const felt = feltSentence(planned, isRubberEstimate(work, scenario));
  const lowered = lowering
    ? ` Lowered with ${kilograms(lowering.load)}; the most under control is ${roughly(lowering.heaviest)}.`
    : '';
  return `${head}: ${dose} with ${kilograms(load)}${rig}, ${percent(load / heaviest)} of the heaviest single over this range${alike} (${kilograms(heaviest)}, ${known}).${felt} The heaviest single would be lost at ${angleOf(range.lift, at.angle)}, by the ${actions[at.action].muscles}.${lowered}${heightSentences(work, jointOf(planned))}${unsure(planned)}${beyondTheModel(work, planned)}${lighterThanBar(work, planned)}`;
}

function loweredLine(work: LiftWork, planned: PlannedExercise, { scenario }: Results): string {
  const { lowering, heaviest: single, exercise } = planned;
  if (exercise.kind !== 'lift') return '';
  const over = liftOver(exercise.range.lift, work.from, work.to);
  const range = `${over}${asWritten(work.to, planned, scenario)}`;
  const [down, pause, up] = work.tempo;
  const held = pause > 0 ? `, ${pause} s held at the low end` : '';
  const dose = `${work.sets} × ${work.reps}${eachSide(planned)}, ${down} s down${held}, ${up} s to be brought up, rest ${work.rest} s${filled(work)}`;
  const heights = heightSentences(work, jointOf(planned));
  const head = `${range}, lowered only: ${dose}`;
  if (!lowering || !single) return `${head}.`;
  const { load, heaviest, control } = lowering;
  const rig = rigClause(work);
  const felt = feltSentence(planned, isRubberEstimate(work, scenario));
  const beyond = beyondTheModel(work, planned);
  if (load === 0)
    return `${head}, with the body alone${rig}.${felt} ${underControl(control, planned)}${heights}${beyond}`;
  const share =
    single.load > 0
      ? ` (the heaviest single over this range is ${kilograms(single.load)}, ${planned.tested ? 'tested' : 'predicted, not tested'})`
      : '';
  return `${head}, with ${kilograms(load)}${rig}${share}.${felt} The most under control is ${roughly(heaviest)}.${heights}${beyond}${lighterThanBar(work, planned)}`;
}

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

/** Joints that the included convention turns round. */
const turned: ReadonlySet<string> = new Set(['knee', 'hip', 'elbow']);

/** The far end as the file writes it, where that differs from flexion. */
function asWritten(
  angle: number,
  planned: PlannedExercise,
  { convention }: Results['scenario'],
): string {
  const differs = convention === 'included' && turned.has(jointOf(planned));
  return differs ? ` (${degrees(Math.PI - angle)} included)` : '';
}

function jointOf({ exercise }: PlannedExercise): keyof typeof jointWords {
  if (exercise.kind === 'lift') return exercise.range.lift.leading;
  if (exercise.kind === 'isokinetic') return actions[exercise.action].joint;
  return 'action' in exercise.of
    ? actions[exercise.of.action].joint
    : exercise.of.range.lift.leading;
}

/** Below this knee angle (rad) the strength table is continued by eye: 20 degrees. */
const nearStraight = 0.36;

/** Loads that rest on thin ground. */
function unsure({ exercise, heaviest }: PlannedExercise): string {
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
function lighterThanBar({ lift, load }: LiftWork, { exercise }: PlannedExercise): string {
  if (exercise.kind !== 'lift' || !barLifts.has(lift) || exercise.load >= emptyBar) return '';
  if (load.kind === 'mass' && load.mass === 0) return '';
  return ` ${kilograms(exercise.load)} is less than an empty bar (${kilograms(emptyBar)}): test the lift before planning it.`;
}
