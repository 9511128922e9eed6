import type { Body } from '../../mechanics/posture.ts';
import type { Scenario } from '../../notebook/scenario.ts';
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
  readonly days?: { readonly first: string; readonly last: string };
}

/** The first tests, then the retests in the order of time. */
export function occasionsOf(scenario: Scenario, body: Body): Occasion[] {
  const of = (tests: readonly Test[], retest?: Retest): Occasion => {
    const dates = tests.flatMap(({ date }) => (date === undefined ? [] : [date])).sort();
    const [first, last] = [dates[0], dates.at(-1)];
    return {
      ...(retest ? { retest } : {}),
      tests,
      torques: testedTorques(tests, body),
      lifts: tests.filter((test) => test.kind === 'lift'),
      ...(first !== undefined && last !== undefined ? { days: { first, last } } : {}),
    };
  };
  return [of(scenario.tests), ...scenario.retests.map((retest) => of(retest.tests, retest))];
}

/** The latest occasion before the one at `index` at which something was tested, or undefined. */
export function before(
  occasions: readonly Occasion[],
  index: number,
  isTested: (occasion: Occasion) => boolean,
): Occasion | undefined {
  return occasions.slice(0, index).findLast(isTested);
}

/** What was known of the athlete just after an occasion: of each kind of test the latest. */
export function latestTests(occasions: readonly Occasion[]): Test[] {
  const kindOf = (test: Test) => (test.kind === 'torque' ? test.action : test.lift);
  const latest = new Map<string, readonly Test[]>();
  for (const { tests } of occasions)
    for (const kind of new Set(tests.map(kindOf)))
      latest.set(
        kind,
        tests.filter((test) => kindOf(test) === kind),
      );
  return [...latest.values()].flat();
}

const dayLength = 24 * 3600 * 1000;

/** Whole weeks from the last day of one occasion to the first of the next; undefined without dates. */
export function weeksBetween(earlier: Occasion, later: Occasion): number | undefined {
  if (!earlier.days || !later.days) return undefined;
  const days = (Date.parse(later.days.first) - Date.parse(earlier.days.last)) / dayLength;
  return Math.floor(days / 7);
}
