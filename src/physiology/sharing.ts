import type { Demand } from '../mechanics/demand.ts';
import { largestMultiple } from '../numeric/boxLinearProgram.ts';
import { minimiseWeightedSquares } from '../numeric/boxQuadraticProgram.ts';
import { type ActionName, actions, carriesItself } from '../tables/actions.ts';
import type { MuscleJoint } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { type Capacity, type Efforts, jointEfforts } from './jointEfforts.ts';
import { livingArea } from './muscleGeometry.ts';
import { actionOf, muscleTorques, sharedJoints } from './muscleTorques.ts';

/** How the muscles of one side carry a posture together. */
export interface SharedLoad {
  /** Share of its best that each muscle gives, in the tables' order; as in `actions`. */
  readonly muscles: readonly number[];
  /**
   * What an action's muscles give together over what they could; above 1 by as much as the posture
   * is too hard. An action that the load does not ask may work too, against the one that it asks.
   */
  readonly actions: Efforts;
}

/** A joint whose torque muscles must meet: R·a = τ. */
interface Row {
  readonly joint: MuscleJoint;
  readonly torque: number;
  readonly entries: Float64Array;
}

/**
 * Joints that ask muscles of the tables, and what each muscle gives there. Left out: the shoulder,
 * torques that no muscle of the tables opposes (lifting the foot) and those a straight joint carries
 * itself.
 */
function rowsOf(asked: Demand, capacity: Capacity): Row[] {
  const torques = muscleTorques(asked, capacity);
  return sharedJoints.flatMap((joint) => {
    const torque = asked.torques[joint] ?? 0;
    const action = actionOf(joint, torque > 0 ? 1 : -1);
    if (torque === 0 || !action || carriesItself(action, asked.angles[joint] ?? 0)) return [];
    return [{ joint, torque, entries: torques[joint] }];
  });
}

/**
 * Least effort at which all joints together can carry a posture: 1/λ, λ the largest multiple of the
 * asked torques τ for which R·a = λ·τ has a solution with activations 0 ≤ a ≤ 1. Shoulders are taken
 * one by one.
 */
export function leastEffort(asked: Demand, capacity: Capacity): number {
  return leastOf(rowsOf(asked, capacity), unsharedEfforts(asked, capacity));
}

const leastOf = (rows: readonly Row[], alone: Efforts) =>
  Math.max(tiedEffort(rows), ...Object.values(alone));

/** Both answers to one posture, from one look at the muscles. */
export function sharedAndLeast(
  asked: Demand,
  capacity: Capacity,
  strength: number,
): { readonly shared: SharedLoad; readonly least: number } {
  const [rows, alone] = [rowsOf(asked, capacity), unsharedEfforts(asked, capacity)];
  return { shared: share(rows, alone, strength), least: leastOf(rows, alone) };
}

function tiedEffort(rows: readonly Row[]): number {
  const [first] = rows;
  if (!first) return 0;
  // With one joint every muscle that hinders stays still.
  if (rows.length === 1)
    return Math.abs(first.torque) / sum(first.entries, Math.sign(first.torque), () => 1);
  const useful = muscles.flatMap((_, i) =>
    rows.some(({ entries }) => entries[i] !== 0) ? [i] : [],
  );
  const { high } = largestMultiple(
    rows.map(({ entries }) => useful.map((i) => entries[i] as number)),
    rows.map(() => 0),
    rows.map(({ torque }) => torque),
    useful.map(() => 1),
  );
  return 1 / high;
}

/** Torque in one sense of muscles at given shares of their best, N·m. */
function sum(entries: Float64Array, sense: number, share: (i: number) => number): number {
  let total = 0;
  for (let i = 0; i < entries.length; i++)
    total += Math.max(sense * (entries[i] as number), 0) * share(i);
  return total;
}

function unsharedEfforts(asked: Demand, capacity: Capacity): Efforts {
  const alone = Object.entries(jointEfforts(asked, capacity)) as [ActionName, number][];
  return Object.fromEntries(
    alone.filter(([name]) => !sharedJoints.some((joint) => joint === actions[name].joint)),
  );
}

/**
 * Shares the torques of a posture between muscles that may cross two joints: activations a minimise
 * Σ area·a² subject to R·a = τ and 0 ≤ a ≤ 1; where τ is too much, to the part that can be carried.
 *
 * @param strength strength shown in the lift over that of the curves; divides every torque
 */
export function sharedLoad(asked: Demand, capacity: Capacity, strength = 1): SharedLoad {
  return share(rowsOf(asked, capacity), unsharedEfforts(asked, capacity), strength);
}

function share(rows: readonly Row[], alone: Efforts, strength: number): SharedLoad {
  const matrix = rows.map(({ entries }) => [...entries]);
  const torques = rows.map(({ torque }) => torque / strength);
  const carry = (part: number) =>
    minimiseWeightedSquares(
      matrix,
      torques.map((torque) => part * torque),
      areas,
      whole,
    );
  let [part, shared] = [1, carry(1)];
  if (!shared.feasible) {
    part = ((1 - 1e-9) * strength) / tiedEffort(rows);
    shared = carry(part);
  }
  const efforts: Partial<Record<ActionName, number>> = {};
  for (const [name, effort] of Object.entries(alone) as [ActionName, number][])
    efforts[name] = effort / strength;
  for (const { joint, entries } of rows)
    for (const sense of [1, -1] as const) {
      const action = actionOf(joint, sense);
      const given = sum(entries, sense, (i) => shared.x[i] ?? 0);
      if (action && given > 0) efforts[action] = given / sum(entries, sense, () => 1) / part;
    }
  return { muscles: part === 1 ? shared.x : shared.x.map((a) => a / part), actions: efforts };
}

const areas = muscles.map(livingArea);
const whole = muscles.map(() => 1);
