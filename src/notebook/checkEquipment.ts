import { lifts, takesBands, takesChains } from '../tables/lifts.ts';
import { didYouMean } from './didYouMean.ts';
import type { Reading } from './reading.ts';
import type { Path } from './scenario.ts';

/** What an entry of work may be done with besides its load. */
export type EquipmentKind = 'machine' | 'chains' | 'bands';

/** Names that the file describes, by kind. */
export type EquipmentNames = Readonly<Record<EquipmentKind, readonly string[]>>;

const kinds = {
  machine: {
    group: 'machines',
    what: 'machine',
    isTaken: ({ resistance }: (typeof lifts)[number]) => resistance.kind === 'machine torque',
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
  work: { readonly lift?: string | undefined } & {
    readonly [Kind in EquipmentKind]?: string | undefined;
  },
  path: Path,
  names: EquipmentNames,
): void {
  const lift = lifts.find(({ name }) => name === work.lift);
  for (const kind of ['machine', 'chains', 'bands'] as const) {
    const written = work[kind];
    if (written === undefined) continue;
    const at = [...path, kind];
    if (lift && !kinds[kind].isTaken(lift)) refuseLift(reading, lift.name, kind, at);
    if (!names[kind].includes(written)) refuseName(reading, written, kind, names[kind], at);
  }
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
