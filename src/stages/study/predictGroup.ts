import { replay } from '../../physiology/recordedWork.ts';
import type { TrainedState } from '../../physiology/trainedState.ts';
import type { Coefficients } from '../../tables/adaptation.ts';
import { type Prediction, predictOutcome } from './predictOutcome.ts';
import { type RecordedGroup, recordGroup } from './recordGroup.ts';
import type { StudyCase } from './studyCase.ts';

/** What the model says of every outcome of a recorded group, in their order. */
export function predictGroup(recorded: RecordedGroup, coefficients: Coefficients): Prediction[] {
  const states = new Map<number, TrainedState>();
  return recorded.observed.map(({ outcome, afterWeeks = recorded.weeks }, i) => {
    const state = states.get(afterWeeks) ?? replay(recorded.work, coefficients, afterWeeks);
    states.set(afterWeeks, state);
    const single = recorded.singles[i];
    return predictOutcome(outcome, { athlete: recorded.work.athlete, state, coefficients, single });
  });
}

/**
 * What the model says of a whole study with given coefficients: one list a group, one prediction an
 * observed outcome, in the order of the file.
 */
export function predictStudy(study: StudyCase, coefficients: Coefficients): Prediction[][] {
  return study.groups.map((group) =>
    predictGroup(recordGroup(study, group, coefficients), coefficients),
  );
}
