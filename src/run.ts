/**
 * The pipeline, on one page. It chooses what to hand to whom; it does no arithmetic.
 *
 *   text ──notebook──▶ Source ──▶ Scenario | Problem[]
 *   Measured ──inference──▶ KnownAthlete (body, strength fitted to the tests)
 *   Program ──physiology──▶ Plan (loads in kg) ──▶ weeks of training ──▶ gain by angle
 *   gains ──inference──▶ ranking ──▶ cells ──▶ Results ──page──▶ markdown, terminal, JSON
 *
 * Each arrow from Measured on goes through a `Memory`: given the same again, it is not computed
 * again.
 */
import { reachOf } from './functions/askedAthlete.ts';
import { modelScope } from './functions/modelScope.ts';
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
import { measuredOf, openScenario, scenarioFrom } from './notebook/readScenario.ts';
import type { Program, Scenario } from './notebook/scenario.ts';
import { type Problem, sortProblems } from './notebook/text/problem.ts';
import { readWithIncludes } from './notebook/text/readWithIncludes.ts';
import type { Beside, Source } from './notebook/text/source.ts';
import { tableKneeExtension } from './physiology/athlete.ts';
import { estimatedLengths } from './physiology/body.ts';
import { type Plan, planProgram } from './physiology/planProgram.ts';
import { type HeaviestSingle, heaviestSingles, untrainedState } from './physiology/trainedState.ts';
import { type Axis, blockProblems } from './problems/blockProblems.ts';
import { loadProblems } from './problems/loadProblems.ts';
import { rigRemarks } from './problems/rigProblems.ts';
import { angleAt } from './stages/angleAt.ts';
import { type Filled, withFieldValues } from './stages/fieldValues.ts';
import { questionOf } from './stages/handedOver.ts';
import {
  athleteProblems,
  type KnownAthlete,
  knowAthlete,
  retestProblems,
} from './stages/knowAthlete.ts';
import { Memory } from './stages/memory.ts';
import { phasesOf, type TimedPhase } from './stages/phasesOf.ts';
import { foundIn } from './stages/study/foundIn.ts';
import type { StudyFound } from './stages/study/studyFound.ts';
import { coefficients, contrastMiss, gainMiss } from './tables/adaptation.ts';
import { lifts } from './tables/lifts.ts';

/** One program, its block in kilograms and what it is expected to do. */
export interface ProgramResult extends Forecast {
  readonly program: Program;
  readonly plan: Plan;
  /** In their order; a program without phases is one. */
  readonly phases: readonly TimedPhase[];
  /** In the busiest phase. */
  readonly minutesPerWeek: number;
  /** Heaviest singles of the question's ranges after the program, in their order. */
  readonly singlesAfter: readonly HeaviestSingle[];
}

/** Everything a report or another program may want to know of one scenario. */
export interface Results extends KnownAthlete {
  readonly scenario: Scenario;
  /** Body lengths that no measurement gave. */
  readonly estimatedLengths: readonly string[];
  /** Knee extension torque that the muscle tables alone would give, N·m. */
  readonly tablesAlone: readonly number[];
  /** Degrees at which everything given by angle is given. */
  readonly anglesDeg: readonly number[];
  /** First and last of them that count for the target's action. */
  readonly reachDeg: readonly [number, number];
  readonly question: Question;
  readonly singlesBefore: readonly HeaviestSingle[];
  readonly ranking: readonly Placed<ProgramResult>[];
  /** What the file's study found, beside what the model says of it. */
  readonly study?: StudyFound;
  readonly cells: readonly CellResult[];
}

export type Run =
  | {
      readonly results: Results;
      /** The file with programs in full and formulas computed. */
      readonly source: Source;
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
 * @param beside reads files that it names
 * @returns results, or every problem found; a file with problems yields no results at all
 */
export async function run(file: string, text: string, beside?: Beside): Promise<Run> {
  const { source, problems } = readWithIncludes(file, text, beside);
  return source ? runSource(source) : { problems: sortProblems(problems) };
}

/**
 * Evaluates a file that has been parsed; its values may have been changed since.
 *
 * @param memory of earlier runs
 */
export async function runSource(written: Source, memory = new Memory()): Promise<Run> {
  const { source, problems } = await open(written, memory);
  return source ? evaluate(source, memory) : { problems };
}

/** Puts programs in full and computes the formulas in fields. */
async function open(written: Source, memory: Memory): Promise<Filled> {
  const { source, problems } = openScenario(written);
  return source ? withFieldValues(source, memory) : { problems };
}

/** Evaluates an open file whose fields hold plain values. */
async function evaluate(opened: Source, memory: Memory): Promise<Run> {
  const read = scenarioFrom(opened, angleAt);
  if (read.problems) return { problems: read.problems };
  const { scenario, source, notes } = read;
  const measured = measuredOf(scenario);
  const known = memory.athletes.of(measured, () => knowAthlete(measured));
  const { problems: unheld, remarks } = athleteProblems(source, scenario.lifts, known);
  if (unheld.length > 0) return { problems: unheld };
  const amiss = retestProblems(source, scenario.retests, known);
  if (amiss.length > 0) return { problems: amiss };
  const plans = plansOf(scenario, known, memory);
  const planned = plans.map(({ exercises }) => exercises);
  const undoable = scenario.programs.flatMap((program, i) =>
    loadProblems(source, program, planned[i] ?? [], known.athlete.body),
  );
  if (undoable.length > 0) return { problems: undoable };
  const results = answer(scenario, known, plans, memory);
  const idle = scenario.programs.flatMap((program, i) =>
    rigRemarks(source, program, planned[i] ?? []),
  );
  const cells = await cellsOf(results, source);
  if (cells.problems.length > 0) return { problems: cells.problems };
  const unshown = blockProblems(source, scenario.notebook ?? [], cells.results, axisOf(results));
  if (unshown.length > 0) return { problems: unshown };
  return {
    results: { ...results, cells: cells.results },
    source,
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
  written: Source,
): Promise<{ readonly lifts: readonly Lift[] } | { readonly problems: readonly Problem[] }> {
  const filled = await open(written, new Memory());
  if (filled.problems) return { problems: filled.problems };
  const { scenario, problems } = scenarioFrom(filled.source, angleAt);
  return scenario ? { lifts: [...lifts, ...scenario.lifts] } : { problems: problems ?? [] };
}

/** Everything of a scenario that decides what a program is. */
const givenTo = (program: Program, scenario: Scenario) => {
  const { machines, chains, bands } = scenario;
  return [measuredOf(scenario), machines, chains, bands, program];
};

function plansOf(scenario: Scenario, known: KnownAthlete, memory: Memory): readonly Plan[] {
  const { athlete, singles, catalogue } = known;
  return scenario.programs.map((program) =>
    memory.plans.of(givenTo(program, scenario), () =>
      planProgram(program, athlete, scenario, singles, coefficients, catalogue),
    ),
  );
}

/** Orders programs of one run; a tie is told from the best of those given. */
export const rankPrograms = (
  programs: readonly ProgramResult[],
): readonly Placed<ProgramResult>[] => rank(programs, contrastMiss.value, gainMiss.value);

function answer(
  scenario: Scenario,
  known: KnownAthlete,
  plans: readonly Plan[],
  memory: Memory,
): Results {
  const { athlete } = known;
  const question = questionOf(scenario, known.catalogue);
  const { ranges, ...asked } = question;
  const programs = scenario.programs.map((program, i): ProgramResult => {
    const plan = plans[i];
    if (!plan) throw new Error(`no plan for ${program.name}`);
    const phases = phasesOf(program, plan);
    const given = [...givenTo(program, scenario), asked];
    const found = memory.forecasts.of(given, () =>
      forecast(program.name, athlete, plan.block, question, coefficients),
    );
    return {
      ...found,
      program,
      plan,
      phases,
      minutesPerWeek: Math.max(...phases.map((phase) => phase.minutesPerWeek)),
      singlesAfter: memory.singles.of([...given, ranges], () =>
        heaviestSingles(athlete, ranges, found.state, coefficients),
      ),
    };
  });
  return {
    ...known,
    scenario,
    estimatedLengths: estimatedLengths(scenario.subject),
    anglesDeg: gridDeg,
    reachDeg: reachDeg(question.action, athlete),
    tablesAlone: tableKneeExtension(athlete.trained),
    question,
    singlesBefore: heaviestSingles(athlete, ranges, untrainedState, coefficients),
    ranking: rankPrograms(programs),
    ...foundIn(scenario, known, plans, memory),
    cells: [],
  };
}
