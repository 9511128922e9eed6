import type { Joint } from '../mechanics/lift.ts';
import type { Sample } from '../physiology/exercise.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult, Results } from '../run.ts';
import { type ActionName, actions } from '../tables/actions.ts';
import { tripped } from './cautions.ts';
import { chartFrame } from './chartFrame.ts';
import { exerciseLine } from './exerciseLine.ts';
import type { Block, Section } from './report.ts';
import { shortfallSentence } from './shortfallWords.ts';
import {
  capital,
  degrees,
  listInWords,
  percent,
  plural,
  rangeDegrees,
  signedPercent,
} from './words.ts';

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

/** Demand of each lift on the target's muscles against what the athlete has, by angle. */
function demandBlocks(program: ProgramResult, results: Results): Block[] {
  const { athlete, question } = results;
  const { shown, xDeg, band } = chartFrame(results);
  const { joint, sense } = actions[question.action];
  const lifts = program.plan.exercises.filter(({ samples }) =>
    samples.some(({ effort }) => effort[question.action] !== undefined),
  );
  if (lifts.length === 0) return [];
  const series = lifts.map(({ exercise, samples }) => ({
    name: exercise.kind === 'lift' ? `asked by ${exercise.range.lift.name}` : '',
    y: shown.map(({ deg }) => {
      const near = nearestSample(samples, joint, deg);
      return near ? Math.max(sense * (near.asked.torques[joint] ?? 0), 0) : Number.NaN;
    }),
  }));
  const { torque } = athlete.groups[question.action];
  return [
    { kind: 'text', text: demandSentence(lifts, question.action) },
    {
      kind: 'chart',
      chart: {
        title: `${question.action} torque, one side (N·m)`,
        xDeg,
        series: [{ name: 'athlete has', y: shown.map(({ i }) => torque[i] ?? 0) }, ...series],
        band,
      },
    },
  ];
}

/** The sample closest to an angle of a joint, at most 2.6° away: they stand 5° apart. */
function nearestSample(samples: readonly Sample[], joint: Joint, deg: number): Sample | undefined {
  const away = ({ asked }: Sample) => Math.abs(((asked.angles[joint] ?? 0) * 180) / Math.PI - deg);
  const [near] = [...samples].sort((a, b) => away(a) - away(b));
  return near && away(near) < 2.6 ? near : undefined;
}

/** Muscles named at most, and the effort from which one is named. */
const named = { most: 6, from: 0.1 };

/** How muscles, also those over two joints, share the hardest posture of each lift. */
function sharingBlocks(program: ProgramResult): Block[] {
  const items = program.plan.exercises.flatMap(({ exercise, shared }) => {
    if (exercise.kind !== 'lift' || !shared) return [];
    const working = shared.efforts
      .filter(({ effort }) => effort >= named.from)
      .slice(0, named.most);
    if (working.length === 0) return [];
    const list = listInWords(working.map(({ muscle, effort }) => `${muscle} ${percent(effort)}`));
    const tied =
      shared.together < 0.95
        ? ` Muscles over two joints pull against each other here: the joints give ${percent(1 - shared.together)} less together than one by one.`
        : '';
    return [
      `${capital(exercise.range.lift.name)} at ${degrees(shared.at)}: carried with the least total effort by ${list} (of what each can give).${tied}`,
    ];
  });
  return items.length === 0 ? [] : [{ kind: 'list', items }];
}

function demandSentence(lifts: readonly PlannedExercise[], action: ActionName): string {
  const { joint, muscles } = actions[action];
  const parts = lifts.map(({ exercise, samples }) => {
    const effortIn = (sample: Sample) => sample.effort[action] ?? 0;
    const hardest = samples.reduce((a, b) => (effortIn(b) > effortIn(a) ? b : a));
    const name = exercise.kind === 'lift' ? exercise.range.lift.name : '';
    return `the ${name} asks most of the ${muscles} at ${degrees(hardest.asked.angles[joint] ?? 0)} (${percent(effortIn(hardest))} of what they can give when fresh)`;
  });
  return `In the first week ${listInWords(parts)}.`;
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
