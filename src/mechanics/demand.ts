import { toRadians } from '../numeric/degrees.ts';
import { momentAbout, type PointForce, standardGravity, type Vector } from './forces.ts';
import type { Attachment, Contact, Joint, Lift } from './lift.ts';
import {
  attachedAt,
  type JointAngles,
  type JointTorques,
  type LinkForce,
  type Placement,
  requiredTorques,
  weights,
} from './linkage.ts';
import { type Body, type Impossible, type Posture, Stance } from './posture.ts';
import { addedPull, noRig, type Rig, towardPulley } from './rig.ts';

/** What a lift asks of one side at one posture: joint angles (rad), extension torques (N·m). */
export interface Demand {
  readonly angles: JointAngles;
  readonly torques: JointTorques;
}

/**
 * Extension torques one side must supply to hold a lift, as a function of its leading angle.
 *
 * @param load kg on the bar, hung, or on the machine's stack
 * @param rig chains and bands besides the load, or a machine's measured resistance, without which a
 *   machine resists with load · g · arm
 * @returns for an angle in radians: torques with extension positive, or why the posture cannot be
 *   taken
 */
export function demandOf(
  lift: Lift,
  body: Body,
  load: number,
  rig: Rig = noRig,
): (leading: number) => Demand | Impossible {
  const stance = new Stance(lift, body, load, rig);
  // Joints of the chain without a rule stay straight, which muscles over two joints need told.
  const straight = Object.fromEntries(
    lift.chain.flatMap(({ joint }) => (joint === 'hinge' ? [] : [[joint, 0]])),
  );
  return (leading) => {
    const held = stance.posture(leading);
    if ('impossible' in held) return held;
    const forces = otherForces(stance, held, load, rig);
    const whole = { ...requiredTorques(held.placement, held.loads, standardGravity, forces) };
    if (lift.resistance.kind === 'machine torque')
      whole[lift.leading] =
        (whole[lift.leading] ?? 0) + machineTorque(lift.resistance.arm, load, leading, rig);
    return { angles: { ...straight, ...held.angles }, torques: oneSide(whole, lift) };
  };
}

/** Torque a machine asks about the leading joint, extension positive; the arm's sign says of whom. */
function machineTorque(arm: number, load: number, leading: number, rig: Rig): number {
  const machine = rig.find((device) => device.kind === 'machine');
  if (!machine) return load * standardGravity * arm;
  return Math.sign(arm) * (load / machine.load) * machine.torqueAt(leading);
}

function oneSide(whole: JointTorques, lift: Lift): JointTorques {
  if (lift.sides === 1) return whole;
  const side: Partial<Record<Joint, number>> = {};
  for (const { joint } of lift.chain) side[joint] = (whole[joint] ?? 0) / 2;
  return side;
}

/** The resistance where it is a pull or push other than weight. */
function pulls(lift: Lift, held: Posture, load: number, rig: Rig): LinkForce[] {
  const { resistance, workingShare = 1 } = lift;
  if (resistance.kind === 'force') {
    const size = load * standardGravity * resistance.gain * workingShare;
    return alongDirection(held.placement, resistance, resistance.deg, size);
  }
  const toward = towardPulley(lift, held.placement);
  const point = resistance.kind === 'cable' && attachedAt(held.placement, resistance);
  if (toward && point) {
    const length = Math.hypot(toward.x, toward.y);
    const size = ((load + addedPull(rig, length)) * standardGravity * workingShare) / length;
    return [push(point, { x: size * toward.x, y: size * toward.y })];
  }
  return [];
}

/** All forces on the chain that are not weights: pulls of the resistance and a second support. */
export function otherForces(
  stance: Stance,
  held: Posture,
  load: number,
  rig: Rig = noRig,
): LinkForce[] {
  const forces = pulls(stance.lift, held, load, rig);
  const contact = contactForce(stance, held, forces);
  return contact ? [...forces, contact] : forces;
}

/**
 * Force of the second support, as large as leaves no moment about the first: with M the moment of
 * all other forces about the free hinge, or about the middle of the flat foot, and m that of a unit
 * push at the contact, its size is −M / m.
 */
function contactForce(
  stance: Stance,
  held: Posture,
  forces: readonly LinkForce[],
): LinkForce | undefined {
  const { contact } = stance.lift;
  if (!contact) return undefined;
  const { placement, loads } = held;
  const hinge = placement.links.find(({ link }) => link.joint === 'hinge');
  const pivot = hinge?.start ?? stance.middleOfFoot;
  const [unit] = alongDirection(placement, contact, contact.deg, 1);
  if (!unit) return undefined;
  const others = [...weights(placement, loads), ...forces].map(({ force }) => force);
  const moment = momentAbout(pivot, hinge ? others : [...others, stance.feetWeight]);
  const size = -moment / momentAbout(pivot, [unit.force]);
  const [real] = alongDirection(placement, contact, contact.deg, size);
  return real;
}

function alongDirection(
  placement: Placement,
  attachment: Attachment | Contact,
  deg: number,
  size: number,
): LinkForce[] {
  const point = attachedAt(placement, attachment);
  const direction = toRadians(deg);
  if (!point) return [];
  return [push(point, { x: size * Math.sin(direction), y: size * Math.cos(direction) })];
}

function push(point: { linkIndex: number; at: Vector }, force: Vector): LinkForce {
  const pointForce: PointForce = { at: point.at, force };
  return { linkIndex: point.linkIndex, force: pointForce };
}
