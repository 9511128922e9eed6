import type { LiftTest, TorqueTest } from '../notebook/tests/strengthTest.ts';
import type { Results } from '../run.ts';
import { mostFormulaReps, repetitionFormulas } from '../tables/repetitionFormulas.ts';
import { capital, kilograms, listInWords, newtonMetres } from './words.ts';

/** What was done to the numbers of the tests before they count, and what was taken for granted. */
export function testAssumptions(results: Results): string[] {
  const tests = results.scenario.tests.filter((test) => test.kind === 'torque');
  const lifts = results.scenario.tests.filter((test) => test.kind === 'lift');
  return [
    ...tests.flatMap(sourceOf),
    ...unique(tests.flatMap((test) => converted(test))),
    ...unique(tests.flatMap((test) => gravityOf(test, results.levelShank))),
    ...gravityAssumed(tests),
    ...unique(tests.flatMap(setupOf)),
    ...hipAssumed(tests),
    ...(lifts.some(({ estimated }) => estimated) ? [formulas] : []),
  ];
}

const unique = (items: readonly string[]) => [...new Set(items)];

const formulas = `Singles from repetitions: the median of ${listInWords(
  repetitionFormulas.map(({ author, year }) => `${author} ${year}`),
)} (formulas from memory), with the least and the most of them; up to ${mostFormulaReps} repetitions.`;

function sourceOf({ action, table, date, points }: TorqueTest): string[] {
  if (table === undefined) return [];
  const count = points.reduce((sum, { trials }) => sum + trials.length, 0);
  const day = date === undefined ? '' : ` of ${date}`;
  return [`${capital(action)}${day}: ${count} trials read from ${table}.`];
}

/** Units other than newton metres of one side, and how they were turned into them. */
function converted({ action, measure: { unit, lever }, side }: TorqueTest): string[] {
  const scale = ['kg', 'lb', 'lbs', 'g'].includes(unit)
    ? `, a mass on a scale taken as the force of its weight (1 kg is 9.81 N)`
    : '';
  const isPlain = unit.replace(/[\s·*]/g, '') === 'Nm';
  return [
    ...(lever !== undefined
      ? [
          `${capital(action)} was measured as a force in ${unit}${scale}; torque is that force times the lever arm of ${Number((100 * lever).toFixed(1))} cm.`,
        ]
      : isPlain
        ? []
        : [`${capital(action)} was measured in ${unit} and turned into N·m.`]),
    ...(side === 'both'
      ? [
          `${capital(action)} was pushed with both limbs together: half is taken for each. One limb alone often makes more than half.`,
        ]
      : []),
  ];
}

function gravityOf({ action, gravity }: TorqueTest, level: number): string[] {
  if (gravity === undefined || gravity.kind === 'corrected') return [];
  if (gravity.kind === 'none')
    return [
      `${capital(action)}: the weight of the limb was not taken out; torques are wrong by what it makes.`,
    ];
  if (gravity.kind === 'relaxed')
    return [
      `${capital(action)}: the pull of the relaxed limb was taken out, between its angles by straight lines.`,
    ];
  const way = gravity.pulls === 1 ? 'added' : 'taken off';
  const size =
    gravity.kind === 'weighed'
      ? `${newtonMetres(gravity.level)} with the shank level, as weighed`
      : `${newtonMetres(level)} with the shank level, estimated from body mass, lengths and tables`;
  return [
    `${capital(action)}: the weight of shank and foot (${size}) was ${way}, times the cosine of knee flexion.`,
  ];
}

function gravityAssumed(tests: readonly TorqueTest[]): string[] {
  const silent = unique(
    tests.filter(({ gravity }) => gravity === undefined).map(({ action }) => action),
  );
  return silent.length === 0
    ? []
    : [
        `Tests of ${listInWords(silent)} do not say whether the weight of the limb was taken out: it is taken that the device did so.`,
      ];
}

function setupOf({ action, angleTaken, familiarised }: TorqueTest): string[] {
  const few = familiarised === 'no' || familiarised === 0;
  return [
    ...(angleTaken === 'at rest'
      ? [
          `Angles of ${action} were taken at rest; under load the joint moves, a knee by 10–20° on a soft rig (from memory), so that torques may belong to other angles.`,
        ]
      : []),
    ...(few
      ? [
          `${capital(action)} was tested without practice before: part of a later gain may be learning the test.`,
        ]
      : []),
  ];
}

/** Muscles over hip and knee are longer or shorter with the hip: knee torque goes with it. */
function hipAssumed(tests: readonly TorqueTest[]): string[] {
  const silent = unique(
    tests
      .filter(({ action, neighbours }) => action.startsWith('knee') && neighbours.hip === undefined)
      .map(({ action }) => action),
  );
  return silent.length === 0
    ? []
    : [
        `Hip angle of the tests of ${listInWords(silent)} not given: hips bent as in sitting are taken. Lying flat both directions of the knee are weaker, flexion most.`,
      ];
}

/** A tested single as a report names it: lifted, or estimated from a set. */
export function singleWords({ lift, best, estimated }: LiftTest): string {
  if (!estimated) return `Tested ${lift} single ${kilograms(best)}`;
  const { reps, load, least, most } = estimated;
  return `${capital(lift)} single ${kilograms(best)}, estimated from ${reps} × ${kilograms(load)} (${kilograms(least)} to ${kilograms(most)} by seven formulas)`;
}
