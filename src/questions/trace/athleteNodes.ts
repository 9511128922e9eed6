import type { Path } from '../../notebook/scenario.ts';
import { toDegrees } from '../../numeric/degrees.ts';
import { type ActionName, actionNames, isAction } from '../../tables/actions.ts';
import { bodyRows, curveRows, fitRows, muscleRows, untestedRows } from '../../tables/rowsBehind.ts';
import type { Tracing } from './modelSteps.ts';
import { type TraceNode, tableNode } from './traceNode.ts';

/** A path inside the athlete or group. */
export const owned = ({ results }: Tracing, ...rest: readonly string[]): Path => [
  ...results.scenario.subject.path,
  ...rest,
];

/** Lengths, masses and limits of the body, written, estimated or usual. */
export function bodyNode(known: Tracing): TraceNode {
  const { results, input } = known;
  const { limits } = results.scenario.subject;
  const usual = (name: 'ankle dorsiflexion' | 'knee flexion', radians: number): TraceNode[] =>
    limits[name] === undefined
      ? [
          {
            what: `limit of ${name}`,
            value: `${Math.round(toDegrees(radians))}°`,
            assumed: 'not given, the usual one',
            parts: [],
          },
        ]
      : [];
  const { body } = results.athlete;
  const estimated = results.estimatedLengths.map(
    (name): TraceNode => ({
      what: `length of the ${name}`,
      assumed: 'not measured, a share of stature',
      parts: [],
    }),
  );
  return {
    what: 'the body',
    parts: [
      ...input(owned(known, 'reference')),
      ...input(owned(known, 'stature')),
      ...input(owned(known, 'mass')),
      ...input(owned(known, 'lengths')),
      ...estimated,
      ...(estimated.length > 0 ? [tableNode(bodyRows.lengths)] : []),
      tableNode(bodyRows.masses),
      ...input(owned(known, 'limits')),
      ...usual('ankle dorsiflexion', body.limits.ankle),
      ...usual('knee flexion', body.limits.knee),
    ],
  };
}

/** The tests of an action, or of lifts where the action is undefined. */
export function testNodes(
  known: Tracing,
  ofAction: (action: string | undefined) => boolean,
): TraceNode[] {
  return known.results.scenario.tests.flatMap((test) =>
    ofAction(test.kind === 'torque' ? test.action : undefined) ? known.input(test.path) : [],
  );
}

/** Largest torque by angle of one action. */
export function curveNode(name: string, known: Tracing): TraceNode {
  const { scenario } = known.results;
  const action: ActionName | undefined = isAction(name) ? name : undefined;
  const tests = testNodes(known, (tested) => tested === name);
  const fitted = tests.length > 0 ? 'fitted to the tests' : 'no test: the mean person of this size';
  const torque = action ? known.results.athlete.groups[action].torque : [];
  return {
    what: `strength curve of ${name}`,
    value: `${Math.max(...torque).toFixed(0)} N·m at most`,
    assumed: `the published curve, ${fitted}`,
    parts: [
      ...(tests.length > 0 ? known.input(['angles']) : []),
      ...tests,
      ...errorNodes(name, known),
      ...(isEstimated(name, known) ? [known.step({ step: 'body' })] : []),
      ...known.input(owned(known, 'mass')),
      ...known.input(owned(known, 'reference')),
      ...(action ? curveRows(action, scenario.subject.reference).map(tableNode) : []),
      ...(tests.length > 0 ? fitRows.map(tableNode) : []),
    ],
  };
}

/** The test error by which the curve follows its tests: the file's own, a borrowed row, or both. */
function errorNodes(action: string, { results, input }: Tracing): TraceNode[] {
  const fit = results.fits.find((one) => one.action === action);
  if (!fit) return [];
  const own = results.scenario.repeatability.flatMap(({ of, path }) =>
    'action' in of && of.action === action ? input(path) : [],
  );
  const value = `${(100 * fit.testError).toFixed(1)} %, ${fit.errorFrom}`;
  return [{ what: 'typical error of a test', value, parts: own }];
}

/** Whether the weight of the limb was taken out by the body's own segments. */
const isEstimated = (action: string, { results }: Tracing) =>
  results.scenario.tests.some(
    (test) =>
      test.kind === 'torque' && test.action === action && test.gravity?.kind === 'estimated',
  );

/** What the muscles of all joints can give, tested or from tables. */
export function strengthNode(known: Tracing): TraceNode {
  const { scenario } = known.results;
  const tested = new Set(
    scenario.tests.flatMap((test) => (test.kind === 'torque' ? [test.action] : [])),
  );
  return {
    what: 'what all muscles together can give',
    parts: [
      ...actionNames
        .filter((action) => tested.has(action))
        .map((action) => known.step({ step: 'curve', action })),
      ...untestedRows(tested, scenario.subject.reference).map(tableNode),
      ...muscleRows.map(tableNode),
      ...known.input(owned(known, 'training')),
    ],
  };
}
