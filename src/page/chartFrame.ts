import { toDegrees } from '../numeric/degrees.ts';
import type { Results } from '../run.ts';

/**
 * What every chart over the joint angle shares: the grid points that count for the target's action
 * (with their place in values by angle), the axis through them, and the target's band.
 */
export function chartFrame({ question, anglesDeg, reachDeg: [least, most] }: Results) {
  const shown = anglesDeg.flatMap((deg, i) => (deg >= least && deg <= most ? [{ deg, i }] : []));
  return {
    shown,
    xDeg: shown.map(({ deg }) => deg),
    band: {
      fromDeg: toDegrees(question.target.from),
      toDeg: toDegrees(question.target.to),
      name: 'target',
    },
  };
}
