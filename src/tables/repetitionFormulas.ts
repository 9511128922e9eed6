/**
 * Published formulas for the heaviest single from a set to failure: load in any unit and repetitions
 * to the single in the same unit. All were fitted to bench presses, squats and leg presses with up
 * to about ten repetitions. Recalled, not read: authors, years and coefficients as the trade prints
 * them.
 */
export interface RepetitionFormula {
  readonly author: string;
  readonly year: number;
  readonly single: (load: number, reps: number) => number;
}

export const repetitionFormulas: readonly RepetitionFormula[] = [
  { author: 'Epley', year: 1985, single: (load, reps) => load * (1 + reps / 30) },
  { author: 'Brzycki', year: 1993, single: (load, reps) => (36 * load) / (37 - reps) },
  { author: 'Lander', year: 1985, single: (load, reps) => (100 * load) / (101.3 - 2.67123 * reps) },
  { author: 'Lombardi', year: 1989, single: (load, reps) => load * reps ** 0.1 },
  {
    author: 'Mayhew',
    year: 1992,
    single: (load, reps) => (100 * load) / (52.2 + 41.9 * Math.exp(-0.055 * reps)),
  },
  { author: 'O’Conner', year: 1989, single: (load, reps) => load * (1 + 0.025 * reps) },
  {
    author: 'Wathan',
    year: 1994,
    single: (load, reps) => (100 * load) / (48.8 + 53.8 * Math.exp(-0.075 * reps)),
  },
];

/** Beyond this endurance decides more than strength, and the formulas part ways (common practice). */
export const mostFormulaReps = 12;

/**
 * The heaviest single by the median of the seven formulas, with their least and most. A single
 * repetition is itself: most of the formulas add to it.
 *
 * @param reps whole, 1 to `mostFormulaReps`
 */
export function singleFromReps(
  load: number,
  reps: number,
): { readonly single: number; readonly least: number; readonly most: number } {
  if (reps === 1) return { single: load, least: load, most: load };
  const singles = repetitionFormulas.map(({ single }) => single(load, reps)).sort((a, b) => a - b);
  const [least = load, most = load] = [singles[0], singles.at(-1)];
  return { single: singles[(singles.length - 1) / 2] ?? load, least, most };
}
