import { meanOf } from '../numeric/moments.ts';
import type { AngleRange } from './ranking.ts';
import { type ErrorCorrelation, unknownCorrelation } from './reliability/errorOfChange.ts';
import { multiplier } from './reliability/multiplier.ts';
import { isRefusal, type Refusal, refusal } from './reliability/refusal.ts';
import {
  chanceAbove,
  type WorthwhileChances,
  worthwhileChances,
} from './reliability/worthwhile.ts';
import { type AngleChange, angleChanges } from './retest/angleChanges.ts';
import { type LogChange, logChange, type Noise } from './retest/logChange.ts';
import {
  borrowedNote,
  manyAngles,
  type Picked,
  pickedAsWeakest,
  type RetestNote,
  testNotes,
} from './retest/notes.ts';
import { type PairedAngle, type PairedAngles, pairedAngles } from './retest/pairedAngles.ts';
import type { TestDay } from './retest/testDay.ts';
import type { TestError } from './retest/testError.ts';
import { type Judged, judged, type NotJudged } from './retest/verdict.ts';

/** Two test occasions of one action of one athlete, and what is asked of them. */
export interface RetestAsked {
  readonly before: readonly TestDay[];
  readonly after: readonly TestDay[];
  /** Radians, ends included. */
  readonly target: AngleRange;
  readonly error: TestError;
  /** How errors of one day's angles go together; left out: anything from 0 to 1. */
  readonly correlation?: ErrorCorrelation;
  /** Two-sided, 0.95 unless said otherwise. */
  readonly level?: number;
  /** Gain of the target that was planned, share. */
  readonly wantedGain?: number;
  /** Smallest change of the target that matters, share. */
  readonly worthwhile?: number;
  readonly picked?: Picked;
  /** True if the athlete had never done this test before. */
  readonly firstEver?: boolean;
  /** False if the athlete had not practised it in three sessions. */
  readonly familiarised?: boolean;
}

export interface Retest {
  readonly level: number;
  /** In order of angle; none if the occasions cannot be compared. */
  readonly angles: readonly AngleChange[];
  /** Gained in the target: the mean of the target's angles. */
  readonly target: Judged | NotJudged;
  /** Gained more in the target than elsewhere: that mean less the mean of the other angles. */
  readonly contrast: Judged | NotJudged;
  /** Chances of the target's true change, flat prior; only if `worthwhile` was asked. */
  readonly chances?: WorthwhileChances;
  /** Chance that the target's true gain is the wanted one or more; only if it was asked. */
  readonly chanceOfWanted?: number;
  readonly notes: readonly RetestNote[];
}

/**
 * What two test occasions say about one action: angle by angle, in the target, and in the target
 * against elsewhere.
 *
 * Everything is reckoned in logarithms of torque, so that a share of error is the same share before
 * and after and a uniform gain favours no angle; results are turned back into shares and N·m. A
 * verdict is two-sided at the level: with a known error and no change, a false "yes" comes in half
 * of the rest (2.5 % at 95 %). Angles outside the target never enter its verdict.
 *
 * @returns always a result; what cannot be judged says "cannot say" with its reason
 * @throws RangeError for a level not within 0 and 1, or an error that is not above 0
 */
export function retest(asked: RetestAsked): Retest {
  const { before, after, error, correlation = unknownCorrelation, level = 0.95 } = asked;
  if (!(level > 0 && level < 1)) throw new RangeError(`a level of ${level}`);
  if (!(error.amount > 0)) throw new RangeError(`a test error of ${error.amount}`);
  const pairs = pairedAngles(before, after, asked.target);
  if (isRefusal(pairs)) {
    const cannot = judged(pairs);
    return { level, angles: [], target: cannot, contrast: cannot, notes: [] };
  }
  const reach = multiplier(level, error.degreesOfFreedom);
  const noise: Noise = { error, correlation, reach };
  const many = manyAngles(pairs.common.length, level, error);
  const inside = pairs.common.filter(({ inTarget }) => inTarget);
  const target = inside.length > 0 ? logChange(averaged(inside, 1), noise) : noneInside;
  const contrast = contrastOf(pairs.common, noise);
  return {
    level,
    angles: angleChanges(pairs.common, noise, many?.reachForEach ?? reach),
    target: judged(target),
    contrast: judged(contrast),
    ...(isRefusal(target) ? {} : targetChances(target, asked)),
    notes: [
      ...notesOf(asked, pairs, isRefusal(target) ? undefined : target),
      ...(many ? [many] : []),
    ],
  };
}

const noneInside = refusal(
  'none-in-target',
  'no angle inside the target was tested both before and after',
);

/** Each angle with an equal part of the weight. */
const averaged = (pairs: readonly PairedAngle[], weight: number) =>
  pairs.map((pair) => ({ pair, weight: weight / pairs.length }));

function contrastOf(common: readonly PairedAngle[], noise: Noise): LogChange | Refusal {
  const inside = common.filter(({ inTarget }) => inTarget);
  const outside = common.filter(({ inTarget }) => !inTarget);
  if (common.length === 1)
    return refusal(
      'one-angle',
      'only one angle was tested both times; a comparison needs one in the target and one outside',
    );
  if (inside.length === 0) return noneInside;
  if (outside.length === 0)
    return refusal(
      'none-outside',
      'no angle outside the target was tested both times; test one to see whether the gain is more there than elsewhere',
    );
  return logChange([...averaged(inside, 1), ...averaged(outside, -1)], noise);
}

/** Shares up and down are taken as the same step of the logarithm: +25 % answers −20 %. */
function targetChances(target: LogChange, { worthwhile, wantedGain }: RetestAsked) {
  const { estimate, standardError, degreesOfFreedom } = target;
  const step = (share: number) => Math.log1p(share);
  return {
    ...(worthwhile === undefined
      ? {}
      : {
          chances: worthwhileChances(estimate, standardError, step(worthwhile), degreesOfFreedom),
        }),
    ...(wantedGain === undefined
      ? {}
      : {
          chanceOfWanted: chanceAbove(estimate, standardError, step(wantedGain), degreesOfFreedom),
        }),
  };
}

function notesOf(
  { before, error, picked, firstEver = false, familiarised = true }: RetestAsked,
  pairs: PairedAngles,
  target: LogChange | undefined,
): RetestNote[] {
  const inside = pairs.common.filter(({ inTarget }) => inTarget);
  const learns = firstEver || !familiarised;
  return [
    ...borrowedNote(error),
    ...(learns ? [{ about: 'learning', firstEver, familiarised } as const] : []),
    ...(picked && target
      ? [
          pickedAsWeakest(
            picked,
            meanOf(inside.map((pair) => pair.before)),
            Math.expm1(target.estimate),
          ),
        ]
      : []),
    ...testNotes(pairs, before[0]?.score ?? 'best'),
  ];
}
