import { multiplier } from '../../inference/reliability/multiplier.ts';
import { meanScore, scoresByAngle } from '../../inference/retest/testDay.ts';
import { errorShareAt, type TestError } from '../../inference/retest/testError.ts';
import { isSameSetUp } from '../../notebook/tests/isSameSetUp.ts';
import { setUpsOf } from '../../notebook/tests/setUpsOf.ts';
import { isSameAngle } from '../../numeric/degrees.ts';
import { meanOf } from '../../numeric/moments.ts';
import type { Results } from '../../run.ts';
import { type TestedTorques, testDays } from '../../stages/testedTorques.ts';
import { daysOf, occasionsOf } from './occasions.ts';

/** The target's mean torque on one occasion. */
export interface HistoryPoint {
  readonly day: string;
  /** Whole days since the first occasion; undefined without dates. */
  readonly after?: number;
  /** N·m. */
  readonly torque: number;
  /** 95 % interval, N·m, above 0: errors of a day's angles taken to go together. */
  readonly low: number;
  readonly high: number;
}

/**
 * The target in one set-up on every occasion that tested it so, over the angles that all of them
 * tested. Interval: torque·exp(±t·s/√n), s the error's share of one day and n the days.
 */
export function historyOf(
  { scenario, question, athlete }: Results,
  setUp: readonly TestedTorques[],
  error: TestError,
): HistoryPoint[] {
  const tested = occasionsOf(scenario, athlete.body).flatMap(({ torques }, place) => {
    const own = sameIn(torques, setUp);
    return own ? [{ place, days: daysOf(own.map(({ test }) => test)), ...scored(own) }] : [];
  });
  const shared = sharedAngles(tested, question.target);
  if (shared.length === 0) return [];
  const start = tested[0]?.days?.first;
  return tested.map(({ place, days, scores }) => {
    const own = scores.filter(({ angle }) => shared.some((one) => isSameAngle(one, angle)));
    const torque = meanOf(own.map(meanScore));
    const share = meanOf(own.map(({ angle }) => errorShareAt(error, angle, torque)));
    const count = Math.min(...own.map((entry) => entry.days.length));
    const factor = Math.exp((multiplier(0.95, error.degreesOfFreedom) * share) / Math.sqrt(count));
    return {
      day: days?.first ?? (place === 0 ? 'first test' : `retest ${place}`),
      ...(start !== undefined && days
        ? { after: Math.round((Date.parse(days.first) - Date.parse(start)) / 86_400_000) }
        : {}),
      torque,
      low: torque / factor,
      high: torque * factor,
    };
  });
}

const scored = (setUp: readonly TestedTorques[]) => ({ scores: scoresByAngle(testDays(setUp)) });

/** The set-up as it was on another occasion: of the same stated side first. */
function sameIn(torques: readonly TestedTorques[], setUp: readonly TestedTorques[]) {
  const alike = setUpsOf(torques).filter((other) => isSameSetUp(other, setUp));
  return alike.find(([one]) => one?.test.side === setUp[0]?.test.side) ?? alike[0];
}

/** Angles of the target that every occasion has. */
function sharedAngles(
  tested: readonly ReturnType<typeof scored>[],
  { from, to }: { readonly from: number; readonly to: number },
): number[] {
  const [first, ...others] = tested;
  return (first?.scores ?? [])
    .map(({ angle }) => angle)
    .filter((angle) => angle >= from - 1e-9 && angle <= to + 1e-9)
    .filter((angle) =>
      others.every(({ scores }) => scores.some((one) => isSameAngle(one.angle, angle))),
    );
}
