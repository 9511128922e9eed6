import { sumOver } from '../inference/ranking.ts';
import { atAngle } from '../mechanics/angleGrid.ts';
import { plain } from '../notebook/formula/dimensions.ts';
import type { DescribedFunction } from '../notebook/formula/library.ts';
import { FormulaError, number, type Value } from '../notebook/formula/values.ts';
import type { ProgramResult, Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import { turnAngle } from './angleConvention.ts';
import { reachOf } from './askedAthlete.ts';
import {
  asList,
  asNumber,
  asText,
  type ModelFunction,
  modelFunction,
  named,
  orNone,
} from './modelFunction.ts';
import { angle, mass, time } from './quantities.ts';
import type { Step } from './step.ts';

/** Names of the functions below: what they ask is known when the programs have been computed. */
export const programCalls: readonly string[] = [
  'gain',
  'target_gain',
  'hit_share',
  'minutes',
  'dose',
  'growth',
  'muscle_sets',
  'load',
  'at',
];

/** What formulas may ask of the programs: of one by its name, or of all in the file's order. */
export function programFunctions(results: Results): readonly ModelFunction[] {
  const { scenario, ranking, question } = results;
  const inOrder = scenario.programs.flatMap(({ name }) =>
    ranking.flatMap(({ program }) => (program.name === name ? [program] : [])),
  );
  const programOf = (name: Value | undefined) => named('program', name, inOrder);
  const { joint } = actions[question.action];
  const flexion = (at: Value | undefined) => turnAngle(scenario.convention, joint, Number(at));
  const reach = reachOf(question.action, results);
  /** The step of one program, or of every one where none is named. */
  const each =
    (step: 'program' | 'forecast') =>
    ([name]: readonly Value[]): readonly Step[] =>
      inOrder
        .filter((program) => name === undefined || program.name === name)
        .map((program) => ({ step, program: program.name }));
  const ofMuscle = (
    name: string,
    gives: string,
    of: (muscle: ProgramResult['muscles'][number]) => number,
    example: DescribedFunction['example'],
  ) =>
    modelFunction({
      ...{ name, gives, example, rests: each('forecast') },
      parameters: [asText('program'), asText('muscle')],
      returns: () => number(plain),
      run: ([program, muscle]) => of(named('muscle', muscle, programOf(program).muscles)),
    });
  const ofEach = (
    name: string,
    gives: string,
    returns: typeof time,
    of: (program: ProgramResult) => number,
    step: 'program' | 'forecast',
    shown: DescribedFunction['example'],
  ) =>
    modelFunction({
      name,
      parameters: [orNone(asText('program'))],
      gives: `${gives}; without a name, a list of all programs`,
      returns: (args) => number(returns, args.length === 0),
      run: ([program]) => (program === undefined ? inOrder.map(of) : of(programOf(program))),
      example: shown,
      rests: each(step),
    });
  return [
    modelFunction({
      name: 'gain',
      parameters: [asText('program'), orNone(asNumber('angle', angle))],
      gives: 'gain of torque by a program at an angle, or as a list over all angles',
      returns: (args) => number(plain, args.length === 1),
      run: ([name, at]) => {
        const { ratio } = programOf(name);
        if (at === undefined) return reach.map((one) => atAngle(ratio, one) - 1);
        return atAngle(ratio, flexion(at)) - 1;
      },
      example: { formula: 'gain("long holds", 90 deg)' },
      rests: each('forecast'),
    }),
    ofEach(
      'target_gain',
      'mean gain inside the target',
      plain,
      ({ landing }) => landing.meanGain,
      'forecast',
      {
        formula: 'target_gain("long holds")',
      },
    ),
    ofEach(
      'hit_share',
      'part of all torque gained that lies inside the target',
      plain,
      ({ landing }) => landing.hitShare,
      'forecast',
      { formula: 'hit_share("long holds")' },
    ),
    ofEach(
      'minutes',
      'training time a week',
      time,
      ({ minutesPerWeek }) => 60 * minutesPerWeek,
      'program',
      {
        formula: 'minutes("long holds")',
      },
    ),
    modelFunction({
      name: 'dose',
      parameters: [asText('program'), asNumber('from', angle), asNumber('to', angle)],
      gives:
        'hard sets a week that a program’s first week puts between two angles of the target’s joint',
      returns: () => number(plain),
      run: ([name, from, to]) => {
        const ends = [flexion(from), flexion(to)];
        const first = programOf(name).state.firstWeek?.drive[question.action];
        const range = { from: Math.min(...ends), to: Math.max(...ends) };
        return first ? sumOver(first.dynamic, range) + sumOver(first.isometric, range) : 0;
      },
      example: { formula: 'dose("long holds", 75 deg, 100 deg)' },
      rests: each('forecast'),
    }),
    ofMuscle(
      'growth',
      'area that a program adds to a muscle that works for the target',
      ({ proximal, distal }) => (proximal + distal) / 2,
      { formula: 'growth("long holds", "vastus lateralis")' },
    ),
    ofMuscle(
      'muscle_sets',
      'effective sets of a muscle that works for the target in a program’s mean week',
      ({ hardSets }) => hardSets,
      { formula: 'muscle_sets("deep squat", "rectus femoris")' },
    ),
    modelFunction({
      name: 'load',
      parameters: [asText('program'), asNumber('place in its work', plain)],
      gives: 'load of a lift or held lift of a program in the first week',
      returns: () => number(mass),
      run: ([name, place]) => {
        const program = programOf(name);
        const exercise = program.plan.exercises[Number(place) - 1]?.exercise;
        if (exercise?.kind === 'lift') return exercise.load;
        if (exercise?.kind === 'hold' && 'load' in exercise.of) return exercise.of.load;
        throw new FormulaError(
          `asks for the load of entry ${Number(place)} of "${program.name}", which has none`,
          'count the lines of its work from 1; holds of a joint and isokinetic work have no load',
        );
      },
      example: { formula: 'load("deep squat", 1)' },
      rests: each('program'),
    }),
    modelFunction({
      name: 'at',
      parameters: [asList('list over all angles'), asNumber('angle', angle)],
      gives: 'the value of such a list of the target’s action at one angle',
      returns: ([type]) => number(type?.kind === 'number' ? type.exponents : plain),
      run: ([list, where]) => {
        const values = list as readonly number[];
        if (values.length !== reach.length)
          throw new FormulaError(
            `gives at a list of ${values.length} numbers; the angles of ${question.action} are ${reach.length}`,
          );
        return interpolated(reach, values, flexion(where));
      },
      example: { formula: 'at(gain("long holds"), 90 deg)' },
      rests: () => [],
    }),
  ];
}

function interpolated(at: readonly number[], values: readonly number[], x: number): number {
  const next = at.findIndex((one) => one >= x);
  if (next <= 0) return values[next < 0 ? values.length - 1 : 0] ?? Number.NaN;
  const [left, right] = [at[next - 1] ?? 0, at[next] ?? 0];
  const share = (x - left) / (right - left);
  return (1 - share) * (values[next - 1] ?? 0) + share * (values[next] ?? 0);
}
