import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demandOf } from '../../src/mechanics/demand.ts';
import { momentAbout, standardGravity } from '../../src/mechanics/forces.ts';
import type { Lift } from '../../src/mechanics/lift.ts';
import { potentialEnergy, requiredTorques } from '../../src/mechanics/linkage.ts';
import { type Posture, Stance } from '../../src/mechanics/posture.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import { heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const man = bodyOf({ reference: 'male', stature: 1.8, mass: 80, lengths: {}, limits: {} });

const backSquat = liftNamed('back squat');

/** The squat of the worked case: bar on the shoulder joint, shank lean set by the test. */
function squatWithLean(leanDeg: number): Lift {
  const { resistance } = backSquat;
  if (resistance.kind !== 'mass') throw new Error('a squat carries a mass');
  return {
    ...backSquat,
    resistance: { ...resistance, across: 0 },
    // No upright offset: the ankle follows the knee in proportion to it alone.
    follow: [{ joint: 'hip', rule: 'balance' }],
    chain: backSquat.chain,
    supportDirectionDeg: leanDeg,
  };
}

function sideTorques(leanDeg: number, kneeDeg: number, bar: number) {
  const asked = demandOf(squatWithLean(leanDeg), man, bar)(toRadians(kneeDeg));
  if ('impossible' in asked) throw new Error(asked.impossible);
  const { ankle = Number.NaN, knee = Number.NaN, hip = Number.NaN } = asked.torques;
  return { ankle, knee, hip };
}

describe('planar squat, derived case: 80 kg, 1.80 m, shank lean 30°, thigh level (hand calculation on de Leva masses and Drillis–Contini lengths, not published)', () => {
  it.each([
    [0, 78.3, 54.9],
    [60, 163.1, 99.9],
    [100, 219.6, 130.0],
    [140, 276.1, 160.0],
  ])('bar %d kg: hip %d, knee %d N·m a leg', (bar, hip, knee) => {
    const torques = sideTorques(30, 120, bar);
    expect(Math.abs(torques.hip / hip - 1)).toBeLessThan(0.005);
    expect(Math.abs(torques.knee / knee - 1)).toBeLessThan(0.005);
  });

  it('ankle 59.8 N·m a leg with 100 kg', () => {
    expect(Math.abs(sideTorques(30, 120, 100).ankle / 59.8 - 1)).toBeLessThan(0.005);
  });

  it('more shank lean moves torque from hip to knee; their sum stays (20°: 279.6 and 70.0)', () => {
    const upright = sideTorques(20, 110, 100);
    expect(Math.abs(upright.hip / 279.6 - 1)).toBeLessThan(0.005);
    expect(Math.abs(upright.knee / 70 - 1)).toBeLessThan(0.005);
  });
});

describe('squats by depth', () => {
  it('deeper is lighter, as published; sizes printed beside Cotter 2013 and Williams 2015 (their depths as angles are ours)', () => {
    const person = meanPerson('male', true);
    const capacity = restingCapacity(person);
    const heaviest = (to: number) =>
      heaviestLoad({ lift: backSquat, from: 0, to: toRadians(to) }, person.body, capacity).load;
    const [quarter, above, level, below] = [65, 100, 120, 135].map(heaviest) as [
      number,
      number,
      number,
      number,
    ];
    console.log(
      `squat above level : level : below = 1 : ${(level / above).toFixed(2)} : ${(below / above).toFixed(2)} | Cotter 2013 1 : 0.864 : 0.833\n` +
        `thigh at 45° over level +${(100 * (quarter / level - 1)).toFixed(0)} % | Williams 2015 +60.5 % (eight men)`,
    );
    expect(quarter).toBeGreaterThan(above);
    expect(above).toBeGreaterThan(level);
    expect(level).toBeGreaterThan(below);
    expect(quarter / level - 1).toBeGreaterThan(0.3);
  });
});

const onTwoFlatFeet = ({ support, leading, sides, contact }: Lift) =>
  support === 'feet' && leading === 'knee' && sides === 2 && !contact;

const someSquat = fc.record({
  lift: fc.constantFrom(...lifts.filter(onTwoFlatFeet)),
  stature: fc.double({ min: 1.5, max: 2.05, noNaN: true }),
  mass: fc.double({ min: 45, max: 130, noNaN: true }),
  reference: fc.constantFrom('female' as const, 'male' as const, 'pooled' as const),
  bar: fc.double({ min: 30, max: 200, noNaN: true }),
  knee: fc.double({ min: 5, max: 120, noNaN: true }),
});

function postureOf(
  squat: typeof someSquat extends fc.Arbitrary<infer T> ? T : never,
): Posture | undefined {
  const body = bodyOf({ ...squat, lengths: {}, limits: {} });
  const held = new Stance(squat.lift, body, squat.bar).posture(toRadians(squat.knee));
  return 'impossible' in held ? undefined : held;
}

describe('identities of statics, on random bodies, bars and depths', () => {
  it('hip + knee torque does not depend on shank lean while the thigh angle is kept', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 35, noNaN: true }),
        fc.double({ min: 20, max: 35, noNaN: true }),
        fc.double({ min: 60, max: 110, noNaN: true }),
        (leanA, leanB, thighDeg) => {
          const sum = (lean: number) => {
            const { hip, knee } = sideTorques(lean, thighDeg + lean, 100);
            return hip + knee;
          };
          expect(sum(leanA)).toBeCloseTo(sum(leanB), 8);
        },
      ),
    );
  });

  it('torques are the slope of potential energy (virtual work), each joint turned alone', () => {
    fc.assert(
      fc.property(someSquat, (squat) => {
        const held = postureOf(squat);
        if (!held) return;
        const h = 1e-5;
        for (const joint of ['ankle', 'knee', 'hip'] as const) {
          const energy = (turn: number) =>
            potentialEnergy(turnedAlone(held, joint, turn), held.loads);
          const slope = (energy(h) - energy(-h)) / (2 * h);
          const torque = requiredTorques(held.placement, held.loads)[joint];
          expect(torque).toBeCloseTo(-slope, 3);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('top-down torques equal those from the ground reaction under the middle of the foot', () => {
    fc.assert(
      fc.property(someSquat, (squat) => {
        const held = postureOf(squat);
        if (!held) return;
        const body = bodyOf({ ...squat, lengths: {}, limits: {} });
        const feet = 2 * body.segments.foot.mass;
        const ground = { x: body.footLength / 2 - body.ankleFromHeel, y: 0 };
        const footCentre = { x: body.footCentreFromHeel - body.ankleFromHeel, y: 0 };
        const total = (squat.mass + squat.bar) * standardGravity;
        // Rounding of the published mass shares (women sum to 0.9999, pooled to 1.000).
        const carried = held.placement.links.reduce((sum, link) => sum + link.body.mass, 0) + feet;
        const reaction = (total * (carried + squat.bar)) / (squat.mass + squat.bar);
        const torques = requiredTorques(held.placement, held.loads);
        let below = [
          { at: ground, force: { x: 0, y: reaction } },
          { at: footCentre, force: { x: 0, y: -feet * standardGravity } },
        ];
        for (const { link, body: segment, start, direction } of held.placement.links) {
          const fromBelow = link.turn * momentAbout(start, below);
          expect(torques[link.joint]).toBeCloseTo(fromBelow, 6);
          const along =
            (link.near === 'distal' ? 1 - segment.centre : segment.centre) * segment.length;
          const centre = {
            x: start.x + along * Math.sin(direction),
            y: start.y + along * Math.cos(direction),
          };
          below = [...below, { at: centre, force: { x: 0, y: -segment.mass * standardGravity } }];
        }
      }),
      { numRuns: 60 },
    );
  });

  it('work of the torques along the path equals the change of potential energy', () => {
    const stance = new Stance(backSquat, man, 100);
    const steps = 4000;
    const [from, to] = [toRadians(20), toRadians(100)];
    const at = (i: number) => {
      const held = stance.posture(from + ((to - from) * i) / steps);
      if ('impossible' in held) throw new Error(held.impossible);
      return held;
    };
    let work = 0;
    for (let i = 0; i < steps; i++) {
      const [a, b] = [at(i), at(i + 1)];
      const middle = stance.posture(from + ((to - from) * (i + 0.5)) / steps);
      if ('impossible' in middle) throw new Error(middle.impossible);
      const torques = requiredTorques(middle.placement, middle.loads);
      for (const joint of ['ankle', 'knee', 'hip'] as const)
        work -= (torques[joint] ?? 0) * ((b.angles[joint] ?? 0) - (a.angles[joint] ?? 0));
    }
    const [first, last] = [at(0), at(steps)];
    const change =
      potentialEnergy(last.placement, last.loads) - potentialEnergy(first.placement, first.loads);
    expect(work / change).toBeCloseTo(1, 6);
  });
});

/** The same chain with one joint turned a little and everything beyond it carried along. */
function turnedAlone(held: Posture, joint: string, turn: number): Posture['placement'] {
  let moving = 0;
  let start = held.placement.links[0]?.start ?? { x: 0, y: 0 };
  const links = held.placement.links.map((placed) => {
    if (placed.link.joint === joint) moving = placed.link.turn * turn;
    const direction = placed.direction + moving;
    const here = { ...placed, start, direction };
    start = {
      x: start.x + placed.body.length * Math.sin(direction),
      y: start.y + placed.body.length * Math.cos(direction),
    };
    return here;
  });
  return { links };
}
