import { type StrengthFit, strengthsOf } from '../inference/fitStrength.ts';
import type { Question } from '../inference/forecast.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { LiftWork, Measured, Scenario } from '../notebook/scenario.ts';
import type { LiftTest } from '../notebook/tests/strengthTest.ts';
import { type Athlete, athleteOf, isTrained, type LiftFactors } from '../physiology/athlete.ts';
import { bodyOf } from '../physiology/body.ts';
import { firstAngle } from '../physiology/measuredSingle.ts';
import { isAction } from '../tables/actions.ts';
import { liftNamed } from '../tables/lifts.ts';

/** What the model is handed of a scenario: its tests, its athlete and what is asked. */

/** The athlete with what the tests were fitted to. */
export function athleteWith(
  { subject }: Measured,
  fits: readonly StrengthFit[],
  factors: LiftFactors,
): Athlete {
  return athleteOf({
    body: bodyOf(subject),
    reference: subject.reference,
    mass: subject.mass,
    trained: isTrained(subject.trainingYears),
    response: subject.response ?? 1,
    strengths: strengthsOf(fits),
    liftFactors: factors,
  });
}

/** The target, and every standing lift's range that a test or a program uses. */
export function questionOf(scenario: Scenario, catalogue: readonly Lift[]): Question {
  const { action, from, to, weeks } = scenario.target;
  if (!isAction(action)) throw new Error(`no action "${action}"`);
  const tested = scenario.tests.filter((test) => test.kind === 'lift');
  const worked = scenario.programs.flatMap(({ work }) =>
    work.filter((entry) => entry.kind === 'lift').filter(({ lowerOnly }) => !lowerOnly),
  );
  const ranges = [...tested, ...worked]
    .map((entry) => {
      const lift = liftNamed(entry.lift, catalogue);
      return { lift, from: startOf(entry, lift), to: entry.to };
    })
    .filter(({ lift }) => lift.support === 'feet')
    .sort((a, b) => (a.lift.name < b.lift.name ? -1 : 1) * Number(a.lift !== b.lift) || a.to - b.to)
    .filter((range, i, all) => range.lift !== all[i - 1]?.lift || range.to !== all[i - 1]?.to);
  return { action, target: { from, to }, ranges, ...(weeks === undefined ? {} : { weeks }) };
}

/** Where a range begins: as written; for a test that does not say, at the lift's own first angle. */
function startOf(entry: LiftTest | LiftWork, lift: Lift): number {
  return entry.from ?? firstAngle(lift);
}
