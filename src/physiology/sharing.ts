import { atAngle } from '../mechanics/angleGrid.ts';
import type { Demand } from '../mechanics/demand.ts';
import { largestMultiple } from '../numeric/boxLinearProgram.ts';
import { minimiseWeightedSquares } from '../numeric/boxQuadraticProgram.ts';
import { type ActionName, actionNames, actions, carriesItself } from '../tables/actions.ts';
import type { MuscleJoint, MusclePosture } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { type Capacity, kneeBendLeft } from './heaviestLoad.ts';
import { lengthTension } from './lengthTension.ts';
import { jointsOf, livingArea, operatingLength, tendonArmAt } from './muscleGeometry.ts';

/** How the muscles of one side carry a posture together. */
export interface SharedLoad {
  /** Multiple of the asked torques that all joints together can carry; 1 is the heaviest. */
  readonly multiple: number;
  /** Share of its best that each muscle gives, largest first; at `multiple` if that is below 1. */
  readonly efforts: readonly { readonly muscle: string; readonly effort: number }[];
}

const radians = Math.PI / 180;
const sharedJoints: readonly MuscleJoint[] = ['ankle', 'knee', 'hip', 'elbow'];

/**
 * Shares the torques of a posture between muscles that may cross two joints.
 *
 * Activations a minimise Σ area·a² subject to R·a = τ and 0 ≤ a ≤ 1; the largest multiple λ is the
 * most for which R·a = λ·τ has a solution. R's entry for a muscle at a joint is the capacity of the
 * action it serves there, times its part of area · length–tension · cos(pennation) · lever among
 * that action's muscles: so all agonists together give the tested capacity, and a muscle that helps
 * at one joint hinders at another. Left out: shoulder, torques no muscle of the tables opposes
 * (lifting the foot) and those a straight joint carries itself.
 *
 * @param strength strength shown in the lift over that of the curves; scales R
 * @returns undefined where the posture asks nothing of these muscles
 */
export function sharedLoad(
  asked: Demand,
  capacity: Capacity,
  strength: number,
): SharedLoad | undefined {
  const posture = postureOf(asked);
  const rows = sharedJoints.flatMap((joint) => {
    const torque = asked.torques[joint] ?? 0;
    const action = actionOf(joint, torque > 0 ? 1 : -1);
    if (!action || carriesItself(action, asked.angles[joint] ?? 0)) return [];
    const entries = rowOf(joint, posture, capacity, strength);
    return entries.some((entry) => entry * torque > 0) ? [{ torque, entries }] : [];
  });
  if (rows.length === 0) return undefined;
  const matrix = rows.map(({ entries }) => entries);
  const torques = rows.map(({ torque }) => torque);
  const upper = muscles.map(() => 1);
  const none = rows.map(() => 0);
  const multiple = largestMultiple(matrix, none, torques, upper).high;
  const carried = Math.min(multiple, 1) * (1 - 1e-9);
  const { x } = minimiseWeightedSquares(
    matrix,
    torques.map((torque) => carried * torque),
    muscles.map(livingArea),
    upper,
  );
  const efforts = muscles.map(({ name }, i) => ({ muscle: name, effort: x[i] ?? 0 }));
  return { multiple, efforts: efforts.sort((a, b) => b.effort - a.effort) };
}

function postureOf({ angles }: Demand): MusclePosture {
  const posture: Partial<Record<MuscleJoint, number>> = {};
  for (const joint of sharedJoints) {
    const angle = angles[joint];
    if (angle !== undefined) posture[joint] = (angle * 180) / Math.PI;
  }
  return posture;
}

/** Extension torque of each muscle at full activation, N·m; zero where it does not cross. */
function rowOf(
  joint: MuscleJoint,
  posture: MusclePosture,
  capacity: Capacity,
  strength: number,
): number[] {
  const deg = posture[joint] ?? 0;
  const raw = muscles.map((muscle) => {
    if (!jointsOf(muscle).includes(joint)) return 0;
    const pennation = Math.cos((muscle.pennation.value * Math.PI) / 180);
    const force = lengthTension(operatingLength(muscle, posture, 1)) * pennation;
    // Arms are positive for flexion, torques for extension.
    return -livingArea(muscle) * force * tendonArmAt(muscle, joint, deg);
  });
  const part = (sense: 1 | -1) => {
    const all = raw.reduce((sum, torque) => sum + Math.max(sense * torque, 0), 0);
    const action = actionOf(joint, sense);
    if (!action || all === 0) return 0;
    const left = kneeBendLeft(action, (posture.knee ?? 0) * radians);
    return (strength * left * atAngle(capacity[action], deg * radians)) / all;
  };
  const [extending, flexing] = [part(1), part(-1)];
  return raw.map((torque) => torque * (torque > 0 ? extending : flexing));
}

function actionOf(joint: MuscleJoint, sense: 1 | -1): ActionName | undefined {
  return actionNames.find((name) => actions[name].joint === joint && actions[name].sense === sense);
}
