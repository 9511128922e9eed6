import type { Logs, Predictor } from '../../inference/calibration/finding.ts';
import {
  type Calibrated,
  discrepancyOf,
  fitCalibration,
} from '../../inference/calibration/fitCalibration.ts';
import type { Problem } from '../../inference/calibration/problem.ts';
import type { Coefficients } from '../../tables/adaptation.ts';
import { coefficientNames } from '../../tables/adaptationPriors.ts';
import { firstDiscrepancy } from '../../tables/calibrationValues.ts';
import { findingRows, inPoints, type PlacedRow, type RecordedStudy } from './findingRows.ts';
import { predictGroup } from './predictGroup.ts';
import { recordGroup } from './recordGroup.ts';
import type { StudyCase } from './studyCase.ts';

/** Coefficients of given logarithms; some may be held at other values. */
export function coefficientsFrom(logs: Logs, held: Partial<Coefficients> = {}): Coefficients {
  const values = coefficientNames.map((name, j) => [name, Math.exp(logs[j] ?? 0)]);
  return { ...Object.fromEntries(values), ...held } as Coefficients;
}

/** Logarithms of coefficients, in the order of the fit. */
export function logsOf(coefficients: Coefficients): Logs {
  return coefficientNames.map((name) => Math.log(coefficients[name]));
}

/** Every study's work as it is done with given coefficients. */
export function recordStudies(
  cases: readonly StudyCase[],
  coefficients: Coefficients,
): RecordedStudy[] {
  return cases.map((study) => ({
    study,
    groups: study.groups.map((group) => recordGroup(study, group, coefficients)),
  }));
}

/** Predictions of all rows from recorded work. */
export function predictorOf(
  studies: readonly RecordedStudy[],
  rows: readonly PlacedRow[],
  held: Partial<Coefficients> = {},
): Predictor {
  const groups = studies.flatMap(({ groups: own }, s) =>
    own.map((recorded) => ({ recorded, study: s })),
  );
  return (logs, study) => {
    const c = coefficientsFrom(logs, held);
    const asked = (g: number) => study === undefined || groups[g]?.study === study;
    const predicted = groups.map(({ recorded }, g) => (asked(g) ? predictGroup(recorded, c) : []));
    return rows.map(({ group, outcome, family }) =>
      inPoints(family, predicted[group]?.[outcome]?.change ?? 0),
    );
  };
}

/** A fit with what it was a fit of. */
export interface Calibration {
  readonly studies: readonly RecordedStudy[];
  readonly rows: readonly PlacedRow[];
  readonly problem: Problem;
  readonly fit: Calibrated;
}

/**
 * Fits all coefficients to all studies.
 *
 * What was lifted depends a little on the coefficients: it is recorded with the start's, and again
 * with what the first fit gives. What the model leaves out is estimated between the rounds.
 *
 * @param sweeps how often the work is recorded
 */
export function calibrate(
  cases: readonly StudyCase[],
  start: Coefficients,
  sweeps: number,
): Calibration {
  let parameters = { logs: logsOf(start), amplitudes: cases.map(() => 0) as readonly number[] };
  let discrepancy = firstDiscrepancy;
  for (let sweep = 1; ; sweep++) {
    const studies = recordStudies(cases, coefficientsFrom(parameters.logs));
    const rows = findingRows(studies);
    const predict = predictorOf(studies, rows);
    const problem = { rows, studies: cases.length, predict, discrepancy };
    const fit = fitCalibration(problem, parameters, 6);
    if (sweep === sweeps) return { studies, rows, problem, fit };
    parameters = fit;
    discrepancy = discrepancyOf(problem, fit);
  }
}
