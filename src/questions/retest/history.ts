import { multiplier } from '../../inference/reliability/multiplier.ts';
import { isSameAngle, meanScore, scoresByAngle } from '../../inference/retest/testDay.ts';
import { errorShareAt, type TestError } from '../../inference/retest/testError.ts';
import { meanOf } from '../../numeric/moments.ts';
import type { Results } from '../../run.ts';
import { testDays } from '../../stages/testedTorques.ts';
import { occasionsOf } from './occasions.ts';

/** The target's mean torque on one occasion. */
export interface HistoryPoint {
  readonly day: string;
  /** Whole days since the first occasion; undefined without dates. */
  readonly after?: number;
  /** N·m. */
  readonly torque: number;
  /** Half of the 95 % interval, N·m: errors of a day's angles taken to go together. */
  readonly error: number;
}

/** The target on every occasion that tested it, over the angles that all of them tested. */
export function historyOf(results: Results, error: TestError): HistoryPoint[] {
  const { scenario, question, athlete } = results;
  const tested = occasionsOf(scenario, athlete.body)
    .map((occasion) => ({
      occasion,
      scores: scoresByAngle(testDays(occasion.torques, question.action)),
    }))
    .filter(({ scores }) => scores.length > 0);
  const { from, to } = question.target;
  const [first, ...others] = tested;
  const shared = (first?.scores ?? [])
    .map(({ angle }) => angle)
    .filter((angle) => angle >= from - 1e-9 && angle <= to + 1e-9)
    .filter((angle) =>
      others.every(({ scores }) => scores.some((one) => isSameAngle(one.angle, angle))),
    );
  if (shared.length === 0) return [];
  const start = first?.occasion.days?.first;
  return tested.map(({ occasion, scores }, i) => {
    const own = scores.filter(({ angle }) => shared.some((one) => isSameAngle(one, angle)));
    const torque = meanOf(own.map(meanScore));
    const share = meanOf(own.map(({ angle }) => errorShareAt(error, angle, torque)));
    const days = Math.min(...own.map((entry) => entry.days.length));
    const day = occasion.days?.first;
    return {
      day: day ?? (i === 0 ? 'first test' : `retest ${i}`),
      ...(start !== undefined && day !== undefined
        ? { after: Math.round((Date.parse(day) - Date.parse(start)) / 86_400_000) }
        : {}),
      torque,
      error: (multiplier(0.95, error.degreesOfFreedom) * share * torque) / Math.sqrt(days),
    };
  });
}
