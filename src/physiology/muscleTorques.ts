import { atAngle, gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Demand } from '../mechanics/demand.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import type { Muscle, MuscleJoint } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { available, type Capacity } from './jointEfforts.ts';
import { lengthTension } from './lengthTension.ts';
import {
  fibreStretch,
  jointsOf,
  livingArea,
  restingLength,
  shorteningShare,
  tendonArmAt,
} from './muscleGeometry.ts';

/** Joints from the foot upward: a muscle over two of them is sized at the first it works on. */
export const sharedJoints: readonly MuscleJoint[] = ['ankle', 'knee', 'hip', 'elbow'];

/** Torque of every muscle at full effort by joint, N·m, extension positive, in the tables' order. */
export type MuscleTorques = Readonly<Record<MuscleJoint, Float64Array>>;

/**
 * Torque of each muscle at full effort in one posture.
 *
 * The tables give forces up to a common size: area · length–tension · cos(pennation). From the foot
 * upward each action sizes those of its muscles that no lower joint has sized, so that all together
 * give the action's strength: the calf at the ankle, hamstrings and rectus femoris at the knee, the
 * rest of the hip's strength by the muscles over the hip alone. So a muscle pulls with one force at
 * both its ends. Where the sized ones would leave the others less than a fifth of the strength
 * (working value), they get that fifth.
 */
export function muscleTorques(asked: Demand, capacity: Capacity): MuscleTorques {
  const torques = unsized(asked.angles);
  const sizes = new Float64Array(muscles.length);
  for (const joint of sharedJoints)
    for (const sense of [1, -1] as const) {
      const action = actionOf(joint, sense);
      if (action)
        sizeAction(torques[joint], sense, available(action, asked.angles, capacity), sizes);
    }
  for (const joint of sharedJoints) {
    const row = torques[joint];
    for (let i = 0; i < row.length; i++) (row[i] as number) *= sizes[i] as number;
  }
  return torques;
}

const leastOwnShare = 0.2;

/** Sizes the muscles of one action that have no size yet. */
function sizeAction(row: Float64Array, sense: 1 | -1, best: number, sizes: Float64Array): void {
  let [sized, open] = [0, 0];
  for (let i = 0; i < row.length; i++) {
    const torque = sense * (row[i] as number);
    if (torque <= 0) continue;
    if (sizes[i] === 0) open += torque;
    else sized += torque * (sizes[i] as number);
  }
  const size = Math.max(best - sized, leastOwnShare * best) / open;
  for (let i = 0; i < row.length; i++)
    if (sizes[i] === 0 && sense * (row[i] as number) > 0) sizes[i] = size;
}

/** The action that turns a joint one way. */
export function actionOf(joint: MuscleJoint, sense: 1 | -1): ActionName | undefined {
  return (sense > 0 ? extending : flexing).get(joint);
}

const ofSense = (sense: 1 | -1): ReadonlyMap<string, ActionName> =>
  new Map(
    actionNames.flatMap((name) =>
      actions[name].sense === sense ? [[actions[name].joint, name] as const] : [],
    ),
  );
const [extending, flexing] = [ofSense(1), ofSense(-1)];

/** One muscle's part in the sum above, on the angle grid: sharing asks for it at every posture. */
interface Tabled {
  readonly strength: number;
  readonly resting: number;
  readonly joints: readonly {
    readonly joint: MuscleJoint;
    /** Where the joint is taken to be if a posture leaves it out, radians. */
    readonly usual: number;
    readonly arm: OverAngles;
    readonly stretch: OverAngles;
    /** Share of the resting length left at full effort; only at the joint it goes by. */
    readonly left?: OverAngles;
  }[];
}

function tabled(muscle: Muscle): Tabled {
  const { postureDeg, shortening } = muscle;
  return {
    strength: livingArea(muscle) * Math.cos(toRadians(muscle.pennation.value)),
    resting: restingLength(muscle),
    joints: jointsOf(muscle).map((joint) => ({
      joint,
      usual: toRadians(postureDeg[joint] ?? 0),
      arm: gridDeg.map((deg) => tendonArmAt(muscle, joint, deg)),
      stretch: gridDeg.map((deg) => fibreStretch(muscle, joint, deg)),
      ...(joint === shortening.joint
        ? { left: gridDeg.map((deg) => 1 - shorteningShare(muscle, deg)) }
        : {}),
    })),
  };
}

let tables: readonly Tabled[] | undefined;

/** Extension torques of all muscles before they are sized: −arm · force. */
function unsized(angles: Demand['angles']): MuscleTorques {
  tables ??= muscles.map(tabled);
  const torques: Record<MuscleJoint, Float64Array> = {
    ankle: new Float64Array(muscles.length),
    knee: new Float64Array(muscles.length),
    hip: new Float64Array(muscles.length),
    elbow: new Float64Array(muscles.length),
  };
  tables.forEach(({ strength, resting, joints }, i) => {
    let length = resting;
    let share = 1;
    for (const { joint, usual, stretch, left } of joints) {
      const angle = angles[joint] ?? usual;
      length += atAngle(stretch, angle);
      if (left) share = atAngle(left, angle);
    }
    const force = strength * lengthTension(length * share);
    for (const { joint, usual, arm } of joints)
      torques[joint][i] = -force * atAngle(arm, angles[joint] ?? usual);
  });
  return torques;
}
