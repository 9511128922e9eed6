import { demandOf } from '../mechanics/demand.ts';
import { standardGravity } from '../mechanics/forces.ts';
import type { Lift, MuscledJoint } from '../mechanics/lift.ts';
import { plain } from '../notebook/formula/dimensions.ts';
import { FormulaError, number, type Value } from '../notebook/formula/values.ts';
import { toRadians } from '../numeric/degrees.ts';
import { liftFactor } from '../physiology/athlete.ts';
import { leastEffort } from '../physiology/sharing.ts';
import { heaviestSingles, restingCapacity, untrainedState } from '../physiology/trainedState.ts';
import { coefficients } from '../tables/adaptation.ts';
import { lifts } from '../tables/lifts.ts';
import { turnAngle } from './angleConvention.ts';
import type { AskedAthlete } from './askedAthlete.ts';
import {
  asNumber,
  asText,
  type ModelFunction,
  modelFunction,
  named,
  orNone,
} from './modelFunction.ts';
import { angle, length, mass, torque } from './quantities.ts';
import type { Step } from './step.ts';

const liftStep = (lift: Value | undefined): Step => ({ step: 'lift', lift: String(lift) });

/** What lifts ask of the athlete and what can be lifted. */
export function liftFunctions(results: AskedAthlete): ModelFunction[] {
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
