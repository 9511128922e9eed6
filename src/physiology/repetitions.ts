import { piecewiseLinear } from '../numeric/interpolation.ts';
import { repetitionChart } from '../tables/repetitionChart.ts';

const { reps: charted, share: shares } = repetitionChart;
const repsByShare = piecewiseLinear([...shares].reverse(), [...charted].reverse());
const shareByReps = piecewiseLinear(charted, shares);
const lightest = shares[shares.length - 1] ?? 0;
const mostCharted = charted[charted.length - 1] ?? 0;

/**
 * Repetitions possible with a load, from its share of the one-repetition maximum.
 *
 * The textbook chart down to 65 %; below it the repetitions grow as 1/share − 1 (Epley's form),
 * joined to the chart's end. A load above the maximum allows none.
 */
export function possibleRepetitions(share: number): number {
  if (share > 1) return 0;
  if (share >= lightest) return repsByShare(share);
  return (mostCharted * (1 / share - 1)) / (1 / lightest - 1);
}

/** Share of the one-repetition maximum that allows just so many repetitions (inverse of the above). */
export function shareForRepetitions(reps: number): number {
  if (reps <= mostCharted) return shareByReps(reps);
  return 1 / (1 + (reps / mostCharted) * (1 / lightest - 1));
}
