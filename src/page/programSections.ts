import type { MuscledJoint } from '../mechanics/lift.ts';
import type { Work } from '../notebook/scenario.ts';
import type { Sample } from '../physiology/exercise.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult, Results } from '../run.ts';
import { type ActionName, actions, isAction } from '../tables/actions.ts';
import { tripped } from './cautions.ts';
import { chartFrame } from './chartFrame.ts';
import { heightSentences } from './heightWords.ts';
import type { Block, Section } from './report.ts';
import {
  degrees,
  kilograms,
  listInWords,
  newtonMetres,
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
        items: program.program.work.map((work, i) =>
          exerciseLine(work, program.plan.exercises[i], results),
        ),
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

function exerciseLine(
  work: Work,
  planned: PlannedExercise | undefined,
  { athlete, anglesDeg, scenario }: Results,
): string {
  const unwritten = work.assumed ?? [];
  const filled =
    unwritten.length > 0 ? ` (${listInWords(unwritten)} not written: usual values taken)` : '';
  const heights = planned ? heightSentences(work, jointOf(planned)) : '';
  if (work.kind === 'hold') {
    const index = anglesDeg.findIndex((deg) => deg >= (work.at * 180) / Math.PI - 1e-9);
    const best = isAction(work.of) ? athlete.groups[work.of].torque[index] : undefined;
    const held = planned?.hold;
    const asked = held
      ? ` (with about ${kilograms(held.load)}${held.effort > work.effort + 0.01 ? `; the body’s own weight alone makes it ${percent(held.effort)}` : ''})`
      : best === undefined
        ? ''
        : ` (best there about ${newtonMetres(best)})`;
    return `Hold ${work.of} at ${degrees(work.at)}${asWritten(work.at, planned, scenario)}, ${percent(work.effort)} effort${asked}: ${plural(work.sets, 'set')} of ${work.reps} × ${work.seconds} s${filled}.${heights}`;
  }
  const range = `${rangeDegrees(work.from, work.to)}${asWritten(work.to, planned, scenario)}`;
  const dose = `${work.sets} × ${work.reps}, tempo ${work.tempo.join('-')}, rest ${work.rest} s${filled}`;
  if (planned?.exercise.kind !== 'lift' || !planned.heaviest)
    return `${work.lift} ${range}: ${dose}.`;
  const { load, heaviest } = planned.exercise;
  const known = planned.tested ? 'tested' : 'predicted, not tested';
  const { at } = planned.heaviest;
  return `${capital(work.lift)} ${range}: ${dose} with ${kilograms(load)}, ${percent(load / heaviest)} of the heaviest single over this range (${kilograms(heaviest)}, ${known}). The heaviest single would be lost at ${degrees(at.angle)}, by the ${actions[at.action].muscles}.${heights}${unsure(planned)}`;
}

/** Joints that the included convention turns round. */
const turned: ReadonlySet<string> = new Set(['knee', 'hip', 'elbow']);

/** The far end as the file writes it, where that differs from flexion. */
function asWritten(
  angle: number,
  planned: PlannedExercise | undefined,
  { convention }: Results['scenario'],
): string {
  const joint = planned && jointOf(planned);
  const differs = convention === 'included' && joint !== undefined && turned.has(joint);
  return differs ? ` (${degrees(Math.PI - angle)} included)` : '';
}

function jointOf({ exercise }: PlannedExercise): MuscledJoint {
  if (exercise.kind === 'lift') return exercise.range.lift.leading;
  return 'action' in exercise.of
    ? actions[exercise.of.action].joint
    : exercise.of.range.lift.leading;
}

/** Below this knee angle (rad) the strength table is continued by eye: 20 degrees. */
const nearStraight = 0.36;

/** Loads that rest on thin ground. */
function unsure({ exercise, heaviest }: PlannedExercise): string {
  if (exercise.kind !== 'lift' || !heaviest) return '';
  if (heaviest.at.action === 'knee extension' && heaviest.at.angle < nearStraight)
    return ' So near straight, strength is little known: treat this load as a guess and enter your own in kg.';
  if (exercise.range.lift.support === 'feet' && exercise.load < 20)
    return ' That is less than an empty bar: test the lift before planning it.';
  return '';
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

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
      const near = samples.find(
        ({ asked }) => Math.abs(((asked.angles[joint] ?? 0) * 180) / Math.PI - deg) < 0.5,
      );
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
  const [first] = program.state.shortfalls;
  const most = program.bands.reduce((a, b) => (b.hardSets > a.hardSets ? b : a));
  const lands =
    most.hardSets > 0
      ? `Most of the work lands at ${rangeDegrees(most.from, most.to)}.`
      : 'None of the work lands on this joint.';
  if (!first) return lands;
  const short = `(${first.done} of ${first.wanted})`;
  return first.week === 1
    ? `${lands} With this load not all repetitions can be done ${short}.`
    : `${lands} From week ${first.week} on not all repetitions can be done ${short}: the load rises faster than the strength.`;
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

function careBlocks(program: ProgramResult, { ranking }: Results): Block[] {
  const items = tripped(program, ranking);
  if (items.length === 0) return [];
  return [
    { kind: 'list', items: items.map(({ number, because }) => `Care (${number}): ${because}.`) },
  ];
}
