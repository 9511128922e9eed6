import { isSameSetUp } from '../../notebook/tests/isSameSetUp.ts';
import { setUpsOf } from '../../notebook/tests/setUpsOf.ts';
import { toRadians } from '../../numeric/degrees.ts';
import type { Results } from '../../run.ts';
import { liftNamed, lifts } from '../../tables/lifts.ts';
import { besideForecast } from './besideForecast.ts';
import { type HistoryPoint, historyOf } from './history.ts';
import { type JudgedAction, judgeAction } from './judgeAction.ts';
import { type JudgedLift, judgeLifts } from './judgeLift.ts';
import { type Days, latestTests, type Occasion, occasionsOf, weeksBetween } from './occasions.ts';
import { type Predicted, predictedGain } from './predictedGain.ts';
import { type SetUpApart, setUpApart } from './setUpApart.ts';

/** One retest against the tests before it. */
export interface JudgedRetest {
  readonly place: number;
  /** Programs done between the two, in order; what the file does not name is left out. */
  readonly done: readonly string[];
  /** Days of the target's own tests; of all tests where the target was not tested both times. */
  readonly from: Days | undefined;
  readonly to: Days | undefined;
  /** Of the program just before the retest. */
  readonly forecast?: Predicted;
  /** One for each set-up, those of the target first. */
  readonly actions: readonly JudgedAction[];
  readonly lifts: readonly JudgedLift[];
}

/** The target over every occasion, in one set-up. */
export interface History {
  readonly apart: SetUpApart;
  readonly points: readonly HistoryPoint[];
}

/** All retests in the order of time, and the target over every occasion. */
export interface JudgedRetests {
  readonly retests: readonly JudgedRetest[];
  readonly histories: readonly History[];
}

/** Every retest of a scenario against what was tested before it. */
export function judgeRetests(results: Results): JudgedRetests {
  const occasions = occasionsOf(results.scenario, results.athlete.body);
  const judged: JudgedRetest[] = [];
  for (let place = 1; place < occasions.length; place++)
    judged.push(judgeOne(results, occasions, place, judged));
  return { retests: judged, histories: historiesOf(results, judged) };
}

function judgeOne(
  results: Results,
  occasions: readonly Occasion[],
  place: number,
  judged: readonly JudgedRetest[],
): JudgedRetest {
  const { scenario, question } = results;
  const now = occasions[place];
  if (!now) throw new Error(`no retest ${place}`);
  const found = setUpsOf(now.torques)
    .flatMap((setUp) => judgeAction(results, occasions, place, setUp) ?? [])
    .sort((a, b) => Number(b.action === question.action) - Number(a.action === question.action));
  const head = found.find(({ isTarget }) => isTarget);
  const from = head ? head.from : occasions[place - 1]?.days;
  const to = head ? head.to : now.days;
  const forecast = forecastOf(results, occasions, place, found);
  return {
    place,
    done: occasions
      .slice((head?.against ?? place - 1) + 1, place + 1)
      .flatMap(({ retest }) => retest?.after ?? []),
    from,
    to,
    ...(forecast ? { forecast } : {}),
    actions: besideForecast(
      found,
      forecast,
      judged.flatMap(({ actions }) => actions),
    ),
    lifts: judgeLifts({
      occasions: occasions.slice(0, place + 1),
      repeatability: scenario.repeatability,
      startOf: startIn(results),
      ...(forecast ? { forecast } : {}),
    }),
  };
}

/** From the tests just before the program to the retest, by the target's own days where it has them. */
function forecastOf(
  results: Results,
  occasions: readonly Occasion[],
  place: number,
  actions: readonly JudgedAction[],
): Predicted | undefined {
  const [earlier, now] = [occasions[place - 1], occasions[place]];
  const name = now?.retest?.after;
  if (name === undefined) return undefined;
  const own = actions.find(({ isTarget, isDirect }) => isTarget && isDirect);
  const weeks = own ? weeksBetween(own.from, own.to) : weeksBetween(earlier?.days, now?.days);
  const tests = latestTests(occasions.slice(0, place), startIn(results));
  return predictedGain(results.scenario, name, tests, weeks);
}

/** Where a lift begins, radians. */
const startIn =
  ({ scenario }: Results) =>
  (lift: string): number =>
    toRadians(liftNamed(lift, [...lifts, ...scenario.lifts]).rangeDeg[0]);

/** Each set-up of the target that was retested, with the error it had last. */
function historiesOf(results: Results, judged: readonly JudgedRetest[]): History[] {
  const latestFirst = judged
    .flatMap(({ actions }) => actions.filter(({ isTarget }) => isTarget))
    .reverse();
  const each = latestFirst.filter(
    ({ setUp }, i) => !latestFirst.slice(0, i).some((other) => isSameSetUp(other.setUp, setUp)),
  );
  return each.reverse().map(({ setUp, error }) => ({
    apart: setUpApart(
      setUp,
      each.map((one) => one.setUp),
    ),
    points: historyOf(results, setUp, error),
  }));
}
