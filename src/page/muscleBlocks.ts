import type { ProgramResult, Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import type { Block } from './report.ts';
import { signedPercent } from './words.ts';

/** What becomes of the target's muscles themselves: sets, growth by region, fibre length. */
export function muscleBlocks({ question, ranking }: Results): Block[] {
  const { muscles } = actions[question.action];
  const [best, ...others] = ranking.map(({ program }) => program);
  if (!best) return [];
  if (!best.muscles.some(({ isKnown }) => isKnown))
    return [
      {
        kind: 'text',
        text: `The tables do not have the ${muscles}: they are taken to grow evenly and to keep their fibre length.`,
      },
    ];
  const { name, muscles: own } = best;
  const isEven = own.every(({ proximal, distal }) => proximal === distal);
  return [
    {
      kind: 'text',
      text: `What becomes of the ${muscles} themselves, all together by their size: effective sets in a mean week (counted by how much of its force a muscle gives), size, fibre length.`,
    },
    allTable([best, ...others]),
    {
      kind: 'text',
      text: `Each muscle that works for ${question.action}, by "${name}"${isEven ? '' : ' (size near its upper and its lower end)'}:`,
    },
    ownTable(own, isEven),
  ];
}

const right = (head: string) => ({ head, align: 'right' as const });
const changes = (shares: readonly number[]) => shares.map((share) => signedPercent(share, 1));

/** One row a program: means over the target's own muscles, weighed by their area. */
function allTable(programs: readonly ProgramResult[]): Block {
  return {
    kind: 'table',
    columns: [{ head: 'program', align: 'left' }, ...['sets', 'size', 'fibres'].map(right)],
    rows: programs.map(({ name, muscles }) => {
      const home = muscles.filter(({ isHome }) => isHome);
      const all = home.reduce((sum, { area }) => sum + area, 0);
      const mean = (of: (muscle: (typeof home)[number]) => number) =>
        home.reduce((sum, muscle) => sum + muscle.area * of(muscle), 0) / all;
      const size = mean(({ proximal, distal }) => (proximal + distal) / 2);
      return [
        name,
        mean(({ hardSets }) => hardSets).toFixed(1),
        ...changes([size, mean(({ fibre }) => fibre)]),
      ];
    }),
  };
}

/** One row a muscle; size near both ends only where they differ. */
function ownTable(muscles: ProgramResult['muscles'], isEven: boolean): Block {
  const sizes = isEven ? ['size'] : ['upper size', 'lower size'];
  return {
    kind: 'table',
    columns: [{ head: 'muscle', align: 'left' }, ...['sets', ...sizes, 'fibres'].map(right)],
    rows: muscles.map(({ name, hardSets, proximal, distal, fibre }) => [
      name,
      hardSets.toFixed(1),
      ...changes([...(isEven ? [proximal] : [proximal, distal]), fibre]),
    ]),
  };
}
