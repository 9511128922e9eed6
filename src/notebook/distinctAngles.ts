import { isAbove, type Reading } from './reading.ts';
import type { Path, Radian } from './scenario.ts';

interface AtAngle {
  readonly angle: Radian;
  readonly path: Path;
}

/**
 * Sorts measured points by angle and refuses an angle that is given twice ("40 deg", "40.0 deg").
 *
 * @param path the group that holds the points, for the message
 * @returns the points by rising anatomical angle; problems are collected, never thrown
 */
export function distinctAngles<Point extends AtAngle>(
  reading: Reading,
  points: readonly Point[],
  path: Path,
): readonly Point[] {
  // Sorting keeps the file's order for equal angles, so the later of two is the one refused.
  const sorted = [...points].sort((a, b) => a.angle - b.angle);
  for (const [index, point] of sorted.entries()) {
    const before = sorted[index - 1];
    if (!before || isAbove(point.angle - before.angle, 0)) continue;
    const names = [before, point].map((one) => `"${one.path.at(-1)}"`).join(' and ');
    const message = `${path.at(-1)} gives ${reading.angleText(point.angle)} twice: ${names}`;
    const hint = 'put both under one angle';
    reading.refuse(point.path, { code: 'duplicate-angle', message, hint, key: true });
  }
  return sorted;
}
