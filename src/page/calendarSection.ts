import type { ProgramResult, Results } from '../run.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import type { Block, Section } from './report.ts';
import { setsByAngle, setsByMuscle } from './setsByAngle.ts';
import { rangeDegrees, rangeText, signedPercent } from './words.ts';

/** Programs drawn in one chart: more curves than this cannot be told apart. */
const drawn = 4;

/** Muscle groups shown beside the target's: those with most sets. */
const shownBeside = 2;

/** Sets a week below which a muscle group is not shown (working value). */
const leastSets = 0.05;

/**
 * The calendar, of itself only where weeks are planned apart. Progress of the load and lighter weeks
 * scale a week as a whole: where its work lands stays, and each is said in a line of its program. A
 * notebook may ask for the section all the same.
 */
export function calendarWherePhased(results: Results): Section[] {
  const isPhased = results.ranking.some(({ program }) => program.program.phases);
  return isPhased ? [calendarSection(results)] : [];
}

/** Gain inside the target over the weeks, and what each phase asks of which muscles. */
export function calendarSection(results: Results): Section {
  const programs = results.ranking.map(({ program }) => program);
  const { from, to } = results.question.target;
  return {
    heading: 'Week by week',
    blocks: [
      { kind: 'chart', chart: gainChart(programs.slice(0, drawn), rangeDegrees(from, to)) },
      setsTable(programs, results.question.action),
      { kind: 'text', text: howToRead(programs) },
      ...setsByAngle(programs.slice(0, drawn), results.question),
      ...setsByMuscle(programs),
    ],
  };
}

/** From 0 before the first week; a shorter program ends earlier. */
function gainChart(programs: readonly ProgramResult[], target: string) {
  const last = Math.max(0, ...programs.map(({ weeks }) => weeks));
  return {
    title: `gain of maximal torque inside ${target} (%)`,
    axis: 'week',
    x: Array.from({ length: last + 1 }, (_, week) => week),
    series: programs.map(({ name, weekly }) => ({
      name,
      y: Array.from({ length: last + 1 }, (_, week) =>
        week === 0 ? 0 : 100 * (weekly[week - 1]?.gain ?? Number.NaN),
      ),
    })),
  };
}

/** One row a phase: its weeks, sets by muscle group, and the gain at its end. */
function setsTable(programs: readonly ProgramResult[], target: ActionName): Block {
  const shown = [target, ...mostWorked(programs, target)];
  const right = (head: string) => ({ head, align: 'right' as const });
  return {
    kind: 'table',
    columns: [
      { head: 'program', align: 'left' },
      right('weeks'),
      ...shown.map((action) => right(actions[action].muscles)),
      right('gain'),
    ],
    rows: programs.flatMap((program) =>
      judgedPhases(program).map(({ name, from, last }, i) => {
        const weeks = program.weekly.slice(from - 1, last);
        return [
          rowName(program, name, i),
          rangeText(from, last, '–'),
          ...shown.map((action) => setsText(weeks.map(({ hardSets }) => hardSets[action] ?? 0))),
          signedPercent(weeks.at(-1)?.gain ?? 0, 1),
        ];
      }),
    ),
  };
}

/** The program's name before its first phase's. */
function rowName(program: ProgramResult, name: string | undefined, place: number): string {
  if (!program.program.phases) return program.name;
  const phase = name ?? `phase ${place + 1}`;
  return place === 0 ? `${program.name}: ${phase}` : phase;
}

/** Phases begun when the program is judged, the last of them cut off there. */
const judgedPhases = ({ phases, weeks }: ProgramResult) =>
  phases
    .filter(({ from }) => from <= weeks)
    .map((phase) => ({ ...phase, last: Math.min(phase.to, weeks) }));

/** Muscle groups beside the target's that get most sets in any week. */
function mostWorked(programs: readonly ProgramResult[], target: ActionName): ActionName[] {
  const most = (action: ActionName) =>
    Math.max(
      0,
      ...programs.flatMap(({ weekly }) => weekly.map(({ hardSets }) => hardSets[action] ?? 0)),
    );
  return actionNames
    .filter((action) => action !== target && most(action) >= leastSets)
    .sort((a, b) => most(b) - most(a))
    .slice(0, shownBeside);
}

function setsText(sets: readonly number[]): string {
  const [least, most] = [Math.min(...sets).toFixed(1), Math.max(...sets).toFixed(1)];
  return least === most ? most : `${least}–${most}`;
}

function howToRead(programs: readonly ProgramResult[]): string {
  const more =
    programs.length > drawn ? ` The chart and what follows show the first ${drawn} programs.` : '';
  const hasOff = programs.some(({ phases }) => phases.some(({ places }) => places.length === 0));
  const off = hasOff ? ' In weeks off gains fade, those of drive faster than those of growth.' : '';
  return `Sets are effective sets a week of a muscle group over all angles, the least and the most of a phase where its weeks differ; of other groups the ${shownBeside} that work most. Gain is that at the end of the phase.${off}${programs.some(easesOff) ? keptLonger : ''}${more}`;
}

/**
 * The model's states move at one pace toward what the week's work sustains. Left out: that keeping
 * takes less work than gaining (common practice; no study of it has been read for this project).
 */
const keptLonger =
  ' Phases with less work than the one before: the model lets gains fall toward what such work would build alone, while in common practice strength is kept on much less work than it takes to gain it, so losses there are likely smaller than shown.';

/** Whether some phase has work, but fewer sets a week of all groups together than the one before. */
function easesOff({ phases, weekly }: ProgramResult): boolean {
  const sets = phases.map(({ from }) =>
    Object.values(weekly[from - 1]?.hardSets ?? {}).reduce((sum, more) => sum + more, 0),
  );
  return sets.some((now, i) => now > 0 && now < (sets[i - 1] ?? 0));
}
