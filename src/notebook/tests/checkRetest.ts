import { toRadians } from '../../numeric/degrees.ts';
import { actionNamed } from '../../tables/actions.ts';
import { isAbove, type Reading } from '../reading.ts';
import type { KnownLifts } from '../readLifts.ts';
import type { Path } from '../scenario.ts';
import type { LiftTest, Test, TorqueTest } from './strengthTest.ts';

/** Angles nearer than this are the same set-up (as near as a coach sets one; working values). */
const sameAngle = toRadians(2.5);
const sameNeighbour = toRadians(10);
const sameLever = 0.01;

/**
 * Holds a retest against the first tests: what would make the verdict wrong is refused, what only
 * weakens it is remarked on; never throws.
 */
export function checkRetest(
  reading: Reading,
  test: Test,
  before: readonly Test[],
  lifts: KnownLifts,
): void {
  if (test.kind === 'torque') {
    const first = before.filter((one) => one.kind === 'torque');
    checkTorque(reading, test, first);
    return;
  }
  const first = before.filter((one) => one.kind === 'lift');
  checkLift(reading, test, first, lifts.get(test.lift)?.leading);
}

function checkLift(
  reading: Reading,
  test: LiftTest,
  before: readonly LiftTest[],
  joint: string | undefined,
): void {
  const own = before.filter(({ lift }) => lift === test.lift);
  const alike = own.find(
    (one) =>
      !isApart(one.to, test.to, sameAngle) &&
      !isApart(one.from ?? test.from ?? 0, test.from ?? one.from ?? 0, sameNeighbour),
  );
  const [first] = own;
  if (!first) remarkOnNew(reading, test, test.lift);
  else if (!alike) {
    const message = `${test.lift} is retested to ${reading.flexionText(test.to, joint)}, the tests have it to ${reading.flexionText(first.to, joint)}; two ranges have two heaviest singles`;
    const hint = 'retest over the range of the test';
    reading.refuse([...test.path, 'to'], { code: 'retest-differs', message, hint });
  }
  if (!alike || (alike.estimated === undefined) === (test.estimated === undefined)) return;
  const [lifted, estimated] = test.estimated
    ? ['the test', 'the retest']
    : ['the retest', 'the test'];
  const message = `the single of ${test.lift} was lifted in ${lifted} and is estimated in ${estimated}; the difference holds the error of the formulas too`;
  const at = [...test.path, test.estimated ? 'reps' : 'best'];
  reading.remark(at, { code: 'retest-differs', message, hint: 'test both alike' });
}

function checkTorque(reading: Reading, test: TorqueTest, before: readonly TorqueTest[]): void {
  const ofAction = before.filter(({ action }) => action === test.action);
  const sameSide = ofAction.filter(({ side }) => side === test.side);
  const [first] = sameSide.length > 0 ? sameSide : ofAction;
  const found = first && difference(reading, first, test);
  if (!first) remarkOnNew(reading, test, test.action);
  else if (found) {
    const message = `this retest of ${test.action} cannot be compared with the test: ${found.reason}`;
    const { at, hint } = found;
    reading.refuse([...test.path, ...at], { code: 'retest-differs', message, hint, key: true });
  } else remarkOnRig(reading, first, test);
}

interface Difference {
  /** Below the retest. */
  readonly at: Path;
  readonly reason: string;
  readonly hint: string;
}

/** The first thing that makes two tests two different measurements, and what to do about it. */
function difference(reading: Reading, first: TorqueTest, test: TorqueTest): Difference | undefined {
  return setupDifference(first, test) ?? angleDifference(reading, first, test);
}

function setupDifference(first: TorqueTest, test: TorqueTest): Difference | undefined {
  const { score, side, angleTaken } = test;
  if (first.score !== score)
    return {
      at: ['score'],
      reason: `the ${first.score} trial counts in the test, the ${score} in the retest`,
      hint: 'write the same score: in both',
    };
  if (first.side !== undefined && side !== undefined && first.side !== side)
    return {
      at: ['side'],
      reason: `the test is of ${sideWords(first.side)}, the retest of ${sideWords(side)}`,
      hint: 'retest as in the test',
    };
  if (first.angleTaken !== undefined && angleTaken !== undefined && first.angleTaken !== angleTaken)
    return {
      at: ['angle taken'],
      reason: `its angles were taken ${first.angleTaken}, those of the retest ${angleTaken}`,
      hint: 'take them alike: under load a knee may straighten by 10 to 20 deg',
    };
  if (isCorrected(first) === isCorrected(test)) return undefined;
  return {
    at: ['gravity'],
    reason: `the weight of the limb is ${isCorrected(first) ? 'taken out of the test, but not of the retest' : 'in the test, but taken out of the retest'}`,
    hint: 'treat both alike: write the same gravity: in both',
  };
}

function angleDifference(
  reading: Reading,
  first: TorqueTest,
  test: TorqueTest,
): Difference | undefined {
  for (const [joint, angle] of Object.entries(test.neighbours)) {
    const then = first.neighbours[joint];
    if (then !== undefined && isApart(then, angle, sameNeighbour))
      return {
        at: ['with', joint],
        reason: `the ${joint} was at ${reading.jointText(then, joint)} and is at ${reading.jointText(angle, joint)}`,
        hint: `retest with the ${joint} as in the test: it changes the length of muscles over two joints`,
      };
  }
  const shared = test.points.some(({ angle }) =>
    first.points.some((one) => !isApart(one.angle, angle, sameAngle)),
  );
  if (shared) return undefined;
  const listed = first.points
    .map(({ angle }) => reading.jointText(angle, actionNamed(test.action)?.joint))
    .join(', ');
  return {
    at: [test.table === undefined ? 'trials' : 'trials from'],
    reason: 'they share no angle',
    hint: `retest at the angles of the test: ${listed}`,
  };
}

const sideWords = (side: NonNullable<TorqueTest['side']>): string =>
  side === 'both' ? 'both sides' : `the ${side} side`;

const isCorrected = ({ gravity }: TorqueTest): boolean => gravity?.kind !== 'none';

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
