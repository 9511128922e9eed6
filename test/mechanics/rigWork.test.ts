import { describe, expect, it } from 'vitest';
import { demandOf, otherForces } from '../../src/mechanics/demand.ts';
import { standardGravity } from '../../src/mechanics/forces.ts';
import type { Joint } from '../../src/mechanics/lift.ts';
import { attachedAt, potentialEnergy } from '../../src/mechanics/linkage.ts';
import { type Posture, Stance } from '../../src/mechanics/posture.ts';
import {
  type Bands,
  type Chains,
  heightOfLoad,
  type Rig,
  towardPulley,
} from '../../src/mechanics/rig.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { man } from './askLift.ts';
import { held, loadFor, rigs } from './tryRigs.ts';

/** Energy stored in a rig, joules, by hand: chains ½ρg·lifted² and ρg·length for each metre beyond. */
function chainEnergy({ kgPerMetre, length, cord }: Chains, height: number): number {
  const free = height - cord;
  const lifted = Math.min(Math.max(free, 0), length);
  const clear = Math.max(free - length, 0);
  return 2 * kgPerMetre * standardGravity * (lifted ** 2 / 2 + length * clear);
}

/** ∫ T dl from the slack band to a length, by 4,000 trapezoids. */
function bandEnergy({ stretch }: Bands, length: number): number {
  const steps = 4000;
  const at = (step: number) => stretch.tensionAt((length * step) / steps);
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += (at(step) + at(step + 1)) / 2;
  return (sum * length) / steps;
}

function rigEnergy(rig: Rig, distance: (bands: Bands) => number, height: number): number {
  return rig.reduce((sum, device) => {
    if (device.kind === 'chains') return sum + chainEnergy(device, height);
    return device.kind === 'bands' ? sum + bandEnergy(device, distance(device)) : sum;
  }, 0);
}

describe('work identity: work of the joints is the change of energy of body, load, chains and bands', () => {
  const names = [
    'back squat',
    'deadlift',
    'hip thrust',
    'bench press',
    'overhead press',
    'standing calf raise',
    'belt squat',
    'split squat',
    'chin-up',
    'cable curl',
    'triceps pushdown',
  ];
  it.each(names.flatMap((name) => rigs.map(([what, rig]) => [name, what, rig] as const)))(
    '%s with %s',
    (name, _, rig) => {
      const lift = liftNamed(name);
      const isCable = lift.resistance.kind === 'cable';
      const load = isCable ? 20 : loadFor(lift);
      const share = lift.workingShare ?? 1;
      const stance = new Stance(lift, man, load, rig);
      const [from, to] = lift.rangeDeg.map(toRadians) as [number, number];
      const demandAt = demandOf(lift, man, load, rig);
      const steps = 400;
      const at = (step: number) => from + ((to - from) * step) / steps;
      let [ofJoints, ofContact, moved] = [0, 0, 0];
      for (let step = 0; step < steps; step++) {
        const [a, b] = [held(stance, at(step)), held(stance, at(step + 1))];
        const asked = demandAt(at(step + 0.5));
        if ('impossible' in asked) throw new Error(asked.impossible);
        for (const joint of Object.keys(asked.torques) as Joint[]) {
          const turned = (b.angles[joint] ?? 0) - (a.angles[joint] ?? 0);
          const work = -lift.sides * (asked.torques[joint] ?? 0) * turned;
          ofJoints += work;
          moved += Math.abs(work);
        }
        if (lift.contact) {
          const [push] = otherForces(stance, held(stance, at(step + 0.5)), load, rig);
          const [start, end] = [a, b].map(({ placement }) =>
            lift.contact ? attachedAt(placement, lift.contact) : undefined,
          );
          const force = push?.force.force;
          if (!force || !start || !end) throw new Error('no contact');
          ofContact += force.x * (end.at.x - start.at.x) + force.y * (end.at.y - start.at.y);
        }
      }
      const energy = ({ placement, loads }: Posture) => {
        const toward = towardPulley(lift, placement);
        const length = toward && Math.hypot(toward.x, toward.y);
        const height = isCable ? 0 : heightOfLoad(lift, man, placement);
        // What the rig adds to the load is told apart by its own energy.
        const plain = loads.map((one, i) => (i === 0 ? { ...one, mass: load * share } : one));
        return (
          potentialEnergy(placement, plain) +
          (length === undefined ? 0 : load * standardGravity * length) +
          share *
            rigEnergy(
              isCable ? rig.filter(({ kind }) => kind === 'bands') : rig,
              ({ anchor }) => length ?? Math.abs(height - anchor),
              height,
            )
        );
      };
      const change = energy(held(stance, to)) - energy(held(stance, from));
      expect(Math.abs(ofJoints - (change - ofContact)) / moved).toBeLessThan(2e-4);
    },
  );
});
