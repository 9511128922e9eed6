import type { Work } from '../notebook/scenario.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult } from '../run.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';

/**
 * How much work a program holds, against what is usual. Where one cut-off stands for much that is
 * only common practice, it is set well above it.
 */

/** From this share of a single, or of a hold's best, a set counts as hard (strength work: ACSM 2009). */
const hardFrom = 0.8;
/** More hard sets of one exercise than this in a session are much for a novice (common practice: 1–3). */
const noviceSession = 4;
/** More sets of one exercise in a week than this are much for a novice (common practice: 6–9). */
const noviceWeek = 12;
/** Sets a week of one muscle group beyond which nothing more is gained (ACSM 2026: about 10 for size). */
const mostSets = 20;
/** Effort from which a set counts for a muscle group (working value). */
const worksFrom = 0.5;
/** Hours a week that no program here needs (working value). */
const mostHours = 10;
/** Effort from which a hold is maximal (working value). */
const maximal = 0.95;

type Placed = readonly [work: Work, planned: PlannedExercise];

/** The work of each phase with its sessions a week; a program without phases is one. */
const phasesOfWork = ({ program, plan, phases }: ProgramResult) =>
  phases.map(({ places, sessionsPerWeek }) => ({
    sessionsPerWeek,
    entries: places.flatMap((i): Placed[] => {
      const [work, planned] = [program.work[i], plan.exercises[i]];
      return work && planned ? [[work, planned]] : [];
    }),
  }));

/** Share of the heaviest, or of a hold's best, that a piece of work asks. */
function share(work: Work, { exercise }: PlannedExercise): number {
  if (work.kind !== 'lift') return work.effort;
  return exercise.kind === 'lift' ? exercise.load / exercise.heaviest : 0;
}

/** Why a program is much for a novice, if it is. */
export function muchForNovice(program: ProgramResult, trained: boolean): string | undefined {
  if (trained) return undefined;
  const isHard = phasesOfWork(program).some(({ entries, sessionsPerWeek }) =>
    entries.some(([work, planned]) => {
      const hard = share(work, planned) >= hardFrom - 1e-9;
      return (hard && work.sets > noviceSession) || work.sets * sessionsPerWeek > noviceWeek;
    }),
  );
  return isHard ? 'it is more than is usual for someone new to training' : undefined;
}

/** Largest effort that a piece of work asks of an action's muscles. Left out: held lifts. */
function effortOf(action: ActionName, [work, { exercise, samples }]: Placed): number {
  if (work.kind === 'isokinetic') return work.action === action ? work.effort : 0;
  if (exercise.kind === 'hold' && 'action' in exercise.of)
    return exercise.of.action === action ? exercise.effort : 0;
  return Math.max(0, ...samples.map(({ effort }) => effort[action] ?? 0));
}

/** Why a program is more than anybody gains from or can recover from, if it is. */
export function absurdVolume(program: ProgramResult): string[] {
  const phases = phasesOfWork(program);
  const setsIn = (action: ActionName, { entries, sessionsPerWeek }: (typeof phases)[number]) =>
    entries.reduce(
      (sum, entry) =>
        effortOf(action, entry) >= worksFrom ? sum + entry[0].sets * sessionsPerWeek : sum,
      0,
    );
  const setsOf = (action: ActionName) => Math.max(...phases.map((phase) => setsIn(action, phase)));
  const [most] = [...actionNames].sort((a, b) => setsOf(b) - setsOf(a));
  const sets = most ? setsOf(most) : 0;
  const hours = program.minutesPerWeek / 60;
  return [
    ...(most && sets > mostSets
      ? [`it has ${sets} sets a week for the ${actions[most].muscles}, where about 10 are usual`]
      : []),
    ...(hours > mostHours ? [`it takes ${hours.toFixed(0)} hours a week`] : []),
    ...(program.program.work.some(
      (work) => work.kind === 'hold' && work.effort >= maximal && work.rest === 0 && work.sets > 1,
    )
      ? ['it rests 0 s between maximal holds']
      : []),
  ];
}
