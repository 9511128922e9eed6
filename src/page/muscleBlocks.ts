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
  const programs = [best, ...others].slice(0, shown);
  const isEven = programs.every((program) =>
    program.muscles.every(({ proximal, distal }) => proximal === distal),
  );
  return [
    {
      kind: 'text',
      text: `What becomes of the muscles that work for ${question.action}: effective sets a week (hard sets counted by how much of its force the muscle gives), size${isEven ? ', even along the muscle' : ' near its upper and its lower end'}, fibre length.${more(ranking.length)}`,
    },
    ...programs.map((program) => table(program, isEven)),
  ];
}

/** Programs whose muscles are shown. */
const shown = 2;

const more = (count: number) => (count > shown ? ` The first ${shown} programs are shown.` : '');

/** One row a muscle; size near both ends only where they differ. */
function table({ name: program, muscles }: ProgramResult, isEven: boolean): Block {
  const right = (head: string) => ({ head, align: 'right' as const });
  const sizes = isEven ? ['size'] : ['size, upper', 'lower'];
  return {
    kind: 'table',
    columns: [{ head: program, align: 'left' }, ...['sets', ...sizes, 'fibres'].map(right)],
    rows: muscles.map(({ name, hardSets, proximal, distal, fibre }) => [
      name,
      hardSets.toFixed(1),
      ...[...(isEven ? [proximal] : [proximal, distal]), fibre].map((change) =>
        signedPercent(change, 1),
      ),
    ]),
  };
}
