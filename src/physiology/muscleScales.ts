import { atAngle, gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { JointAngles } from '../mechanics/linkage.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type Action, type ActionName, actions } from '../tables/actions.ts';
import { kernel } from '../tables/adaptation.ts';
import type { MuscleJoint } from '../tables/muscleRow.ts';
import { regions } from '../tables/quadriceps.ts';
import { type TrainedMuscle, trainedMuscles } from '../tables/trainedMuscles.ts';
import { lengthScales, longest } from './driveSpread.ts';
import { fibreStretch, jointsOf } from './muscleGeometry.ts';

/**
 * How long every trained muscle is in a posture, on a scale from short (0) to long (110).
 *
 * The home joint's scale, which for the knee extensors is the angle itself, plus
 * 110 · Δl / (l_long − l_short): what the muscle's other joint adds to its resting length against
 * that joint's place in the action's own test. Where the posture does not tell the other joint, it
 * is taken to be there.
 *
 * @param angles radians by joint
 */
export function muscleScales(angles: JointAngles): Float64Array {
  scales ??= trainedMuscles.map(scaleOf);
  return Float64Array.from(scales, ({ joint, usual, own, others }) => {
    let at = atAngle(own, angles[joint] ?? usual);
    for (const other of others) {
      const angle = angles[other.joint];
      if (angle !== undefined) at += atAngle(other.added, angle);
    }
    return at;
  });
}

/** Joints, radians, where an action is trained or tested alone. */
export function testPosture(action: ActionName, angle: number): JointAngles {
  const { joint, testedAt = {} }: Action = actions[action];
  const neighbours = Object.entries(testedAt).map(([name, deg]) => [name, toRadians(deg)]);
  return { ...Object.fromEntries(neighbours), [joint]: angle };
}

/** Whether a muscle works short (−1) or long (1): an S-curve of its place on the scale. */
export function shortOrLong(scale: number): number {
  return Math.tanh((scale - regions.neutralDeg) / kernel.lengthScaleDeg);
}

/** Share of its range by which a muscle is drawn out on the way from one posture to another. */
export function drawnOut(from: Float64Array, to: Float64Array, place: number): number {
  return Math.max(((to[place] ?? 0) - (from[place] ?? 0)) / longest, 0);
}

interface Scale {
  readonly joint: Action['joint'];
  /** Where the home joint is if the posture does not tell, radians. */
  readonly usual: number;
  readonly own: OverAngles;
  readonly others: readonly { readonly joint: MuscleJoint; readonly added: OverAngles }[];
}

let scales: readonly Scale[] | undefined;

function scaleOf({ home, row }: TrainedMuscle): Scale {
  const { joint, shortDeg, longDeg, testedAt = {} }: Action = actions[home];
  const own = lengthScales[home];
  if (!row) return { joint, usual: 0, own, others: [] };
  const stretch = (at: MuscleJoint, deg: number) => fibreStretch(row, at, deg);
  const others = jointsOf(row).filter((other) => other !== joint);
  const homeJoint = jointsOf(row).find((one) => one === joint);
  const range = homeJoint ? stretch(homeJoint, longDeg) - stretch(homeJoint, shortDeg) : 1;
  const reference = (other: MuscleJoint) => stretch(other, testedAt[other] ?? 0);
  return {
    joint,
    usual: toRadians((homeJoint && row.postureDeg[homeJoint]) ?? 0),
    own,
    others: others.map((other) => ({
      joint: other,
      added: gridDeg.map((deg) => (longest * (stretch(other, deg) - reference(other))) / range),
    })),
  };
}
