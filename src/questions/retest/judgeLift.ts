import { degreesOfSpread } from '../../inference/reliability/errorSize.ts';
import { minimalDetectableChange } from '../../inference/reliability/minimalDetectableChange.ts';
import { chanceAbove } from '../../inference/reliability/worthwhile.ts';
import type { LiftTest, RepeatedTest } from '../../notebook/tests/strengthTest.ts';
import { testErrors } from '../../tables/testError.ts';
import type { Predicted } from './predictedGain.ts';

/** A heaviest single before and after. */
export interface JudgedLift {
  readonly lift: string;
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
  readonly error: { readonly share: number; readonly known: 'own' | 'borrowed' };
  /** Share, where a forecast was made. */
  readonly predicted?: number;
}

const sameRange = 0.044; // 2.5°, as near as a depth is set

/** Singles of the same lift and range on both occasions. */
export function judgeLifts(
  before: readonly LiftTest[],
  after: readonly LiftTest[],
  repeatability: readonly RepeatedTest[],
  predicted: Predicted | undefined,
): JudgedLift[] {
  return after.flatMap((test): JudgedLift[] => {
    const isAlike = (one: { readonly lift: string; readonly to: number }) =>
      one.lift === test.lift && Math.abs(one.to - test.to) < sameRange;
    const first = before.find(isAlike);
    if (!first || !(first.best > 0) || !(test.best > 0)) return [];
    const { share, degreesOfFreedom, known } = errorOf(test, repeatability, isAlike, first.best);
    const change = Math.log(test.best / first.best);
    const log = minimalDetectableChange({ value: share, degreesOfFreedom });
    const says = change > log ? 'gain beyond noise' : change < -log ? 'loss beyond noise' : null;
    const forecast = predicted?.singles.find(isAlike)?.gain;
    return [
      {
        lift: test.lift,
        to: test.to,
        before: first.best,
        after: test.best,
        gain: Math.expm1(change),
        detectable: Math.expm1(log),
        says: says ?? 'cannot say',
        chanceOfGain: chanceAbove(change, share * Math.SQRT2, 0, degreesOfFreedom),
        error: { share, known },
        ...(forecast === undefined ? {} : { predicted: forecast }),
      },
    ];
  });
}

function errorOf(
  { estimated }: LiftTest,
  repeatability: readonly RepeatedTest[],
  isAlike: (one: { readonly lift: string; readonly to: number }) => boolean,
  load: number,
) {
  const own = repeatability.find(({ of }) => 'lift' in of && isAlike(of));
  if (own?.kind === 'typical error' && !('torque' in own.error)) {
    const { people, days } = own.from;
    return {
      share: 'share' in own.error ? own.error.share : own.error.mass / load,
      degreesOfFreedom: Math.max((days - 1) * Math.max(people - 1, 1), 1),
      known: 'own' as const,
    };
  }
  const { value, spread } = testErrors['heaviest single'];
  // The formulas differ by so much among themselves; it comes on top of the test's own error.
  const formulas = estimated ? (estimated.most - estimated.least) / 2 / load : 0;
  return {
    share: Math.hypot(value, formulas),
    degreesOfFreedom: degreesOfSpread(value, spread),
    known: 'borrowed' as const,
  };
}
