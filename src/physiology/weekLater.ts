import { byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';
import { driveLater, muscleLater } from './adaptation.ts';
import { unchangedMuscle } from './muscleChange.ts';
import { WeekOfPractice } from './practice.ts';
import type { TrainedState } from './trainedState.ts';
import type { WeekDose, WeekOfWork } from './weekOfWork.ts';

/**
 * One week later, by the work done in it.
 *
 * @param c of this person, as from `coefficientsFor`
 */
export function weekLater(
  state: TrainedState,
  work: WeekOfWork,
  c: Coefficients,
): { readonly state: TrainedState; readonly dose: WeekDose } {
  const dose = work.dose(c);
  const { drive, muscles } = state.changes;
  const practice = new WeekOfPractice(c);
  for (const { lift, samples, sets } of work.practised) practice.add(lift, samples, sets);
  const after = {
    firstWeek: state.firstWeek ?? dose,
    changes: {
      drive: byAction((action) => driveLater(action, drive[action], dose.drive[action], c)),
      muscles: trainedMuscles.map((muscle, i) =>
        muscleLater(muscle, muscles[i] ?? unchangedMuscle, dose.muscles[i], c),
      ),
    },
    practice: practice.oneWeekLater(state.practice),
    shortfalls: state.shortfalls,
  };
  return { state: after, dose };
}
