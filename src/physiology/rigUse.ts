import type { Body } from '../mechanics/posture.ts';
import type { Bands } from '../mechanics/rig.ts';
import { rigAlong } from '../mechanics/rigAt.ts';
import { lookedAt, type Range, rangeAngles } from './heaviestLoad.ts';

/** A posture of a range and what the rig adds to the load there. */
export interface RigSample {
  /** Leading-joint angle, radians. */
  readonly angle: number;
  /** kg; below 0 where bands help. */
  readonly added: number;
  /** Length of the bands, metres; missing without bands. */
  readonly bandLength?: number;
}

/** What chains and bands do along a range with the first week's load. */
export interface RigUse {
  readonly load: number;
  /** Postures from the first to the last angle that can be balanced. */
  readonly samples: readonly RigSample[];
  /** First angle that cannot, radians, if there is one. */
  readonly unbalancedAt?: number;
  /** Where they add least under the heaviest single, which any posture of the range can hold. */
  readonly least?: RigSample;
  readonly bands?: Bands;
}

/**
 * Follows chains and bands along a range.
 *
 * @param loads kg, of the first week and of the heaviest single
 * @returns undefined where neither is used
 */
export function rigUse(
  range: Range,
  body: Body,
  loads: { readonly first: number; readonly heaviest: number },
): RigUse | undefined {
  const { lift, from, to, rig = [] } = range;
  if (!rig.some(({ kind }) => kind !== 'machine')) return undefined;
  const angles = rangeAngles(from, to, lookedAt);
  const samplesWith = (load: number) => {
    const at = rigAlong(lift, body, load, rig);
    return angles.flatMap((angle): RigSample[] => {
      const found = at(angle);
      return 'impossible' in found ? [] : [{ angle, ...found }];
    });
  };
  const samples = samplesWith(loads.first);
  const unbalancedAt = angles.find((one) => !samples.some(({ angle }) => angle === one));
  const [least] = samplesWith(loads.heaviest).sort((a, b) => a.added - b.added);
  const bands = rig.find((device) => device.kind === 'bands');
  return {
    load: loads.first,
    samples,
    ...(unbalancedAt !== undefined && { unbalancedAt }),
    ...(least && { least }),
    ...(bands && { bands }),
  };
}
