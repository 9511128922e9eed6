import { reach } from '../inference/forecast.ts';
import { atAngle, gridAngles } from '../mechanics/angleGrid.ts';
import { demandOf } from '../mechanics/demand.ts';
import { standardGravity } from '../mechanics/forces.ts';
import type { Lift, MuscledJoint } from '../mechanics/lift.ts';
import { type Exponents, plain } from '../notebook/formula/dimensions.ts';
import { FormulaError, number, type Value } from '../notebook/formula/values.ts';
import type { Measured } from '../notebook/scenario.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { type Athlete, liftFactor } from '../physiology/athlete.ts';
import { operatingLength, tendonArmAt } from '../physiology/muscleGeometry.ts';
import { leastEffort } from '../physiology/sharing.ts';
import { heaviestSingles, restingCapacity, untrainedState } from '../physiology/trainedState.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import { coefficients } from '../tables/adaptation.ts';
import { lifts } from '../tables/lifts.ts';
import type { MuscleJoint } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { turnAngle } from './angleConvention.ts';
import {
  asNumber,
  asText,
  type ModelFunction,
  modelFunction,
  named,
  orNone,
} from './modelFunction.ts';
import type { Step } from './step.ts';

export const mass: Exponents = [1, 0, 0, 0];
export const length: Exponents = [0, 1, 0, 0];
export const time: Exponents = [0, 0, 1, 0];
export const angle: Exponents = [0, 0, 0, 1];
export const torque: Exponents = [1, 2, -2, 0];

const actionList = actionNames.map((name) => ({ name, ...actions[name] }));

/** What these functions answer from: results, or what is known before any program. */
export interface AskedAthlete {
  readonly athlete: Athlete;
  readonly scenario: Pick<Measured, 'convention' | 'lifts'>;
}

/** Grid angles (radians) over which an action is looked at. */
export function reachOf(action: ActionName, { athlete }: Pick<AskedAthlete, 'athlete'>): number[] {
  const [least, most] = reach(action, athlete);
  return gridAngles.filter((at) => at >= least - 1e-9 && at <= most + 1e-9);
}

/** Names of the functions below: what they ask is known before any program. */
export const athleteCalls: readonly string[] = [
  'torque',
  'peak',
  'peak_angle',
  'angles',
  'segment',
  'best',
  'sticking',
  'demand',
  'effort',
  'lever',
  'tendon_arm',
  'fibre_length',
];

const body: Step = { step: 'body' };
const curve = (action: Value | undefined): Step => ({ step: 'curve', action: String(action) });
const liftStep = (lift: Value | undefined): Step => ({ step: 'lift', lift: String(lift) });
const muscleSteps = ([muscle, joint]: readonly Value[]): readonly Step[] => [
  { step: 'muscle', muscle: String(muscle), joint: String(joint) },
];

/** What formulas may ask of the athlete before training. */
export function athleteFunctions(results: AskedAthlete): readonly ModelFunction[] {
  return [...strengthFunctions(results), ...liftFunctions(results), ...muscleFunctions(results)];
}

function strengthFunctions(results: AskedAthlete): ModelFunction[] {
  const { athlete, scenario } = results;
  const { convention } = scenario;
  const strongest = (name: Value | undefined) => {
    const { name: action } = named('joint action', name, actionList);
    const by = athlete.groups[action].torque;
    const reach = reachOf(action, results);
    const best = reach.reduce((a, b) => (atAngle(by, b) > atAngle(by, a) ? b : a));
    return { joint: actions[action].joint, at: best, torque: atAngle(by, best) };
  };
  return [
    modelFunction({
      name: 'torque',
      parameters: [asText('joint action'), orNone(asNumber('angle', angle))],
      gives: 'largest torque of one side in a hold, at an angle or as a list over all angles',
      returns: (args) => number(torque, args.length === 1),
      run: ([name, at]) => {
        const { name: action, joint } = named('joint action', name, actionList);
        const by = athlete.groups[action].torque;
        if (at === undefined) return reachOf(action, results).map((one) => atAngle(by, one));
        return atAngle(by, turnAngle(convention, joint, Number(at)));
      },
      example: { formula: 'torque("knee extension", 90 deg)' },
      rests: ([action]) => [curve(action)],
    }),
    modelFunction({
      name: 'peak',
      parameters: [asText('joint action')],
      gives: 'the largest of those torques',
      returns: () => number(torque),
      run: ([name]) => strongest(name).torque,
      example: { formula: 'peak("knee extension")' },
      rests: ([action]) => [curve(action)],
    }),
    modelFunction({
      name: 'peak_angle',
      parameters: [asText('joint action')],
      gives: 'the angle of the largest torque',
      returns: () => number(angle),
      run: ([name]) => {
        const { joint, at } = strongest(name);
        return turnAngle(convention, joint, at);
      },
      example: { formula: 'peak_angle("knee extension")' },
      rests: ([action]) => [curve(action)],
    }),
    modelFunction({
      name: 'angles',
      parameters: [asText('joint action')],
      gives: 'the angles that belong to the lists over all angles',
      returns: () => number(angle, true),
      run: ([name]) => {
        const { name: action, joint } = named('joint action', name, actionList);
        return reachOf(action, results).map((at) => turnAngle(convention, joint, at));
      },
      example: { formula: 'max(angles("knee extension"))', gives: '125 deg' },
      rests: () => [body],
    }),
    modelFunction({
      name: 'segment',
      parameters: [asText('thigh, shank, trunk, foot, upper arm or forearm')],
      gives: 'length of a body segment, measured or from stature',
      returns: () => number(length),
      run: ([name]) => named('segment', name, segmentsOf(results)).metres,
      example: { formula: 'segment("thigh")', gives: '0.41 m' },
      rests: () => [body],
    }),
  ];
}

function segmentsOf({ athlete: { body } }: AskedAthlete) {
  const of = (name: string, metres: number) => ({ name, metres });
  const { segments } = body;
  return [
    of('thigh', segments.thigh.length),
    of('shank', segments.shank.length),
    of('trunk', segments['trunk, head and arms'].length),
    of('foot', body.footLength),
    of('upper arm', segments['upper arm'].length),
    of('forearm', segments['forearm and hand'].length),
  ];
}

function liftFunctions(results: AskedAthlete): ModelFunction[] {
  const { athlete, scenario } = results;
  const known = [...lifts, ...scenario.lifts];
  const liftOf = (name: Value | undefined) => named('lift', name, known);
  const flexion = (lift: Lift, at: Value | undefined) =>
    turnAngle(scenario.convention, lift.leading, Number(at));
  const single = (name: Value | undefined, to: Value | undefined, from: Value | undefined) => {
    const lift = liftOf(name);
    const first = toRadians(lift.rangeDeg[0]);
    const ends = [from === undefined ? first : flexion(lift, from), flexion(lift, to)];
    const range = { lift, from: Math.min(...ends), to: Math.max(...ends) };
    const [found] = heaviestSingles(athlete, [range], untrainedState, coefficients);
    if (!found || found.load <= 0)
      throw new FormulaError(`asks for a ${lift.name} that cannot be held over this range`);
    return { lift, ...found };
  };
  const asked = (lift: Lift, at: Value | undefined, load: number) => {
    const found = demandOf(lift, athlete.body, load)(flexion(lift, at));
    if ('impossible' in found)
      throw new FormulaError(`asks for a ${lift.name} at an angle where ${found.impossible}`);
    return found;
  };
  const rangeParameters = [asText('lift'), asNumber('to', angle), orNone(asNumber('from', angle))];
  const postureParameters = [asText('lift'), asNumber('angle', angle)];
  return [
    modelFunction({
      name: 'best',
      parameters: rangeParameters,
      gives: 'heaviest single of a lift to an angle, by the model corrected by the tests',
      returns: () => number(mass),
      run: ([name, to, from]) => single(name, to, from).load,
      example: { formula: 'best("back squat", 110 deg)', gives: '85 kg' },
      rests: ([lift]) => [liftStep(lift)],
    }),
    modelFunction({
      name: 'sticking',
      parameters: rangeParameters,
      gives: 'the angle of the leading joint at which that single would be lost',
      returns: () => number(angle),
      run: ([name, to, from]) => {
        const { lift, at } = single(name, to, from);
        return turnAngle(scenario.convention, lift.leading, at.angle);
      },
      example: { formula: 'sticking("back squat", 110 deg)' },
      rests: ([lift]) => [liftStep(lift)],
    }),
    modelFunction({
      name: 'demand',
      parameters: [...postureParameters, asNumber('load', mass), orNone(asText('joint'))],
      gives:
        'torque that a lift asks of one side, extension positive, at its leading joint or another',
      returns: () => number(torque),
      run: ([name, at, load, joint]) => {
        const lift = liftOf(name);
        const { torques } = asked(lift, at, Number(load));
        return torques[jointIn(lift, joint)] ?? 0;
      },
      example: { formula: 'demand("back squat", 90 deg, 60 kg)' },
      rests: ([lift]) => [liftStep(lift)],
    }),
    modelFunction({
      name: 'effort',
      parameters: [...postureParameters, asNumber('load', mass)],
      gives: 'share of what all muscles together could carry in that posture of the lift',
      returns: () => number(plain),
      run: ([name, at, load]) => {
        const lift = liftOf(name);
        const end = flexion(lift, at);
        const strength = liftFactor(athlete, { lift, from: end, to: end });
        return leastEffort(asked(lift, at, Number(load)), restingCapacity(athlete)) / strength;
      },
      example: { formula: 'effort("back squat", 90 deg, 60 kg)' },
      rests: ([lift]) => [liftStep(lift)],
    }),
    modelFunction({
      name: 'lever',
      parameters: [...postureParameters, orNone(asText('joint'))],
      gives: 'lever arm of the load at a joint, one side: torque added by each newton of load',
      returns: () => number(length),
      run: ([name, at, joint]) => {
        const lift = liftOf(name);
        const at60 = asked(lift, at, 60).torques[jointIn(lift, joint)] ?? 0;
        const at61 = asked(lift, at, 61).torques[jointIn(lift, joint)] ?? 0;
        return (at61 - at60) / standardGravity;
      },
      example: { formula: 'lever("back squat", 90 deg)' },
      rests: ([lift]) => [liftStep(lift)],
    }),
  ];
}

/** A joint of a lift's chain by name; the leading one if none is named. */
function jointIn(lift: Lift, name: Value | undefined): MuscledJoint {
  if (name === undefined) return lift.leading;
  const joints = lift.chain.flatMap(({ joint }) => (joint === 'hinge' ? [] : [{ name: joint }]));
  return named(`joint of the ${lift.name}`, name, joints).name;
}

function muscleFunctions({ scenario }: AskedAthlete): ModelFunction[] {
  const parameters = [asText('muscle'), asText('joint'), asNumber('angle', angle)];
  const posture = ([name, joint, at]: readonly Value[]) => {
    const muscle = named('muscle', name, muscles);
    const crossed = (Object.keys(muscle.arms) as MuscleJoint[]).map((one) => ({ name: one }));
    const { name: over } = named(`joint that ${muscle.name} crosses`, joint, crossed);
    const flexion = turnAngle(scenario.convention, over, Number(at));
    return { muscle, over, deg: toDegrees(flexion) };
  };
  return [
    modelFunction({
      name: 'tendon_arm',
      parameters,
      gives: 'lever arm of a muscle’s tendon at a joint',
      returns: () => number(length),
      run: (args) => {
        const { muscle, over, deg } = posture(args);
        return Math.abs(tendonArmAt(muscle, over, deg));
      },
      example: { formula: 'tendon_arm("vastus lateralis", "knee", 60 deg)' },
      rests: muscleSteps,
    }),
    modelFunction({
      name: 'fibre_length',
      parameters,
      gives:
        'length of its fibres at full effort, 1 where they are strongest, other joints as standing',
      returns: () => number(plain),
      run: (args) => {
        const { muscle, over, deg } = posture(args);
        return operatingLength(muscle, { [over]: deg }, 1);
      },
      example: { formula: 'fibre_length("vastus lateralis", "knee", 90 deg)' },
      rests: muscleSteps,
    }),
  ];
}
