import type { Citation, Observed, StudyGroup } from '../../notebook/study/study.ts';
import { coefficients } from '../../tables/adaptation.ts';
import { evidence } from '../../tables/evidence.ts';
import { outcomeWords } from './outcomeWords.ts';
import { predictStudy } from './predictGroup.ts';
import type { Prediction } from './predictOutcome.ts';
import type { StudyCase } from './studyCase.ts';

/** What a study found beside what the model says of it, in the order of its file. */
export interface StudyFound {
  /** The file's name without its ending. */
  readonly name: string;
  readonly cited: Citation;
  /** How the findings are known. */
  readonly known: 'read' | 'recalled';
  /** Whether the last calibration held a study of this name, and could predict any of it. */
  readonly calibration: 'predicted without it' | 'not predicted' | 'not held';
  readonly groups: readonly FoundGroup[];
}

export interface FoundGroup {
  readonly group: StudyGroup;
  readonly outcomes: readonly FoundOutcome[];
}

/** One outcome: a change is a share of the value before, of a strongest angle radians. */
export interface FoundOutcome {
  readonly what: string;
  readonly observed: Observed;
  readonly prediction: Prediction;
}

/**
 * Sets the model's prediction by the present coefficients beside every finding of a study. No
 * amplitude of the study enters: it is predicted as one in the middle of those fitted.
 */
export function studyFound(study: StudyCase): StudyFound {
  const predictions = predictStudy(study, coefficients);
  const { cited, known } = study.study;
  return {
    name: study.name,
    cited,
    known,
    calibration: calibrationOf(study.name),
    groups: study.groups.map(({ group }, g) => ({
      group,
      outcomes: group.observed.map((observed, i) => {
        const prediction = predictions[g]?.[i];
        if (!prediction) throw new Error(`${study.name}: nothing said of an outcome`);
        return { what: outcomeWords(observed.outcome, observed.afterWeeks), observed, prediction };
      }),
    })),
  };
}

function calibrationOf(name: string): StudyFound['calibration'] {
  const held = evidence.studies.find((one) => one.name === name);
  if (!held) return 'not held';
  const outcomes = held.groups.flatMap((group) => group.outcomes);
  return outcomes.some(({ predicted }) => predicted !== undefined)
    ? 'predicted without it'
    : 'not predicted';
}
