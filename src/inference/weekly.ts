import type { OverAngles } from '../mechanics/angleGrid.ts';
import { coefficientsFor, torqueRatio } from '../physiology/adaptation.ts';
import type { Athlete } from '../physiology/athlete.ts';
import type { DriveDose } from '../physiology/dose.ts';
import type { TrainedState } from '../physiology/trainedState.ts';
import { type Block, train } from '../physiology/training.ts';
import type { WeekDose } from '../physiology/weekOfWork.ts';
import { type ActionName, actionNames } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { sumsByBand } from './angleBands.ts';
import { type MuscleOutcome, muscleOutcomes, setsByMuscle } from './muscleOutcomes.ts';
import { type AngleRange, meanOver } from './ranking.ts';

/** One week of a program. */
export interface Week {
  /** From 1. */
  readonly week: number;
  /** Hard sets of drive dose over all angles, both contractions, by action; those worked only. */
  readonly hardSets: Readonly<Partial<Record<ActionName, number>>>;
  /** Those of the target's action in each band of angles; they sum to its own but for work outside. */
  readonly hardSetsByBand: readonly number[];
  /** Effective sets of each muscle that works for that action, by fibre tension. */
  readonly hardSetsByMuscle: Readonly<Record<string, number>>;
  /** Mean relative gain inside the target at the week's end. */
  readonly gain: number;
}

/** What is looked at week by week; the bands of angles follow one another. */
interface Watched {
  readonly action: ActionName;
  readonly target: AngleRange;
  readonly bands: readonly AngleRange[];
}

/**
 * Trains through a block and keeps what each week did to the target.
 *
 * @returns the weeks, the state after the last, and the target's drive dose by angle: the first
 * week's, or where the block has phases the mean of all weeks (hard sets a week)
 */
export function trainWeekly(
  athlete: Athlete,
  block: Block,
  { action, target, bands }: Watched,
  coefficients: Coefficients,
): {
  readonly weekly: readonly Week[];
  readonly state: TrainedState;
  readonly dose: OverAngles;
  readonly muscles: readonly MuscleOutcome[];
} {
  const own = coefficientsFor(athlete, coefficients);
  const weekly: Week[] = [];
  const doses: WeekDose[] = [];
  const state = train(athlete, block, coefficients, ({ week, dose, state: { changes } }) => {
    const ratio = torqueRatio(action, changes, 'isometric', own);
    doses.push(dose);
    weekly.push({
      week,
      hardSets: hardSets(dose.drive),
      hardSetsByBand: sumsByBand(bothContractions(dose.drive[action]), bands),
      hardSetsByMuscle: setsByMuscle(action, dose),
      gain: meanOver(ratio, target) - 1,
    });
  });
  const counted = block.phases ? doses : doses.slice(0, 1);
  const byWeek = counted.map(({ drive }) => bothContractions(drive[action]));
  const dose = athlete.groups[action].torque.map(
    (_, i) => byWeek.reduce((sum, by) => sum + (by[i] ?? 0), 0) / byWeek.length,
  );
  return { weekly, state, dose, muscles: muscleOutcomes(action, state, doses) };
}

const bothContractions = ({ dynamic, isometric }: DriveDose): OverAngles =>
  dynamic.map((sets, i) => sets + (isometric[i] ?? 0));

function hardSets(doses: Readonly<Record<ActionName, DriveDose>>): Week['hardSets'] {
  const sum = (action: ActionName) => bothContractions(doses[action]).reduce((a, b) => a + b, 0);
  return Object.fromEntries(
    actionNames.flatMap((action) => {
      const sets = sum(action);
      return sets > 0 ? [[action, sets]] : [];
    }),
  );
}
