import type { ProgramResult, Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import type { Block } from './report.ts';
import { signedPercent } from './words.ts';

/** What becomes of the target's muscles themselves: sets, growth by region, fibre length. */
export function muscleBlocks({ question, ranking }: Results): Block[] {
  const { muscles, joint } = actions[question.action];
  const [best, ...others] = ranking.map(({ program }) => program);
  if (!best) return [];
  if (!best.muscles.some(({ isKnown }) => isKnown))
    return [
      {
        kind: 'text',
        text: `The tables do not have the ${muscles}: they are taken to grow evenly and to keep their fibre length.`,
      },
    ];
  const programs = [best, ...others].slice(0, shown);
  return [
    {
      kind: 'text',
      text: `What becomes of the muscles that work for ${question.action} themselves: effective sets a week (hard sets counted by how much of its force the muscle gives), size near the upper and the lower end, fibre length.${more(ranking.length)} Only the knee extensors are taken to grow differently along their length; what the tables of muscles at the ${joint} say is in large part recalled.`,
    },
    ...programs.flatMap((program) => table(program)),
  ];
}

/** Programs whose muscles are shown. */
const shown = 2;

const more = (count: number) => (count > shown ? ` The first ${shown} programs are shown.` : '');

function table(program: ProgramResult): Block[] {
  const right = (head: string) => ({ head, align: 'right' as const });
  return [
    {
      kind: 'table',
      columns: [
        { head: program.name, align: 'left' },
        right('sets'),
        right('upper'),
        right('lower'),
        right('fibres'),
      ],
      rows: program.muscles.map(({ name, hardSets, proximal, distal, fibre }) => [
        name,
        hardSets.toFixed(1),
        ...[proximal, distal, fibre].map((change) => signedPercent(change, 1)),
      ]),
    },
  ];
}
