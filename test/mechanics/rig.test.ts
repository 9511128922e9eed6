import { describe, expect, it } from 'vitest';
import { demandOf } from '../../src/mechanics/demand.ts';
import { standardGravity } from '../../src/mechanics/forces.ts';
import type { Joint } from '../../src/mechanics/lift.ts';
import { Stance } from '../../src/mechanics/posture.ts';
import {
  addedMass,
  type Chains,
  heightOfLoad,
  type Rig,
  towardPulley,
} from '../../src/mechanics/rig.ts';
import { rigAlong } from '../../src/mechanics/rigAt.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { liftNamed, takesBands, takesChains } from '../../src/tables/lifts.ts';
import { man, torque } from './askLift.ts';
import { bandsAt, cables, heavyChains, held, hung, loadFor, rigs } from './tryRigs.ts';

describe('postures under chains and bands', () => {
  it('the catalogue splits into lifts that take both, cables that take bands, and others', () => {
    expect(hung.map(({ name }) => name)).toContain('bench press');
    expect(hung.map(({ name }) => name)).not.toContain('leg press');
    expect(cables.every((lift) => takesBands(lift) && !takesChains(lift))).toBe(true);
    console.log(`${hung.length} lifts take chains and bands, ${cables.length} cables bands`);
  });

  it('settle over the whole catalogue: the posture is the one of the plain lift with load + rig, to 1e-6 kg', () => {
    let most = 0;
    for (const lift of hung)
      for (const [name, rig] of rigs) {
        const load = loadFor(lift);
        const [from, to] = lift.rangeDeg;
        for (const share of [0, 0.25, 0.5, 0.75, 1]) {
          const leading = toRadians(from + share * (to - from));
          const stance = new Stance(lift, man, load, rig);
          const { placement, loads } = held(stance, leading);
          const height = heightOfLoad(lift, man, placement);
          const carried = (loads[0]?.mass ?? 0) / (lift.workingShare ?? 1);
          const added = addedMass(rig, height);
          expect(Math.abs(carried - load - added), `${lift.name}, ${name}`).toBeLessThan(1e-6);
          most = Math.max(most, Math.abs(added));
        }
      }
    console.log(`rigs of up to ${most.toFixed(0)} kg settled`);
  });

  it('settle also with bands ten times as stiff (a further 1,200 N over 0.5 m), on a light bar', () => {
    for (const lift of hung.filter(({ support }) => support === 'feet'))
      for (const deg of lift.rangeDeg)
        expect(
          held(new Stance(lift, man, 60, [bandsAt(0, 3000)]), toRadians(deg)).placement,
          lift.name,
        ).toBeDefined();
  });

  it('bands beside a cable add T/g to the stack: the cable curl with 20 kg and bands is the plain one with both', () => {
    for (const lift of cables) {
      const rig = [bandsAt(0)];
      for (const deg of lift.rangeDeg) {
        const { placement } = held(new Stance(lift, man, 20), toRadians(deg));
        const toward = towardPulley(lift, placement);
        if (!toward) throw new Error('no pulley');
        const kg =
          20 + bandsAt(0).stretch.tensionAt(Math.hypot(toward.x, toward.y)) / standardGravity;
        const both = demandOf(lift, man, kg)(toRadians(deg));
        const rigged = demandOf(lift, man, 20, rig)(toRadians(deg));
        if ('impossible' in both || 'impossible' in rigged) throw new Error(lift.name);
        for (const joint of Object.keys(both.torques) as Joint[])
          expect(rigged.torques[joint]).toBeCloseTo(both.torques[joint] ?? Number.NaN, 9);
      }
    }
  });
});

describe('limits', () => {
  const squat = liftNamed('back squat');
  const kneeWith = (rig: Rig, deg: number, load = 100) => {
    const asked = demandOf(squat, man, load, rig)(toRadians(deg));
    if ('impossible' in asked) throw new Error(asked.impossible);
    return asked.torques.knee ?? Number.NaN;
  };

  it('chains that stay on the floor, bands that stay slack and an empty rig are the plain lift', () => {
    const onFloor: Chains = { ...heavyChains, cord: 3 };
    for (const rig of [[onFloor], [bandsAt(1.2)].map((b) => ({ ...b, stretch: slack })), []])
      for (const deg of [20, 60, 110])
        expect(kneeWith(rig, deg)).toBeCloseTo(torque(squat, 'knee', deg, 100), 9);
  });

  it('a rig that adds the same everywhere is a heavier bar: chains all in the air, 19.8 kg', () => {
    const inAir: Chains = { ...heavyChains, cord: -2 };
    for (const deg of [20, 60, 110])
      expect(kneeWith([inAir], deg)).toBeCloseTo(torque(squat, 'knee', deg, 119.8), 6);
  });

  it('bands hung from the rack lower the demand deep more than high, bands from the floor raise it high more than deep', () => {
    const change = (anchor: number, deg: number) =>
      kneeWith([bandsAt(anchor)], deg) / torque(squat, 'knee', deg, 100) - 1;
    expect(change(2.5, 110)).toBeLessThan(change(2.5, 40));
    expect(change(2.5, 40)).toBeLessThan(0);
    expect(change(0, 40)).toBeGreaterThan(change(0, 110));
    expect(change(0, 110)).toBeGreaterThan(0);
  });

  it('a lift that does not know its floor is a mistake of ours, not a wrong number', () => {
    const nordic = liftNamed('Nordic lowering');
    expect(() => rigAlong(nordic, man, 10, [heavyChains])(1)).toThrow(
      'Nordic lowering does not say where the floor is',
    );
  });

  it('a heavier load never makes a rigged lift easier, so that its heaviest single can be found', () => {
    for (const [, rig] of rigs)
      for (const deg of [30, 70, 110])
        for (let load = 80; load < 200; load += 10)
          expect(kneeWith(rig, deg, load + 10) + 1e-9).toBeGreaterThan(kneeWith(rig, deg, load));
  });
});

const slack = { tensionAt: () => 0, known: [0, 9], longest: 9 } as const;
