import type { Question } from '../inference/forecast.ts';
import type { AngleRange } from '../inference/ranking.ts';
import type { Week } from '../inference/weekly.ts';
import type { TimedPhase } from '../stages/phasesOf.ts';
import { actions, jointWords } from '../tables/actions.ts';
import type { Block, HeatMap } from './report.ts';
import { type Stretch, weekStretches } from './weekStretches.ts';
import { listInWords, percent, rangeDegrees, rangeText } from './words.ts';

/**
 * Columns of one map: as many as two blocks of a report have, or four on a phone, where a map of six
 * bands with its legend then fits one message. Most seasons have fewer kinds of weeks in a row.
 */
const mostColumns = 12;

/** Sets a week below which a band counts as not worked: they print as 0.0. */
const leastSets = 0.05;

/** What is asked here of a program that has run. */
interface Shown {
  readonly name: string;
  readonly bands: readonly AngleRange[];
  readonly phases: readonly Pick<TimedPhase, 'from' | 'to' | 'deloads'>[];
  readonly weekly: readonly Week[];
}

/**
 * Where the sets of the target's muscles land, week by week: a map for each program whose weeks
 * differ, a sentence for one whose weeks are alike.
 */
export function setsByAngle(
  programs: readonly Shown[],
  { action, target }: Pick<Question, 'action' | 'target'>,
): Block[] {
  const { muscles, joint } = actions[action];
  const shown = programs.map((program) => ({ program, ...fullWeeks(program) }));
  const most = Math.max(0, ...shown.flatMap(({ stretches }) => stretches.flatMap((s) => s.sets)));
  const isMapped = shown.some(({ stretches }) => stretches.length > 1);
  const map = isMapped
    ? ' In the maps angles go down and weeks across; shades mean the same in all maps.'
    : '';
  return [
    {
      kind: 'text',
      text: `Where the sets of the ${muscles} land, by ${jointWords[joint].name} angle (target ${rangeDegrees(target.from, target.to)}): effective sets a week. Neighbouring weeks that are much alike stand together, as their mean.${map}${outside(programs, action)}`,
    },
    ...shown.flatMap(({ program, stretches, lighter }): Block[] =>
      stretches.length > 1
        ? [
            { kind: 'text', text: `"${program.name}"${leftOut(lighter)}:` },
            { kind: 'map', map: mapOf(program, stretches, most) },
          ]
        : [{ kind: 'text', text: alike(program, stretches, lighter) }],
    ),
  ];
}

interface Lighter {
  readonly week: number;
  /** Share of the sets that stays. */
  readonly sets: number;
}

/**
 * Weeks with all their sets, put together where alike, and lighter ones apart. A lighter week
 * lowers all angles by one share, so that the share says it all and a column would only break up
 * the weeks around it; where a phase has no other weeks they count as full.
 */
function fullWeeks({ phases, weekly }: Shown) {
  const lighter = phases.flatMap(({ from, to, deloads }): Lighter[] => {
    const known = deloads.filter(({ week, sets }) => from + week - 1 <= weekly.length && sets < 1);
    return known.length > Math.min(to, weekly.length) - from
      ? []
      : known.map(({ week, sets }) => ({ week: from + week - 1, sets }));
  });
  const full = weekly.filter(({ week }) => !lighter.some((one) => one.week === week));
  const weeks = full.map(({ week, hardSetsByBand }) => ({
    ...{ from: week, to: week },
    sets: hardSetsByBand,
  }));
  return { stretches: weekStretches(weeks, mostColumns), lighter };
}

function mapOf(program: Shown, stretches: readonly Stretch[], most: number): HeatMap {
  return {
    rows: program.bands.map(({ from, to }) => rangeDegrees(from, to)),
    columns: stretches.map(({ from, to }) => rangeText(from, to, '–')),
    values: program.bands.map((_, i) => stretches.map(({ sets }) => sets[i])),
    amounts: { most, decimals: 1, none: 'no work' },
  };
}

/** `"long holds", weeks 1–8: 0.2 at 25–50° and 10.5 at 75–100°.` */
function alike(
  { name, bands, weekly }: Shown,
  [stretch]: readonly Stretch[],
  lighter: readonly Lighter[],
): string {
  const items = bands.flatMap(({ from, to }, i) => {
    const sets = stretch?.sets[i] ?? 0;
    return sets >= leastSets ? [`${sets.toFixed(1)} at ${rangeDegrees(from, to)}`] : [];
  });
  const said = items.length > 0 ? listInWords(items) : 'no work at these angles';
  const weeks = `${weekly.length > 1 ? 'weeks' : 'week'} ${rangeText(1, weekly.length, '–')}`;
  return `"${name}", ${weeks}${leftOut(lighter)}: ${said}.`;
}

/** ` (week 4 apart, with 50 % of the sets)`, weeks with the same share together. */
function leftOut(lighter: readonly Lighter[]): string {
  const shares = [...new Set(lighter.map(({ sets }) => sets))];
  const items = shares.map((share) => {
    const weeks = lighter.filter(({ sets }) => sets === share).map(({ week }) => String(week));
    return `${weeks.length > 1 ? 'weeks' : 'week'} ${listInWords(weeks)} apart, with ${percent(share)} of the sets`;
  });
  return items.length > 0 ? ` (${listInWords(items)})` : '';
}

/** Lifts can take a joint beyond the angles at which an action is looked at. */
function outside(programs: readonly Shown[], action: keyof typeof actions): string {
  const most = Math.max(
    0,
    ...programs.flatMap(({ weekly }) =>
      weekly.map(
        ({ hardSets, hardSetsByBand }) =>
          (hardSets[action] ?? 0) - hardSetsByBand.reduce((sum, sets) => sum + sets, 0),
      ),
    ),
  );
  return most >= leastSets
    ? ` Work beyond these angles is not shown (up to ${most.toFixed(1)} sets a week).`
    : '';
}
