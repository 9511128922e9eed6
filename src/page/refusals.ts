import type { Step } from '../questions/stepAt.ts';
import type { Block } from './report.ts';
import { listInWords } from './words.ts';

/** Most reasons that are told in full, and most values named with each. */
const most = 3;

/** Which values have no answer and why, a sentence a reason; nothing if all have one. Steps that are
 * named alike are named once.
 */
export function refusals(steps: readonly { readonly at: string; readonly step: Step }[]): Block[] {
  const byReason = new Map<string, ReadonlySet<string>>();
  for (const { at, step } of steps)
    if (step.says !== undefined)
      byReason.set(step.says, new Set([...(byReason.get(step.says) ?? []), at]));
  const reasons = [...byReason].map(([says, at]) => [says, [...at]] as const);
  if (reasons.length === 0) return [];
  const items = reasons.slice(0, most).map(([says, at]) => `No answer at ${named(at)}: ${says}.`);
  const rest = reasons.slice(most).flatMap(([, at]) => at);
  if (rest.length > 0) items.push(`No answer at ${named(rest)} either, each for its own reason.`);
  return [{ kind: 'list', items }];
}

function named(at: readonly string[]): string {
  if (at.length <= most + 1) return listInWords(at);
  return `${at.slice(0, most).join(', ')} and ${at.length - most} more`;
}
