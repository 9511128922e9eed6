import { muscles } from '../../tables/muscles.ts';
import type { Sourced } from '../../tables/sourced.ts';
import { type TraceNode, tableNode } from './traceNode.ts';

/** The table rows of one muscle at one of its joints. */
export function muscleNode(name: string, joint: string): TraceNode {
  const muscle = muscles.find((entry) => entry.name === name);
  if (!muscle) throw new Error(`no muscle "${name}"`);
  const rows: readonly (readonly [
    what: string,
    row: Omit<Sourced, 'value' | 'unit' | 'spread'>,
  ])[] = [
    ...Object.entries(muscle.arms).flatMap(([one, arm]) =>
      one === joint ? [[`lever of its tendon at the ${joint}`, arm] as const] : [],
    ),
    ['length of its fibres', muscle.fibreLength],
    ['resting length of its sarcomeres', muscle.restingSarcomere],
    ['stretch of fibres against tendon', muscle.gear],
    ['shortening of fibres when active', muscle.shortening],
  ];
  return {
    what: `the ${name} at the ${joint}`,
    parts: rows.map(([what, row]) => tableNode({ ...row, what })),
  };
}
