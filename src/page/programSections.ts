import type { ProgramResult, Results } from '../run.ts';
import { tripped } from './cautions.ts';
import { demandBlocks } from './demandBlocks.ts';
import { exerciseLine } from './exerciseLine.ts';
import type { Block, Section } from './report.ts';
import { sharingBlocks } from './sharingBlocks.ts';
import { shortfallSentence } from './shortfallWords.ts';
import { listInWords, percent, plural, rangeDegrees, signedPercent } from './words.ts';

/** One section a program: what it asks, where the work lands, what comes of it. */
export function programSections(results: Results): Section[] {
  return results.ranking.map(({ program, place }) => ({
    heading: `${place}. ${program.name}`,
    blocks: [
      { kind: 'text', text: calendar(program) },
      {
        kind: 'list',
        items: program.program.work.flatMap((work, i) => {
          const planned = program.plan.exercises[i];
          return planned
            ? [exerciseLine(work, planned, results) + shortfallSentence(program, i)]
            : [];
        }),
      },
      ...demandBlocks(program, results),
      ...sharingBlocks(program),
      { kind: 'text', text: landingSentence(program) },
      bandTable(program),
      ...careBlocks(program, results),
    ],
  }));
}

function calendar({ program, weeks: judged }: ProgramResult): string {
  const { weeks, sessionsPerWeek, progress, deloads } = program;
  const parts = [`${plural(weeks, 'week')}, ${plural(sessionsPerWeek, 'session')} a week`];
  if (progress !== 0) parts.push(`load ${signedPercent(progress, 1)} a week`);
  if (deloads.length > 0)
    parts.push(
      `${listInWords(deloads.map(({ week, sets }) => `week ${week} with ${percent(sets)} of the sets`))}`,
    );
  const cut = judged < weeks ? ` Judged after ${plural(judged, 'week')}.` : '';
  return `${parts.join('; ')}.${cut}`;
}

function landingSentence(program: ProgramResult): string {
  const most = program.bands.reduce((a, b) => (b.hardSets > a.hardSets ? b : a));
  return most.hardSets > 0
    ? `Most of the work lands at ${rangeDegrees(most.from, most.to)}.`
    : 'None of the work lands on these muscles at these angles.';
}

function bandTable(program: ProgramResult): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'angle', align: 'left' },
      { head: 'effective sets a week', align: 'right' },
      { head: 'gain', align: 'right' },
      { head: 'drive', align: 'right' },
      { head: 'growth', align: 'right' },
      { head: 'series', align: 'right' },
    ],
    rows: program.bands.map(({ from, to, hardSets, gain, shares }) => [
      rangeDegrees(from, to),
      hardSets.toFixed(1),
      signedPercent(gain),
      signedPercent(shares.get('neural drive') ?? 0, 1),
      signedPercent(shares.get('regional growth') ?? 0, 1),
      signedPercent(shares.get('sarcomeres in series') ?? 0, 1),
    ]),
  };
}

function careBlocks(program: ProgramResult, results: Results): Block[] {
  const items = tripped(program, results);
  if (items.length === 0) return [];
  return [
    { kind: 'list', items: items.map(({ number, because }) => `Care (${number}): ${because}.`) },
  ];
}
