import { atAngle, gridAngles, type OverAngles } from '../mechanics/angleGrid.ts';
import { type Demand, demandOf } from '../mechanics/demand.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { Body, Impossible } from '../mechanics/posture.ts';
import { noRig, type Rig } from '../mechanics/rig.ts';
import { risingRoot } from '../numeric/rootFinding.ts';
import { type ActionName, actionNames, actions, carriesItself } from '../tables/actions.ts';
import { bentKneePlantarflexion } from '../tables/strength.ts';

/** Largest torque by angle of each action, N·m, one side. */
export type Capacity = Readonly<Record<ActionName, OverAngles>>;

/** A lift over a range of its leading joint (radians), with its machine, chains or bands if any. */
export interface Range {
  readonly lift: Lift;
  readonly from: number;
  readonly to: number;
  readonly rig?: Rig;
}

/** The posture of a range that asks most of the muscles, and how much of their best it asks. */
export interface StickingPoint {
  /** Leading-joint angle, radians. */
  readonly angle: number;
  readonly action: ActionName;
  /** Required over available torque; infinite where the posture cannot be balanced. */
  readonly effort: number;
}

/** Angles of a range to look at: its ends and the grid points between. */
export function rangeAngles(from: number, to: number): number[] {
  return [from, ...gridAngles.filter((angle) => angle > from && angle < to), to];
}

/** What a lift asks at one angle of its range. */
export interface AskedAt {
  readonly leading: number;
  readonly asked: Demand | Impossible;
}

type ByLoad = Map<string, readonly AskedAt[]>;
const remembered = new WeakMap<Body, WeakMap<Lift, WeakMap<Rig, ByLoad>>>();

/** What is kept of a body, a lift and a rig, each known by its identity. */
function keptOf(body: Body, lift: Lift, rig: Rig): ByLoad {
  const byLift = remembered.get(body) ?? new WeakMap<Lift, WeakMap<Rig, ByLoad>>();
  remembered.set(body, byLift);
  const byRig = byLift.get(lift) ?? new WeakMap<Rig, ByLoad>();
  byLift.set(lift, byRig);
  const byLoad = byRig.get(rig) ?? new Map<string, readonly AskedAt[]>();
  byRig.set(rig, byLoad);
  return byLoad;
}

/**
 * What a range asks with a load, angle by angle.
 *
 * Kept for each body, lift and rig: programs share lifts and loads, and strength does not enter.
 *
 * @param load kg
 */
export function demandsOver(range: Range, body: Body, load: number): readonly AskedAt[] {
  const { lift, from, to, rig = noRig } = range;
  const compute = () => {
    const demandAt = demandOf(lift, body, load, rig);
    return rangeAngles(from, to).map((leading) => ({ leading, asked: demandAt(leading) }));
  };
  const byLoad = keptOf(body, lift, rig);
  const key = `${from} ${to} ${load}`;
  const known = byLoad.get(key) ?? compute();
  byLoad.set(key, known);
  return known;
}

/** Required over available torque of the actions that a posture asks for, by action. */
export type Efforts = Readonly<Partial<Record<ActionName, number>>>;

/**
 * Efforts of one posture. A joint asks its extensors or its flexors, by the sign of its torque; what
 * no action in the tables supplies (lifting the foot, for one) is taken as no limit.
 *
 * @param strength strength shown in the lift over that of the curves; divides every effort
 */
export function effortsOf(asked: Demand, capacity: Capacity, strength = 1): Efforts {
  const efforts: Partial<Record<ActionName, number>> = {};
  for (const name of actionNames) {
    const { joint, sense } = actions[name];
    const needed = sense * (asked.torques[joint] ?? 0);
    const angle = asked.angles[joint] ?? 0;
    if (needed > 0 && !carriesItself(name, angle))
      efforts[name] =
        needed / atAngle(capacity[name], angle) / strength / kneeBendLeft(name, asked.angles.knee);
  }
  return efforts;
}

/**
 * Share of an action's strength that a bent knee leaves: 1 for all but the calf, whose share falls
 * straight to the table's ratio at 90°.
 *
 * @param knee flexion, radians
 */
export function kneeBendLeft(action: ActionName, knee = 0): number {
  if (action !== 'ankle plantarflexion') return 1;
  const bend = Math.min(Math.max(knee / (Math.PI / 2), 0), 1);
  return 1 - (1 - bentKneePlantarflexion.value) * bend;
}

/** The action of a posture that is asked most, and how much. */
export function hardest(
  efforts: Efforts,
): { readonly action: ActionName; readonly effort: number } | undefined {
  let [best, most]: [ActionName | undefined, number] = [undefined, 0];
  for (const action of actionNames) {
    const effort = efforts[action];
    if (effort !== undefined && effort > most) [best, most] = [action, effort];
  }
  return best && { action: best, effort: most };
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
  const action = leadingAction(range.lift);
  let worst: StickingPoint = { angle: range.from, action, effort: 0 };
  for (const { leading: angle, asked } of demandsOver(range, body, load)) {
    if ('impossible' in asked) return { angle, action, effort: Number.POSITIVE_INFINITY };
    const most = hardest(effortsOf(asked, capacity));
    if (most && most.effort > worst.effort) worst = { angle, ...most };
  }
  return worst;
}

/** First action of the leading joint: it names a posture that no muscle limits. */
function leadingAction(lift: Lift): ActionName {
  return actionNames.find((name) => actions[name].joint === lift.leading) ?? 'knee extension';
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
  // A light bar, or one that bands nearly carry, may leave a deep posture unbalanced that a heavier
  // one allows.
  const lightest = [0, 20, 40, 80, 160].find((load) => excess(load) < 0);
  return lightest === undefined ? 0 : risingRoot(excess, lightest, 1500, 1e-6);
}
