import type { FindingRow } from './finding.ts';

/** A plain rule that predicts a row from other rows. */
export interface Baseline {
  readonly name: string;
  readonly predict: (row: FindingRow, others: readonly FindingRow[]) => number;
}

/** Weighted mean of what was observed. */
function meanOf(rows: readonly FindingRow[]): number {
  const weights = rows.reduce((sum, { weight }) => sum + weight, 0);
  return rows.reduce((sum, { weight, observed }) => sum + weight * observed, 0) / weights;
}

const alike = ({ family }: FindingRow, others: readonly FindingRow[]) =>
  others.filter((other) => other.family === family);

const trainingMean = (row: FindingRow, others: readonly FindingRow[]) => {
  const same = alike(row, others);
  return same.length > 0 ? meanOf(same) : 0;
};

const byStatus = (row: FindingRow, others: readonly FindingRow[]) => {
  const same = alike(row, others).filter(({ trained }) => trained === row.trained);
  return same.length > 0 ? meanOf(same) : trainingMean(row, others);
};

/** Widths tried for the bell, degrees. */
const widths = Array.from({ length: 39 }, (_, i) => 10 + 5 * i);

const bellAt = (awayDeg: number, width: number) => Math.exp(-0.5 * (awayDeg / width) ** 2);

/**
 * Gain = A·exp(−(distance/w)²/2), the distance that from the middle of the tested to the nearest
 * middle of the trained ranges; A by least squares for each of many widths. A test without angles
 * counts as one at the trained angle; what has no angle at all (size, fibre length) gets the mean.
 */
function bell(row: FindingRow, others: readonly FindingRow[]): number {
  if (row.family !== 'strength') return trainingMean(row, others);
  const { height, width } = bellOf(alike(row, others));
  return height * bellAt(row.awayDeg ?? 0, width);
}

function bellOf(rows: readonly FindingRow[]): { height: number; width: number } {
  let best = { height: 0, width: 0, squares: Number.POSITIVE_INFINITY };
  for (const width of widths) {
    const at = ({ awayDeg = 0 }: FindingRow) => bellAt(awayDeg, width);
    const sum = (term: (row: FindingRow) => number) =>
      rows.reduce((total, row) => total + row.weight * term(row), 0);
    const height = sum((row) => row.observed * at(row)) / sum((row) => at(row) ** 2);
    const squares = sum((row) => (row.observed - height * at(row)) ** 2);
    if (squares < best.squares) best = { height, width, squares };
  }
  return best;
}

/** What the model is held against. */
export const baselines: readonly Baseline[] = [
  { name: 'the mean of all others', predict: trainingMean },
  { name: 'the mean of others equally trained', predict: byStatus },
  { name: 'a bell around the trained angle', predict: bell },
];

/** Every row by a baseline that has not seen its study. */
export function baselineWithout({ predict }: Baseline, rows: readonly FindingRow[]): number[] {
  return rows.map((row) =>
    predict(
      row,
      rows.filter(({ study }) => study !== row.study),
    ),
  );
}
