import type { ProgramResult, Results } from '../run.ts';
import { tripped } from './cautions.ts';
import { demandBlocks } from './demandBlocks.ts';
import { exerciseLine } from './exerciseLine.ts';
import type { Block, Section } from './report.ts';
import { sharingBlocks } from './sharingBlocks.ts';
import { shortfallSentence } from './shortfallWords.ts';
import {
  capital,
  listInWords,
  percent,
  plural,
  rangeDegrees,
  rangeText,
  signedPercent,
} from './words.ts';

/** One section a program: what it asks, where the work lands, what comes of it. */
export function programSections(results: Results): Section[] {
  return results.ranking.map(({ program, place }) => ({
    heading: `${place}. ${program.name}`,
    blocks: [
      { kind: 'text', text: calendar(program) },
      ...workBlocks(program, results),
      ...demandBlocks(program, results),
      ...sharingBlocks(program),
      { kind: 'text', text: landingSentence(program) },
      bandTable(program),
      ...careBlocks(program, results),
    ],
  }));
}

/** What is done, a list for each phase; a phase is headed by its weeks. */
function workBlocks(program: ProgramResult, results: Results): Block[] {
  const isPhased = program.program.phases !== undefined;
  return program.phases.flatMap((phase): Block[] => {
    const items = phase.places.flatMap((i) => {
      const [work, planned] = [program.program.work[i], program.plan.exercises[i]];
      if (!work || !planned) return [];
      return [exerciseLine(work, planned, results) + shortfallSentence(program, i)];
    });
    return [
      ...(isPhased ? [{ kind: 'text', text: phaseHead(phase) } as const] : []),
      ...(items.length > 0 ? [{ kind: 'list', items } as const] : []),
    ];
  });
}

function phaseHead(phase: Phased): string {
  const { name, from, to, places, minutesPerWeek } = phase;
  const weeks = `${from === to ? 'week' : 'weeks'} ${rangeText(from, to)}`;
  const named = name === undefined ? capital(weeks) : `${capital(name)}, ${weeks}`;
  if (places.length === 0) return `${named}: off.`;
  return `${named}: ${rhythm(phase).join('; ')}; ${minutesPerWeek.toFixed(0)} minutes a week.`;
}

type Phased = ProgramResult['phases'][number];

function calendar({ program, weeks: judged, phases }: ProgramResult): string {
  const { weeks } = program;
  const cut = judged < weeks ? ` Judged after ${plural(judged, 'week')}.` : '';
  const [whole] = phases;
  if (!program.phases && whole) {
    const [sessions = '', ...rest] = rhythm(whole);
    return `${[`${plural(weeks, 'week')}, ${sessions}`, ...rest].join('; ')}.${cut}`;
  }
  return `${plural(weeks, 'week')} in ${plural(phases.length, 'phase')}.${cut} A load given as a share of a single or as a repetition maximum is that of the single before the program, in every phase.`;
}

/** Sessions, change of load and lighter weeks, these counted from the program's first. */
function rhythm({ sessionsPerWeek, progress, deloads, from }: Phased): string[] {
  const parts = [`${plural(sessionsPerWeek, 'session')} a week`];
  if (progress !== 0) parts.push(`load ${signedPercent(progress, 1)} a week`);
  if (deloads.length > 0)
    parts.push(
      `${listInWords(deloads.map(({ week, sets }) => `week ${from + week - 1} with ${percent(sets)} of the sets`))}`,
    );
  return parts;
}

function landingSentence(program: ProgramResult): string {
  const most = program.bands.reduce((a, b) => (b.hardSets > a.hardSets ? b : a));
  return most.hardSets > 0
    ? `Most of the work lands at ${rangeDegrees(most.from, most.to)}${whichWeek(program)}.`
    : 'None of the work lands on these muscles at these angles.';
}

/** A change of the week's sets by this share is worth telling (working value). */
const worthTelling = 0.2;

/** Which week's sets the table has, where not all weeks with all their sets are much alike. */
function whichWeek({ program, phases, weekly }: ProgramResult): string {
  if (program.phases) return ' (sets are those of the mean week)';
  const lighter = phases.flatMap(({ deloads }) => deloads.map(({ week }) => week));
  const full = weekly.filter(({ week }) => !lighter.includes(week));
  const [first = 0, last = 0] = [weekly[0], full.at(-1)].map((week) =>
    (week?.hardSetsByBand ?? []).reduce((sum, sets) => sum + sets, 0),
  );
  if (Math.abs(last - first) < worthTelling * first) return '';
  return ` (sets are those of the first week, together ${first.toFixed(1)}; week ${full.at(-1)?.week} has ${last.toFixed(1)})`;
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
