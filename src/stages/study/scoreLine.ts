import type { FindingRow } from '../../inference/calibration/finding.ts';
import {
  type Contrast,
  contrastsOf,
  type Directions,
  directionsOf,
  scoreOf,
} from '../../inference/calibration/scores.ts';
import type { DirectionLine, ScoreLine } from '../../tables/evidenceResults.ts';

/** A number with as many decimals. */
export const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/** How one way to predict the rows does. */
export function scoreLine(
  name: string,
  kind: ScoreLine['kind'],
  rows: readonly FindingRow[],
  predicted: readonly number[],
): ScoreLine {
  const of = (family: keyof ScoreLine['families']) => {
    const { count, miss, relative, weightedMiss, shapeMiss } = scoreOf(rows, predicted, family);
    return {
      count,
      miss: rounded(miss, 1),
      relative: rounded(relative, 2),
      weightedMiss: rounded(weightedMiss, 1),
      shapeMiss: rounded(shapeMiss, 1),
    };
  };
  const contrasts = contrastsOf(rows, predicted);
  const families = {
    strength: of('strength'),
    growth: of('growth'),
    fibres: of('fibres'),
    optimum: of('optimum'),
  };
  if (contrasts.every((one) => one.predicted === 0)) return { name, kind, families };
  return {
    name,
    kind,
    families,
    directions: directionLine(contrasts),
    strengthDirections: directionLine(contrasts.filter(({ family }) => family === 'strength')),
  };
}

function directionLine(contrasts: readonly Contrast[]): DirectionLine {
  const { interval, ...counted }: Directions = directionsOf(contrasts);
  const [low, high] = interval;
  return {
    right: counted.right,
    count: counted.count,
    low: rounded(low, 2),
    high: rounded(high, 2),
    weighted: rounded(counted.weighted, 2),
    meanOfStudies: rounded(counted.meanOfStudies, 2),
    studies: counted.studies,
  };
}
