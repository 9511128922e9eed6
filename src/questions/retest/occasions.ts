import type { Body } from '../../mechanics/posture.ts';
import type { Scenario } from '../../notebook/scenario.ts';
import { rangesApart } from '../../notebook/tests/earlierSingle.ts';
import { isSameSetUp } from '../../notebook/tests/isSameSetUp.ts';
import { setUpsOf } from '../../notebook/tests/setUpsOf.ts';
import type { LiftTest, Retest, Test } from '../../notebook/tests/strengthTest.ts';
import { type TestedTorques, testedTorques } from '../../stages/testedTorques.ts';

/** Tests of one time without training between them: the first ones, or a retest. */
export interface Occasion {
  /** The retest, where it is one. */
  readonly retest?: Retest;
  readonly tests: readonly Test[];
  readonly torques: readonly TestedTorques[];
  readonly lifts: readonly LiftTest[];
  /** First and last day; left out where no test has a date. */
  readonly days?: Days;
}

/** First and last day of some tests. */
export interface Days {
  readonly first: string;
  readonly last: string;
}

/** The days of some tests; undefined where none has a date. */
export function daysOf(tests: readonly { readonly date?: string }[]): Days | undefined {
  const dates = tests.flatMap(({ date }) => (date === undefined ? [] : [date])).sort();
  const [first, last] = [dates[0], dates.at(-1)];
  return first !== undefined && last !== undefined ? { first, last } : undefined;
}

/** The first tests, then the retests in the order of time. */
export function occasionsOf(scenario: Scenario, body: Body): Occasion[] {
  const of = (tests: readonly Test[], retest?: Retest): Occasion => {
    const days = daysOf(tests);
    return {
      ...(retest ? { retest } : {}),
      tests,
      torques: testedTorques(tests, body),
      lifts: tests.filter((test) => test.kind === 'lift'),
      ...(days ? { days } : {}),
    };
  };
  return [of(scenario.tests), ...scenario.retests.map((retest) => of(retest.tests, retest))];
}

/**
 * What was known of the athlete just after some occasions: of each set-up of torque tests and of each
 * lift's range the latest.
 *
 * @param startOf where a lift begins if a test does not say, radians
 */
export function latestTests(
  occasions: readonly Occasion[],
  startOf: (lift: string) => number,
): Test[] {
  const latest: TestedTorques[][] = [];
  const singles: LiftTest[] = [];
  for (const { torques, lifts } of occasions) {
    for (const setUp of setUpsOf(torques))
      replace(latest, [...setUp], (known) => isSameSetUp(known, setUp));
    for (const single of lifts)
      replace(singles, single, (known) =>
        Number.isFinite(rangesApart(known, single, startOf(single.lift))),
      );
  }
  return [...latest.flat().map(({ test }) => test), ...singles];
}

/** Puts something in place of what it is newer than, else at the end. */
function replace<T>(list: T[], one: T, isOlder: (known: T) => boolean): void {
  const at = list.findIndex(isOlder);
  list.splice(at < 0 ? list.length : at, at < 0 ? 0 : 1, one);
}

const dayLength = 24 * 3600 * 1000;

/** Weeks from the last day of one occasion to the first of a later, rounded; undefined without dates. */
export function weeksBetween(
  earlier: Days | undefined,
  later: Days | undefined,
): number | undefined {
  if (!earlier || !later) return undefined;
  const days = (Date.parse(later.first) - Date.parse(earlier.last)) / dayLength;
  return Math.round(days / 7);
}
