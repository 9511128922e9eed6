import { smallestWorthwhileChange } from '../../inference/reliability/worthwhile.ts';
import { daysToSee } from '../../inference/retest/daysToSee.ts';
import type { UpdatedAmplitude } from '../../inference/retest/updatedAmplitude.ts';
import { type Retest, retest } from '../../inference/retest.ts';
import { type EarlierSetUp, earlierSetUp } from '../../notebook/tests/earlierSetUp.ts';
import { isSameSetUp } from '../../notebook/tests/isSameSetUp.ts';
import { setUpsOf } from '../../notebook/tests/setUpsOf.ts';
import type { TorqueTest } from '../../notebook/tests/strengthTest.ts';
import type { Results } from '../../run.ts';
import { errorOfTest, isPractised, type KnownError } from '../../stages/errorOfTest.ts';
import { type TestedTorques, testDays } from '../../stages/testedTorques.ts';
import { type ActionName, isAction } from '../../tables/actions.ts';
import { strengthSpread } from '../../tables/strengthSpread.ts';
import { type Days, daysOf, type Occasion } from './occasions.ts';
import { pickedTarget } from './pickedTarget.ts';
import { type SetUpApart, setUpApart } from './setUpApart.ts';

/** One action in one set-up, tested before and after. */
export interface JudgedAction extends KnownError {
  readonly action: ActionName;
  /** What tells its set-up from others of the action in the file. */
  readonly apart: SetUpApart;
  /** Its verdicts on target and elsewhere count only for the target's own action. */
  readonly isTarget: boolean;
  /** Place of the occasion it is held against: 0 for the first tests. */
  readonly against: number;
  /** False where that is not the occasion just before: then other training lies between too. */
  readonly isDirect: boolean;
  /** Days of its own tests. */
  readonly from: Days | undefined;
  readonly to: Days | undefined;
  readonly setUp: readonly TestedTorques[];
  readonly retest: Retest;
  /** Test days on each side at which the target's wanted gain would stand out, if it does not yet. */
  readonly daysToSee?: number;
  /** Gain that the forecast expected, share: over the target's tested angles, and at each angle. */
  readonly predicted?: { readonly inTarget?: number; readonly byAngle: readonly number[] };
  /** Of a retest the first only: all set-ups of the target together say it. */
  readonly amplitude?: UpdatedAmplitude;
}

/**
 * A set-up of a retest against the latest earlier occasion that has it; undefined where none has.
 *
 * @param occasions all of the file: days of any of them tell the test error
 * @param place of the retest among them
 */
export function judgeAction(
  results: Results,
  occasions: readonly Occasion[],
  place: number,
  setUp: readonly TestedTorques[],
): JudgedAction | undefined {
  const { question } = results;
  const action = setUp[0]?.test.action;
  const torques = occasions.map((occasion) =>
    occasion.torques.filter(({ test }) => test.action === action),
  );
  const then = earlierSetUp(setUp, torques.slice(0, place));
  if (!then || action === undefined || !isAction(action)) return undefined;
  const [before, after] = [then.setUp, setUp].map((tested) => tested.map(({ test }) => test));
  const known = errorOfTest(
    action,
    [...(before ?? []), ...(after ?? [])],
    torques.flatMap((tested) =>
      setUpsOf(tested)
        .filter((other) => isSameSetUp(other, setUp))
        .map(testDays),
    ),
    results.scenario.repeatability,
  );
  const found = compared(results, action, then, setUp, known);
  const { gain } = results.scenario.target;
  const isTarget = action === question.action;
  const days =
    isTarget && gain !== undefined ? daysToSee(found.target, found.angles, gain) : undefined;
  return {
    action,
    apart: setUpApart(setUp, torques),
    isTarget,
    against: then.place,
    isDirect: then.place === place - 1,
    from: daysOf(before ?? []),
    to: daysOf(after ?? []),
    setUp,
    ...known,
    retest: found,
    ...(days === undefined ? {} : { daysToSee: days }),
  };
}

function compared(
  results: Results,
  action: ActionName,
  then: EarlierSetUp<TestedTorques>,
  setUp: readonly TestedTorques[],
  { error, correlation }: KnownError,
): Retest {
  const { scenario, question } = results;
  const isTarget = action === question.action;
  const tests = then.setUp.map(({ test }) => test);
  const before = testDays(then.setUp);
  const picked = isTarget ? pickedTarget(results, before, testDays(setUp), error) : undefined;
  return retest({
    before,
    after: testDays(setUp),
    target: question.target,
    error,
    ...(correlation ? { correlation } : {}),
    ...(isTarget ? { worthwhile: worthwhileIn(action), ...wanted(scenario.target.gain) } : {}),
    ...(picked ? { picked } : {}),
    firstEver: then.place === 0 && tests.some(({ familiarised }) => isFirst(familiarised)),
    familiarised: tests.every(isPractised),
  });
}

/** A fifth of the spread between people, by convention; a share. */
const worthwhileIn = (action: ActionName) =>
  shareOf(smallestWorthwhileChange(strengthSpread(action).logScale));

function shareOf(change: ReturnType<typeof smallestWorthwhileChange>): number {
  if (typeof change !== 'number') throw new Error(change.reason);
  return Math.expm1(change);
}

const wanted = (gain: number | undefined) => (gain === undefined ? {} : { wantedGain: gain });

const isFirst = (familiarised: TorqueTest['familiarised']) =>
  familiarised === 'no' || familiarised === 0;
