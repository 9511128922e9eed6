/** What a time estimate needs to know of one exercise; seconds. */
export type Timed = {
  readonly sets: number;
  readonly reps: number;
  /** Between sets. */
  readonly rest: number;
  /** True where a set works one side and is done again with the other. */
  readonly oneSided?: boolean;
} & (
  | { readonly kind: 'lift'; readonly tempo: readonly [number, number, number] }
  | { readonly kind: 'hold'; readonly seconds: number }
  /** Radians, and radians a second. */
  | {
      readonly kind: 'isokinetic';
      readonly from: number;
      readonly to: number;
      readonly speed: number;
    }
);

/** Seconds to change from one exercise to the next (1–2 minutes, common practice). */
const changeover = 90;

/** Seconds to let go between the efforts of one set of holds (working value). */
const betweenHolds = 10;

/**
 * Minutes a week: work, rest between sets (not after the last) and changes of exercise. Warm-up
 * is left out. One-sided work is done with one side and then the other, with the rest after each
 * (common practice); sides that alternate without resting take less.
 *
 * Check: 5 × 5 at 4 s with 180 s between sets is 820 s, for one side after the other 1820 s.
 */
export function minutesPerWeek(sessions: number, exercises: readonly Timed[]): number {
  const seconds = exercises.reduce(
    (sum, exercise) => {
      const sets = exercise.oneSided ? 2 * exercise.sets : exercise.sets;
      return sum + sets * setSeconds(exercise) + (sets - 1) * exercise.rest;
    },
    changeover * Math.max(exercises.length - 1, 0),
  );
  return (sessions * seconds) / 60;
}

function setSeconds(exercise: Timed): number {
  if (exercise.kind === 'hold')
    return exercise.reps * exercise.seconds + (exercise.reps - 1) * betweenHolds;
  // There and back: worked in one way only, the machine is taken to go back as fast.
  if (exercise.kind === 'isokinetic')
    return (exercise.reps * 2 * (exercise.to - exercise.from)) / exercise.speed;
  // What is lowered only is brought back by others in the time of lifting.
  const [lowering, pause, lifting] = exercise.tempo;
  return exercise.reps * (lowering + pause + lifting);
}
