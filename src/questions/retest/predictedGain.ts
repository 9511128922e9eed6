import { forecast } from '../../inference/forecast.ts';
import { atAngle, type OverAngles } from '../../mechanics/angleGrid.ts';
import type { Scenario } from '../../notebook/scenario.ts';
import type { Test } from '../../notebook/tests/strengthTest.ts';
import { planProgram } from '../../physiology/planProgram.ts';
import { heaviestSingles, untrainedState } from '../../physiology/trainedState.ts';
import { questionOf } from '../../stages/handedOver.ts';
import { knowAthlete } from '../../stages/knowAthlete.ts';
import { coefficients, gainMiss } from '../../tables/adaptation.ts';

/** What the forecast expected of a program that was done. */
export interface Predicted {
  readonly program: string;
  /** Weeks forecast: those between the tests, at most the program's own. */
  readonly weeks: number;
  /** Torque after over before, of the target's action. */
  readonly ratio: OverAngles;
  /** Heaviest singles after over before, by lift and range. */
  readonly singles: readonly {
    readonly lift: string;
    readonly from: number;
    readonly to: number;
    readonly gain: number;
  }[];
  /** How far such a forecast misses, share of the gain. */
  readonly miss: number;
}

/**
 * Forecasts a program from the tests before it, for the model's person of this kind: what earlier
 * retests showed of the athlete is what the retest is to tell.
 *
 * @param tests the latest before the program began
 * @param weeks from the last of them to the retest; the program's own length where unknown
 */
export function predictedGain(
  scenario: Scenario,
  name: string,
  tests: readonly Test[],
  weeks: number | undefined,
): Predicted | undefined {
  const program = scenario.programs.find((one) => one.name === name);
  if (!program) return undefined;
  const { response: _, ...subject } = scenario.subject;
  const then = { ...scenario, subject, tests };
  const { athlete, singles, catalogue } = knowAthlete(then);
  const plan = planProgram(program, athlete, then, singles, coefficients, catalogue);
  const done = Math.min(program.weeks, Math.max(weeks ?? program.weeks, 1));
  const question = { ...questionOf(then, catalogue), weeks: done };
  const { ratio, state } = forecast(name, athlete, plan.block, question, coefficients);
  const rested = heaviestSingles(athlete, question.ranges, untrainedState, coefficients);
  const trained = heaviestSingles(athlete, question.ranges, state, coefficients);
  return {
    program: name,
    weeks: done,
    ratio,
    singles: rested.map(({ range, load }, i) => ({
      lift: range.lift.name,
      from: range.from,
      to: range.to,
      gain: (trained[i]?.load ?? load) / load - 1,
    })),
    miss: gainMiss.value,
  };
}

/** Geometric mean of a predicted gain over angles, as a retest averages them; a share. */
export function meanOverAngles({ ratio }: Predicted, angles: readonly number[]): number {
  const logs = angles.map((angle) => Math.log(atAngle(ratio, angle)));
  return Math.expm1(logs.reduce((sum, log) => sum + log, 0) / logs.length);
}
