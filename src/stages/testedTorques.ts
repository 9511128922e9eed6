import { type MeasuredAction, scored } from '../inference/fitStrength.ts';
import type { TestDay } from '../inference/retest/testDay.ts';
import type { Body } from '../mechanics/posture.ts';
import type { Path } from '../notebook/scenario.ts';
import type { Test, TorqueTest } from '../notebook/tests/strengthTest.ts';
import { toDegrees } from '../numeric/degrees.ts';
import { muscleTorque, pullOfLimb } from '../physiology/limbWeight.ts';

/** One angle of a torque test with what the muscles of one side made there. */
export interface TestedPoint {
  readonly angle: number;
  /** N·m, one for each trial, in its order. */
  readonly trials: readonly number[];
  /** What the weight of the limb took from them, N·m; negative where it helped. */
  readonly pull: number;
  readonly path: Path;
}

/** A torque test with the limb's weight taken out and halves taken for each side. */
export interface TestedTorques {
  readonly test: TorqueTest;
  readonly points: readonly TestedPoint[];
}

/** The torque tests of a list as torques of the muscles, in its order. */
export function testedTorques(tests: readonly Test[], body: Body): TestedTorques[] {
  return tests.flatMap((test) => (test.kind === 'torque' ? [torquesOf(test, body)] : []));
}

function torquesOf(test: TorqueTest, body: Body): TestedTorques {
  const points = test.points.map(({ angle, trials, path }) => ({
    angle,
    trials: trials.map((shown) => muscleTorque(shown, angle, test, body)),
    pull: pullOfLimb(test.gravity, angle, body),
    path,
  }));
  return { test, points };
}

/** An action's tests as days; tests of one date are one day. */
export function testDays(torques: readonly TestedTorques[], action: string): TestDay[] {
  const days = new Map<string, TestDay>();
  for (const [i, { test, points }] of torques.entries()) {
    if (test.action !== action) continue;
    const key = test.date ?? `test ${i}`;
    const known = days.get(key)?.angles ?? [];
    const angles = points.map(({ angle, trials }) => ({ angle, trials }));
    days.set(key, { score: test.score, angles: [...known, ...angles] });
  }
  return [...days.values()];
}

/**
 * Each angle's scored trials, in the order of the tests. A trial of which the limb's weight leaves
 * nothing is left out; that is a problem of its own.
 */
export function measuredActions(torques: readonly TestedTorques[]): MeasuredAction[] {
  return torques.flatMap(({ test, points }) =>
    points.flatMap(({ angle, trials }) => {
      const made = trials.filter((torque) => torque > 0);
      if (made.length === 0) return [];
      return [{ action: test.action, deg: toDegrees(angle), torque: scored(made, test.score) }];
    }),
  );
}
