import type { Exercise } from './exercise.ts';
import type { Block } from './training.ts';

/** Some weeks of a block with a rhythm of their own. */
export interface Phase {
  readonly weeks: number;
  readonly sessionsPerWeek: number;
  /** Change of load from one week to the next, share; a phase starts with its loads as planned. */
  readonly progress: number;
  /** Weeks count from the phase's first. */
  readonly deloads: readonly { readonly week: number; readonly sets: number }[];
  /** Which of the block's exercises are done, by their places from 0; none in weeks off. */
  readonly places: readonly number[];
}

/** What one week of a block asks. */
export interface WeekPlan {
  /** Times that each written set is done. */
  readonly perWeek: number;
  /** Load over the planned one. */
  readonly progressed: number;
  readonly exercises: readonly { readonly exercise: Exercise; readonly place: number }[];
}

/**
 * Looks a week up: perWeek = sessions · share of sets that stays, progressed = (1 + progress)^(w − 1)
 * with w the week within its phase.
 *
 * @param week from 1; after the last phase nothing is done
 */
export function weekPlan(block: Block, week: number): WeekPlan {
  const all = block.exercises.map((exercise, place) => ({ exercise, place }));
  if (!block.phases) return planIn(block, week, all);
  let within = week;
  for (const phase of block.phases) {
    if (within <= phase.weeks)
      return planIn(
        phase,
        within,
        all.filter(({ place }) => phase.places.includes(place)),
      );
    within -= phase.weeks;
  }
  return { perWeek: 0, progressed: 1, exercises: [] };
}

function planIn(
  { sessionsPerWeek, progress, deloads }: Omit<Phase, 'weeks' | 'places'>,
  week: number,
  exercises: WeekPlan['exercises'],
): WeekPlan {
  const sets = deloads.find((entry) => entry.week === week)?.sets ?? 1;
  return {
    perWeek: sessionsPerWeek * sets,
    progressed: (1 + progress) ** (week - 1),
    exercises,
  };
}
