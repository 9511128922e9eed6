import type { Step } from '../../functions/step.ts';
import type { Path } from '../../notebook/scenario.ts';
import type { Source } from '../../notebook/text/source.ts';
import type { Mechanism } from '../../physiology/adaptation.ts';
import type { Results } from '../../run.ts';
import {
  adaptationRows,
  kneeMuscleRows,
  liftingRow,
  loweringRow,
  muscleRows,
  type TableRow,
} from '../../tables/rowsBehind.ts';
import { bodyNode, curveNode, owned, strengthNode, testNodes } from './athleteNodes.ts';
import { inputNodes } from './inputs.ts';
import { muscleNode } from './muscleNode.ts';
import { programNode } from './programNode.ts';
import { type TraceNode, tableNode } from './traceNode.ts';

/** What a step is built from. Steps and inputs are built once each, so that one is one object. */
export interface Tracing {
  readonly results: Results;
  readonly input: (path: Path) => readonly TraceNode[];
  readonly step: (step: Step) => TraceNode;
}

/**
 * Prepares the tree behind the answers of one run.
 *
 * @param formulaParts what the formula of a field rests on
 */
export function tracing(
  results: Results,
  source: Source,
  formulaParts: (formula: string) => readonly TraceNode[],
): Tracing {
  const built = new Map<string, TraceNode>();
  const inputs = new Map<string, readonly TraceNode[]>();
  const known: Tracing = {
    results,
    input: (path) => {
      const key = JSON.stringify(path);
      const found = inputs.get(key) ?? inputNodes(source, path, formulaParts);
      inputs.set(key, found);
      return found;
    },
    step: (step) => {
      const key = JSON.stringify(step);
      const found = built.get(key) ?? nodeOf(step, known);
      built.set(key, found);
      return found;
    },
  };
  return known;
}

function nodeOf(step: Step, known: Tracing): TraceNode {
  switch (step.step) {
    case 'body':
      return bodyNode(known);
    case 'curve':
      return curveNode(step.action, known);
    case 'strength':
      return strengthNode(known);
    case 'lift':
      return liftNode(step.lift, known);
    case 'muscle':
      return muscleNode(step.muscle, step.joint);
    case 'program':
      return programNode(step.program, known);
    case 'forecast':
      return forecastNode(step.program, known);
    case 'target':
      return {
        what: 'the target',
        parts: [...known.input(['angles']), ...known.input(['target'])],
      };
  }
}

function liftNode(name: string, known: Tracing): TraceNode {
  const { catalogue, scenario, calibrations } = known.results;
  const lift = catalogue.find((entry) => entry.name === name);
  const isDeclared = scenario.lifts.some((entry) => entry.name === name);
  const own = calibrations.filter(({ single }) => single.lift === name);
  return {
    what: `the ${name}`,
    ...(own.length > 0
      ? {
          value: `done with ${own.map(({ factor }) => (100 * factor).toFixed(0)).join(', ')} % of the torque of the curves`,
          assumed: 'so that the tested singles are met',
        }
      : {}),
    parts: [
      ...(isDeclared
        ? known.input(['lifts', name])
        : [
            {
              what: 'posture by angle and where the load acts, from the catalogue',
              assumed: [lift?.source ?? '', ...(lift?.assumed ?? [])].filter(Boolean).join(' '),
              parts: [],
            },
          ]),
      ...testNodes(known, (action) => action === undefined),
      known.step({ step: 'body' }),
      known.step({ step: 'strength' }),
      tableNode(liftingRow),
    ],
  };
}

function forecastNode(name: string, known: Tracing): TraceNode {
  const { results, step } = known;
  const program = results.ranking.find((placed) => placed.program.name === name)?.program;
  const cause = (what: Mechanism, rows: readonly TableRow[]): TraceNode => ({
    what,
    value: `${(100 * (program?.targetShares.get(what) ?? 0)).toFixed(1)} points of the gain in the target`,
    parts: rows.map(tableNode),
  });
  const isKnee = results.question.action === 'knee extension';
  return {
    what: `forecast of "${name}"`,
    value: `${program?.weeks ?? 0} weeks of training, one after the other`,
    parts: [
      step({ step: 'program', program: name }),
      cause('neural drive', adaptationRows.drive),
      cause('regional growth', adaptationRows.growth),
      cause('sarcomeres in series', adaptationRows.series),
      ...[...adaptationRows.all, loweringRow].map(tableNode),
      ...(isKnee ? kneeMuscleRows : muscleRows).map(tableNode),
      ...known.input(owned(known, 'training')),
      ...known.input(owned(known, 'response')),
      step({ step: 'curve', action: results.question.action }),
      step({ step: 'strength' }),
      step({ step: 'target' }),
    ],
  };
}
