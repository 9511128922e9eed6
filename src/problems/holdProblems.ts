import type { HoldWork } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import type { HeldLoad } from '../physiology/planHold.ts';
import { degreesOf } from './amounts.ts';

/** What is wrong with holding a lift at an angle. */
export function holdProblems(
  source: Source,
  work: HoldWork,
  { state, effort, action }: HeldLoad,
): Problem[] {
  if (state === 'found') return [];
  const at = degreesOf(work.at);
  const messages = {
    unbalanced: `the ${work.of} cannot be held in balance at ${at}`,
    'nothing asked': `no weight makes the ${work.of} hard to hold at ${at}: it hangs or stands over the joint`,
    'too heavy': `the ${work.of} cannot be held at ${at}: the body alone asks ${Math.round(100 * effort)} % of what the muscles can give`,
  };
  return [
    {
      code: 'empty-hold',
      message: messages[state],
      at: source.at([...work.path, 'at']),
      hint: `choose another angle, or hold the joint action itself${action === undefined ? '' : ` (hold: ${action})`}`,
    },
  ];
}
