import { measuredStretch } from '../../src/mechanics/bandTension.ts';
import type { Lift } from '../../src/mechanics/lift.ts';
import type { Posture, Stance } from '../../src/mechanics/posture.ts';
import type { Bands, Chains, Rig } from '../../src/mechanics/rig.ts';
import { lifts, takesChains } from '../../src/tables/lifts.ts';
import { sensibleLoad } from './sensibleLoads.ts';

/** Heavy chains and strong bands of invented sizes, to try the whole catalogue with. */
export const heavyChains: Chains = { kind: 'chains', kgPerMetre: 9, length: 1.1, cord: 0.15 };
export const bandsAt = (anchor: number, newtons = 300): Bands => ({
  kind: 'bands',
  anchor,
  stretch: measuredStretch([
    { length: 0.4, tension: newtons / 3 },
    { length: 0.9, tension: newtons },
    { length: 1.4, tension: 1.5 * newtons },
  ]),
});
export const rigs: readonly (readonly [string, Rig])[] = [
  ['chains', [heavyChains]],
  ['bands from the floor', [bandsAt(0)]],
  ['reverse bands', [bandsAt(2.5)]],
  ['chains and bands', [heavyChains, bandsAt(0)]],
];
export const hung = lifts.filter(takesChains);
export const cables = lifts.filter(({ resistance }) => resistance.kind === 'cable');

export function held(stance: Stance, leading: number): Posture {
  const posture = stance.posture(leading);
  if ('impossible' in posture) throw new Error(`${stance.lift.name}: ${posture.impossible}`);
  return posture;
}

/** Load that leaves a bar on the body also under the reverse bands. */
export const loadFor = (lift: Lift) => sensibleLoad(lift, 80) + 25;
