import { toRadians } from '../../numeric/degrees.ts';
import { isAbove, type Reading } from '../reading.ts';
import type { Path, Radian } from '../scenario.ts';

/**
 * Reads the angles of the joints beside the one tested.
 *
 * @param path of `with`
 * @returns joint → angle, those that could be read; problems are collected, never thrown
 */
export function readNeighbours(
  reading: Reading,
  angles: Readonly<Record<string, string | undefined>> | undefined,
  tested: string | undefined,
  path: Path,
): Readonly<Record<string, Radian>> {
  const neighbours: Record<string, Radian> = {};
  for (const [joint, raw] of Object.entries(angles ?? {})) {
    const at = [...path, joint];
    if (joint === tested) {
      const message = `with gives the ${joint}, which is the joint tested; its angles stand under trials`;
      reading.refuse(at, { code: 'not-a-neighbour', message, key: true });
      continue;
    }
    const angle = reading.angle(at, raw, joint);
    if (angle === undefined) continue;
    if (isAbove(Math.abs(angle), toRadians(150))) {
      const message = `${joint} is ${raw}; no ${joint} goes that far`;
      reading.refuse(at, { code: 'out-of-bounds', message });
    } else neighbours[joint] = angle;
  }
  return neighbours;
}
