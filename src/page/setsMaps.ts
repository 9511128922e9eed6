import type { TimedPhase } from '../stages/phasesOf.ts';
import type { Block, HeatMap } from './report.ts';
import { type Stretch, weekStretches } from './weekStretches.ts';
import { listInWords, percent, rangeText } from './words.ts';

/**
 * Columns of one map: as many as two blocks of a report have, or four on a phone, where a map of six
 * bands with its legend then fits one message. Most seasons have fewer kinds of weeks in a row.
 */
const mostColumns = 12;

/** Sets a week below which a row counts as not worked: they print as 0.0. */
export const leastSets = 0.05;

/** A program's sets by week, counted in rows: bands of angles, or muscles. */
export interface Counted {
  readonly name: string;
  readonly rows: readonly string[];
  readonly phases: readonly Pick<TimedPhase, 'from' | 'to' | 'deloads'>[];
  readonly weekly: readonly { readonly week: number; readonly sets: readonly number[] }[];
}

/** How a row's sets are said, and that there are none. */
interface Wording {
  readonly item: (sets: string, row: string) => string;
  readonly none: string;
}

/** Whether the weeks of any program differ, so that there are maps. */
export function isMapped(programs: readonly Counted[]): boolean {
  return programs.some((program) => fullWeeks(program).stretches.length > 1);
}

/**
 * Sets over the weeks: a map for each program whose weeks differ, a sentence for one whose weeks are
 * alike.
 */
export function setsMaps(programs: readonly Counted[], wording: Wording): Block[] {
  const shown = programs.map((program) => ({ program, ...fullWeeks(program) }));
  const most = Math.max(0, ...shown.flatMap(({ stretches }) => stretches.flatMap((s) => s.sets)));
  return shown.flatMap(({ program, stretches, lighter }): Block[] =>
    stretches.length > 1
      ? [
          { kind: 'text', text: `"${program.name}"${leftOut(lighter)}:` },
          { kind: 'map', map: mapOf(program, stretches, most) },
        ]
      : [{ kind: 'text', text: alike(program, stretches, lighter, wording) }],
  );
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
function fullWeeks({ phases, weekly }: Counted) {
  const lighter = phases.flatMap(({ from, to, deloads }): Lighter[] => {
    const known = deloads.filter(({ week, sets }) => from + week - 1 <= weekly.length && sets < 1);
    return known.length > Math.min(to, weekly.length) - from
      ? []
      : known.map(({ week, sets }) => ({ week: from + week - 1, sets }));
  });
  const full = weekly.filter(({ week }) => !lighter.some((one) => one.week === week));
  const weeks = full.map(({ week, sets }) => ({ from: week, to: week, sets }));
  return { stretches: weekStretches(weeks, mostColumns), lighter };
}

function mapOf({ rows }: Counted, stretches: readonly Stretch[], most: number): HeatMap {
  return {
    rows,
    columns: stretches.map(({ from, to }) => rangeText(from, to, '–')),
    values: rows.map((_, i) => stretches.map(({ sets }) => sets[i])),
    amounts: { most, decimals: 1, none: 'no work, or hardly any' },
  };
}

/** `"long holds", weeks 1–8: 0.2 at 25–50° and 10.5 at 75–100°.` */
function alike(
  { name, rows, weekly }: Counted,
  [stretch]: readonly Stretch[],
  lighter: readonly Lighter[],
  { item, none }: Wording,
): string {
  const items = rows.flatMap((row, i) => {
    const sets = stretch?.sets[i] ?? 0;
    return sets >= leastSets ? [item(sets.toFixed(1), row)] : [];
  });
  const said = items.length > 0 ? listInWords(items) : none;
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
