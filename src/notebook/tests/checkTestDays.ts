import { isSameAngle } from '../../numeric/degrees.ts';
import { actionNamed } from '../../tables/actions.ts';
import type { Reading } from '../reading.ts';
import { setUpDifference } from './setUpDifference.ts';
import type { Test, TorqueTest } from './strengthTest.ts';

/**
 * Refuses two torque tests of one set-up and one date that do not make one day: scored differently,
 * or with an angle in both.
 */
export function checkTestDays(reading: Reading, tests: readonly Test[]): void {
  const torques = tests.filter((test) => test.kind === 'torque');
  for (const [index, test] of torques.entries())
    for (const first of torques.slice(0, index)) {
      const isOneDay = test.date !== undefined && test.date === first.date;
      if (isOneDay && test.action === first.action && test.side === first.side)
        checkDay(reading, first, test);
    }
}

function checkDay(reading: Reading, first: TorqueTest, test: TorqueTest): void {
  if (setUpDifference({ ...first, score: test.score }, test) !== undefined) return;
  const day = `two tests of ${test.action} of ${test.date}`;
  if (first.score !== test.score) {
    const message = `${day} are scored differently: the ${first.score} trial counts in one, the ${test.score} in the other`;
    const hint = 'write the same score: in both';
    reading.refuse([...test.path, 'score'], { code: 'two-scores', message, hint, key: true });
    return;
  }
  const twice = test.points.find(({ angle }) =>
    first.points.some((point) => isSameAngle(point.angle, angle)),
  );
  if (!twice) return;
  const angle = reading.jointText(twice.angle, actionNamed(test.action)?.joint);
  const message = `${day} both have trials at ${angle}`;
  const hint = 'put all trials of an angle into one list; or say what differs, for example side:';
  reading.refuse(twice.path, { code: 'angle-twice', message, hint, key: true });
}
