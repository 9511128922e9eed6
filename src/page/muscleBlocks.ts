import type { ProgramResult, Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import type { Block } from './report.ts';
import { signedPercent } from './words.ts';

/** What becomes of the target's muscles themselves: growth by region, fibre length. */
export function muscleBlocks({ athlete, question, ranking }: Results): Block[] {
  const { action } = question;
  const { muscles } = actions[action];
  const programs = ranking.map(({ program }) => program);
  const isWhole = athlete.groups[action].heads.length === 0;
  if (isWhole)
    return [
      {
        kind: 'text',
        text: `Of the ${muscles} the tables have no heads: they are taken to grow evenly and to keep their fibre length.`,
      },
    ];
  return [
    {
      kind: 'text',
      text: `The ${muscles} themselves, near the hip (proximal) and near the knee (distal). The model gives all four heads the same change.`,
    },
    muscleTable(programs, action),
  ];
}

function muscleTable(
  programs: readonly ProgramResult[],
  action: Results['question']['action'],
): Block {
  const right = (head: string) => ({ head, align: 'right' as const });
  return {
    kind: 'table',
    columns: [
      { head: 'program', align: 'left' },
      right('size proximal'),
      right('size distal'),
      right('fibre length'),
    ],
    rows: programs.map(({ name, state }) => {
      // Heads are alike: the first stands for all.
      const head = state.changes[action].heads[0];
      const [proximal = 0, distal = 0] = head?.growth ?? [];
      const fibre = (head?.lengthened ?? 0) - (head?.shortened ?? 0);
      return [name, ...[proximal, distal, fibre].map((change) => signedPercent(change, 1))];
    }),
  };
}
