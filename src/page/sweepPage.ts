import { cellText } from '../notebook/formula/cellText.ts';
import type { Sweep } from '../questions/sweep.ts';
import type { Block, Report } from './report.ts';

/** A sweep as a table, one row a value, and a chart of the first formula if it gives numbers. */
export function sweepPage({ place, written, formulas, steps }: Sweep): Report {
  const rows = steps.map(({ value, answers, says }) => [
    value === written ? `${value} (as written)` : value,
    ...(says === undefined ? answers.map(cellText) : [says, ...formulas.slice(1).map(() => '')]),
  ]);
  return {
    title: `${place} varied`,
    sections: [
      {
        heading: 'Values',
        blocks: [
          {
            kind: 'table',
            columns: [
              { head: place, align: 'left' },
              ...formulas.map((head) => ({ head, align: 'right' }) as const),
            ],
            rows,
          },
          ...bestOf(steps, formulas),
        ],
      },
    ],
  };
}

/** Where the first formula is largest and smallest; nothing for texts and lists. */
function bestOf(steps: Sweep['steps'], [formula = '']: readonly string[]): Block[] {
  const numbers = steps.flatMap(({ value, answers: [answer] }) =>
    answer && typeof answer.value === 'number' ? [{ value, answer, y: answer.value }] : [],
  );
  if (numbers.length < 2) return [];
  const most = numbers.reduce((a, b) => (b.y > a.y ? b : a));
  const least = numbers.reduce((a, b) => (b.y < a.y ? b : a));
  const said =
    most.y === least.y
      ? `${formula} does not change.`
      : `${formula} is largest at ${most.value} (${cellText(most.answer)}) and smallest at ${least.value} (${cellText(least.answer)}).`;
  return [{ kind: 'text', text: said }];
}
