import type { Belief } from '../../inference/reliability/normalShrinkage.ts';
import { isRefusal } from '../../inference/reliability/refusal.ts';
import { smallestWorthwhileChange } from '../../inference/reliability/worthwhile.ts';
import {
  type UpdatedAmplitude,
  updatedAmplitude,
} from '../../inference/retest/updatedAmplitude.ts';
import { type Retest, retest } from '../../inference/retest.ts';
import { atAngle } from '../../mechanics/angleGrid.ts';
import type { TorqueTest } from '../../notebook/tests/strengthTest.ts';
import type { Results } from '../../run.ts';
import { errorOfTest, isPractised, type KnownError } from '../../stages/errorOfTest.ts';
import { testDays } from '../../stages/testedTorques.ts';
import { type ActionName, isAction } from '../../tables/actions.ts';
import { strengthSpread } from '../../tables/strengthSpread.ts';
import { type HistoryPoint, historyOf } from './history.ts';
import { type JudgedLift, judgeLifts } from './judgeLift.ts';
import { before, latestTests, type Occasion, occasionsOf, weeksBetween } from './occasions.ts';
import { pickedTarget } from './pickedTarget.ts';
import { meanOverAngles, type Predicted, predictedGain } from './predictedGain.ts';

/** One action tested before and after. */
export interface JudgedAction extends KnownError {
  readonly action: ActionName;
  /** Its verdicts on target and elsewhere count only for the target's own action. */
  readonly isTarget: boolean;
  readonly retest: Retest;
  /** Gain that the forecast expected, share: over the target's tested angles, and at each angle. */
  readonly predicted?: { readonly inTarget?: number; readonly byAngle: readonly number[] };
  readonly amplitude?: UpdatedAmplitude;
}

/** One retest against the tests before it. */
export interface JudgedRetest {
  readonly place: number;
  readonly after?: string;
  readonly from: Occasion['days'];
  readonly to: Occasion['days'];
  readonly forecast?: Predicted;
  readonly actions: readonly JudgedAction[];
  readonly lifts: readonly JudgedLift[];
}

/** All retests in the order of time, and the target over every occasion. */
export interface JudgedRetests {
  readonly retests: readonly JudgedRetest[];
  readonly history: readonly HistoryPoint[];
}

/** Every retest of a scenario against what was tested before it. */
export function judgeRetests(results: Results): JudgedRetests {
  const occasions = occasionsOf(results.scenario, results.athlete.body);
  const judged: JudgedRetest[] = [];
  for (let place = 1; place < occasions.length; place++) {
    // What one retest says of the athlete is where the next begins.
    const believed = judged.flatMap(({ actions }) =>
      actions.flatMap(({ amplitude }) => amplitude ?? []),
    );
    judged.push(judgeOne(results, occasions, place, believed.at(-1)));
  }
  const error = judged
    .flatMap(({ actions }) => actions.filter(({ isTarget }) => isTarget))
    .at(-1)?.error;
  return { retests: judged, history: error ? historyOf(results, error) : [] };
}

function judgeOne(
  results: Results,
  occasions: readonly Occasion[],
  place: number,
  believed: UpdatedAmplitude | undefined,
): JudgedRetest {
  const { scenario, question } = results;
  const prior = believed && { mean: believed.ratio, spread: believed.spread };
  const [earlier, now] = [occasions[place - 1], occasions[place]];
  if (!earlier || !now) throw new Error(`no retest ${place}`);
  const name = now.retest?.after;
  const forecast =
    name === undefined
      ? undefined
      : predictedGain(
          scenario,
          name,
          latestTests(occasions.slice(0, place)),
          weeksBetween(earlier, now),
        );
  const actions = new Set(now.torques.map(({ test }) => test.action).filter(isAction));
  const then = before(occasions, place, ({ lifts }) => lifts.length > 0);
  return {
    place,
    ...(name === undefined ? {} : { after: name }),
    from: earlier.days,
    to: now.days,
    ...(forecast ? { forecast } : {}),
    // The target's own action first.
    actions: [...actions]
      .sort((a, b) => Number(b === question.action) - Number(a === question.action))
      .flatMap((action) => judgeAction(results, occasions, place, action, forecast, prior) ?? []),
    lifts: judgeLifts(then?.lifts ?? [], now.lifts, scenario.repeatability, forecast),
  };
}

function judgeAction(
  results: Results,
  occasions: readonly Occasion[],
  place: number,
  action: ActionName,
  forecast: Predicted | undefined,
  prior: Belief | undefined,
): JudgedAction | undefined {
  const { scenario, question } = results;
  const isTested = ({ torques }: Occasion) => torques.some(({ test }) => test.action === action);
  const [then, now] = [before(occasions, place, isTested), occasions[place]];
  if (!then || !now) return undefined;
  const testsOf = (occasion: Occasion): TorqueTest[] =>
    occasion.torques.flatMap(({ test }) => (test.action === action ? [test] : []));
  const tests = [...testsOf(then), ...testsOf(now)];
  const known = errorOfTest(
    action,
    tests,
    occasions.map((occasion) => testDays(occasion.torques, action)),
    scenario.repeatability,
  );
  const isTarget = action === question.action;
  const [first, second] = [testDays(then.torques, action), testDays(now.torques, action)];
  const picked = isTarget ? pickedTarget(results, first, known.error) : undefined;
  const found = retest({
    before: first,
    after: second,
    target: question.target,
    error: known.error,
    ...(known.correlation ? { correlation: known.correlation } : {}),
    ...(isTarget ? { worthwhile: worthwhileIn(action), ...wanted(scenario.target.gain) } : {}),
    ...(picked ? { picked } : {}),
    firstEver: place === 1 && testsOf(then).some(({ familiarised }) => isFirst(familiarised)),
    familiarised: testsOf(then).every(isPractised),
  });
  return {
    action,
    isTarget,
    ...known,
    retest: found,
    ...(isTarget && forecast ? beside(found, forecast, prior) : {}),
  };
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

/** The forecast beside what was found, and what that says of the next forecast. */
function beside(
  { angles, target }: Retest,
  forecast: Predicted,
  prior: Belief | undefined,
): Pick<JudgedAction, 'predicted' | 'amplitude'> {
  const byAngle = angles.map(({ angle }) => atAngle(forecast.ratio, angle) - 1);
  const inside = angles.flatMap(({ angle, inTarget }) => (inTarget ? [angle] : []));
  if (inside.length === 0 || 'refused' in target) return { predicted: { byAngle } };
  const inTarget = meanOverAngles(forecast, inside);
  const amplitude = updatedAmplitude({
    observed: target.gain.value,
    standardError: target.standardError,
    predicted: inTarget,
    ...(prior ? { prior } : {}),
  });
  return {
    predicted: { inTarget, byAngle },
    ...(isRefusal(amplitude) ? {} : { amplitude }),
  };
}
