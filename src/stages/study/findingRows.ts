import { type FindingRow, weightAmong } from '../../inference/calibration/finding.ts';
import type { Work } from '../../notebook/scenario.ts';
import type { Observed, Outcome } from '../../notebook/study/study.ts';
import { toDegrees } from '../../numeric/degrees.ts';
import { coefficients } from '../../tables/adaptation.ts';
import {
  type Family,
  sharedError,
  toldByDirection,
  unknownError,
  unknownPeople,
} from '../../tables/calibrationValues.ts';
import { outcomeWords } from './outcomeWords.ts';
import { predictGroup } from './predictGroup.ts';
import type { RecordedGroup } from './recordGroup.ts';
import type { CaseGroup, StudyCase } from './studyCase.ts';

/** A row to be fitted, with its place among the observed outcomes of its group. */
export interface PlacedRow extends FindingRow {
  readonly outcome: number;
}

/** A study's cases with their recorded groups, in the order of the files. */
export interface RecordedStudy {
  readonly study: StudyCase;
  readonly groups: readonly RecordedGroup[];
}

/** Rows of all findings that are for the fit and can be predicted. */
export function findingRows(studies: readonly RecordedStudy[]): PlacedRow[] {
  let group = -1;
  return studies.flatMap(({ study, groups }, s) =>
    study.groups.flatMap((one, g) => {
      const recorded = groups[g];
      group += 1;
      return recorded ? rowsOfGroup(study, one, recorded, { study: s, group }) : [];
    }),
  );
}

function rowsOfGroup(
  { athlete }: StudyCase,
  { group, program }: CaseGroup,
  recorded: RecordedGroup,
  at: { readonly study: number; readonly group: number },
): PlacedRow[] {
  const predicted = predictGroup(recorded, coefficients);
  const usable = group.observed.flatMap((observed, i) =>
    observed.isForFit && predicted[i]?.change !== undefined
      ? [{ observed, outcome: i, family: familyOf(observed.outcome) }]
      : [],
  );
  return usable.map(({ observed, outcome, family }) => {
    const alike = usable.filter((other) => other.family === family).length;
    const awayDeg = awayFromTraining(observed.outcome, program.work);
    return {
      ...at,
      outcome,
      family,
      observed: changeIn(family, observed),
      error: errorOf(family, observed, group.people ?? unknownPeople),
      weight: weightAmong(alike, sharedError.value),
      trained: athlete.trained,
      ...(observed.found.kind === 'direction' ? { isDirection: true } : {}),
      what: outcomeWords(observed.outcome, observed.afterWeeks),
      ...(awayDeg === undefined ? {} : { awayDeg }),
    };
  });
}

/** How an outcome's errors are pooled. */
export function familyOf({ kind }: Outcome): Family {
  switch (kind) {
    case 'growth':
    case 'fibres':
    case 'optimum':
    case 'arm':
      return kind;
    default:
      return 'strength';
  }
}

/** A share in points, an optimum's radians in degrees. */
export function inPoints(family: Family, change: number): number {
  return family === 'optimum' ? toDegrees(change) : 100 * change;
}

function changeIn(family: Family, { found }: Observed): number {
  if (found.kind === 'size') return inPoints(family, found.change);
  const { rise, none } = toldByDirection[family];
  return { 'clear rise': rise, 'no clear change': none, 'clear fall': -rise }[found.direction];
}

function errorOf(family: Family, { found }: Observed, people: number): number {
  if (found.kind !== 'size') return toldByDirection[family].error;
  if (found.spread.kind === 'unknown') return unknownError[family];
  const spread = inPoints(family, found.spread.value);
  return found.spread.kind === 'se' ? spread : spread / Math.sqrt(people);
}

/** Degrees from the middle of what was tested to the nearest middle of what was trained. */
function awayFromTraining(outcome: Outcome, work: readonly Work[]): number | undefined {
  if (!('from' in outcome) || outcome.from === undefined || outcome.to === undefined)
    return undefined;
  const tested = (outcome.from + outcome.to) / 2;
  const away = work.map((entry) =>
    Math.abs(tested - ('at' in entry ? entry.at : (entry.from + entry.to) / 2)),
  );
  return toDegrees(Math.min(...away));
}
