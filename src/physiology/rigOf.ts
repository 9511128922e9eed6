import { measuredStretch, rubberStretch, type TensionPoint } from '../mechanics/bandTension.ts';
import type { Bands, Chains, MachineTable, Rig } from '../mechanics/rig.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';
import { chainKgPerMetre, rubberModulus } from '../tables/chainsAndBands.ts';

/** A machine as measured: torques (N·m) by angle (rad) with one load (kg). */
export interface WrittenMachine {
  readonly load: number;
  readonly points: readonly { readonly angle: number; readonly torque: number }[];
}

/** A pair of chains as the coach describes it: metres and kilograms. */
export interface WrittenChains {
  readonly weight: { readonly link: number } | { readonly kgPerMetre: number };
  readonly length: number;
  readonly cord: number;
}

/** Bands as the coach describes them: measured together, or as rubber one by one. */
export interface WrittenBands {
  readonly pull:
    | { readonly points: readonly TensionPoint[] }
    | {
        readonly width: number;
        readonly thickness: number;
        readonly rest: number;
        readonly strands: number;
        readonly count: number;
      };
  readonly anchor: number;
}

/** Everything a file describes under machines, chains and bands, by name. */
export interface Equipment {
  readonly machines: Readonly<Record<string, WrittenMachine>>;
  readonly chains: Readonly<Record<string, WrittenChains>>;
  readonly bands: Readonly<Record<string, WrittenBands>>;
}

/** What an entry of a program is done with, by name. */
export interface RigNames {
  readonly machine?: string;
  readonly chains?: string;
  readonly bands?: string;
}

/**
 * Builds the rig that an entry names.
 *
 * @returns undefined for the plain lift; a name that is not described was refused when read
 */
export function rigOf(names: RigNames, { machines, chains, bands }: Equipment): Rig | undefined {
  const machine = names.machine === undefined ? undefined : machines[names.machine];
  const pair = names.chains === undefined ? undefined : chains[names.chains];
  const rubber = names.bands === undefined ? undefined : bands[names.bands];
  const rig = [
    ...(machine ? [machineOf(machine)] : []),
    ...(pair ? [chainsOf(pair)] : []),
    ...(rubber ? [bandsOf(rubber)] : []),
  ];
  return rig.length > 0 ? rig : undefined;
}

function machineOf(machine: WrittenMachine): MachineTable {
  const points = [...machine.points].sort((a, b) => a.angle - b.angle);
  return {
    kind: 'machine',
    load: machine.load,
    torqueAt: piecewiseLinear(
      points.map(({ angle }) => angle),
      points.map(({ torque }) => torque),
    ),
  };
}

function chainsOf({ weight, length, cord }: WrittenChains): Chains {
  const kgPerMetre = 'link' in weight ? chainKgPerMetre(weight.link) : weight.kgPerMetre;
  return { kind: 'chains', kgPerMetre, length, cord };
}

function bandsOf({ pull, anchor }: WrittenBands): Bands {
  // Shear modulus of rubber, which keeps its volume: a third of Young's. 1 MPa is 1e6 Pa.
  const stretch =
    'points' in pull
      ? measuredStretch(pull.points)
      : rubberStretch(pull, (rubberModulus.value / 3) * 1e6);
  return { kind: 'bands', anchor, stretch };
}
