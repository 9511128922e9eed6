import type { Lift } from '../../mechanics/lift.ts';
import { toRadians } from '../../numeric/degrees.ts';
import { actionNamed } from '../../tables/actions.ts';
import { isAbove, type Reading } from '../reading.ts';
import type { KnownLifts } from '../readLifts.ts';
import type { Path } from '../scenario.ts';
import { earlierSetUp } from './earlierSetUp.ts';
import { earlierSingle, isSameEnd } from './earlierSingle.ts';
import { setUpDifference } from './setUpDifference.ts';
import type { LiftTest, Test, TorqueTest } from './strengthTest.ts';

const sameLever = 0.01;

/**
 * Holds a retest against the earlier test that it is judged by: what would make the verdict wrong is
 * refused, what only weakens it is remarked on; never throws.
 *
 * @param occasions tests of each earlier occasion, in order of time
 */
export function checkRetest(
  reading: Reading,
  test: Test,
  occasions: readonly (readonly Test[])[],
  lifts: KnownLifts,
): void {
  if (test.kind === 'torque') {
    const torques = occasions.map((tests) => tests.filter((one) => one.kind === 'torque'));
    checkTorque(reading, test, torques);
    return;
  }
  const singles = occasions.map((tests) => tests.filter((one) => one.kind === 'lift'));
  checkLift(reading, test, singles, lifts.get(test.lift));
}

function checkLift(
  reading: Reading,
  test: LiftTest,
  occasions: readonly (readonly LiftTest[])[],
  lift: Lift | undefined,
): void {
  const own = occasions.flat().filter((one) => one.lift === test.lift);
  const alike = lift && earlierSingle(test, occasions, toRadians(lift.rangeDeg[0]))?.single;
  const [first] = own;
  if (!first) remarkOnNew(reading, test, test.lift);
  else if (lift && !alike) refuseRange(reading, first, test, lift);
  if (!alike || (alike.estimated === undefined) === (test.estimated === undefined)) return;
  const [lifted, estimated] = test.estimated
    ? ['the test', 'the retest']
    : ['the retest', 'the test'];
  const message = `the single of ${test.lift} was lifted in ${lifted} and is estimated in ${estimated}; the difference holds the error of the formulas too`;
  const at = [...test.path, test.estimated ? 'reps' : 'best'];
  reading.remark(at, { code: 'retest-differs', message, hint: 'test both alike' });
}

/** Told by the end of the range where the ends differ, else by its start. */
function refuseRange(reading: Reading, first: LiftTest, test: LiftTest, lift: Lift): void {
  const start = toRadians(lift.rangeDeg[0]);
  const ends = isSameEnd(first.to, test.to);
  const [then, now] = [first, test].map((one) =>
    reading.flexionText(ends ? (one.from ?? start) : one.to, lift.leading),
  );
  const way = ends ? 'from' : 'to';
  const message = `${test.lift} is retested ${way} ${now}, the tests have it ${way} ${then}; two ranges have two heaviest singles`;
  const hint = 'retest over the range of the test';
  reading.refuse([...test.path, way], { code: 'retest-differs', message, hint });
}

function checkTorque(
  reading: Reading,
  test: TorqueTest,
  occasions: readonly (readonly TorqueTest[])[],
): void {
  const tested = occasions.map((tests) => tests.map((one) => ({ test: one })));
  const alike = earlierSetUp([{ test }], tested);
  if (alike) {
    const first = alike.setUp[0]?.test;
    if (first) remarkOnRig(reading, first, test);
    return;
  }
  const first = nearest(test, occasions);
  if (!first) {
    remarkOnNew(reading, test, test.action);
    return;
  }
  const { at, reason, hint } = difference(reading, first, test);
  const message = `this retest of ${test.action} cannot be compared with the test: ${reason}`;
  reading.refuse([...test.path, ...at], { code: 'retest-differs', message, hint, key: true });
}

/** The test that lacks least of being comparable: its angles only, else of the same side, else any. */
function nearest(
  test: TorqueTest,
  occasions: readonly (readonly TorqueTest[])[],
): TorqueTest | undefined {
  const own = occasions.flat().filter(({ action }) => action === test.action);
  return (
    own.find((one) => setUpDifference(one, test) === undefined) ??
    own.find(({ side }) => side === test.side) ??
    own[0]
  );
}

interface Difference {
  /** Below the retest. */
  readonly at: Path;
  readonly reason: string;
  readonly hint: string;
}

/** The first thing that makes two tests two different measurements, and what to do about it. */
function difference(reading: Reading, first: TorqueTest, test: TorqueTest): Difference {
  const found = setUpDifference(first, test);
  switch (found) {
    case undefined:
      return angleDifference(reading, first, test);
    case 'score':
      return {
        at: ['score'],
        reason: `the ${first.score} trial counts in the test, the ${test.score} in the retest`,
        hint: 'write the same score: in both',
      };
    case 'side':
      return {
        at: ['side'],
        reason: `the test is of ${sideWords(first.side)}, the retest of ${sideWords(test.side)}`,
        hint: 'retest as in the test',
      };
    case 'angle taken':
      return {
        at: ['angle taken'],
        reason: `its angles were taken ${first.angleTaken}, those of the retest ${test.angleTaken}`,
        hint: 'take them alike: under load a knee may straighten by 10 to 20 deg',
      };
    case 'gravity':
      return gravityDifference(first, test);
    default:
      return neighbourDifference(reading, first, test, found.neighbour);
  }
}

function gravityDifference(first: TorqueTest, test: TorqueTest): Difference {
  const isLeftIn = ({ gravity }: TorqueTest) => gravity?.kind === 'none';
  const unstated = first.gravity === undefined ? 'test' : 'retest';
  const stated = unstated === 'test' ? 'retest' : 'test';
  const reason = isLeftIn(first)
    ? 'the weight of the limb is in the test, but taken out of the retest'
    : isLeftIn(test)
      ? 'the weight of the limb is taken out of the test, but not of the retest'
      : `the weight of the limb is added in the ${stated}, and the ${unstated} does not say what was done about it`;
  return { at: ['gravity'], reason, hint: 'treat both alike: write the same gravity: in both' };
}

function neighbourDifference(
  reading: Reading,
  first: TorqueTest,
  test: TorqueTest,
  joint: string,
): Difference {
  const [then, now] = [first, test].map(({ neighbours }) =>
    reading.jointText(neighbours[joint] ?? 0, joint),
  );
  return {
    at: ['with', joint],
    reason: `the ${joint} was at ${then} and is at ${now}`,
    hint: `retest with the ${joint} as in the test: it changes the length of muscles over two joints`,
  };
}

function angleDifference(reading: Reading, first: TorqueTest, test: TorqueTest): Difference {
  const listed = first.points
    .map(({ angle }) => reading.jointText(angle, actionNamed(test.action)?.joint))
    .join(', ');
  return {
    at: [test.table === undefined ? 'trials' : 'trials from'],
    reason: 'they share no angle',
    hint: `retest at the angles of the test: ${listed}`,
  };
}

const sideWords = (side: TorqueTest['side']): string =>
  side === 'both' ? 'both sides' : `the ${side} side`;

const isApart = (one: number, other: number, within: number): boolean =>
  isAbove(Math.abs(one - other), within);

/** A pad or strap moved along the limb changes what is felt and how far the joint gives. */
function remarkOnRig(reading: Reading, first: TorqueTest, test: TorqueTest): void {
  const [then, now] = [first.measure.lever, test.measure.lever];
  const cm = (length: number) => `${Number((100 * length).toFixed(1))} cm`;
  const isMoved = then !== undefined && now !== undefined && isApart(then, now, sameLever);
  if (!isMoved && (then === undefined) === (now === undefined)) return;
  const what = isMoved
    ? `the lever arm was ${cm(then)} and is ${cm(now)}`
    : 'one was measured as a torque, the other as a force at a lever arm';
  const message = `retest of ${test.action}: ${what}; a change may come from the rig`;
  const hint = 'check the lever arm, and use the same set-up in both';
  reading.remark([...test.path, 'unit'], { code: 'retest-rig', message, hint });
}

function remarkOnNew(reading: Reading, { kind, path }: Test, what: string): void {
  const message = `${what} is retested, but the file has no such test before training; it is compared with nothing`;
  const hint = 'add the first test under tests:';
  const at = [...path, kind === 'lift' ? 'lift' : 'action'];
  reading.remark(at, { code: 'retest-alone', message, hint });
}
