import type { Demand } from '../mechanics/demand.ts';
import type { ActionName } from '../tables/actions.ts';
import type { Athlete } from './athlete.ts';
import { demandsOver, type Range } from './heaviestLoad.ts';
import type { IsokineticExercise } from './isokinetic.ts';
import type { Efforts } from './jointEfforts.ts';
import { possibleRepetitions } from './repetitions.ts';
import { sharedAndLeast } from './sharing.ts';
import { restingCapacity } from './trainedState.ts';

/** A lift done for repetitions. */
export interface LiftExercise {
  readonly kind: 'lift';
  readonly range: Range;
  /** kg in the first week, and the heaviest single of the same range before training. */
  readonly load: number;
  readonly heaviest: number;
  readonly sets: number;
  readonly reps: number;
  /** Seconds lowering, held at the bottom, lifting. */
  readonly tempo: readonly [number, number, number];
  /** Nothing is lifted: `load` and `heaviest` are of the way down, and others bring it back. */
  readonly lowerOnly?: true;
  /** Where more is lowered than lifted: kg in the first week, and the most that can be lowered. */
  readonly lowering?: { readonly load: number; readonly heaviest: number } | undefined;
}

/** A hold: of one joint's action, or of a lift with a load (kg) that asks the effort. */
export interface HoldExercise {
  readonly kind: 'hold';
  readonly of: { readonly action: ActionName } | { readonly range: Range; readonly load: number };
  /** Radians. */
  readonly at: number;
  readonly effort: number;
  readonly sets: number;
  readonly reps: number;
  readonly seconds: number;
}

export type Exercise = LiftExercise | HoldExercise | IsokineticExercise;

/** One posture on the way through a repetition: the share of the range it stands for and efforts. */
export interface Sample {
  readonly share: number;
  readonly leading: number;
  readonly asked: Demand;
  /** Share of its best that each action gives, fresh, muscles over two joints sharing. */
  readonly effort: Efforts;
  /** The same of each muscle of the tables, in their order. */
  readonly muscles: readonly number[];
  /** Least share of their best with which all muscles together carry it; 1 is the heaviest. */
  readonly whole: number;
}

/**
 * Efforts along a range with a load (kg), fresh.
 *
 * @param strength measured over predicted strength in this lift; divides every effort
 * @returns one sample a grid angle; empty if a posture cannot be balanced
 */
export function samplesOf(
  range: Range,
  athlete: Athlete,
  load: number,
  strength: number,
): Sample[] {
  const capacity = restingCapacity(athlete);
  const asks = demandsOver(range, athlete.body, load);
  const samples: Sample[] = [];
  for (const [i, { leading, asked }] of asks.entries()) {
    if ('impossible' in asked) return [];
    const before = asks[i - 1]?.leading ?? leading;
    const after = asks[i + 1]?.leading ?? leading;
    const { shared, least } = sharedAndLeast(asked, capacity, strength);
    samples.push({
      share: (after - before) / 2 / (range.to - range.from),
      leading,
      asked,
      effort: shared.actions,
      muscles: shared.muscles,
      whole: least / strength,
    });
  }
  return samples;
}

/** Largest share of their best that the muscles need along the samples. */
export function hardestEffort(samples: readonly Sample[]): number {
  return Math.max(0, ...samples.map(({ whole }) => whole));
}

/**
 * Share of capacity left at each repetition of a set that is really done.
 *
 * Capacity falls evenly so that at the last repetition possible before training the sticking point
 * asks all of it; as many repetitions are done as are wanted and possible today.
 *
 * @param wanted repetitions written in the program
 * @param load its share of the heaviest load before training and today, and the fresh effort it
 *   asks at the sticking point
 */
export function freshness(
  wanted: number,
  load: { readonly share: number; readonly shareNow: number; readonly hardest: number },
): number[] {
  const possible = Math.max(possibleRepetitions(Math.min(load.share, 1)), 1);
  const today = Math.max(possibleRepetitions(Math.min(load.shareNow, 1)), 1);
  // A hundredth of a repetition: loads that ask for a whole number are solved to a tolerance.
  const done = Math.min(wanted, Math.floor(today + 0.01));
  const loss = possible > 1 ? (1 - Math.min(load.hardest, 1)) / (possible - 1) : 0;
  return Array.from({ length: done }, (_, k) => Math.max(1 - loss * k, 0.1));
}
