import type { Observed, Outcome } from '../../notebook/study/study.ts';
import { coefficientsFor } from '../../physiology/adaptation.ts';
import type { Range } from '../../physiology/heaviestLoad.ts';
import { type NearbySingle, nearbySingle } from '../../physiology/nearbySingle.ts';
import { type RecordedWork, recordWork, replay } from '../../physiology/recordedWork.ts';
import { capacityAfter } from '../../physiology/trainedState.ts';
import { isAction } from '../../tables/actions.ts';
import type { Coefficients } from '../../tables/adaptation.ts';
import { liftNamed } from '../../tables/lifts.ts';
import type { CaseGroup, StudyCase } from './studyCase.ts';

/** A group's work, and the lifts it was tested in, ready to be asked with other coefficients. */
export interface RecordedGroup {
  readonly work: RecordedWork;
  readonly weeks: number;
  readonly observed: readonly Observed[];
  /** By place among `observed`: for outcomes tested in a lift; undefined if it cannot be held. */
  readonly singles: readonly (NearbySingle | undefined)[];
}

/** Trains a group once and works out how its tested lifts go with strength. */
export function recordGroup(
  { athlete, catalogue }: StudyCase,
  { group, block }: CaseGroup,
  coefficients: Coefficients,
): RecordedGroup {
  const work = recordWork(athlete, block, coefficients);
  const own = coefficientsFor(athlete, coefficients);
  const kept = new Map<string, NearbySingle | undefined>();
  const singles = group.observed.map(({ outcome, afterWeeks }) => {
    const range = testedRange(outcome, catalogue);
    if (!range) return undefined;
    const weeks = afterWeeks ?? block.weeks;
    const test = outcome.kind === 'isometric' ? 'isometric' : 'dynamic';
    const key = `${range.lift.name} ${range.from} ${range.to} ${weeks} ${test}`;
    if (!kept.has(key)) {
      const state = replay(work, coefficients, weeks);
      kept.set(key, nearbySingle(range, athlete, capacityAfter(athlete, state, test, own)));
    }
    return kept.get(key);
  });
  return { work, weeks: block.weeks, observed: group.observed, singles };
}

/** The range of a lift that an outcome was tested over; undefined for a test of one joint. */
function testedRange(outcome: Outcome, catalogue: StudyCase['catalogue']): Range | undefined {
  if (!('from' in outcome) || outcome.from === undefined || outcome.to === undefined)
    return undefined;
  if (isAction(outcome.of)) return undefined;
  const [from, to] = [Math.min(outcome.from, outcome.to), Math.max(outcome.from, outcome.to)];
  return { lift: liftNamed(outcome.of, catalogue), from, to };
}
