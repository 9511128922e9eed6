import { agonistPlaces } from '../physiology/agonists.ts';
import { fibreChange, unchangedMuscle } from '../physiology/muscleChange.ts';
import { livingArea } from '../physiology/muscleGeometry.ts';
import type { TrainedState } from '../physiology/trainedState.ts';
import type { WeekDose } from '../physiology/weekOfWork.ts';
import type { ActionName } from '../tables/actions.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';

/** What a program does to one muscle. */
export interface MuscleOutcome {
  readonly name: string;
  /** Whether the tables know it; else its action's muscles stand in for it. */
  readonly isKnown: boolean;
  /** Whether the action is the one by whose joint the muscle's length is told. */
  readonly isHome: boolean;
  /** Area before training, cm²; 1 where the tables have none. */
  readonly area: number;
  /** Effective sets a week, mean of the weeks: counted by fibre tension. */
  readonly hardSets: number;
  /** Area added near the upper and the lower end, fibre length added; shares. */
  readonly proximal: number;
  readonly distal: number;
  readonly fibre: number;
}

/** Every muscle that works for an action, in the order of the tables. */
export function muscleOutcomes(
  action: ActionName,
  { changes }: TrainedState,
  weeks: readonly WeekDose[],
): MuscleOutcome[] {
  return agonistPlaces(action).flatMap((place) => {
    const muscle = trainedMuscles[place];
    if (!muscle) return [];
    const change = changes.muscles[place] ?? unchangedMuscle;
    const [proximal = 0, distal = 0] = change.growth;
    const sets = weeks.reduce((sum, { muscles }) => sum + (muscles[place]?.all ?? 0), 0);
    return [
      {
        name: muscle.name,
        isKnown: muscle.row !== undefined,
        isHome: muscle.home === action,
        area: muscle.row ? livingArea(muscle.row) : 1,
        hardSets: sets / Math.max(weeks.length, 1),
        proximal,
        distal,
        fibre: fibreChange(change),
      },
    ];
  });
}

/** Effective sets of one week of the muscles that work for an action, by their names. */
export function setsByMuscle(action: ActionName, { muscles }: WeekDose): Record<string, number> {
  const entries = agonistPlaces(action).map((place) => [
    trainedMuscles[place]?.name ?? '',
    muscles[place]?.all ?? 0,
  ]);
  return Object.fromEntries(entries);
}
