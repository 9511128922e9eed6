import type { Trial } from '../questions/compare.ts';
import type { ProgramsCompared } from '../questions/comparePrograms.ts';
import type { ProgramResult, Results } from '../run.ts';
import { exerciseLine } from './exerciseLine.ts';
import { causesInWords, gainSection } from './gainSections.ts';
import type { Block, Report } from './report.ts';
import { shortfallSentence } from './shortfallWords.ts';
import { changeOf } from './singlesSection.ts';
import { strongestCell } from './strongestAngle.ts';
import { noticeable } from './verdict.ts';
import { kilograms, percent, plural, rangeDegrees, signedPercent, signedPoints } from './words.ts';

/** Two programs of one scenario side by side. */
export function programsPage(compared: ProgramsCompared): Report {
  const { a, b, results } = compared;
  const drawn = [a, b].map((program, i) => ({
    program,
    place: i + 1,
    tiesWithBest: true,
    margin: 0,
  }));
  return {
    title: 'Two programs compared',
    sections: [
      {
        heading: 'Which of the two',
        blocks: [
          { kind: 'text', text: `a is "${a.name}"; b is "${b.name}".` },
          { kind: 'text', text: verdict(compared) },
          numbersTable(compared),
          {
            kind: 'text',
            text: `Target gain: mean change of maximal torque inside the target, split between what causes it. ${causesInWords} Lands there: the part of all torque added that lies inside the target.`,
          },
        ],
      },
      {
        heading: 'What they differ in, and what makes the difference',
        blocks: [...differenceBlocks(compared), { kind: 'text', text: causeText(compared) }],
      },
      {
        heading: a.program.phases || b.program.phases ? 'First week of each phase' : 'First week',
        blocks: [weekBlock(compared)],
      },
      gainSection({ ...results, ranking: drawn }),
      ...singlesSections(compared),
    ],
  };
}

/** Which gives more in the target, and whether the model can tell. */
function verdict({ a, b, isTie, results, margins }: ProgramsCompared): string {
  const isFirst = a.landing.meanGain >= b.landing.meanGain;
  const [more, less] = isFirst ? [a, b] : [b, a];
  const { from, to } = results.question.target;
  const range = rangeDegrees(from, to);
  if (more.landing.meanGain < noticeable)
    return `Neither is expected to change torque inside ${range} noticeably.`;
  const said = (program: ProgramResult, margin: number) =>
    `${signedPercent(program.landing.meanGain)} (give or take ${percent(margin)})`;
  const [marginMore, marginLess] = isFirst ? margins : [margins[1], margins[0]];
  const weeks =
    a.weeks === b.weeks
      ? ` after ${plural(a.weeks, 'week')}`
      : `, each at its own end (${plural(more.weeks, 'week')} and ${plural(less.weeks, 'week')})`;
  const told = isTie
    ? 'They cannot be told apart: the difference is no larger than the model’s usual miss. Choose by time, equipment and what the athlete tolerates.'
    : 'They can be told apart: the difference is larger than the model’s usual miss.';
  return `"${more.name}" is expected to add more inside ${range}: about ${said(more, marginMore)} against ${said(less, marginLess)} of "${less.name}"${weeks}. ${told}`;
}

function numbersTable({ a, b }: ProgramsCompared): Block {
  const row = (head: string, say: (program: ProgramResult) => string) => [head, say(a), say(b)];
  const causes = [...a.targetShares.keys()].map((cause) =>
    row(`- ${shortCause[cause]}`, ({ targetShares }) =>
      signedPercent(targetShares.get(cause) ?? 0, 1),
    ),
  );
  return sideBySide('', [
    row('target gain', ({ landing }) => signedPercent(landing.meanGain, 1)),
    ...causes,
    row('lands there', ({ landing }) => percent(landing.hitShare)),
    row('minutes a week', ({ minutesPerWeek }) => minutesPerWeek.toFixed(0)),
    row('strongest angle after', ({ landing }) =>
      strongestCell([landing.peakAfter, landing.levelAfter]),
    ),
  ]);
}

const shortCause = {
  'neural drive': 'drive',
  'regional growth': 'growth',
  'sarcomeres in series': 'series',
} as const;

const sideBySide = (head: string, rows: readonly (readonly string[])[]): Block => ({
  kind: 'table',
  columns: [
    { head, align: 'left' },
    { head: 'a', align: 'right' },
    { head: 'b', align: 'right' },
  ],
  rows,
});

/** Each place with both values and what b's alone does to a's gain. */
function differenceBlocks({ differences, trials, a }: ProgramsCompared): Block[] {
  if (differences.length === 0) return [{ kind: 'text', text: 'In nothing but the name.' }];
  const rows = differences.map((one, i) => [
    one.place,
    one.a?.text ?? '-',
    one.b?.text ?? '-',
    aloneText(trials[i], a),
  ]);
  const columns = ['place', 'a', 'b', 'alone, points'].map(
    (head, i) => ({ head, align: i < 3 ? 'left' : 'right' }) as const,
  );
  return [{ kind: 'table', columns, rows }];
}

function aloneText(trial: Trial | undefined, { landing }: ProgramResult): string {
  if (!trial) return 'not tried';
  return trial.gain === undefined ? 'cannot be' : signedPoints(trial.gain - landing.meanGain);
}

/** The whole difference, and the first and the strongest of the places that alone make some of it. */
function causeText({ a, b, trials }: ProgramsCompared): string {
  const before = a.landing.meanGain;
  const points = signedPoints(b.landing.meanGain - before);
  const whole =
    points === '0'
      ? 'The target gains are equal, as far as they are shown.'
      : `From a to b the target gain changes by ${points} points.`;
  const moving = trials.flatMap(({ difference, gain }) =>
    gain !== undefined && signedPoints(gain - before) !== '0'
      ? [{ place: difference.place, by: gain - before }]
      : [],
  );
  const how = ' "Alone" says how far a’s gain moves if only this value of b is put into a.';
  const [first] = moving;
  if (!first) return `${whole}${how} None of them moves it.`;
  const most = moving.reduce((one, other) => (Math.abs(other.by) > Math.abs(one.by) ? other : one));
  const said = ({ place, by }: typeof first) => `${place} (${signedPoints(by)})`;
  const rest = most === first ? ', which also moves it most' : `; ${said(most)} moves it most`;
  return `${whole}${how} The first that moves it is ${said(first)}${moving.length > 1 ? rest : ', and it is the only one'}.`;
}

/** What is done in the first week, with its loads. */
function weekBlock({ a, b, results }: ProgramsCompared): Block {
  const lines = (letter: string, program: ProgramResult) =>
    program.program.work.flatMap((work, i) => {
      const planned = program.plan.exercises[i];
      const { sessionsPerWeek, from } = program.phases.find(({ places }) => places.includes(i)) ?? {
        ...program.program,
        from: 1,
      };
      const since = from > 1 ? ` from week ${from}` : '';
      const times = plural(sessionsPerWeek, 'time');
      return planned
        ? [
            `${letter}, ${times} a week${since}: ${exerciseLine(work, planned, results)}${shortfallSentence(program, i)}`,
          ]
        : [];
    });
  return { kind: 'list', items: [...lines('a', a), ...lines('b', b)] };
}

/** Singles over the ranges that the two programs or a test of the athlete know. */
function singlesSections({ a, b, results }: ProgramsCompared) {
  const rows = results.singlesBefore.flatMap(({ range, load }, i) => {
    if (!isOfInterest(range, [a, b], results)) return [];
    const after = [a, b].map(({ singlesAfter }) => singlesAfter[i]?.load ?? load);
    const changes = after.map((heaviest) => `${kilograms(heaviest)} (${changeOf(load, heaviest)})`);
    return [
      [`${range.lift.name} ${rangeDegrees(range.from, range.to)}`, kilograms(load), ...changes],
    ];
  });
  if (rows.length === 0) return [];
  const columns = ['lift', 'before', 'after a', 'after b'].map(
    (head, i) => ({ head, align: i === 0 ? 'left' : 'right' }) as const,
  );
  return [{ heading: 'Heaviest singles', blocks: [{ kind: 'table', columns, rows } as const] }];
}

function isOfInterest(
  range: Results['singlesBefore'][number]['range'],
  programs: readonly ProgramResult[],
  { scenario }: Results,
): boolean {
  const isSame = (lift: string, to: number) =>
    lift === range.lift.name && Math.abs(to - range.to) < 0.02;
  const worked = programs.flatMap(({ program }) => program.work);
  return [...worked, ...scenario.tests].some(
    (entry) => entry.kind === 'lift' && isSame(entry.lift, entry.to),
  );
}
