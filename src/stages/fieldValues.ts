import type { AskedAthlete } from '../functions/askedAthlete.ts';
import { athleteCalls, athleteFunctions } from '../functions/athleteFunctions.ts';
import { programCalls } from '../functions/programFunctions.ts';
import { faultOf, formulaName } from '../notebook/formula/cellProblems.ts';
import type { Named, Scope } from '../notebook/formula/compile.ts';
import { year } from '../notebook/formula/dimensions.ts';
import type { Expression } from '../notebook/formula/expression.ts';
import {
  callsBehind,
  type FieldFormula,
  fieldProblem,
  fieldValue,
  formulaPaths,
  readFieldFormulas,
  withValuesAt,
} from '../notebook/formula/fieldFormulas.ts';
import { library } from '../notebook/formula/library.ts';
import { loadParser } from '../notebook/formula/mathjsParser.ts';
import { formulaText, type ParseTree, parseFormula } from '../notebook/formula/parseFormula.ts';
import { Sheet } from '../notebook/formula/sheet.ts';
import { FormulaError, number } from '../notebook/formula/values.ts';
import { readQuantity } from '../notebook/quantity.ts';
import { measuredFrom } from '../notebook/readScenario.ts';
import { type Problem, sortProblems } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { unitTable } from '../notebook/unitTable.ts';
import { angleAt } from './angleAt.ts';
import { athleteProblems, knowAthlete } from './knowAthlete.ts';
import type { Memory } from './memory.ts';

/** What a field's formula waits for: nothing of the model, or the athlete as tested. */
type Stage = 'file' | 'athlete';

export type Filled =
  | { readonly source: Source; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly source?: undefined };

/**
 * Puts the values of formulas into the fields that hold them.
 *
 * In two steps of one order: formulas over the file alone, then those that ask about the athlete, once
 * body and tests are known. What a program does cannot be asked in a field: cells can.
 *
 * @param memory where the athlete of the second step may be known from
 * @returns the source with plain values everywhere, or what is wrong
 */
export async function withFieldValues(source: Source, memory: Memory): Promise<Filled> {
  const paths = formulaPaths(source.value);
  if (paths.length === 0) return { source };
  const parse = await loadParser();
  const { fields, problems } = readFieldFormulas(source, paths, parse);
  if (problems.length > 0) return { problems: sortProblems(problems) };
  const cells = cellFormulas(source, parse);
  const formulas = new Map([
    ...cells,
    ...fields.map(({ name, expression }) => [name, expression] as const),
  ]);
  const stages = fields.map((field) => stageOf(field, formulas, source));
  const wrong = stages.flatMap((stage) => (typeof stage === 'string' ? [] : [stage]));
  if (wrong.length > 0) return { problems: sortProblems(wrong) };
  const first = fill(
    source,
    fields.filter((_, i) => stages[i] === 'file'),
    formulas,
    fileScope(source),
  );
  const second = fields.filter((_, i) => stages[i] === 'athlete');
  if (first.problems || second.length === 0) return first;
  const { measured, problems: unread } = measuredFrom(first.source, angleAt);
  if (unread) return { problems: unread };
  const known = memory.athletes.of(measured, () => knowAthlete(measured));
  const { problems: unheld } = athleteProblems(first.source, measured.lifts, known);
  if (unheld.length > 0) return { problems: unheld };
  const scope = athleteScope({ athlete: known.athlete, scenario: measured }, first.source);
  return fill(first.source, second, formulas, scope);
}

/** Cells that can be read; those that cannot are told when cells are computed. */
function cellFormulas(source: Source, parse: ParseTree): [string, Expression][] {
  const cells: Readonly<Record<string, unknown>> = Object(Object(source.value).cells);
  return Object.entries(cells).flatMap(([name, cell]): [string, Expression][] => {
    const text = typeof cell === 'string' ? cell : String(Object(cell).is ?? '');
    const { expression } = parseFormula(formulaText(text), parse);
    return expression ? [[formulaName(name), expression]] : [];
  });
}

/** What a field waits for, or why it cannot have its formula. */
function stageOf(
  field: FieldFormula,
  formulas: ReadonlyMap<string, Expression>,
  source: Source,
): Stage | Problem {
  const calls = [...callsBehind(field.expression, formulas)];
  const ofPrograms = calls.find((name) => programCalls.includes(name));
  if (ofPrograms !== undefined)
    return fieldProblem(source, field.path, {
      message: `asks ${ofPrograms}(…), which is known only when the programs have been computed`,
      hint: 'ask it in a cell; a field may ask about the athlete: torque, best, peak_angle …',
    });
  const ofAthlete = calls.find((name) => athleteCalls.includes(name));
  if (ofAthlete === undefined) return 'file';
  const [group = ''] = field.path;
  if (['programs', 'target', 'limits'].includes(String(group))) return 'athlete';
  return fieldProblem(source, field.path, {
    message: `asks ${ofAthlete}(…), which needs this very value: a circle`,
    hint: 'give a number here, or ask it in a program or a cell',
  });
}

/** Computes some fields and puts what they come to into the source. */
function fill(
  source: Source,
  fields: readonly FieldFormula[],
  formulas: ReadonlyMap<string, Expression>,
  scope: Scope,
): Filled {
  const named = [...formulas].map(([name, expression]) => ({ name, expression }));
  const sheet = new Sheet(named, scope);
  const first = fields[0];
  if (sheet.cycle && first && fields.some(({ name }) => sheet.cycle?.includes(name)))
    return {
      problems: [
        fieldProblem(source, first.path, {
          message: `needs itself in a circle: ${sheet.cycle.join(' → ')}`,
          hint: 'break the circle by giving one of them a number',
        }),
      ],
    };
  sheet.computeAll();
  const problems: Problem[] = [];
  const values = fields.flatMap(({ path, name }) => {
    const { type, value, error } = { value: undefined, ...sheet.outcome(name) };
    if (!type || value === undefined) {
      const fault =
        error instanceof FormulaError
          ? faultOf(error)
          : { message: 'needs another formula that has no value' };
      problems.push(fieldProblem(source, path, fault));
      return [];
    }
    const found = fieldValue(path, type, value);
    if ('fault' in found) problems.push(fieldProblem(source, path, found.fault));
    return 'fault' in found ? [] : [{ path, value: found.value }];
  });
  if (problems.length > 0) return { problems: sortProblems(problems) };
  return {
    source: {
      ...source,
      value: withValuesAt(source.value, values),
      written: source.written ?? source.value,
    },
  };
}

const bodyMeasures = [
  { name: 'mass', dimension: 'mass', exponents: [1, 0, 0, 0] },
  { name: 'stature', dimension: 'length', exponents: [0, 1, 0, 0] },
  { name: 'training', dimension: 'years', exponents: [0, 0, 1, 0] },
] as const;

/** Body measures as they stand in the file, and the functions that know no athlete. */
function fileScope(source: Source): Scope {
  const { athlete, group } = Object(source.value);
  const body: Readonly<Record<string, unknown>> = Object(athlete ?? group);
  const known = new Map<string, Named>(
    bodyMeasures.flatMap(({ name, dimension, exponents }) => {
      const { value } = readQuantity(String(body[name] ?? ''), dimension, unitTable);
      const inSi = value !== undefined && dimension === 'years' ? value * year : value;
      return inSi === undefined
        ? []
        : [[name, { type: number(exponents), read: () => inSi }] as const];
    }),
  );
  return {
    named: (name) => known.get(name),
    names: [...known.keys()],
    functions: new Map(library.map((entry) => [entry.name, entry])),
  };
}

/** What can be asked of the athlete before any program is known. */
function athleteScope(asked: AskedAthlete, source: Source): Scope {
  const file = fileScope(source);
  return {
    ...file,
    functions: new Map(
      [...athleteFunctions(asked), ...library].map((entry) => [entry.name, entry]),
    ),
  };
}
