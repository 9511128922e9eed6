import { actionNamed } from '../../tables/actions.ts';
import type { Reading } from '../reading.ts';
import type { TorquePoint, TorqueTest } from './strengthTest.ts';

/** Maximal trials of one person and angle differ by less (working value: three times a test's error of 7 %). */
const wide = 0.25;

/** Remarks on a torque test that tells less than it seems to; never throws. */
export function checkTrials(reading: Reading, test: TorqueTest): void {
  const { points, path } = test;
  const at = [...path, test.table === undefined ? 'trials' : 'trials from'];
  const [only] = points;
  const joint = actionNamed(test.action)?.joint;
  if (points.length === 1 && only) {
    const message = `${test.action} is tested at one angle, ${reading.jointText(only.angle, joint)}; where in the range this athlete is strong it cannot tell`;
    const hint = 'test at three angles or more, one of them near the target';
    reading.remark(at, { code: 'one-angle', message, hint, key: true });
  }
  const single = points.filter(({ trials }) => trials.length === 1);
  if (single.length > 0) {
    const where = single.length === points.length ? 'each angle' : angles(reading, single, joint);
    const message = `${test.action} has one trial only at ${where}; a slip would not be seen`;
    const hint = 'three trials an angle are usual';
    reading.remark(at, { code: 'one-trial', message, hint, key: true });
  }
  for (const point of points) remarkOnSlip(reading, test, point);
}

const angles = (
  reading: Reading,
  points: readonly TorquePoint[],
  joint: string | undefined,
): string => points.map(({ angle }) => reading.jointText(angle, joint)).join(', ');

/** One trial far from the others of its angle: the one farthest from the middle is named. */
function remarkOnSlip(reading: Reading, { action, table }: TorqueTest, point: TorquePoint): void {
  const { trials, angle } = point;
  const sorted = [...trials].sort((a, b) => a - b);
  const [least = 0, most = 0] = [sorted[0], sorted.at(-1)];
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const mean = trials.reduce((sum, trial) => sum + trial, 0) / trials.length;
  if (trials.length < 2 || most - least <= wide * mean) return;
  const odd = most - middle > middle - least ? most : least;
  const index = trials.indexOf(odd);
  const spread = `${Math.round((100 * (most - least)) / mean)} %`;
  const joint = actionNamed(action)?.joint ?? 'joint';
  const message =
    trials.length === 2
      ? `the two trials at a ${joint} angle of ${reading.jointText(angle, joint)} differ by ${spread}; one of them looks like a slip`
      : `the trials at a ${joint} angle of ${reading.jointText(angle, joint)} differ by ${spread}; trial ${index + 1} looks like a slip`;
  // [148, 15,5] reads as three trials: a decimal comma inside a list parts the number.
  const hint = trials.some((trial) => trial < 10)
    ? 'check it against the record; decimals are written with a point, 15.5, not with a comma'
    : 'check it against the record; leave out a trial that was not a full effort';
  const isInline = table === undefined && trials.length > 2;
  reading.remark(isInline ? [...point.path, index] : point.path, {
    code: 'trial-slip',
    message,
    hint,
    key: !isInline,
  });
}
