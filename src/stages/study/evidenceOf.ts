import { baselines, baselineWithout } from '../../inference/calibration/baselines.ts';
import { discrepancyOf } from '../../inference/calibration/fitCalibration.ts';
import { groupedBy } from '../../inference/calibration/groupedBy.ts';
import { amplitudeVariance, type LeftOut } from '../../inference/calibration/leaveOneOut.ts';
import { clearDifference, contrastsOf, directionsOf } from '../../inference/calibration/scores.ts';
import { type Family, families } from '../../tables/calibrationValues.ts';
import type { EvidenceResults, ScoreLine } from '../../tables/evidenceResults.ts';
import type { Calibration } from './calibrate.ts';
import { evidenceStudies, halfWidth } from './evidenceStudies.ts';
import { rounded, scoreLine } from './scoreLine.ts';
import { mechanismsOff, withoutMechanism } from './withoutMechanism.ts';

/** Everything the evidence report shows, from a fit and its left-out predictions. */
export function evidenceOf(calibration: Calibration, left: readonly LeftOut[]): EvidenceResults {
  const { problem, fit, studies } = calibration;
  const rows = sized(calibration.rows, calibration.rows);
  const predicted = sized(calibration.rows, left).map((one) => one.predicted);
  const discrepancy = discrepancyOf(problem, fit);
  return {
    studies: evidenceStudies(calibration, left),
    scores: scoresOf(calibration, predicted),
    coverage: families.flatMap((family) => coverageOf(calibration, left, family)),
    contrasts: contrastLines(rows, predicted, (s) => studies[s]?.study.name ?? ''),
    amplitudeSpread: rounded(Math.sqrt(amplitudeVariance(fit.amplitudes, fit.covariance)), 2),
    discrepancy: Object.fromEntries(
      families.map((family) => [family, rounded(discrepancy[family], 1)]),
    ) as Record<Family, number>,
    gainMiss: rounded(gainMissOf(rows, predicted), 2),
    contrastMiss: rounded(contrastMissOf(rows, predicted), 2),
  };
}

function scoresOf(calibration: Calibration, predicted: readonly number[]): ScoreLine[] {
  const { fit, rows: all } = calibration;
  const rows = sized(all, all);
  const own = sized(all, fit.predicted).map(
    (change, i) => Math.exp(fit.amplitudes[rows[i]?.study ?? 0] ?? 0) * change,
  );
  return [
    scoreLine('the model, study left out', 'model', rows, predicted),
    ...baselines.map((baseline) =>
      scoreLine(baseline.name, 'baseline', rows, baselineWithout(baseline, rows)),
    ),
    ...mechanismsOff.map(({ name, held }) =>
      scoreLine(
        `without ${name}`,
        'without',
        rows,
        sized(all, withoutMechanism(calibration, held)),
      ),
    ),
    scoreLine('fitted to all, each study’s own amplitude', 'fitted', rows, own),
  ];
}

function coverageOf({ rows }: Calibration, left: readonly LeftOut[], family: Family) {
  const own = rows.flatMap((row, i) => {
    const one = left[i];
    return row.family === family && one && !row.isDirection ? [{ row, one }] : [];
  });
  const inside = own.filter(
    ({ row, one }) => Math.abs(row.observed - one.predicted) <= halfWidth(one),
  ).length;
  return own.length > 0 ? [{ family, inside, count: own.length }] : [];
}

function contrastLines(
  rows: Calibration['rows'],
  predicted: readonly number[],
  nameOf: (study: number) => string,
): EvidenceResults['contrasts'] {
  const clear = contrastsOf(rows, predicted).filter(
    ({ observed, family }) => family !== 'optimum' && Math.abs(observed) >= clearDifference,
  );
  return groupedBy(clear, ({ study, family }) => `${study} ${family}`).flatMap((own) => {
    const [first] = own;
    if (!first) return [];
    const { right, count, weighted } = directionsOf(own);
    const { study, family } = first;
    return [{ study: nameOf(study), family, right, count, weighted: rounded(weighted, 2) }];
  });
}

/** What belongs to findings that have a size. */
function sized<T>(rows: Calibration['rows'], values: readonly T[]): T[] {
  return values.filter((_, i) => !rows[i]?.isDirection);
}

const meanSquare = (values: readonly number[]) =>
  values.reduce((sum, v) => sum + v * v, 0) / values.length;

/** Root mean square miss of strength gains over the root mean square gain predicted. */
function gainMissOf(rows: Calibration['rows'], predicted: readonly number[]): number {
  const own = rows.flatMap(({ family, observed }, i) =>
    family === 'strength' ? [{ observed, predicted: predicted[i] ?? 0 }] : [],
  );
  return Math.sqrt(
    meanSquare(own.map((one) => one.observed - one.predicted)) /
      meanSquare(own.map((one) => one.predicted)),
  );
}

/** The same for differences between groups, over the larger predicted gain of each pair. */
function contrastMissOf(rows: Calibration['rows'], predicted: readonly number[]): number {
  const own = contrastsOf(rows, predicted).filter(({ family }) => family === 'strength');
  return Math.sqrt(
    meanSquare(own.map((one) => one.observed - one.predicted)) /
      meanSquare(own.map(({ larger }) => larger)),
  );
}
