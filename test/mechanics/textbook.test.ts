import { describe, expect, it } from 'vitest';
import { momentAbout, type PointForce, resultant, weight } from '../../src/mechanics/forces.ts';
import { placeChain, requiredTorques, type SegmentBody } from '../../src/mechanics/linkage.ts';

/** Printed answers of textbook statics; every one through the functions that the lifts use. */

const degrees = Math.PI / 180;
const onLine = (distance: number, fromHorizontal = 0) => ({
  x: distance * Math.cos(fromHorizontal),
  y: distance * Math.sin(fromHorizontal),
});
const origin = { x: 0, y: 0 };

function within(actual: number, expected: number, share = 0.005): void {
  expect(Math.abs(actual / expected - 1)).toBeLessThan(share);
}

/** A seated lower leg whose own weight and boot weight are given in newtons (g = 1). */
function bootMoment(
  leg: { weight: number; at: number },
  boot: { weight: number; at: number },
  belowHorizontal: number,
  gravity = 1,
): number {
  const none: SegmentBody = { length: 1, mass: 0, centre: 0 };
  const segments = {
    foot: none,
    shank: none,
    thigh: none,
    'trunk and head': none,
    'trunk, head and arms': none,
    'upper arm': none,
    'forearm and hand': none,
    'shank and foot': { length: 1, mass: leg.weight, centre: leg.at },
  };
  const chain = [{ segment: 'shank and foot', joint: 'knee', near: 'proximal', turn: 1 }] as const;
  const placed = placeChain(chain, segments, origin, 90 * degrees, { knee: belowHorizontal });
  const load = { mass: boot.weight, on: 'shank and foot', along: boot.at, across: 0 } as const;
  return requiredTorques(placed, [load], gravity).knee ?? Number.NaN;
}

describe('textbook statics', () => {
  it('forearm level with a book: OpenStax College Physics, section 9.6 example', () => {
    const loads = [weight(2.5, onLine(0.16), 9.8), weight(4, onLine(0.38), 9.8)];
    const moment = -momentAbout(origin, loads);
    within(moment, 18.816);
    const biceps = moment / 0.04;
    within(biceps, 470);
    const all: PointForce[] = [...loads, { at: onLine(0.04), force: { x: 0, y: biceps } }];
    within(resultant(all).y, 406.7);
  });

  it('forearm 30° off level, muscle square to it: Urone, College Physics, problem 31', () => {
    const lift = 30 * degrees;
    const loads = [weight(2.5, onLine(0.16, lift), 9.8), weight(4, onLine(0.38, lift), 9.8)];
    within(-momentAbout(origin, loads) / 0.04, 407);
  });

  it('boot on the shank at 0, 30, 60, 90° below level (Özkaya-type problem; answers by hand: 60·cos)', () => {
    const at = (angle: number) =>
      bootMoment({ weight: 50, at: 0.2 }, { weight: 100, at: 0.5 }, angle * degrees);
    within(at(0), 60);
    within(at(30), 51.96);
    within(at(60), 30);
    expect(at(90)).toBeCloseTo(0, 9);
  });

  it('knee with boot (Özkaya and Nordin; inputs read, answers by hand: 83·cos 45° and that over 0.12·sin 15°)', () => {
    const moment = bootMoment({ weight: 150, at: 0.22 }, { weight: 100, at: 0.5 }, 45 * degrees);
    within(moment, 58.69);
    const tendon = moment / (0.12 * Math.sin(15 * degrees));
    within(tendon, 1890);
    // The tendon pulls back toward the thigh, 15° above the shank's own line: 45° + 15° … the
    // shank points 45° below forward, so the pull points 120° from forward.
    const pull = (180 - 45 - 15) * degrees;
    const joint = resultant([
      { at: origin, force: { x: 0, y: -250 } },
      { at: origin, force: { x: tendon * Math.cos(pull), y: tendon * Math.sin(pull) } },
    ]);
    within(Math.hypot(joint.x, joint.y), 1678);
    within(Math.atan2(joint.y, -joint.x) / degrees, 55.7);
  });

  it('biceps at its best, 25 kg: Giancoli, Physics, problem 9-37 (prints about 1800 N; exactly 1836)', () => {
    const loads = [weight(2, onLine(0.15), 9.8), weight(25, onLine(0.35), 9.8)];
    within(-momentAbout(origin, loads) / (0.05 * Math.sin(105 * degrees)), 1836);
  });

  it('elbow in balance: forearm 15 N, ball 20 N, biceps 275 N leave 240 N on the joint (Taylor & Francis chapter)', () => {
    // Levers are not printed; 15, 30 and 3 cm are the ones that give 275 N.
    const loads = [weight(15, onLine(0.15), 1), weight(20, onLine(0.3), 1)];
    const biceps = -momentAbout(origin, loads) / 0.03;
    within(biceps, 275);
    within(resultant([...loads, { at: onLine(0.03), force: { x: 0, y: biceps } }]).y, 240);
  });

  it('15 N in the hand: Biomechanics of the Human Body, example 2.4', () => {
    const moment = -momentAbout(origin, [weight(15, onLine(0.3), 1)]);
    within(moment, 4.5);
    within(moment / 0.035, 128.6);
  });

  it('back lifting a box: OpenStax College Physics, section 9.6, back problem', () => {
    const loads = [weight(55, onLine(0.35), 9.8), weight(30, onLine(0.5), 9.8)];
    const muscle = -momentAbout(origin, loads) / 0.08;
    within(muscle, 4200);
    within(muscle / (85 * 9.8), 5.04);
    // Direction of the back muscles that goes with the printed vertical force: 29.0° above level.
    const pull = 29 * degrees;
    const spine = resultant([
      ...loads,
      { at: origin, force: { x: -muscle * Math.cos(pull), y: -muscle * Math.sin(pull) } },
    ]);
    within(-spine.y, 2870);
    within(Math.hypot(spine.x, spine.y), 4660);
    within(Math.atan2(-spine.y, -spine.x) / degrees, 38);
  });

  it('seated hold with a 10 kg boot: worked forum problem, g = 9.81', () => {
    const moment = bootMoment({ weight: 4.2024, at: 0.1953 }, { weight: 10, at: 0.45 }, 0, 9.81);
    within(moment, 52.2);
    within(moment / 0.05, 1043.9);
  });
});
