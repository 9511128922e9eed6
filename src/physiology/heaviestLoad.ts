import { atAngle, gridAngles, type OverAngles } from '../mechanics/angleGrid.ts';
import { type Demand, demandOf, type ResistanceTable } from '../mechanics/demand.ts';
import type { Joint, Lift } from '../mechanics/lift.ts';
import type { Body, Impossible } from '../mechanics/posture.ts';
import { risingRoot } from '../numeric/rootFinding.ts';

/** Largest extension torque by angle of each joint, N·m, one side. */
export type Capacity = Readonly<Record<Joint, OverAngles>>;

/** A lift over a range of its leading joint (radians), with a machine's table if it has one. */
export interface Range {
  readonly lift: Lift;
  readonly from: number;
  readonly to: number;
  readonly machine?: ResistanceTable;
}

/** The posture of a range that asks most of the muscles, and how much of their best it asks. */
export interface StickingPoint {
  /** Leading-joint angle, radians. */
  readonly angle: number;
  readonly joint: Joint;
  /** Required over available torque; infinite where the posture cannot be balanced. */
  readonly effort: number;
}

const joints: readonly Joint[] = ['knee', 'hip', 'ankle'];

/** Angles of a range to look at: its ends and the grid points between. */
function rangeAngles(from: number, to: number): number[] {
  return [from, ...gridAngles.filter((angle) => angle > from && angle < to), to];
}

/** What a lift asks at one angle of its range. */
export interface AskedAt {
  readonly leading: number;
  readonly asked: Demand | Impossible;
}

const remembered = new WeakMap<Body, WeakMap<Lift, Map<string, readonly AskedAt[]>>>();

/**
 * What a range asks with a load, angle by angle.
 *
 * Kept for each body and lift: programs share lifts and loads, and strength does not enter.
 *
 * @param load kg
 */
export function demandsOver(range: Range, body: Body, load: number): readonly AskedAt[] {
  const { lift, from, to, machine } = range;
  const compute = () => {
    const demandAt = demandOf(lift, body, load, machine);
    return rangeAngles(from, to).map((leading) => ({ leading, asked: demandAt(leading) }));
  };
  if (machine) return compute();
  const byLift = remembered.get(body) ?? new WeakMap<Lift, Map<string, readonly AskedAt[]>>();
  remembered.set(body, byLift);
  const byLoad = byLift.get(lift) ?? new Map<string, readonly AskedAt[]>();
  byLift.set(lift, byLoad);
  const key = `${from} ${to} ${load}`;
  const known = byLoad.get(key) ?? compute();
  byLoad.set(key, known);
  return known;
}

/** Required over available torque of one joint in one posture; 0 when flexors must work instead. */
export function jointEffort(asked: Demand, capacity: Capacity, joint: Joint): number {
  const available = atAngle(capacity[joint], asked.angles[joint]);
  return Math.max(asked.torques[joint], 0) / available;
}

/**
 * Where in a range a load is hardest to hold.
 *
 * @param load kg
 */
export function stickingPoint(
  range: Range,
  body: Body,
  capacity: Capacity,
  load: number,
): StickingPoint {
  let worst: StickingPoint = { angle: range.from, joint: range.lift.leading, effort: 0 };
  for (const { leading: angle, asked } of demandsOver(range, body, load)) {
    if ('impossible' in asked)
      return { angle, joint: range.lift.leading, effort: Number.POSITIVE_INFINITY };
    for (const joint of joints) {
      const effort = jointEffort(asked, capacity, joint);
      if (effort > worst.effort) worst = { angle, joint, effort };
    }
  }
  return worst;
}

/**
 * Load at which the sticking point of a range asks a given effort, kg; by default all of it, which
 * is the heaviest load of the range before any calibration.
 *
 * Quasi-static: no bounce, no momentum, no limit of the back.
 *
 * @returns 0 when even the empty body asks more
 */
export function heaviestLoad(range: Range, body: Body, capacity: Capacity, atEffort = 1): number {
  const excess = (load: number) => stickingPoint(range, body, capacity, load).effort - atEffort;
  // A light bar may leave a deep posture unbalanced that a heavier one allows.
  const lightest = [0, 20, 40, 80].find((load) => excess(load) < 0);
  return lightest === undefined ? 0 : risingRoot(excess, lightest, 1500, 1e-6);
}
