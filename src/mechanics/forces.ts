/** A point or vector in the sagittal plane: x forward, y up, metres or newtons. */
export interface Vector {
  readonly x: number;
  readonly y: number;
}

/** A force (newtons) acting at a point (metres). */
export interface PointForce {
  readonly at: Vector;
  readonly force: Vector;
}

/** Standard acceleration of free fall, m/s² (CGPM 1901, exact by definition). */
export const standardGravity = 9.80665;

/**
 * Weight of a mass as a point force.
 *
 * @param gravity m/s²; textbook problems round it, so it can be set
 */
export function weight(mass: number, at: Vector, gravity = standardGravity): PointForce {
  return { at, force: { x: 0, y: -mass * gravity } };
}

/**
 * Moment of forces about a point, newton metres, counterclockwise positive:
 * M = Σ (rₓ·F_y − r_y·Fₓ).
 */
export function momentAbout(point: Vector, forces: readonly PointForce[]): number {
  let moment = 0;
  for (const { at, force } of forces)
    moment += (at.x - point.x) * force.y - (at.y - point.y) * force.x;
  return moment;
}

/** Sum of forces, newtons. A joint carries its opposite. */
export function resultant(forces: readonly PointForce[]): Vector {
  return forces.reduce((sum, { force }) => ({ x: sum.x + force.x, y: sum.y + force.y }), {
    x: 0,
    y: 0,
  });
}
