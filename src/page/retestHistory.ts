import { type HistoryPoint, historyOf } from '../questions/retest/history.ts';
import type { JudgedRetest } from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import type { Section } from './report.ts';
import { newtonMetres } from './words.ts';

/** The target's torque over all occasions, where there are more than two. */
export function historyBlocks(results: Results, judged: readonly JudgedRetest[]): Section[] {
  const points = historyOf(results, judged);
  if (points.length < 3) return [];
  const band = ({ torque, error }: HistoryPoint) =>
    `${newtonMetres(torque - error)} to ${newtonMetres(torque + error)}`;
  return [
    {
      heading: 'Over time',
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
      ],
    },
  ];
}
