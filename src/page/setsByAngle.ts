import type { Question } from '../inference/forecast.ts';
import type { AngleRange } from '../inference/ranking.ts';
import type { Week } from '../inference/weekly.ts';
import { actions, jointWords } from '../tables/actions.ts';
import type { Block } from './report.ts';
import { type Counted, isMapped, leastSets, setsMaps } from './setsMaps.ts';
import { shortMuscle } from './shortMuscle.ts';
import { rangeDegrees } from './words.ts';

/** What is asked here of a program that has run. */
interface Shown extends Pick<Counted, 'name' | 'phases'> {
  readonly bands: readonly AngleRange[];
  readonly weekly: readonly Week[];
}

/** Where the sets of the target's muscles land, week by week. */
export function setsByAngle(
  programs: readonly Shown[],
  { action, target }: Pick<Question, 'action' | 'target'>,
): Block[] {
  const { muscles, joint } = actions[action];
  const counted = programs.map(
    (program): Counted => ({
      ...program,
      rows: program.bands.map(({ from, to }) => rangeDegrees(from, to)),
      weekly: program.weekly.map(({ week, hardSetsByBand }) => ({ week, sets: hardSetsByBand })),
    }),
  );
  const map = isMapped(counted)
    ? ' In the maps angles go down and weeks across; shades mean the same in all maps by angle.'
    : '';
  return [
    {
      kind: 'text',
      text: `Where the sets of the ${muscles} land, by ${jointWords[joint].name} angle (target ${rangeDegrees(target.from, target.to)}): effective sets a week. Neighbouring weeks that are much alike stand together as their mean, in long programs also less alike ones. Work at the edge of two bands counts half in each.${map}${outside(programs, action)}`,
    },
    ...setsMaps(counted, {
      item: (sets, band) => `${sets} at ${band}`,
      none: 'no work at these angles',
    }),
  ];
}

/**
 * What each muscle of the target does in the first program, week by week. Of others the tables under
 * "Why" tell the mean week: muscles differ between programs less than angles do.
 */
export function setsByMuscle([first]: readonly Shown[]): Block[] {
  const rows = Object.keys(first?.weekly[0]?.hardSetsByMuscle ?? {});
  if (!first || rows.length < 2) return [];
  const weekly = first.weekly.map(({ week, hardSetsByMuscle }) => ({
    week,
    sets: rows.map((name) => hardSetsByMuscle[name] ?? 0),
  }));
  return [
    {
      kind: 'text',
      text: 'Sets of each muscle in the first program. They do not add up to those above, which count what is asked of the joint: here each muscle counts by the force that it gives itself, and shades have a scale of their own.',
    },
    ...setsMaps([{ ...first, rows: rows.map(shortMuscle), weekly }], {
      item: (sets, name) => `${sets} of the ${name}`,
      none: 'no work',
    }),
  ];
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
