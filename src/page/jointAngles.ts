import type { Lift } from '../mechanics/lift.ts';
import { jointWords } from '../tables/actions.ts';
import { capital, degrees, rangeDegrees } from './words.ts';

/** How the angles of a lift are written: with their joint wherever more than one joint moves or holds. */

const hasSeveralJoints = ({ chain }: Lift) =>
  chain.filter(({ joint }) => joint !== 'hinge').length > 1;

/** "Back squat, knee 0–110°", or "Machine knee extension 15–100°" where there is one joint. */
export function liftOver(lift: Lift, from: number, to: number): string {
  const joint = hasSeveralJoints(lift) ? `, ${jointWords[lift.leading].name}` : '';
  return `${capital(lift.name)}${joint} ${rangeDegrees(from, to)}`;
}

/** "110° of knee flexion", or "15°" where there is one joint. */
export function angleOf(lift: Lift, angle: number): string {
  const { name, motion } = jointWords[lift.leading];
  return hasSeveralJoints(lift) ? `${degrees(angle)} of ${name} ${motion}` : degrees(angle);
}
