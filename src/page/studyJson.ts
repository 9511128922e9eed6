import { toDegrees } from '../numeric/degrees.ts';
import type { FoundOutcome, StudyFound } from '../stages/study/studyFound.ts';

/**
 * A study and its predictions as data: changes and spreads as shares, rounded to 0.0001, of a
 * strongest angle in degrees, rounded to 0.1; `unit` says which.
 */
export function studyJson({ cited, known, calibration, groups }: StudyFound): object {
  return {
    cited,
    known,
    calibration,
    groups: groups.map(({ group, outcomes }) => ({
      program: group.program,
      people: group.people,
      assumed: group.assumed,
      leftOut: group.leftOut,
      outcomes: outcomes.map(outcomeJson),
    })),
  };
}

function outcomeJson({ what, observed, prediction }: FoundOutcome): object {
  const { found, source, doubt, isForFit } = observed;
  const isAngle = observed.outcome.kind === 'optimum';
  const size = (change: number) =>
    Number((isAngle ? toDegrees(change) : change).toFixed(isAngle ? 1 : 4)) + 0;
  return {
    what,
    unit: isAngle ? 'degrees' : 'share',
    ...(prediction.change === undefined
      ? { because: prediction.because }
      : { predicted: size(prediction.change) }),
    ...(found.kind === 'direction'
      ? { direction: found.direction }
      : {
          observed: size(found.change),
          spread:
            found.spread.kind === 'unknown'
              ? found.spread
              : { kind: found.spread.kind, value: size(found.spread.value) },
        }),
    source,
    doubt,
    isForFit,
  };
}
