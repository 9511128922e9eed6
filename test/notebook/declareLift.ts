import type { Attachment, FollowRule, Lift, Resistance } from '../../src/mechanics/lift.ts';
import { goodScenario } from './goodScenario.ts';

const deg = (value: number) => `${value} deg`;
const metres = (value: number) => `${value} m`;
const place = ({ on, along, across }: Attachment) => ({ on, along, across: metres(across) });

function ruleText(rule: FollowRule): object {
  const { joint, rule: name } = rule;
  switch (name) {
    case 'balance':
      return { joint, rule: name };
    case 'leveling off':
      return { joint, rule: name, 'per leading': rule.perLeading, most: deg(rule.mostDeg) };
    case 'linear':
      return { joint, rule: name, from: deg(rule.fromDeg), 'per leading': rule.perLeading };
    case 'direction':
      return { joint, rule: name, direction: deg(rule.deg) };
    case 'end on line': {
      const beside = rule.across === undefined ? {} : { across: metres(rule.across) };
      return { joint, rule: name, direction: deg(rule.deg), ...beside };
    }
  }
}

function resistanceText(resistance: Resistance): object {
  const { kind } = resistance;
  switch (kind) {
    case 'machine torque':
      return { kind, arm: metres(resistance.arm) };
    case 'mass': {
      const hung = resistance.below === undefined ? {} : { below: metres(resistance.below) };
      return { kind, ...place(resistance), ...hung };
    }
    case 'force':
      return {
        kind,
        ...place(resistance),
        direction: deg(resistance.deg),
        gain: resistance.gain,
      };
    case 'cable': {
      const { x, y } = resistance;
      return { kind, ...place(resistance), 'pulley forward': metres(x), 'pulley up': metres(y) };
    }
  }
}

function floorText({ metres: height, assumed }: NonNullable<Lift['aboveFloor']>): object {
  return { height: typeof height === 'number' ? metres(height) : 'standing shoulder', assumed };
}

/** A lift word for word as a coach would declare it (JSON is YAML). */
export function declared(lift: Lift): string {
  const { workingShare, freeLeg, contact, aboveFloor } = lift;
  return JSON.stringify({
    chain: lift.chain.map(({ offsetDeg, ...link }) => ({
      ...link,
      ...(offsetDeg === undefined ? {} : { offset: deg(offsetDeg) }),
    })),
    support: lift.support,
    'support direction': deg(lift.supportDirectionDeg),
    sides: lift.sides,
    ...(workingShare === undefined ? {} : { 'working share': `${100 * workingShare} %` }),
    ...(freeLeg ? { 'free leg': true } : {}),
    leads: lift.leading,
    range: lift.rangeDeg.map(deg),
    follow: lift.follow.map(ruleText),
    resistance: resistanceText(lift.resistance),
    ...(contact ? { contact: { ...place(contact), direction: deg(contact.deg) } } : {}),
    ...(aboveFloor ? { 'above floor': floorText(aboveFloor) } : {}),
    assumed: lift.assumed,
    source: lift.source,
  });
}

/** The good file with a group of lifts put before its last top-level group but one. */
export const withLifts = (body: string) =>
  goodScenario.replace('machines:\n', `lifts:\n${body}machines:\n`);

/** A lift of a file that is good. */
export const kickback = `  cable kickback:
    chain: [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }, { segment: shank and foot, joint: knee, near: proximal, turn: 1 }]
    support: seat
    support direction: 0 deg
    sides: 1
    leads: hip
    range: [-10 deg, 60 deg]
    follow: [{ joint: knee, rule: linear, from: 20 deg, per leading: 0 }]
    resistance: { kind: cable, on: shank and foot, along: 1, across: 0 cm, pulley forward: 1 m, pulley up: -85 cm }
`;
