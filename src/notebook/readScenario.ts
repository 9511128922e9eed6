import type { z } from 'zod';
import { toRadians } from '../numeric/degrees.ts';
import { defaultLimitsDeg } from '../tables/segments.ts';
import { complete, optional } from './complete.ts';
import { type Draft, draftOf } from './draft.ts';
import { withWholePrograms } from './programLikes.ts';
import { readQuantity } from './quantity.ts';
import type { KneeLimit } from './range.ts';
import { readBands } from './readBands.ts';
import { readCells } from './readCells.ts';
import { readChains } from './readChains.ts';
import { Reading } from './reading.ts';
import { declaredLifts, readLifts } from './readLifts.ts';
import { readMachines } from './readMachines.ts';
import { readNotebook } from './readNotebook.ts';
import type { AngleAt, Standing } from './readPlace.ts';
import { readPrograms } from './readPrograms.ts';
import { readSubject } from './readSubject.ts';
import { readTarget } from './readTarget.ts';
import type { Measured, Path, Scenario } from './scenario.ts';
import { type ScenarioFile, scenarioSchema } from './schema.ts';
import { valueAt } from './schemaAt.ts';
import { shapeProblems } from './shapeProblems.ts';
import { readStudy } from './study/readStudy.ts';
import { readRepeatability } from './tests/readRepeatability.ts';
import { readRetests } from './tests/readRetests.ts';
import { readTests } from './tests/readTests.ts';
import { type Problem, sortProblems } from './text/problem.ts';
import { readWithIncludes } from './text/readWithIncludes.ts';
import type { Beside, Source } from './text/source.ts';
import { tooManyCalls, tooMuchTraining } from './text/tooMuch.ts';
import { unitTable } from './unitTable.ts';

/** Either a scenario, or what is wrong with the file; ask for `problems` first. */
type ReadScenario =
  | {
      readonly scenario: Scenario;
      /** Places further problems: `source.at(program.path)`. */
      readonly source: Source;
      /** Allowed, but worth a look; sorted and located like problems. */
      readonly notes: readonly Problem[];
      readonly problems?: undefined;
    }
  | {
      readonly problems: readonly Problem[];
      readonly scenario?: undefined;
      readonly source?: undefined;
      readonly notes?: undefined;
    };

type FileDraft = NonNullable<Draft<ScenarioFile>>;

/**
 * Reads a coach's file into a scenario: SI units, radians, anatomical angles.
 *
 * Shape, units and plain sense are checked together, so that one run shows everything that is
 * wrong.
 *
 * @param file the name to show in problems
 * @param text what the file holds
 * @param angleAt turns heights into angles; the notebook itself knows no body
 * @param beside reads files that it names
 * @returns the scenario, or its problems sorted by place; rejects only on a fault of ours
 */
export async function readScenario(
  file: string,
  text: string,
  angleAt?: AngleAt,
  beside?: Beside,
): Promise<ReadScenario> {
  const { source: written, problems: faults } = readWithIncludes(file, text, beside);
  if (faults) return { problems: sortProblems(faults) };
  const { source, problems } = openScenario(written);
  return source ? scenarioFrom(source, angleAt) : { problems };
}

/** Opens a parsed file: programs that are like another are put in full. */
export function openScenario(
  written: Source,
):
  | { readonly source: Source; readonly problems?: undefined }
  | { readonly source?: undefined; readonly problems: readonly Problem[] } {
  const { source, problems: derived } = withWholePrograms(written);
  if (derived.length > 0) return { problems: sortProblems(derived) };
  const excess = tooManyCalls(source);
  return excess ? { problems: [excess] } : { source };
}

/** Reads a scenario from an open file whose fields hold plain values. */
export function scenarioFrom(source: Source, angleAt?: AngleAt): ReadScenario {
  const { draft, problems: shape } = readShape(source, scenarioSchema);
  const reading = new Reading(source, unitTable, draft?.angles);
  const scenario = draft && convert(reading, draft, angleAt);
  const all = sortProblems([...shape, ...reading.problems]);
  if (all.length > 0) return { problems: all };
  if (!scenario) throw new Error(`${source.file}: a value was left out without a problem`);
  const excess = tooMuchTraining(scenario.programs, source);
  if (excess) return { problems: [excess] };
  return { scenario, source, notes: sortProblems(reading.notes) };
}

/** What a scenario says of the athlete alone. */
export const measuredOf = ({
  convention,
  subject,
  tests,
  repeatability,
  lifts,
}: Scenario): Measured => ({
  convention,
  subject,
  tests,
  repeatability,
  lifts,
});

/** The groups of a file that say what is known of the athlete. */
const measuredSchema = scenarioSchema.pick({
  angles: true,
  athlete: true,
  group: true,
  tests: true,
  repeatability: true,
  lifts: true,
});

/**
 * Reads only what a file says of the athlete: its other groups may still hold formulas.
 *
 * @returns the athlete as written, or the problems of those groups
 */
export function measuredFrom(
  { value, ...rest }: Source,
  angleAt?: AngleAt,
):
  | { readonly measured: Measured; readonly problems?: undefined }
  | { readonly measured?: undefined; readonly problems: readonly Problem[] } {
  const groups = Object.entries(Object(value)).filter(([name]) =>
    Object.hasOwn(measuredSchema.shape, name),
  );
  const source = { ...rest, value: Object.fromEntries(groups) };
  const { draft, problems: shape } = readShape(source, measuredSchema);
  const reading = new Reading(source, unitTable, draft?.angles);
  const read = draft && convertMeasured(reading, draft, angleAt);
  const problems = sortProblems([...shape, ...reading.problems]);
  if (problems.length > 0) return { problems };
  const measured = read && complete<Measured>(read.measured);
  if (!measured) throw new Error(`${source.file}: a value was left out without a problem`);
  return { measured };
}

type MeasuredDraft = Pick<
  FileDraft,
  'angles' | 'athlete' | 'group' | 'tests' | 'repeatability' | 'lifts'
>;

function readShape<T>(
  source: Source,
  schema: z.ZodType<T>,
): { draft: Draft<T>; problems: readonly Problem[] } {
  const checked = schema.safeParse(source.value);
  const issues = checked.success ? [] : checked.error.issues;
  const { problems, broken } = shapeProblems(schema, issues, source);
  return { draft: draftOf<T>(source.value, broken), problems };
}

/** What the file says of the athlete, and what its other groups must know to be read. */
function convertMeasured(reading: Reading, draft: MeasuredDraft, angleAt: AngleAt | undefined) {
  const isGroup = draft.group !== undefined && draft.athlete === undefined;
  const lifts = readLifts(reading, draft.lifts);
  const subject = readSubject(reading, draft);
  const standing: Standing = { subject, kneeLimit: kneeLimitOf(reading, draft), angleAt };
  const isOnePerson = Object.hasOwn(Object(reading.source.value), 'athlete');
  const tests = readTests(reading, draft.tests, isOnePerson && !isGroup, { ...standing, lifts });
  const measured = {
    convention: draft.angles,
    subject,
    tests,
    repeatability: readRepeatability(reading, draft.repeatability, { ...standing, lifts }),
    lifts: declaredLifts(lifts),
  };
  return { measured, standing, lifts };
}

function convert(
  reading: Reading,
  draft: FileDraft,
  angleAt: AngleAt | undefined,
): Scenario | undefined {
  const { measured, standing, lifts } = convertMeasured(reading, draft, angleAt);
  const equipment = {
    machine: machineJoints(reading, draft),
    chains: Object.keys(draft.chains ?? {}),
    bands: Object.keys(draft.bands ?? {}),
  };
  const tested = measured.tests.flatMap((test) =>
    test.kind === 'lift' ? (test.heights ?? []).map((placed) => ({ lift: test.lift, placed })) : [],
  );
  const around = { ...standing, lifts };
  return complete<Scenario>({
    ...measured,
    file: reading.source.file,
    title: draft.title,
    ...optional('note', draft.note),
    target: readTarget(reading, draft.target, standing.kneeLimit),
    machines: readMachines(reading, draft.machines),
    chains: readChains(reading, draft.chains),
    bands: readBands(reading, draft.bands),
    ...optional('minutesPerWeek', draft.limits?.['minutes per week']),
    retests: readRetests(reading, draft.retests, measured.tests, {
      ...around,
      programs: Object.keys(Object(Object(reading.source.value).programs)),
    }),
    cells: readCells(reading, draft.cells),
    ...optional('notebook', draft.notebook && readNotebook(reading, draft.notebook)),
    ...optional(
      'study',
      draft.study && readStudy(reading, draft.study, { lifts, kneeLimit: standing.kneeLimit }),
    ),
    programs: readPrograms(reading, draft.programs, { ...around, tested, equipment }),
  });
}

/** The joint that each machine of the file turns; undefined if it is written wrongly. */
function machineJoints(
  reading: Reading,
  { machines = {} }: FileDraft,
): ReadonlyMap<string, string | undefined> {
  const isWritten = (name: string) =>
    valueAt(reading.source.value, ['machines', name, 'joint']) !== undefined;
  return new Map(
    Object.entries(machines).map(([name, machine]) => [
      name,
      machine?.joint ?? (isWritten(name) ? undefined : 'knee'),
    ]),
  );
}

/** Read apart from the subject, whose other values may be wrong; that is reported there. */
function kneeLimitOf(reading: Reading, draft: MeasuredDraft): KneeLimit | undefined {
  const owner = draft.athlete ? 'athlete' : 'group';
  const raw = draft[owner]?.limits?.['knee flexion'];
  const path: Path = [owner, 'limits', 'knee flexion'];
  if (valueAt(reading.source.value, path) === undefined)
    return { angle: toRadians(defaultLimitsDeg.knee), isUsual: true, path };
  const angle = raw === undefined ? undefined : readQuantity(raw, 'angle', reading.units).value;
  return angle === undefined ? undefined : { angle, path };
}
