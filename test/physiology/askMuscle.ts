import { muscleNamed, tendonArmAt } from '../../src/physiology/muscleGeometry.ts';
import type { MuscleJoint } from '../../src/tables/muscleRow.ts';

/** Whole degrees from one angle to another, both ends included. */
export function degreesOf(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

/** Tendon arm of a muscle at a joint, mm, positive for flexion. */
export function armMm(name: string, joint: MuscleJoint, deg: number): number {
  return 1000 * tendonArmAt(muscleNamed(name), joint, deg);
}
