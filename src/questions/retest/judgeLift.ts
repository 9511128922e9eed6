import { degreesOfSpread } from '../../inference/reliability/errorSize.ts';
import { minimalDetectableChange } from '../../inference/reliability/minimalDetectableChange.ts';
import { chanceAbove } from '../../inference/reliability/worthwhile.ts';
import { earlierSingle, isSameEnd, rangesApart } from '../../notebook/tests/earlierSingle.ts';
import type { LiftTest, RepeatedTest } from '../../notebook/tests/strengthTest.ts';
import { testErrors } from '../../tables/testError.ts';
import { type Days, daysOf, type Occasion } from './occasions.ts';
import type { Predicted } from './predictedGain.ts';

/** A heaviest single before and after. */
export interface JudgedLift {
  readonly lift: string;
  /** Left out where the lift begins at its first angle. */
  readonly from?: number;
  readonly to: number;
  readonly before: number;
  readonly after: number;
  /** Share. */
  readonly gain: number;
  /** Smallest share of change beyond noise. */
  readonly detectable: number;
  readonly says: 'gain beyond noise' | 'loss beyond noise' | 'cannot say';
  /** Chance that the true change is a gain, flat prior. */
  readonly chanceOfGain: number;
  readonly error: {
    readonly share: number;
    readonly known: 'own' | 'borrowed';
    /** What formulas that estimate a single differ by adds to the change, share; 0 where both were lifted. */
    readonly formulas: number;
  };
  /** Share, where a forecast was made. */
  readonly predicted?: number;
  /** Day of the single before; only where the occasion just before the retest lacks it. */
  readonly skippedFrom?: Days | 'undated';
}

/** What singles are judged with. */
export interface LiftsAsked {
  /** The retest last. */
  readonly occasions: readonly Occasion[];
  readonly repeatability: readonly RepeatedTest[];
  readonly forecast?: Predicted;
  /** Where a lift begins if a test does not say, radians. */
  readonly startOf: (lift: string) => number;
}

/** Every single of a retest against the latest one before it of the same lift and range. */
export function judgeLifts(asked: LiftsAsked): JudgedLift[] {
  return (asked.occasions.at(-1)?.lifts ?? []).flatMap((test) => judgeLift(test, asked) ?? []);
}

function judgeLift(
  test: LiftTest,
  { occasions, repeatability, forecast, startOf }: LiftsAsked,
): JudgedLift | undefined {
  const start = startOf(test.lift);
  const earlier = occasions.slice(0, -1);
  const found = earlierSingle(
    test,
    earlier.map(({ lifts }) => lifts),
    start,
  );
  if (!found || !(found.single.best > 0) || !(test.best > 0)) return undefined;
  const { single: first, place } = found;
  const { degreesOfFreedom, ...error } = errorOf(first, test, repeatability);
  // ln(after/before) has an error of √(2·TE² + f₁² + f₂²): one test error and one of formulas each.
  const standardError = Math.hypot(error.share * Math.SQRT2, error.formulas);
  const change = Math.log(test.best / first.best);
  const log = minimalDetectableChange({
    value: standardError / Math.SQRT2,
    degreesOfFreedom,
  });
  const says = change > log ? 'gain beyond noise' : change < -log ? 'loss beyond noise' : null;
  const isDirect = place === earlier.length - 1;
  const predicted = isDirect ? predictedFor(test, forecast, start) : undefined;
  return {
    lift: test.lift,
    ...(test.from === undefined ? {} : { from: test.from }),
    to: test.to,
    before: first.best,
    after: test.best,
    gain: Math.expm1(change),
    detectable: Math.expm1(log),
    says: says ?? 'cannot say',
    chanceOfGain: chanceAbove(change, standardError, 0, degreesOfFreedom),
    error,
    ...(predicted === undefined ? {} : { predicted }),
    ...(isDirect ? {} : { skippedFrom: daysOf([first]) ?? 'undated' }),
  };
}

function predictedFor(test: LiftTest, forecast: Predicted | undefined, start: number) {
  return forecast?.singles
    .map((one) => ({ gain: one.gain, apart: rangesApart(one, test, start) }))
    .filter(({ apart }) => Number.isFinite(apart))
    .sort((a, b) => a.apart - b.apart)[0]?.gain;
}

/** Own error of the file, else borrowed; what the formulas differ by comes on top of either. */
function errorOf(first: LiftTest, test: LiftTest, repeatability: readonly RepeatedTest[]) {
  const formulas = Math.hypot(formulaShare(first), formulaShare(test));
  const own = repeatability.find(
    ({ of }) => 'lift' in of && of.lift === test.lift && isSameEnd(of.to, test.to),
  );
  if (own?.kind === 'typical error' && !('torque' in own.error)) {
    const { people, days } = own.from;
    return {
      share: 'share' in own.error ? own.error.share : own.error.mass / first.best,
      degreesOfFreedom: Math.max((days - 1) * Math.max(people - 1, 1), 1),
      known: 'own' as const,
      formulas,
    };
  }
  const { value, spread } = testErrors['heaviest single'];
  return {
    share: value,
    degreesOfFreedom: degreesOfSpread(value, spread),
    known: 'borrowed' as const,
    formulas,
  };
}

/** Half of what the published formulas differ by, share of the single; 0 where it was lifted. */
const formulaShare = ({ estimated, best }: LiftTest): number =>
  estimated ? (estimated.most - estimated.least) / 2 / best : 0;
