import { atAngle, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Demand } from '../mechanics/demand.ts';
import { type ActionName, actionNames, actions, carriesItself } from '../tables/actions.ts';
import { bentKneePlantarflexion } from '../tables/strength.ts';

/** Largest torque by angle of each action, N·m, one side. */
export type Capacity = Readonly<Record<ActionName, OverAngles>>;

/** Share of its best that each action gives, by action. */
export type Efforts = Readonly<Partial<Record<ActionName, number>>>;

/**
 * Required over available torque of one posture, each joint taken alone. A joint asks its extensors
 * or its flexors, by the sign of its torque; what no action in the tables supplies (lifting the
 * foot, for one) is taken as no limit.
 */
export function jointEfforts(asked: Demand, capacity: Capacity): Efforts {
  const efforts: Partial<Record<ActionName, number>> = {};
  for (const name of actionNames) {
    const { joint, sense } = actions[name];
    const needed = sense * (asked.torques[joint] ?? 0);
    if (needed > 0 && !carriesItself(name, asked.angles[joint] ?? 0))
      efforts[name] = needed / available(name, asked.angles, capacity);
  }
  return efforts;
}

/** Largest torque of an action in a posture, N·m, one side. */
export function available(
  action: ActionName,
  angles: Demand['angles'],
  capacity: Capacity,
): number {
  const best = atAngle(capacity[action], angles[actions[action].joint] ?? 0);
  return best * kneeBendLeft(action, angles.knee);
}

/**
 * Share of an action's strength that a bent knee leaves: 1 for all but the calf, whose share falls
 * straight to the table's ratio at 90°.
 *
 * @param knee flexion, radians
 */
function kneeBendLeft(action: ActionName, knee = 0): number {
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
