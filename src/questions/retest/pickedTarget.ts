import type { Picked } from '../../inference/retest/notes.ts';
import { meanScore, scoresByAngle, type TestDay } from '../../inference/retest/testDay.ts';
import { errorShareAt, type TestError } from '../../inference/retest/testError.ts';
import { isSameAngle, toDegrees } from '../../numeric/degrees.ts';
import { meanOf } from '../../numeric/moments.ts';
import { meanTorque } from '../../physiology/strengthCurve.ts';
import type { Results } from '../../run.ts';
import { strengthSpread } from '../../tables/strengthSpread.ts';

/**
 * Whether the target is where this athlete tested weakest beside the usual curve, and what the other
 * angles would lead one to expect there: then part of its rise comes by itself.
 *
 * Expected torque: the mean person's at the target times how the other angles compare with theirs.
 * Reliability of the deviation: spread of people around the usual shape, squared, over that and the
 * error of the mean, squared.
 *
 * @param after the retest: only angles that it has count
 * @returns undefined where the target is not the weakest, or cannot be told from the others
 */
export function pickedTarget(
  { scenario, question }: Results,
  days: readonly TestDay[],
  after: readonly TestDay[],
  error: TestError,
): Picked | undefined {
  const { reference, mass } = scenario.subject;
  const { action, target } = question;
  const usual = (angle: number) => meanTorque(action, reference, mass, toDegrees(angle));
  // Angles that the retest lacks count in no verdict, so they are not expected of it either.
  const again = scoresByAngle(after);
  const common = scoresByAngle(days).filter(({ angle }) =>
    again.some((one) => isSameAngle(one.angle, angle)),
  );
  const scores = common.map((entry) => ({
    angle: entry.angle,
    ratio: meanScore(entry) / usual(entry.angle),
    isInside: entry.angle >= target.from - 1e-9 && entry.angle <= target.to + 1e-9,
  }));
  const [inside, outside] = [true, false].map((is) =>
    scores.filter(({ isInside }) => isInside === is),
  );
  if (!inside?.length || !outside?.length) return undefined;
  const ratioOf = (list: typeof scores) => meanOf(list.map(({ ratio }) => ratio));
  // Weakest: every other angle did better beside the usual curve than the target's mean.
  if (!outside.every(({ ratio }) => ratio > ratioOf(inside))) return undefined;
  const { tilt, residual } = strengthSpread(action);
  const shape = Math.hypot(tilt, residual.log[0] ?? 0);
  const noise = meanOf(inside.map(({ angle }) => errorShareAt(error, angle, usual(angle)) ** 2));
  const reliability = shape ** 2 / (shape ** 2 + noise / (inside.length * days.length));
  const expected = ratioOf(outside) * meanOf(inside.map(({ angle }) => usual(angle)));
  return { reliability, expected };
}
