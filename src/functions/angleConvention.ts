import type { Joint } from '../mechanics/lift.ts';

/** Joints whose angles a file with included angles writes from 180° down. */
const turned: ReadonlySet<Joint> = new Set<Joint>(['knee', 'hip', 'elbow']);

/**
 * Turns a joint angle between the way a file writes it and flexion, radians; the same both ways.
 *
 * @param convention how the file writes angles: a formula writes them as its file does
 */
export function turnAngle(convention: 'flexion' | 'included', joint: Joint, angle: number): number {
  return convention === 'included' && turned.has(joint) ? Math.PI - angle : angle;
}
