import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult } from '../run.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import { notModelled } from '../tables/partlyModelled.ts';
import { distinctLifts } from './distinctLifts.ts';
import { angleOf } from './jointAngles.ts';
import type { Block } from './report.ts';
import { capital, listInWords, percent } from './words.ts';

/** Muscles named at most, and the effort from which one is named. */
const named = { most: 6, from: 0.1 };

/** From here a muscle is at its limit, and below here the lift itself is not (working values). */
const limit = { muscle: 0.995, lift: 0.95 };

/** How muscles, also those over two joints, share the hardest posture of each lift. */
export function sharingBlocks(program: ProgramResult): Block[] {
  const exercises = distinctLifts(program);
  const items = exercises.flatMap(sharingSentences);
  if (items.length === 0) return [];
  const list: Block = { kind: 'list', items };
  return exercises.some(isFullBeforeLift) ? [list, { kind: 'text', text: leversFirst }] : [list];
}

/** Why a muscle may stand at 100 % in a set that is not: least effort fills the best levers first. */
const leversFirst =
  'Muscles with the best levers are used first: one at 100 % is not yet the limit of the lift, because the others have more to give.';

/** Whether a muscle is named at its limit by a lift that is not at its own. */
function isFullBeforeLift(planned: PlannedExercise): boolean {
  const { exercise, shared } = planned;
  if (exercise.kind !== 'lift' || !shared || isUnnamed(planned)) return false;
  const isFull = shared.efforts.some(({ effort }) => effort >= limit.muscle);
  return isFull && exercise.load < limit.lift * exercise.heaviest;
}

function sharingSentences(planned: PlannedExercise): string[] {
  const { exercise, shared } = planned;
  if (exercise.kind !== 'lift' || !shared) return [];
  const { lift } = exercise.range;
  const head = `${capital(lift.name)} at ${angleOf(lift, shared.at)}`;
  const shoulder = 'the chest and shoulder muscles';
  if (isUnnamed(planned))
    return [
      `${head}: ${notModelled(lift.name) ?? `${shoulder} that carry most of it`} are not in the muscle tables, so no single muscles are named.`,
    ];
  const working = shared.efforts.filter(({ effort }) => effort >= named.from).slice(0, named.most);
  if (working.length === 0) return [];
  const list = listInWords(working.map(({ muscle, effort }) => `${muscle} ${percent(effort)}`));
  const besides =
    shoulderEffort(planned) >= named.from
      ? ` ${capital(shoulder)} work too and are not in the muscle tables.`
      : '';
  const tied =
    shared.together < 0.95
      ? ` Muscles over two joints pull against each other here: the joints give ${percent(1 - shared.together)} less together than one by one.`
      : '';
  return [
    `${head}: carried with the least total effort by ${list} (of what each can give).${besides}${tied}`,
  ];
}

/** Effort of each action in the posture that is shared out. */
function effortOf({ samples, shared }: PlannedExercise): (action: ActionName) => number {
  const posture = samples.find(({ leading }) => leading === shared?.at);
  return (action) => posture?.effort[action] ?? 0;
}

const ofTheShoulder = actionNames.filter((name) => actions[name].joint.startsWith('shoulder'));

/** Effort of the shoulder, whose muscles are known as groups only. */
const shoulderEffort = (planned: PlannedExercise) =>
  Math.max(...ofTheShoulder.map(effortOf(planned)));

/** Whether most of a lift is carried by muscles that are not in the tables one by one. */
function isUnnamed(planned: PlannedExercise): boolean {
  const { exercise } = planned;
  if (exercise.kind !== 'lift') return false;
  const { name, leading } = exercise.range.lift;
  if (notModelled(name) !== undefined || leading.startsWith('shoulder')) return true;
  return shoulderEffort(planned) >= Math.max(...actionNames.map(effortOf(planned)), named.from);
}
