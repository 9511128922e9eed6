import type { LeftOut } from '../../inference/calibration/leaveOneOut.ts';
import type { Observed } from '../../notebook/study/study.ts';
import type {
  EvidenceOutcome,
  EvidenceResults,
  EvidenceStudy,
} from '../../tables/evidenceResults.ts';
import { type Calibration, coefficientsFrom } from './calibrate.ts';
import { familyOf, inPoints, type RecordedStudy } from './findingRows.ts';
import { outcomeWords } from './outcomeWords.ts';
import { predictGroup } from './predictGroup.ts';
import type { Prediction } from './predictOutcome.ts';
import { rounded } from './scoreLine.ts';

/** Standard normal quantile of an 80 % interval. */
const quantile80 = 1.2816;

/** Half the width of a left-out prediction's 80 % interval, the observation's own error included. */
export function halfWidth({ variance }: LeftOut): number {
  const { coefficients, amplitude, discrepancy, error } = variance;
  return quantile80 * Math.sqrt(coefficients + amplitude + discrepancy + error);
}

/** Every group with every outcome: scored, told only by direction, kept for the record, unpredicted. */
export function evidenceStudies(
  calibration: Calibration,
  left: readonly LeftOut[],
): EvidenceResults['studies'] {
  let group = -1;
  return calibration.studies.map(({ study, groups }, s): EvidenceStudy => {
    const amplitude = Math.exp(calibration.fit.amplitudes[s] ?? 0);
    return {
      name: study.name,
      title: study.title,
      amplitude: rounded(amplitude, 2),
      groups: study.groups.map(({ group: { program, people } }, g) => {
        group += 1;
        return {
          program,
          trained: study.athlete.trained,
          ...(people === undefined ? {} : { people }),
          outcomes: outcomesOf(calibration, left, { recorded: groups[g], group, amplitude }),
        };
      }),
    };
  });
}

function outcomesOf(
  { rows, fit }: Calibration,
  left: readonly LeftOut[],
  at: {
    readonly recorded: RecordedStudy['groups'][number] | undefined;
    readonly group: number;
    readonly amplitude: number;
  },
): EvidenceOutcome[] {
  const { recorded, group, amplitude } = at;
  if (!recorded) return [];
  const now = predictGroup(recorded, coefficientsFrom(fit.logs));
  return recorded.observed.map((observed, outcome) => {
    const row = rows.findIndex((one) => one.group === group && one.outcome === outcome);
    return {
      ...described(observed),
      ...predictedAs(observed, now[outcome], amplitude),
      ...leftOutAs(left[row], rows[row]?.error),
    };
  });
}

function described(observed: Observed) {
  const { outcome, afterWeeks, found, doubt, isForFit } = observed;
  const family = familyOf(outcome);
  const taken = found.kind === 'size' && found.spread.kind === 'unknown';
  return {
    what: outcomeWords(outcome, afterWeeks),
    family,
    ...(found.kind === 'size'
      ? { observed: rounded(inPoints(family, found.change), 1) }
      : { found: found.direction }),
    ...(taken ? { errorTaken: true } : {}),
    ...(doubt === undefined ? {} : { doubt }),
    ...(isForFit ? {} : { record: true }),
  };
}

/** With the study's own amplitude, or why there is nothing. */
function predictedAs(
  { outcome }: Observed,
  prediction: Prediction | undefined,
  amplitude: number,
): Pick<EvidenceOutcome, 'fitted' | 'because'> {
  if (prediction?.change === undefined) return { because: prediction?.because ?? 'not recorded' };
  return { fitted: rounded(amplitude * inPoints(familyOf(outcome), prediction.change), 1) };
}

function leftOutAs(left: LeftOut | undefined, error: number | undefined) {
  if (!left || error === undefined) return {};
  const half = halfWidth(left);
  return {
    error: rounded(error, 1),
    predicted: rounded(left.predicted, 1),
    low: rounded(left.predicted - half, 1),
    high: rounded(left.predicted + half, 1),
  };
}
