import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demandOf, otherForces } from '../../src/mechanics/demand.ts';
import { standardGravity, type Vector } from '../../src/mechanics/forces.ts';
import type { Joint, Lift } from '../../src/mechanics/lift.ts';
import {
  attachedAt,
  type Placement,
  pointOn,
  potentialEnergy,
  requiredTorques,
} from '../../src/mechanics/linkage.ts';
import { type Body, type Posture, Stance } from '../../src/mechanics/posture.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { sensibleLoad } from './sensibleLoads.ts';

const man = bodyOf({ reference: 'male', stature: 1.8, mass: 80, lengths: {}, limits: {} });
const byName = lifts.map((lift) => [lift.name, lift] as const);

function held(stance: Stance, leading: number): Posture {
  const posture = stance.posture(leading);
  if ('impossible' in posture) throw new Error(`${stance.lift.name}: ${posture.impossible}`);
  return posture;
}

function torquesAt(lift: Lift, body: Body, load: number, leading: number) {
  const asked = demandOf(lift, body, load)(leading);
  if ('impossible' in asked) throw new Error(`${lift.name}: ${asked.impossible}`);
  return asked.torques;
}

/** Every place of a chain: joints and the far end. */
function points({ links }: Placement): Vector[] {
  return links.flatMap((placed) => [placed.start, pointOn(placed, placed.body.length, 0)]);
}

describe('the catalogue', () => {
  it('has at least 40 lifts, each with its own name, its assumptions and its source', () => {
    expect(lifts.length).toBeGreaterThanOrEqual(40);
    expect(new Set(lifts.map(({ name }) => name)).size).toBe(lifts.length);
    for (const { assumed, source } of lifts) {
      expect(assumed.length).toBeGreaterThan(0);
      expect(source).not.toBe('');
    }
    console.log(`${lifts.length} lifts: ${lifts.map(({ name }) => name).join(', ')}`);
  });

  it('declares only what its chain has', () => {
    for (const { name, chain, leading, follow, resistance, contact, freeLeg } of lifts) {
      const joints = new Set<Joint>(chain.map(({ joint }) => joint));
      const segments = new Set(chain.map(({ segment }) => segment));
      expect(joints.has(leading), name).toBe(true);
      for (const rule of follow) {
        const heldStill = rule.rule === 'linear' && rule.perLeading === 0;
        expect(joints.has(rule.joint) || heldStill, `${name}: ${rule.joint}`).toBe(true);
      }
      if (resistance.kind !== 'machine torque')
        expect(segments.has(resistance.on), name).toBe(true);
      if (contact) expect(segments.has(contact.on), name).toBe(true);
      if (freeLeg) expect(segments.has('thigh'), name).toBe(true);
    }
  });

  it('places every lift over its range on bodies of 1.55 to 2.00 m and 50 to 110 kg, arms swinging less than a quarter turn between postures 2.5° apart', () => {
    const someBody = fc.record({
      reference: fc.constantFrom('female' as const, 'male' as const, 'pooled' as const),
      stature: fc.double({ min: 1.55, max: 2, noNaN: true }),
      mass: fc.double({ min: 50, max: 110, noNaN: true }),
    });
    fc.assert(
      fc.property(someBody, (person) => {
        const body = bodyOf({ ...person, lengths: {}, limits: {} });
        for (const lift of lifts) {
          const [from, to] = lift.rangeDeg;
          const load = sensibleLoad(lift, person.mass);
          const stance = new Stance(lift, body, load);
          let before: Posture['angles'] | undefined;
          for (let deg = from; deg <= to; deg += 2.5) {
            const { placement, angles } = held(stance, toRadians(deg));
            for (const { x, y } of points(placement)) expect(Number.isFinite(x + y)).toBe(true);
            for (const [joint, angle] of Object.entries(angles) as [Joint, number][])
              if (before) expect(Math.abs(angle - (before[joint] ?? 0))).toBeLessThan(Math.PI / 2);
            before = angles;
          }
          const torques = Object.values(torquesAt(lift, body, load, toRadians(to)));
          for (const torque of torques) expect(Number.isFinite(torque)).toBe(true);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('leaves no torque at a free hinge', () => {
    for (const lift of lifts) {
      if (!lift.chain.some(({ joint }) => joint === 'hinge')) continue;
      for (const deg of lift.rangeDeg) {
        const torques = torquesAt(lift, man, sensibleLoad(lift, 80), toRadians(deg));
        expect(Math.abs(torques.hinge ?? Number.NaN), lift.name).toBeLessThan(1e-6);
      }
    }
  });
});

/** Work done on the chain by a lift's pulls and second support from one posture to a near one. */
function workOfOthers(stance: Stance, load: number, middle: Posture, a: Posture, b: Posture) {
  const { lift } = stance;
  const attachments = [
    ...(lift.resistance.kind === 'force' || lift.resistance.kind === 'cable'
      ? [lift.resistance]
      : []),
    ...(lift.contact ? [lift.contact] : []),
  ];
  const forces = otherForces(stance, middle, load);
  return attachments.reduce((work, attachment, i) => {
    const [from, to] = [attachedAt(a.placement, attachment), attachedAt(b.placement, attachment)];
    const push = forces[i]?.force.force;
    if (!from || !to || !push) throw new Error(`${lift.name}: a force is missing`);
    return work + push.x * (to.at.x - from.at.x) + push.y * (to.at.y - from.at.y);
  }, 0);
}

describe('work identity: work of the joints is the change of potential energy less the work of pulls (both by hand from the placed chain)', () => {
  it.each(byName)('%s', (_, lift) => {
    const load = sensibleLoad(lift, 80);
    const stance = new Stance(lift, man, load);
    const [from, to] = lift.rangeDeg.map(toRadians) as [number, number];
    const steps = 300;
    const at = (step: number) => from + ((to - from) * step) / steps;
    let [ofJoints, ofOthers, moved] = [0, 0, 0];
    for (let step = 0; step < steps; step++) {
      const [a, b] = [held(stance, at(step)), held(stance, at(step + 1))];
      const torques = torquesAt(lift, man, load, at(step + 0.5));
      for (const joint of Object.keys(torques) as Joint[]) {
        const turned = (b.angles[joint] ?? 0) - (a.angles[joint] ?? 0);
        const work = -lift.sides * (torques[joint] ?? 0) * turned;
        ofJoints += work;
        moved += Math.abs(work);
      }
      ofOthers += workOfOthers(stance, load, held(stance, at(step + 0.5)), a, b);
    }
    // A machine's torque does −arm·g·load for each radian the leading joint flexes.
    if (lift.resistance.kind === 'machine torque')
      ofOthers += lift.resistance.arm * load * standardGravity * (to - from);
    const [first, last] = [held(stance, from), held(stance, to)];
    const change =
      potentialEnergy(last.placement, last.loads) - potentialEnergy(first.placement, first.loads);
    expect(Math.abs(ofJoints - (change - ofOthers)) / moved).toBeLessThan(1e-4);
  });
});

/** The same chain with one joint turned a little and everything beyond it carried along. */
function turnedAlone(placement: Placement, index: number, turn: number): Placement {
  let start = placement.links[0]?.start ?? { x: 0, y: 0 };
  const clockwise = turn * (placement.links[index]?.link.turn ?? Number.NaN);
  const links = placement.links.map((placed, i) => {
    const direction = placed.direction + (i >= index ? clockwise : 0);
    const here = { ...placed, start, direction };
    start = pointOn(here, placed.body.length, 0);
    return here;
  });
  return { links };
}

const weightOnly = byName.filter(([, { resistance }]) => resistance.kind === 'mass');

describe('virtual work: each torque of a lift with weights only is the slope of potential energy, the joint turned alone', () => {
  it.each(weightOnly)('%s', (_, lift) => {
    const stance = new Stance(lift, man, sensibleLoad(lift, 80));
    const [from, to] = lift.rangeDeg;
    const h = 1e-5;
    for (const share of [0, 0.3, 0.6, 1]) {
      const { placement, loads } = held(stance, toRadians(from + share * (to - from)));
      const torques = requiredTorques(placement, loads);
      for (const [index, { link }] of placement.links.entries()) {
        const energy = (turn: number) =>
          potentialEnergy(turnedAlone(placement, index, turn), loads);
        expect(torques[link.joint]).toBeCloseTo(-(energy(h) - energy(-h)) / (2 * h), 3);
      }
    }
  });
});

describe('invariance', () => {
  it('a mirrored chain (every turn, direction and offset reversed) asks for the same torques', () => {
    for (const lift of lifts) {
      // Feet have heels behind and toes in front: a mirrored foot is another support.
      if (lift.support === 'feet') continue;
      const load = sensibleLoad(lift, 80);
      for (const deg of lift.rangeDeg) {
        const straight = torquesAt(lift, man, load, toRadians(deg));
        const other = torquesAt(mirrored(lift), man, load, toRadians(deg));
        for (const joint of Object.keys(straight) as Joint[])
          expect(other[joint], `${lift.name}: ${joint}`).toBeCloseTo(straight[joint] ?? 0, 8);
      }
    }
  });

  it('twice the body mass and twice the load ask for twice the torque (units of mass cancel)', () => {
    const heavy = bodyOf({ reference: 'male', stature: 1.8, mass: 160, lengths: {}, limits: {} });
    for (const lift of lifts)
      for (const deg of lift.rangeDeg) {
        const load = sensibleLoad(lift, 80);
        const once = torquesAt(lift, man, load, toRadians(deg));
        const twice = torquesAt(lift, heavy, 2 * load, toRadians(deg));
        for (const joint of Object.keys(once) as Joint[])
          expect(twice[joint], `${lift.name}: ${joint}`).toBeCloseTo(2 * (once[joint] ?? 0), 6);
      }
  });
});

/** The lift seen from the other side. */
function mirrored(lift: Lift): Lift {
  const flip = <T extends { readonly across: number }>(a: T): T => ({ ...a, across: -a.across });
  const { resistance, contact } = lift;
  const pull = resistance.kind === 'machine torque' ? resistance : flip(resistance);
  return {
    ...lift,
    supportDirectionDeg: -lift.supportDirectionDeg,
    chain: lift.chain.map((link) => ({
      ...link,
      turn: link.turn === 1 ? -1 : 1,
      offsetDeg: -(link.offsetDeg ?? 0),
    })),
    follow: lift.follow.map((rule) => {
      if (rule.rule === 'direction') return { ...rule, deg: -rule.deg };
      if (rule.rule !== 'end on line') return rule;
      return { ...rule, deg: -rule.deg, across: -(rule.across ?? 0) };
    }),
    resistance:
      pull.kind === 'cable'
        ? { ...pull, x: -pull.x }
        : pull.kind === 'force'
          ? { ...pull, deg: -pull.deg }
          : pull,
    ...(contact && { contact: { ...flip(contact), deg: -contact.deg } }),
  };
}
