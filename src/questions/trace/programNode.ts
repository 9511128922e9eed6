import type { Path, Work } from '../../notebook/scenario.ts';
import type { PlannedExercise } from '../../physiology/planProgram.ts';
import { isAction } from '../../tables/actions.ts';
import {
  adaptationRows,
  chainRow,
  loweringRow,
  repetitionRow,
  rubberRow,
  speedRows,
  type TableRow,
} from '../../tables/rowsBehind.ts';
import type { Tracing } from './modelSteps.ts';
import { type TraceNode, tableNode } from './traceNode.ts';

/** A program as written, what each line of its work comes to in the first week, and on what that rests. */
export function programNode(name: string, known: Tracing): TraceNode {
  const { results, input } = known;
  const found = results.ranking.find(({ program }) => program.name === name);
  if (!found) throw new Error(`no program "${name}"`);
  const { program, plan } = found.program;
  const rhythm = (inside: Path) =>
    ['off', 'weeks', 'sessions per week', 'progress', 'deload'].flatMap((key) =>
      input([...program.path, ...inside, key]),
    );
  return {
    what: `the program "${name}"`,
    parts: [
      ...input(['angles']),
      ...rhythm([]),
      ...(program.phases ?? []).flatMap((_, i) => rhythm(['phases', i])),
      ...program.work.map((work, i) => workNode(work, i, plan.exercises[i], known)),
    ],
  };
}

function workNode(
  work: Work,
  i: number,
  planned: PlannedExercise | undefined,
  known: Tracing,
): TraceNode {
  const assumed = (work.assumed ?? []).map(
    (what): TraceNode => ({
      what,
      value: what === 'rest' ? `${work.rest} s` : work.kind === 'lift' ? work.tempo.join('-') : '',
      assumed: 'not given, the usual one',
      parts: [],
    }),
  );
  return {
    what: `line ${i + 1} of its work`,
    ...planValue(planned),
    parts: [...known.input(work.path), ...assumed, ...behind(work, known)],
  };
}

/** The load of the first week, and the heaviest single of which it is a share. */
function planValue(planned: PlannedExercise | undefined): Pick<TraceNode, 'value'> {
  const exercise = planned?.exercise;
  if (exercise?.kind === 'hold' && 'load' in exercise.of)
    return { value: `${exercise.of.load.toFixed(1)} kg held in the first week` };
  if (exercise?.kind !== 'lift') return {};
  const heaviest = planned?.heaviest
    ? `, the heaviest single of this range being ${planned.heaviest.load.toFixed(1)} kg`
    : '';
  return { value: `${exercise.load.toFixed(1)} kg in the first week${heaviest}` };
}

/** What a line of work rests on besides its own words. */
function behind(work: Work, { input, step }: Tracing): TraceNode[] {
  const tables = (...rows: readonly TableRow[]) => rows.map(tableNode);
  if (work.kind === 'isokinetic')
    return [step({ step: 'curve', action: work.action }), ...tables(...speedRows, loweringRow)];
  if (work.kind === 'hold')
    return isAction(work.of)
      ? [step({ step: 'curve', action: work.of })]
      : [step({ step: 'lift', lift: work.of })];
  const named = (group: string, name?: string) => (name === undefined ? [] : input([group, name]));
  return [
    step({ step: 'lift', lift: work.lift }),
    ...tables(repetitionRow, ...adaptationRows.practice),
    ...named('machines', work.machine),
    ...named('chains', work.chains),
    ...(work.chains === undefined ? [] : tables(chainRow)),
    ...named('bands', work.bands),
    ...(work.bands === undefined ? [] : tables(rubberRow)),
  ];
}
