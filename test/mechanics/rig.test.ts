import { describe, expect, it } from 'vitest';
import { measuredStretch, rubberStretch } from '../../src/mechanics/bandTension.ts';
import { demandOf, otherForces } from '../../src/mechanics/demand.ts';
import { standardGravity } from '../../src/mechanics/forces.ts';
import type { Joint, Lift } from '../../src/mechanics/lift.ts';
import { attachedAt, potentialEnergy } from '../../src/mechanics/linkage.ts';
import { type Posture, Stance } from '../../src/mechanics/posture.ts';
import {
  addedMass,
  type Bands,
  type Chains,
  heightOfLoad,
  liftedLength,
  type Rig,
  towardPulley,
} from '../../src/mechanics/rig.ts';
import { rigAlong } from '../../src/mechanics/rigAt.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { chainKgPerMetre } from '../../src/tables/chainsAndBands.ts';
import { liftNamed, lifts, takesBands, takesChains } from '../../src/tables/lifts.ts';
import { man, torque } from './askLift.ts';
import { sensibleLoad } from './sensibleLoads.ts';

/** Heavy chains and strong bands of invented sizes, to try the whole catalogue with. */
const heavyChains: Chains = { kind: 'chains', kgPerMetre: 9, length: 1.1, cord: 0.15 };
const bandsAt = (anchor: number, newtons = 300): Bands => ({
  kind: 'bands',
  anchor,
  stretch: measuredStretch([
    { length: 0.4, tension: newtons / 3 },
    { length: 0.9, tension: newtons },
    { length: 1.4, tension: 1.5 * newtons },
  ]),
});
const rigs: readonly (readonly [string, Rig])[] = [
  ['chains', [heavyChains]],
  ['bands from the floor', [bandsAt(0)]],
  ['reverse bands', [bandsAt(2.5)]],
  ['chains and bands', [heavyChains, bandsAt(0)]],
];
const hung = lifts.filter(takesChains);
const cables = lifts.filter(({ resistance }) => resistance.kind === 'cable');

function held(stance: Stance, leading: number): Posture {
  const posture = stance.posture(leading);
  if ('impossible' in posture) throw new Error(`${stance.lift.name}: ${posture.impossible}`);
  return posture;
}

/** Load that leaves a bar on the body also under the reverse bands. */
const loadFor = (lift: Lift) => sensibleLoad(lift, 80) + 25;

describe('what a chain adds', () => {
  it('1.50 m of 10 mm DIN 766 chain off the floor weigh 3.30 kg a side, 6.60 kg on the bar (2.2 kg/m × 1.50 m; the fit 0.022·10² gives the same)', () => {
    const chains: Chains = {
      kind: 'chains',
      kgPerMetre: chainKgPerMetre(0.01),
      length: 2,
      cord: 0,
    };
    expect(chains.kgPerMetre * liftedLength(chains, 1.5)).toBeCloseTo(3.3, 12);
    expect(addedMass([chains], 1.5)).toBeCloseTo(6.6, 12);
    expect(0.022 * 10 ** 2 * 1.5).toBeCloseTo(3.3, 12);
  });

  it('takes the table’s row where it has one and 0.022·d² between (9 mm: 1.782 kg/m, by hand), within 3 % of the rows from 6 to 20 mm', () => {
    expect(chainKgPerMetre(0.013)).toBe(3.8);
    expect(chainKgPerMetre(0.009)).toBeCloseTo(1.782, 12);
    for (const mm of [6, 7, 8, 10, 11, 13, 14, 16, 18, 20])
      expect(Math.abs((0.022 * mm ** 2) / chainKgPerMetre(mm / 1000) - 1)).toBeLessThan(0.03);
  });

  it('adds nothing while it lies on the floor, then its weight a metre, then all of it', () => {
    // 2 chains × 9 kg/m; cord 0.15 m, length 1.1 m: by hand 0, 18·0.35 = 6.3, 18·1.1 = 19.8 kg.
    expect(addedMass([heavyChains], 0.1)).toBe(0);
    expect(addedMass([heavyChains], 0.5)).toBeCloseTo(6.3, 12);
    expect(addedMass([heavyChains], 1.9)).toBeCloseTo(19.8, 12);
  });
});

describe('what bands pull', () => {
  const stretch = measuredStretch([
    { length: 0.9, tension: 100 },
    { length: 1.4, tension: 260 },
  ]);

  it('runs straight between measured lengths, on by the last slope, and down to slack (320 N/m: slack at 0.9 − 100/320 = 0.5875 m)', () => {
    expect(stretch.tensionAt(1.15)).toBeCloseTo(180, 12);
    expect(stretch.tensionAt(1.5)).toBeCloseTo(292, 12);
    expect(stretch.tensionAt(0.5875)).toBeCloseTo(0, 12);
    expect(stretch.tensionAt(0.3)).toBe(0);
    expect(stretch.known).toEqual([0.9, 1.4]);
    expect(stretch.longest).toBeCloseTo(1.54, 12);
  });

  it('a 22 × 4.5 mm loop of G = 0.5 MPa pulls 99 N · (λ − 1/λ²): 60.39, 104.5, 173.25 and 231.66 N at 1.25, 1.5, 2 and 2.5 times its length (0.5 MPa · 2 · 22 · 4.5 mm² = 99 N, by hand)', () => {
    const loop = { width: 0.022, thickness: 0.0045, rest: 1, strands: 2, count: 1 };
    const { tensionAt } = rubberStretch(loop, 0.5e6);
    for (const [length, newtons] of [
      [1.25, 60.39],
      [1.5, 104.5],
      [2, 173.25],
      [2.5, 231.66],
    ] as const)
      expect(tensionAt(length)).toBeCloseTo(newtons, 9);
    expect(tensionAt(0.8)).toBe(0);
  });

  it('from the floor they make the bar heavier, from the rack lighter, by T/g (180 N / 9.80665 = 18.355 kg)', () => {
    const at = (anchor: number): Rig => [{ kind: 'bands', anchor, stretch }];
    expect(addedMass(at(0), 1.15)).toBeCloseTo(18.355, 3);
    expect(addedMass(at(2.3), 1.15)).toBeCloseTo(-18.355, 3);
  });
});

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
