import { describe, expect, it } from 'vitest';
import { demandOf, otherForces } from '../../src/mechanics/demand.ts';
import { momentAbout, standardGravity } from '../../src/mechanics/forces.ts';
import type { Lift } from '../../src/mechanics/lift.ts';
import { pointOn } from '../../src/mechanics/linkage.ts';
import { Stance } from '../../src/mechanics/posture.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { man } from './askLift.ts';

function at(lift: Lift, deg: number, load: number) {
  const stance = new Stance(lift, man, load);
  const held = stance.posture(toRadians(deg));
  const asked = demandOf(lift, man, load)(toRadians(deg));
  if ('impossible' in held || 'impossible' in asked) throw new Error(lift.name);
  return { stance, held, torques: asked.torques };
}

describe('second supports', () => {
  it.each([20, 60, 110])(
    'belt squat at %d°: ankle and knee torque from the ground up (weight under the middle of the foot, the floor undoing the pull of the hands) equal those from the top down',
    (deg) => {
      const { stance, held, torques } = at(liftNamed('belt squat'), deg, 100);
      const [hands] = otherForces(stance, held, 100);
      if (!hands) throw new Error('the hands hold a rail');
      const links = held.placement.links;
      const above = links.reduce((sum, { body }) => sum + body.mass, 0) + 100;
      const feet = 2 * man.segments.foot.mass;
      const floor = {
        at: stance.middleOfFoot,
        force: { x: -hands.force.force.x, y: (above + feet) * standardGravity },
      };
      const [shank, thigh] = links;
      if (!shank || !thigh) throw new Error('a squat has shank and thigh');
      const onAnkle = momentAbout(shank.start, [floor, stance.feetWeight]);
      expect(2 * (torques.ankle ?? 0)).toBeCloseTo(onAnkle, 8);
      const centre = pointOn(shank, (1 - shank.body.centre) * shank.body.length, 0);
      const weight = { at: centre, force: { x: 0, y: -shank.body.mass * standardGravity } };
      const onKnee = -momentAbout(thigh.start, [floor, stance.feetWeight, weight]);
      expect(2 * (torques.knee ?? 0)).toBeCloseTo(onKnee, 8);
    },
  );

  it('hip thrust: the floor carries what a beam on two supports gives it (moments about the shoulder, by hand)', () => {
    const { stance, held } = at(liftNamed('hip thrust'), 30, 100);
    const [floor] = otherForces(stance, held, 100);
    const [trunk, thigh, shank] = held.placement.links;
    if (!floor || !trunk || !thigh || !shank) throw new Error('a bridge has three links');
    const centreX = (link: typeof trunk) => pointOn(link, link.body.centre * link.body.length, 0).x;
    const bar = pointOn(trunk, trunk.body.length, -0.08).x;
    const turning =
      100 * bar + [trunk, thigh, shank].reduce((sum, l) => sum + l.body.mass * centreX(l), 0);
    const foot = pointOn(shank, shank.body.length, 0).x;
    expect(floor.force.force.x).toBeCloseTo(0, 9);
    expect(floor.force.force.y).toBeCloseTo((standardGravity * turning) / foot, 8);
  });

  it('seated calf raise: the thigh pushes along itself only and the shank’s top stays on its line', () => {
    for (const deg of [-30, 0, 15]) {
      const { stance, held } = at(liftNamed('seated calf raise'), deg, 60);
      const [thigh] = otherForces(stance, held, 60);
      expect(thigh?.force.force.y).toBeCloseTo(0, 9);
      expect(thigh?.force.at.x).toBeCloseTo(-0.1, 9);
    }
  });
});

describe('resistances', () => {
  it('a leg curl’s measured machine asks the flexors: 30 N·m at 10 kg is 60 N·m at 20 kg, half a side, on top of gravity', () => {
    const curl = liftNamed('lying leg curl');
    const table = { kind: 'machine', load: 10, torqueAt: () => 30 } as const;
    const asked = demandOf(curl, man, 20, [table])(toRadians(60));
    const { torques: gravity } = at(curl, 60, 0);
    if ('impossible' in asked) throw new Error(asked.impossible);
    expect((asked.torques.knee ?? 0) - (gravity.knee ?? 0)).toBeCloseTo(-30, 9);
  });

  it('a cable pulls with the weight on the stack toward its pulley', () => {
    const { stance, held } = at(liftNamed('cable curl'), 60, 20);
    const [pull] = otherForces(stance, held, 20);
    if (!pull) throw new Error('the cable pulls');
    const { at: from, force } = pull.force;
    expect(Math.hypot(force.x, force.y)).toBeCloseTo(20 * standardGravity, 9);
    // Declared pulley: 0.5 m in front of the shoulder, 1.35 m below it.
    expect(force.x * (-1.35 - from.y) - force.y * (0.5 - from.x)).toBeCloseTo(0, 9);
    expect(force.y).toBeLessThan(0);
  });

  it('a leg press pushes down its rails with sin 45° of the sled; the knee carries most, the hip some', () => {
    const { stance, held, torques } = at(liftNamed('leg press'), 80, 200);
    const [sled] = otherForces(stance, held, 200);
    expect(Math.hypot(sled?.force.force.x ?? 0, sled?.force.force.y ?? 0)).toBeCloseTo(
      200 * standardGravity * Math.sin(toRadians(45)),
      8,
    );
    expect(torques.hip).toBeGreaterThan(0);
    expect(torques.knee).toBeGreaterThan(torques.hip ?? 0);
  });

  it('a chin-up hangs balanced under the bar and leaves hips and knees nearly free', () => {
    for (const deg of [10, 70, 130]) {
      const { torques, held } = at(liftNamed('chin-up'), deg, 20);
      const trunk = held.placement.links[2];
      expect(Math.cos(trunk?.direction ?? 0)).toBeLessThan(-0.99);
      expect(Math.abs(torques.hip ?? 0)).toBeLessThan(5);
      expect(torques.elbow).toBeLessThan(0);
    }
  });
});
