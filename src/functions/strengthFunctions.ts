import { atAngle } from '../mechanics/angleGrid.ts';
import { number, type Value } from '../notebook/formula/values.ts';
import { actionNames, actions } from '../tables/actions.ts';
import { turnAngle } from './angleConvention.ts';
import { type AskedAthlete, reachOf } from './askedAthlete.ts';
import {
  asNumber,
  asText,
  type ModelFunction,
  modelFunction,
  named,
  orNone,
} from './modelFunction.ts';
import { angle, length, torque } from './quantities.ts';
import type { Step } from './step.ts';

const actionList = actionNames.map((name) => ({ name, ...actions[name] }));

const body: Step = { step: 'body' };
const curve = (action: Value | undefined): Step => ({ step: 'curve', action: String(action) });

/** The athlete's torque curves and segments. */
export function strengthFunctions(results: AskedAthlete): ModelFunction[] {
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
