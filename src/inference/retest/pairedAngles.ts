import { isSameAngle } from '../../numeric/degrees.ts';
import type { AngleRange } from '../ranking.ts';
import { type Refusal, refusal } from '../reliability/refusal.ts';
import { type AngleScores, meanScore, scoresByAngle, type TestDay } from './testDay.ts';

/** An angle tested before and after, N·m. */
export interface PairedAngle {
  readonly angle: number;
  readonly inTarget: boolean;
  readonly before: number;
  readonly after: number;
  /** ln(after/before). */
  readonly logRatio: number;
  readonly scores: { readonly before: AngleScores; readonly after: AngleScores };
}

/** What two occasions have in common, and the angles only one of them has. */
export interface PairedAngles {
  readonly common: readonly PairedAngle[];
  readonly onlyBefore: readonly number[];
  readonly onlyAfter: readonly number[];
}

/**
 * Puts the angles of two occasions side by side.
 *
 * @returns the pairs in order of angle, or why the occasions cannot be compared
 */
export function pairedAngles(
  before: readonly TestDay[],
  after: readonly TestDay[],
  target: AngleRange,
): PairedAngles | Refusal {
  const [first, second] = [scoresByAngle(before), scoresByAngle(after)];
  const wrong = cannotCompare(before, after, first, second);
  if (wrong) return wrong;
  const common = first.flatMap((one) => {
    const other = second.find(({ angle }) => isSameAngle(angle, one.angle));
    return other ? [paired(one, other, target)] : [];
  });
  if (common.length === 0)
    return refusal(
      'no-common-angle',
      'no angle was tested both before and after; a change needs the same angle twice',
    );
  return { common, onlyBefore: lacking(first, second), onlyAfter: lacking(second, first) };
}

/** Angles of one list that the other lacks. */
const lacking = (scores: readonly AngleScores[], other: readonly AngleScores[]) =>
  scores.flatMap(({ angle }) =>
    other.some((one) => isSameAngle(one.angle, angle)) ? [] : [angle],
  );

function paired(before: AngleScores, after: AngleScores, target: AngleRange): PairedAngle {
  const tiny = 1e-9;
  const { angle } = before;
  const [pre, post] = [meanScore(before), meanScore(after)];
  return {
    angle,
    inTarget: angle >= target.from - tiny && angle <= target.to + tiny,
    before: pre,
    after: post,
    logRatio: Math.log(post / pre),
    scores: { before, after },
  };
}

function cannotCompare(
  before: readonly TestDay[],
  after: readonly TestDay[],
  first: readonly AngleScores[],
  second: readonly AngleScores[],
): Refusal | undefined {
  if (first.length === 0 || second.length === 0)
    return refusal(
      'one-test',
      `there is no test ${first.length === 0 ? 'before' : 'after'} the training; one test shows no change`,
    );
  const rules = new Set([...before, ...after].map(({ score }) => score));
  if (rules.size > 1)
    return refusal(
      'scored-differently',
      'some days count the best trial and others the mean; score all of them one way',
    );
  const scores = [...first, ...second].flatMap(({ days }) => days);
  if (!scores.every(({ score }) => Number.isFinite(score) && score > 0))
    return refusal('no-torque', 'a score is not above 0 N·m; correct it or leave the trial out');
  return undefined;
}
