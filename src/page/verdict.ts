import type { Placed } from '../inference/ranking.ts';
import type { ProgramResult, Results } from '../run.ts';
import { cautionMarks } from './cautions.ts';
import type { Block, Section } from './report.ts';
import { listInWords, percent, plural, rangeDegrees, signedPercent } from './words.ts';

/** Who, joint, target and convention; the verdict in a few sentences; the ranking. */
export function verdictSection(results: Results): Section {
  return {
    heading: 'Which program',
    blocks: [
      { kind: 'text', text: introduction(results) },
      { kind: 'text', text: verdict(results) },
      rankingTable(results),
      { kind: 'text', text: howToRead(results) },
    ],
  };
}

function introduction({ scenario }: Results): string {
  const { subject, target, convention, note } = scenario;
  const who = subject.isGroup ? `the mean person of "${subject.code}"` : subject.code;
  const written =
    convention === 'included'
      ? ' The file writes included angles (180° = straight); this report writes flexion.'
      : '';
  const wish = target.gain === undefined ? '' : `, wanted ${signedPercent(target.gain)}`;
  const within = target.weeks === undefined ? '' : ` within ${plural(target.weeks, 'week')}`;
  const noted = note === undefined ? '' : `${note} `;
  return `${noted}For ${who}: ${target.action}, ${rangeDegrees(target.from, target.to)} of flexion${wish}${within}. Angles: 0° = straight, flexion positive. Torque is that of one leg in a hold.${written}`;
}

/** The best program, what it is expected to give, and which others cannot be told from it. */
function verdict({ ranking, scenario }: Results): string {
  const best = ranking[0];
  if (!best) return 'No program to rank.';
  const { program, margin } = best;
  const range = rangeDegrees(scenario.target.from, scenario.target.to);
  const gain = signedPercent(program.landing.meanGain);
  const rivals = ranking.slice(1).filter(({ tiesWithBest }) => tiesWithBest);
  const tie =
    rivals.length > 0
      ? ` ${listInWords(rivals.map(({ program: { name } }) => `"${name}"`))} cannot be told apart from it: choose between them by time, equipment and what the athlete tolerates.`
      : ' The others are expected to give clearly less there.';
  return `"${program.name}" is expected to add most inside ${range}: about ${gain} torque after ${plural(program.program.weeks, 'week')}, give or take ${percent(margin)}.${tie}${wish(best, scenario.target.gain)}`;
}

function wish(best: Placed<ProgramResult>, wanted: number | undefined): string {
  if (wanted === undefined) return '';
  const { meanGain } = best.program.landing;
  if (meanGain - best.margin >= wanted)
    return ` That meets the wanted ${signedPercent(wanted)} even if the model misses by its usual margin.`;
  if (meanGain >= wanted)
    return ` That meets the wanted ${signedPercent(wanted)} unless the model misses by its usual margin.`;
  return ` The wanted ${signedPercent(wanted)} is more than any of these programs is expected to give.`;
}

function rankingTable({ ranking, scenario }: Results): Block {
  const limit = scenario.minutesPerWeek;
  const ties = ranking.filter(({ tiesWithBest }) => tiesWithBest).length;
  return {
    kind: 'table',
    columns: [
      { head: 'program', align: 'left' },
      { head: 'target gain', align: 'right' },
      { head: 'lands there', align: 'right' },
      { head: 'min/week', align: 'right' },
      { head: 'care', align: 'left' },
    ],
    rows: ranking.map(({ program, place, tiesWithBest }) => {
      const over = limit !== undefined && program.minutesPerWeek > limit ? ' (over limit)' : '';
      return [
        `${place}. ${program.name}${tiesWithBest && ties > 1 ? ' (tie)' : ''}`,
        signedPercent(program.landing.meanGain),
        percent(program.landing.hitShare),
        `${program.minutesPerWeek.toFixed(0)}${over}`,
        cautionMarks(program, ranking).join(', '),
      ];
    }),
  };
}

function howToRead({ ranking }: Results): string {
  const ties = ranking.filter(({ tiesWithBest }) => tiesWithBest).length;
  const tie = ties > 1 ? ' Tie: not to be told apart from the best.' : '';
  return `Target gain: mean change of maximal torque inside the range. Lands there: the part of all torque the program adds, over all angles, that lies inside the range. Minutes leave out the warm-up.${tie} Numbers under "care" point to the cautions below.`;
}
