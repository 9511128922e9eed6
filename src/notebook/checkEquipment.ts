import type { Lift } from '../mechanics/lift.ts';
import { takesBands, takesChains } from '../tables/lifts.ts';
import { didYouMean } from './didYouMean.ts';
import type { Reading } from './reading.ts';
import type { Path } from './scenario.ts';

/** What an entry of work may be done with besides its load. */
export type EquipmentKind = 'machine' | 'chains' | 'bands';

/** Names that the file describes, by kind; of machines also the joint that each turns. */
export interface EquipmentNames {
  readonly machine: ReadonlyMap<string, string | undefined>;
  readonly chains: readonly string[];
  readonly bands: readonly string[];
}

const kinds = {
  machine: {
    group: 'machines',
    what: 'machine',
    isTaken: ({ resistance }: Lift) => resistance.kind === 'machine torque',
  },
  chains: { group: 'chains', what: 'set of chains', isTaken: takesChains },
  bands: { group: 'bands', what: 'set of bands', isTaken: takesBands },
} as const;

/**
 * Refuses a machine, chains or bands that a lift cannot take or that the file does not describe.
 *
 * @param path of the work; problems are collected, never thrown
 */
export function checkEquipment(
  reading: Reading,
  work: { readonly [Kind in EquipmentKind]?: string | undefined },
  lift: Lift | undefined,
  path: Path,
  names: EquipmentNames,
): void {
  for (const kind of ['machine', 'chains', 'bands'] as const) {
    const written = work[kind];
    if (written === undefined) continue;
    const at = [...path, kind];
    if (lift && !kinds[kind].isTaken(lift)) refuseLift(reading, lift.name, kind, at);
    const known = [...(kind === 'machine' ? names.machine.keys() : names[kind])];
    if (!known.includes(written)) refuseName(reading, written, kind, known, at);
  }
  if (lift) checkMachineJoint(reading, work.machine, lift, path, names.machine);
}

/** Refuses a machine that was measured at another joint than the lift's. */
function checkMachineJoint(
  reading: Reading,
  machine: string | undefined,
  lift: Lift,
  path: Path,
  joints: EquipmentNames['machine'],
): void {
  const joint = machine === undefined ? undefined : joints.get(machine);
  if (joint === undefined || joint === lift.leading) return;
  if (lift.resistance.kind !== 'machine torque') return;
  const message = `"${machine}" turns the ${joint}, but the ${lift.name} is led by the ${lift.leading}`;
  const hint = `write joint: ${lift.leading} under the machine if it was measured there`;
  reading.refuse([...path, 'machine'], { code: 'wrong-machine', message, hint });
}

function refuseLift(reading: Reading, lift: string, kind: EquipmentKind, path: Path): void {
  if (kind === 'machine') {
    const message = `${lift} uses no machine`;
    reading.refuse(path, { code: 'no-machine-here', message, hint: 'delete machine', key: true });
    return;
  }
  const cables = kind === 'bands' ? ', and cable lifts' : '';
  const message = `${lift} takes no ${kind}: it has no free weight at a known height above the floor; squats, deadlifts, hip thrusts, bench and overhead presses, standing curls and raises can take them${cables}`;
  reading.refuse(path, { code: `no-${kind}-here`, message, hint: `delete ${kind}`, key: true });
}

function refuseName(
  reading: Reading,
  written: string,
  kind: EquipmentKind,
  known: readonly string[],
  path: Path,
): void {
  const { group, what } = kinds[kind];
  const meant = didYouMean(written, known);
  const list = known.length > 0 ? `known: ${known.join(', ')}` : `describe it under ${group}:`;
  const hint = meant === undefined ? list : `did you mean "${meant}"?`;
  const message = `there is no ${what} "${written}" in this file`;
  reading.refuse(path, { code: `unknown-${kind}`, message, hint });
}
