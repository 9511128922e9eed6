/**
 * The pipeline, on one page. It chooses what to hand to whom; it does no arithmetic.
 *
 *   text ──notebook──▶ Scenario | Problem[]
 *   Scenario ──inference──▶ Athlete (body, strength fitted to the tests)
 *   Program ──physiology──▶ Block (loads in kg) ──▶ weeks of training ──▶ gain by angle
 *   gains ──inference──▶ ranking ──▶ Results ──page──▶ markdown, terminal, JSON
 */
import { type Calibration, calibrateLifts, liftFactors } from './inference/calibrateLifts.ts';
import { fitKneeStrength, type KneeFit, scored } from './inference/fitKneeStrength.ts';
import { fitScales, type MeasuredAction } from './inference/fitScales.ts';
import { type FittedTest, fittedTests } from './inference/fittedTests.ts';
import { type Forecast, forecast, type Question, reachDeg } from './inference/forecast.ts';
import { type Placed, rank } from './inference/ranking.ts';
import { gridDeg } from './mechanics/angleGrid.ts';
import type { Lift } from './mechanics/lift.ts';
import type { Problem } from './notebook/problem.ts';
import type { AngleAt } from './notebook/readPlace.ts';
import { readScenario } from './notebook/readScenario.ts';
import type { LiftTest, LiftWork, Program, Scenario } from './notebook/scenario.ts';
import {
  type Athlete,
  athleteOf,
  isTrained,
  type LiftFactors,
  type Scales,
  tableKneeExtension,
} from './physiology/athlete.ts';
import { bodyOf, estimatedLengths } from './physiology/body.ts';
import { angleAtHeight } from './physiology/heights.ts';
import { minutesPerWeek } from './physiology/minutes.ts';
import { firstAngle, isOneSided, type Plan, planProgram } from './physiology/planProgram.ts';
import { type HeaviestSingle, heaviestSingles, untrainedState } from './physiology/trainedState.ts';
import { liftBalance, loadProblems, rigRemarks, testRemarks, unbalanced } from './runProblems.ts';
import { isAction } from './tables/actions.ts';
import { coefficients, contrastMiss, gainMiss } from './tables/adaptation.ts';
import { liftNamed, lifts } from './tables/lifts.ts';

/** One program, its block in kilograms and what it is expected to do. */
export interface ProgramResult extends Forecast {
  readonly program: Program;
  readonly plan: Plan;
  readonly minutesPerWeek: number;
}

/** Everything a report or another program may want to know of one scenario. */
export interface Results {
  readonly scenario: Scenario;
  readonly athlete: Athlete;
  /** Body lengths that no measurement gave. */
  readonly estimatedLengths: readonly string[];
  /** Knee extension torque that the muscle tables alone would give, N·m. */
  readonly tablesAlone: readonly number[];
  /** Degrees at which everything given by angle is given. */
  readonly anglesDeg: readonly number[];
  /** First and last of them that count for the target's action. */
  readonly reachDeg: readonly [number, number];
  readonly kneeFit: KneeFit;
  /** Strength over the mean person's in other tested actions, and each test beside its curve. */
  readonly scales: Scales;
  readonly otherTests: readonly FittedTest[];
  readonly calibrations: readonly Calibration[];
  readonly question: Question;
  readonly singlesBefore: readonly HeaviestSingle[];
  readonly ranking: readonly Placed<ProgramResult>[];
}

export type Run =
  | { readonly results: Results; readonly notes: readonly Problem[]; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly results?: undefined };

/**
 * Evaluates one scenario.
 *
 * @param file name to show in problems
 * @param text what the file holds
 * @returns results, or every problem found; a file with problems yields no results at all
 */
export async function run(file: string, text: string): Promise<Run> {
  const read = await readScenario(file, text, angleAt);
  if (read.problems) return { problems: read.problems };
  const { scenario, source, notes } = read;
  const { reference, mass } = scenario.subject;
  const measured = measuredActions(scenario);
  const ofTheKnee = measured.filter(({ action }) => action === 'knee extension');
  const kneeFit = fitKneeStrength(reference, mass, ofTheKnee);
  const scales = fitScales(reference, mass, measured);
  const untested = athleteWith(scenario, kneeFit, scales, {});
  const catalogue = [...lifts, ...scenario.lifts];
  const declared = scenario.lifts.map((lift) => liftBalance(source, lift, untested.body));
  const unstable = declared.flatMap(({ problems }) => problems);
  if (unstable.length > 0) return { problems: unstable };
  const singles = scenario.tests.filter((test) => test.kind === 'lift');
  const calibrations = calibrateLifts(untested, singles, catalogue);
  const unheld = singles.filter((_, i) => !Number.isFinite(calibrations[i]?.factor));
  if (unheld.length > 0)
    return {
      problems: unheld.map((test) =>
        unbalanced(source, test, liftNamed(test.lift, catalogue), untested.body),
      ),
    };
  const remarks = [
    ...declared.flatMap(({ notes }) => notes),
    ...singles.flatMap((test, i) => testRemarks(source, test, calibrations, i)),
  ];
  const athlete = athleteWith(scenario, kneeFit, scales, liftFactors(calibrations, catalogue));
  const plans = scenario.programs.map((program) =>
    planProgram(program, athlete, scenario, singles, coefficients, catalogue),
  );
  const problems = scenario.programs.flatMap((program, i) =>
    loadProblems(source, program, plans[i]?.exercises ?? [], athlete.body),
  );
  if (problems.length > 0) return { problems };
  const otherTests = fittedTests(reference, mass, measured, scales);
  const results = answer({ scenario, kneeFit, scales, otherTests, calibrations, athlete }, plans);
  const idle = scenario.programs.flatMap((program, i) =>
    rigRemarks(source, program, plans[i]?.exercises ?? []),
  );
  return { results, notes: [...notes, ...remarks, ...idle] };
}

/** The catalogue's lifts and those a scenario declares, or what is wrong with the file. */
export async function liftsKnownTo(
  file: string,
  text: string,
): Promise<{ readonly lifts: readonly Lift[] } | { readonly problems: readonly Problem[] }> {
  const { scenario, problems } = await readScenario(file, text, angleAt);
  return scenario ? { lifts: [...lifts, ...scenario.lifts] } : { problems: problems ?? [] };
}

/** Lends the notebook, which knows no science, the model's answer to a height. */
const angleAt: AngleAt = (subject, lift, height, load, stretch) => {
  const guess = { usual: subject.mass, ...(load === undefined ? {} : { known: load }) };
  return angleAtHeight(lift, bodyOf(subject), height, guess, stretch);
};

function answer(
  known: Pick<
    Results,
    'scenario' | 'kneeFit' | 'scales' | 'otherTests' | 'calibrations' | 'athlete'
  >,
  plans: readonly Plan[],
): Results {
  const { scenario, athlete } = known;
  const question = questionOf(scenario, [...lifts, ...scenario.lifts]);
  const programs = scenario.programs.map((program, i): ProgramResult => {
    const plan = plans[i];
    if (!plan) throw new Error(`no plan for ${program.name}`);
    return {
      ...forecast(program.name, athlete, plan.block, question, coefficients),
      program,
      plan,
      minutesPerWeek: minutesPerWeek(program.sessionsPerWeek, timed(program, plan)),
    };
  });
  return {
    ...known,
    estimatedLengths: estimatedLengths(scenario.subject),
    anglesDeg: gridDeg,
    reachDeg: reachDeg(question.action, athlete),
    tablesAlone: gridDeg.map((deg) => tableKneeExtension(deg, athlete.trained)),
    question,
    singlesBefore: heaviestSingles(athlete, question.ranges, untrainedState(athlete), coefficients),
    ranking: rank(programs, contrastMiss.value, gainMiss.value),
  };
}

/** A program's work with what a time estimate must know of its lifts. */
function timed({ work }: Program, { exercises }: Plan) {
  return work.map((entry, i) => ({ ...entry, oneSided: isOneSided(exercises[i]) }));
}

/** Each angle's scored trials of every torque test, in the order of the file. */
function measuredActions(scenario: Scenario): MeasuredAction[] {
  return scenario.tests.flatMap((test) =>
    test.kind === 'torque'
      ? test.points.map(({ angle, trials }) => ({
          action: test.action,
          ...scored(angle, trials, test.score),
        }))
      : [],
  );
}

function athleteWith(
  scenario: Scenario,
  fit: KneeFit,
  scales: Scales,
  factors: LiftFactors,
): Athlete {
  const { subject } = scenario;
  return athleteOf({
    body: bodyOf(subject),
    reference: subject.reference,
    mass: subject.mass,
    trained: isTrained(subject.trainingYears),
    knee: fit.strength,
    scales,
    liftFactors: factors,
  });
}

/** The target, and every standing lift's range that a test or a program uses. */
function questionOf(scenario: Scenario, catalogue: readonly Lift[]): Question {
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
