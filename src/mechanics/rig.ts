import { standardGravity, type Vector } from './forces.ts';
import type { Lift } from './lift.ts';
import { attachedAt, type Placement } from './linkage.ts';
import type { Body } from './posture.ts';

/** What a lift is done with besides its load. */
export type Device = MachineTable | Chains | Bands;

/** Devices used together: chains and bands add to a bar, a measured machine replaces its arm. */
export type Rig = readonly Device[];

/** No device at all: the plain lift. */
export const noRig: Rig = [];

/** A machine's measured resistance: torque (N·m, both sides) by leading-joint angle at one load. */
export interface MachineTable {
  readonly kind: 'machine';
  readonly load: number;
  readonly torqueAt: (angle: number) => number;
}

/** Two equal chains that hang from the load to the floor, one at each end of the bar. */
export interface Chains {
  readonly kind: 'chains';
  readonly kgPerMetre: number;
  /** Metres of each chain, and of the light cord from which each hangs. */
  readonly length: number;
  readonly cord: number;
}

/** Bands between the load and a place straight above or below it, or a cable's pulley. */
export interface Bands {
  readonly kind: 'bands';
  /** Height of the fixed end above the floor, metres; above the bar the bands help. */
  readonly anchor: number;
  /** Tension of all bands together, newtons, by their length, metres. */
  readonly stretch: Stretch;
}

/** Tension by length, and the lengths between which it is known. */
export interface Stretch {
  readonly tensionAt: (length: number) => number;
  /** Shortest and longest length of a band under tension that is known, metres. */
  readonly known: readonly [number, number];
  /** Length beyond which nothing is claimed. */
  readonly longest: number;
}

/**
 * Metres of one chain that the load carries at a height: lifted(y) = clamp(y − cord, 0, length).
 *
 * @param height of the load above the floor, metres
 */
export function liftedLength({ cord, length }: Chains, height: number): number {
  return Math.min(Math.max(height - cord, 0), length);
}

/**
 * Mass (kg) by which a rig makes a hung load heavier at a height above the floor:
 * Σ 2·ρ·lifted(y) ± T(|y − anchor|)/g, minus where the bands are fixed above it.
 */
export function addedMass(rig: Rig, height: number): number {
  let added = 0;
  for (const device of rig) {
    if (device.kind === 'chains') added += 2 * device.kgPerMetre * liftedLength(device, height);
    else if (device.kind === 'bands') {
      const stretched = height - device.anchor;
      const tension = device.stretch.tensionAt(Math.abs(stretched));
      added += (Math.sign(stretched) * tension) / standardGravity;
    }
  }
  return added;
}

/** The same on a cable, where bands run beside it from the hand to the pulley, `length` metres off. */
export function addedPull(rig: Rig, length: number): number {
  return rig.reduce(
    (sum, device) =>
      device.kind === 'bands' ? sum + device.stretch.tensionAt(length) / standardGravity : sum,
    0,
  );
}

/** The most that a rig can add, kg: chains all in the air, bands at the longest they are known. */
export function mostAdded(rig: Rig): number {
  return rig.reduce((sum, device) => {
    if (device.kind === 'chains') return sum + 2 * device.kgPerMetre * device.length;
    if (device.kind === 'bands')
      return sum + device.stretch.tensionAt(device.stretch.known[1]) / standardGravity;
    return sum;
  }, 0);
}

/**
 * Height of a hung load above the floor in a placed chain, metres.
 *
 * @throws if the lift carries no hung load or does not say where the floor is
 */
export function heightOfLoad(lift: Lift, body: Body, placement: Placement): number {
  const { resistance } = lift;
  const point = resistance.kind === 'mass' ? attachedAt(placement, resistance) : undefined;
  if (resistance.kind !== 'mass' || !point)
    throw new Error(`${lift.name} has no load to hang from`);
  return originAboveFloor(lift, body) + point.at.y - (resistance.below ?? 0);
}

/** Height of the chain's origin above the floor: the soles of flat feet, else its first joint. */
function originAboveFloor({ aboveFloor, support, name }: Lift, body: Body): number {
  if (!aboveFloor && support === 'feet') return 0;
  if (!aboveFloor) throw new Error(`${name} does not say where the floor is`);
  if (aboveFloor.metres !== 'shoulder of someone standing') return aboveFloor.metres;
  const { shank, thigh, 'trunk, head and arms': trunk } = body.segments;
  return body.ankleHeight + shank.length + thigh.length + trunk.length;
}

/** From the hand to the pulley of a cable, metres; undefined for other lifts. */
export function towardPulley({ resistance }: Lift, placement: Placement): Vector | undefined {
  if (resistance.kind !== 'cable') return undefined;
  const point = attachedAt(placement, resistance);
  const base = placement.links[0]?.start;
  if (!point || !base) return undefined;
  return { x: base.x + resistance.x - point.at.x, y: base.y + resistance.y - point.at.y };
}
