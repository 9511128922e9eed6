import type { HistoryPoint } from '../questions/retest/history.ts';
import type { History } from '../questions/retest/judgeRetests.ts';
import type { Block, Section } from './report.ts';
import { setUpName } from './setUpName.ts';
import { newtonMetres } from './words.ts';

/** The target's torque over all occasions, where there are more than two. */
export function historyBlocks({ apart, points }: History): Section[] {
  if (points.length < 3) return [];
  const band = ({ low, high }: HistoryPoint) => `${newtonMetres(low)} to ${newtonMetres(high)}`;
  const name = setUpName(apart);
  return [
    {
      heading: `Over time${name === '' ? '' : `: ${name}`}`,
      blocks: [
        {
          kind: 'text',
          text: `Mean torque of the target’s angles that were tested every time, with the range in which the true one lies in 19 of 20 cases.`,
        },
        {
          kind: 'table',
          columns: [
            { head: 'day', align: 'left' },
            { head: 'torque', align: 'right' },
            { head: 'between', align: 'right' },
          ],
          rows: points.map((point) => [point.day, newtonMetres(point.torque), band(point)]),
        },
        ...chartOf(points),
      ],
    },
  ];
}

/** Torque over weeks; nothing where a day is not known. */
function chartOf(points: readonly HistoryPoint[]): Block[] {
  const x = points.flatMap(({ after }) => (after === undefined ? [] : [after / 7]));
  if (x.length < points.length) return [];
  return [
    {
      kind: 'chart',
      chart: {
        title: 'torque of the target (N·m)',
        x,
        axis: 'weeks since the first test',
        series: [
          { name: 'measured', mark: 'o', y: points.map(({ torque }) => torque) },
          {
            name: 'edges of its range',
            mark: '-',
            y: points.map(({ low }) => low),
          },
          {
            name: 'edges of its range',
            mark: '-',
            y: points.map(({ high }) => high),
          },
        ],
      },
    },
  ];
}
