import type { Family } from './calibrationValues.ts';
import type { EvidenceResults } from './evidenceResults.ts';
import { type KindOfWork, kindsOfWork } from './kindsOfWork.ts';

/** How the left-out predictions of one kind of work and finding lie against what was found. */
export interface ErrorOfKind {
  readonly kind: KindOfWork;
  readonly family: Family;
  readonly studies: number;
  readonly count: number;
  /** Means, points. */
  readonly predicted: number;
  readonly observed: number;
  /** Findings whose prediction was too high. */
  readonly tooHigh: number;
}

const families = ['strength', 'growth', 'fibres'] as const;

/** One row a kind and finding, where it has any that was scored. */
export function errorsByKind({ studies }: Pick<EvidenceResults, 'studies'>): ErrorOfKind[] {
  return kindsOfWork.flatMap((kind) =>
    families.flatMap((family) => {
      const scored = studies
        .filter(({ name }) => kind.studies.includes(name))
        .flatMap(({ name, groups }) =>
          groups.flatMap(({ outcomes }) =>
            outcomes.flatMap(({ family: own, predicted, observed }) =>
              own === family && predicted !== undefined && observed !== undefined
                ? [{ name, predicted, observed }]
                : [],
            ),
          ),
        );
      if (scored.length === 0) return [];
      const mean = (of: (one: (typeof scored)[number]) => number) =>
        scored.reduce((sum, one) => sum + of(one), 0) / scored.length;
      return [
        {
          ...{ kind, family },
          studies: new Set(scored.map(({ name }) => name)).size,
          count: scored.length,
          predicted: mean(({ predicted }) => predicted),
          observed: mean(({ observed }) => observed),
          tooHigh: scored.filter(({ predicted, observed }) => predicted > observed).length,
        },
      ];
    }),
  );
}

/**
 * Whether a kind errs one way: at least two studies and three findings, the means a factor of 1.4
 * apart, and nine in ten findings on the same side (working values).
 */
export function errsOneWay({ studies, count, predicted, observed, tooHigh }: ErrorOfKind): boolean {
  const ratio = Math.max(predicted, 0.1) / Math.max(observed, 0.1);
  const side = Math.max(tooHigh, count - tooHigh) / count;
  return studies >= 2 && count >= 3 && Math.max(ratio, 1 / ratio) >= 1.4 && side >= 0.9;
}
