import type { Landing } from '../inference/ranking.ts';
import { degrees, rangeDegrees } from './words.ts';

/** How the strongest angle is spoken of, and how a curve that is level instead of peaked. */

type Top = readonly [peak: number, level: Landing['levelBefore']];

/** "strongest at 76°", or where a curve has no peak to speak of what it is instead. */
export function strongest([peak, level]: Top): string {
  return level
    ? `about equally strong from ${degrees(level.from)} to ${degrees(level.to)}`
    : `strongest at ${degrees(peak)}`;
}

/** The same for a cell of a table: "76°" or "30–90°". */
export function strongestCell([peak, level]: Top): string {
  return level ? rangeDegrees(level.from, level.to) : degrees(peak);
}
