import type { Outcome } from '../../notebook/study/study.ts';
import { toDegrees } from '../../numeric/degrees.ts';

const deg = (angle: number) => `${Math.round(toDegrees(angle))}`;

/** An outcome in a few words; the same for groups that can be compared. */
export function outcomeWords(outcome: Outcome, afterWeeks?: number): string {
  const after = afterWeeks === undefined ? '' : ` after ${afterWeeks} weeks`;
  return `${kindWords(outcome)}${after}`;
}

function kindWords(outcome: Outcome): string {
  const { of } = outcome;
  switch (outcome.kind) {
    case 'isometric':
      return `hold, ${of} ${angles(outcome.from, outcome.to)}`;
    case 'single':
      return `single, ${of} ${angles(outcome.from, outcome.to)}`;
    case 'repetition maximum':
      return `${outcome.reps} RM, ${of} ${angles(outcome.from, outcome.to)}`;
    case 'isokinetic': {
      const way = outcome.way === 'both' ? 'lifting and lowering' : outcome.way;
      const where =
        outcome.from === undefined ? 'peak' : angles(outcome.from, outcome.to ?? outcome.from);
      return `set speed ${way}, ${of} ${where}`;
    }
    case 'growth':
      return `${outcome.measure}, ${of}${part(outcome)}`;
    case 'fibres':
      return `fibre length, ${of}${part(outcome)}`;
    case 'optimum':
      return `strongest angle, ${of}`;
    case 'arm':
      return `tendon arm, ${of}`;
  }
}

function angles(from: number, to: number): string {
  return from === to ? `${deg(from)}°` : `${deg(Math.min(from, to))}–${deg(Math.max(from, to))}°`;
}

function part({ place, region }: { readonly place?: number; readonly region?: string }): string {
  if (place !== undefined) return ` at ${Math.round(100 * place)} %`;
  return region === undefined ? '' : `, ${region}`;
}
