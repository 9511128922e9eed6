import type { ProgramResult, Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import { gainMiss } from '../tables/adaptation.ts';
import { chartFrame } from './chartFrame.ts';
import type { Block, Chart, Section } from './report.ts';
import { strongest } from './strongestAngle.ts';
import { type TorquePoint, torqueRows } from './torqueRows.ts';
import { newtonMetres, percent, rangeText } from './words.ts';

/** N·m: less rounds to no change. */
const leastChange = 0.5;

/**
 * The strength curve of the target's action before training and after the best program. The others
 * are left out: most curves lie within a row or two of the chart, and more than two merge.
 */
export function torqueSection(results: Results): Section {
  const [best] = results.ranking;
  return {
    heading: 'Torque before and after',
    blocks: best ? curveBlocks(best.program, results) : [{ kind: 'text', text: 'No program.' }],
  };
}

function curveBlocks(program: ProgramResult, results: Results): Block[] {
  const points = pointsOf(program, results);
  if (points.every(({ before, after }) => Math.abs(after - before) < leastChange)) {
    const text = `"${program.name}" leaves the torque at every angle as it is.`;
    return [{ kind: 'text', text }];
  }
  return [
    { kind: 'text', text: strongestSentence(program, points) },
    { kind: 'chart', chart: torqueChart(program, points, results) },
    torqueTable(points, results),
    { kind: 'text', text: howRough(results) },
  ];
}

const fitOf = ({ fits, question }: Results) =>
  fits.find(({ action }) => action === question.action);

function pointsOf({ torqueAfter }: ProgramResult, results: Results): TorquePoint[] {
  const { torque } = results.athlete.groups[results.question.action];
  return chartFrame(results).shown.map(({ deg, i }) => ({
    deg,
    before: torque[i] ?? 0,
    after: torqueAfter[i] ?? 0,
  }));
}

/** Where the curve is highest, and how high. */
function strongestSentence({ name, landing }: ProgramResult, points: readonly TorquePoint[]) {
  const { peakBefore, levelBefore, peakAfter, levelAfter } = landing;
  const told = (peak: number, level: typeof levelBefore, torques: readonly number[]) =>
    `${strongest([peak, level])} (${level ? 'up to ' : ''}${newtonMetres(Math.max(...torques))})`;
  const before = told(
    peakBefore,
    levelBefore,
    points.map((point) => point.before),
  );
  const after = told(
    peakAfter,
    levelAfter,
    points.map((point) => point.after),
  );
  return `Before training the athlete is ${before}, and after "${name}" ${after}.`;
}

function torqueChart(
  { name }: ProgramResult,
  points: readonly TorquePoint[],
  results: Results,
): Chart {
  return {
    title: `${results.question.action} torque, one side (N·m)`,
    x: points.map(({ deg }) => deg),
    series: [
      { name: 'before training', y: points.map(({ before }) => before) },
      { name: `after "${name}"`, y: points.map(({ after }) => after) },
    ],
    band: chartFrame(results).band,
  };
}

function torqueTable(points: readonly TorquePoint[], results: Results): Block {
  const { fromDeg, toDeg } = chartFrame(results).band;
  const tested = (fitOf(results)?.measured ?? []).map(({ deg }) => deg);
  const rows = torqueRows(points, tested, [fromDeg, toDeg]);
  const right = (head: string) => ({ head, align: 'right' as const });
  return {
    kind: 'table',
    columns: [
      { head: `${actions[results.question.action].joint} angle`, align: 'left' },
      ...['before', 'after', 'difference'].map(right),
    ],
    rows: rows.map(({ deg, isTested, before, after, difference, digits }) => [
      `${rangeText(deg, deg)}°${isTested ? ' (tested)' : ''}`,
      ...[before, after].map((torque) => `${torque.toFixed(digits)} N·m`),
      `${difference > 0 ? '+' : ''}${difference.toFixed(digits)} N·m`,
    ]),
  };
}

/** The same miss as that of the gains: a torque after is one before and its gain. */
function howRough(results: Results): string {
  const before = fitOf(results)
    ? 'the curve fitted to the tests, which leans on tables beyond the tested angles'
    : 'that of the mean person';
  return `The torque before is ${before}. The difference is as rough as the gain in per cent: give or take ${percent(gainMiss.value)} of it.`;
}
