/**
 * The pipeline, on one page. It chooses what to hand to whom; it does no arithmetic.
 *
 *   text ──notebook──▶ Scenario | Problem[]
 *   Scenario ──inference──▶ Athlete (body, strength fitted to the tests)
 *   Program ──physiology──▶ Block (loads in kg) ──▶ weeks of training ──▶ gain by angle
 *   gains ──inference──▶ ranking ──▶ Results ──page──▶ markdown, terminal, JSON
 */

import { reachOf } from './functions/athleteFunctions.ts';
import { modelScope } from './functions/modelScope.ts';
import { type Calibration, calibrateLifts, liftFactors } from './inference/calibrateLifts.ts';
import { fitStrength, type StrengthFit } from './inference/fitStrength.ts';
import { type Forecast, forecast, type Question, reachDeg } from './inference/forecast.ts';
import { type Placed, rank } from './inference/ranking.ts';
import { gridDeg } from './mechanics/angleGrid.ts';
import type { Lift } from './mechanics/lift.ts';
import {
  brokenExpectations,
  type CellResult,
  type Cells,
  evaluateCells,
} from './notebook/formula/evaluateCells.ts';
import { loadParser } from './notebook/formula/mathjsParser.ts';
import type { Problem } from './notebook/problem.ts';
import type { AngleAt } from './notebook/readPlace.ts';
import { openScenario, scenarioFrom } from './notebook/readScenario.ts';
import type { Program, Scenario } from './notebook/scenario.ts';
import type { Source } from './notebook/source.ts';
import { type Athlete, tableKneeExtension } from './physiology/athlete.ts';
import { bodyOf, estimatedLengths } from './physiology/body.ts';
import { angleAtHeight } from './physiology/heights.ts';
import { minutesPerWeek } from './physiology/minutes.ts';
import { type Plan, planProgram } from './physiology/planProgram.ts';
import { type HeaviestSingle, heaviestSingles, untrainedState } from './physiology/trainedState.ts';
import { liftBalance, unbalanced } from './problems/balanceProblems.ts';
import { type Axis, blockProblems } from './problems/blockProblems.ts';
import { fitRemarks } from './problems/fitRemarks.ts';
import { loadProblems } from './problems/loadProblems.ts';
import { rigRemarks } from './problems/rigProblems.ts';
import { testRemarks } from './problems/testRemarks.ts';
import { type Filled, withFieldValues } from './stages/fieldValues.ts';
import { athleteWith, measuredActions, questionOf } from './stages/handedOver.ts';
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
  /** Tested actions: curve, its 90 % band, each test beside it and what to check. */
  readonly fits: readonly StrengthFit[];
  readonly calibrations: readonly Calibration[];
  readonly question: Question;
  readonly singlesBefore: readonly HeaviestSingle[];
  readonly ranking: readonly Placed<ProgramResult>[];
  readonly cells: readonly CellResult[];
}

export type Run =
  | {
      readonly results: Results;
      /** Allowed, but worth a look. */
      readonly notes: readonly Problem[];
      /** Cells that do not lie where the coach expects them. */
      readonly broken: readonly Problem[];
      readonly problems?: undefined;
    }
  | { readonly problems: readonly Problem[]; readonly results?: undefined };

/**
 * Evaluates one scenario.
 *
 * @param file name to show in problems
 * @param text what the file holds
 * @returns results, or every problem found; a file with problems yields no results at all
 */
export async function run(file: string, text: string): Promise<Run> {
  const filled = await open(file, text);
  return filled.problems ? { problems: filled.problems } : evaluate(filled.source);
}

/** Opens a file and computes the formulas in its fields. */
async function open(file: string, text: string): Promise<Filled> {
  const opened = openScenario(file, text);
  return opened.problems ? { problems: opened.problems } : withFieldValues(opened.source, evaluate);
}

/** Evaluates an open file whose fields hold plain values. */
async function evaluate(opened: Source): Promise<Run> {
  const read = scenarioFrom(opened, angleAt);
  if (read.problems) return { problems: read.problems };
  const { scenario, source, notes } = read;
  const { reference, mass } = scenario.subject;
  const fits = fitStrength(reference, mass, measuredActions(scenario));
  const untested = athleteWith(scenario, fits, {});
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
    ...fitRemarks(source, scenario, fits),
    ...singles.flatMap((test, i) => testRemarks(source, test, calibrations, i)),
  ];
  const athlete = athleteWith(scenario, fits, liftFactors(calibrations, catalogue));
  const plans = scenario.programs.map((program) =>
    planProgram(program, athlete, scenario, singles, coefficients, catalogue),
  );
  const problems = scenario.programs.flatMap((program, i) =>
    loadProblems(source, program, plans[i]?.exercises ?? [], athlete.body),
  );
  if (problems.length > 0) return { problems };
  const results = answer({ scenario, fits, calibrations, athlete }, plans);
  const idle = scenario.programs.flatMap((program, i) =>
    rigRemarks(source, program, plans[i]?.exercises ?? []),
  );
  const cells = await cellsOf(results, source);
  if (cells.problems.length > 0) return { problems: cells.problems };
  const unshown = blockProblems(source, scenario.notebook ?? [], cells.results, axisOf(results));
  if (unshown.length > 0) return { problems: unshown };
  return {
    results: { ...results, cells: cells.results },
    notes: [...notes, ...remarks, ...idle],
    broken: brokenExpectations(cells.results, source),
  };
}

/** Computes the coach's cells; the parser of formulas is loaded only where there are any. */
async function cellsOf(results: Results, source: Source): Promise<Cells> {
  const { cells } = results.scenario;
  if (cells.length === 0) return { results: [], problems: [] };
  return evaluateCells(cells, modelScope(results), source, await loadParser());
}

/** What the notebook's charts and tables stand on. */
function axisOf(results: Results): Axis {
  const { action } = results.question;
  const [program] = results.scenario.programs;
  return { action, angles: reachOf(action, results).length, program: program?.name ?? '' };
}

/** The catalogue's lifts and those a scenario declares, or what is wrong with the file. */
export async function liftsKnownTo(
  file: string,
  text: string,
): Promise<{ readonly lifts: readonly Lift[] } | { readonly problems: readonly Problem[] }> {
  const filled = await open(file, text);
  if (filled.problems) return { problems: filled.problems };
  const { scenario, problems } = scenarioFrom(filled.source, angleAt);
  return scenario ? { lifts: [...lifts, ...scenario.lifts] } : { problems: problems ?? [] };
}

/** Lends the notebook, which knows no science, the model's answer to a height. */
const angleAt: AngleAt = (subject, lift, height, load, stretch) => {
  const guess = { usual: subject.mass, ...(load === undefined ? {} : { known: load }) };
  return angleAtHeight(lift, bodyOf(subject), height, guess, stretch);
};

function answer(
  known: Pick<Results, 'scenario' | 'fits' | 'calibrations' | 'athlete'>,
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
    cells: [],
  };
}

/** A program's work with what a time estimate must know of its lifts. */
function timed({ work }: Program, { exercises }: Plan) {
  return work.map((entry, i) => ({ ...entry, oneSided: exercises[i]?.oneSided ?? false }));
}
