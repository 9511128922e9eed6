import type { Family } from '../../tables/calibrationValues.ts';
import type { FindingRow } from './finding.ts';
import { groupedBy } from './groupedBy.ts';

/** How predictions of left-out studies compare with what was observed. */
export interface Score {
  readonly count: number;
  /** Root mean square miss, points (degrees for an optimum), and over that of what was observed. */
  readonly miss: number;
  readonly relative: number;
  /** The same with every group counted as its effective number of findings. */
  readonly weightedMiss: number;
  /** Of predictions and observations each less their mean in the study. */
  readonly shapeMiss: number;
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / Math.max(values.length, 1));

/** Misses of one family. */
export function scoreOf(
  rows: readonly FindingRow[],
  predicted: readonly number[],
  family: Family,
): Score {
  const own = rows.flatMap((row, i) =>
    row.family === family ? [{ row, miss: row.observed - (predicted[i] ?? 0) }] : [],
  );
  const miss = rms(own.map((one) => one.miss));
  const weights = own.reduce((sum, { row }) => sum + row.weight, 0);
  const weighted = own.reduce((sum, one) => sum + one.row.weight * one.miss ** 2, 0);
  const shape = groupedBy(own, ({ row }) => row.study).flatMap((ofStudy) => {
    const mean = ofStudy.reduce((sum, one) => sum + one.miss, 0) / ofStudy.length;
    return ofStudy.length > 1 ? ofStudy.map((one) => one.miss - mean) : [];
  });
  return {
    count: own.length,
    miss,
    relative: miss / rms(own.map(({ row }) => row.observed)),
    weightedMiss: Math.sqrt(weighted / weights),
    shapeMiss: rms(shape),
  };
}

/** A difference of the same finding between two groups of one study. */
export interface Contrast {
  readonly study: number;
  readonly family: Family;
  readonly what: string;
  readonly groups: readonly [number, number];
  readonly observed: number;
  readonly error: number;
  readonly predicted: number;
  /** The larger of the two predictions. */
  readonly larger: number;
}

/** Every pair of groups of a study that were measured alike. */
export function contrastsOf(rows: readonly FindingRow[], predicted: readonly number[]): Contrast[] {
  return rows.flatMap((a, i) =>
    rows.flatMap((b, j) => {
      const pair = j > i && b.study === a.study && b.group !== a.group && b.what === a.what;
      if (!pair) return [];
      const [pa, pb] = [predicted[i] ?? 0, predicted[j] ?? 0];
      return [
        {
          study: a.study,
          family: a.family,
          what: a.what,
          groups: [a.group, b.group] as const,
          observed: a.observed - b.observed,
          error: Math.hypot(a.error, b.error),
          predicted: pa - pb,
          larger: Math.max(pa, pb),
        },
      ];
    }),
  );
}

/** Differences below this, points, are not asked for their direction. */
export const clearDifference = 4;

/** How often the direction of clear differences is right. */
export interface Directions {
  readonly right: number;
  readonly count: number;
  /** 95 % interval of the share (Wilson 1927), as if all were independent. */
  readonly interval: readonly [number, number];
  /** Share right with each weighed by 1/error². */
  readonly weighted: number;
  /** Mean over studies of the share right in each. */
  readonly meanOfStudies: number;
  readonly studies: number;
}

const isRight = ({ observed, predicted }: Contrast) => observed * predicted > 0;

/** Directions of the clear ones among contrasts; an optimum's degrees are not points and stay out. */
export function directionsOf(contrasts: readonly Contrast[]): Directions {
  const clear = contrasts.filter(
    ({ observed, family }) => family !== 'optimum' && Math.abs(observed) >= clearDifference,
  );
  const right = clear.filter(isRight).length;
  const weight = ({ error }: Contrast) => 1 / error ** 2;
  const sum = (of: readonly Contrast[]) => of.reduce((total, one) => total + weight(one), 0);
  const byStudy = groupedBy(clear, ({ study }) => study);
  const shares = byStudy.map((own) => own.filter(isRight).length / own.length);
  return {
    right,
    count: clear.length,
    interval: wilson(right, clear.length),
    weighted: sum(clear.filter(isRight)) / sum(clear),
    meanOfStudies: shares.reduce((total, share) => total + share, 0) / shares.length,
    studies: byStudy.length,
  };
}

/**
 * Interval of a share k/n (Wilson 1927, J Am Stat Assoc 22:209).
 *
 * @param z normal quantile; 1.96 for 95 %
 */
export function wilson(k: number, n: number, z = 1.96): readonly [number, number] {
  const share = k / n;
  const middle = share + z ** 2 / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + z ** 2 / (4 * n ** 2));
  const scale = 1 + z ** 2 / n;
  return [(middle - half) / scale, (middle + half) / scale];
}
