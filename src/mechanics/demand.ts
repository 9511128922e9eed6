import { standardGravity } from './forces.ts';
import type { Joint, Lift } from './lift.ts';
import { requiredTorques } from './linkage.ts';
import { type Body, type Impossible, Stance } from './posture.ts';

/** What a lift asks of one side at one posture: joint angles (rad), extension torques (N·m). */
export interface Demand {
  readonly angles: Readonly<Record<Joint, number>>;
  readonly torques: Readonly<Record<Joint, number>>;
}

/** A machine's measured resistance: torque (N·m, both sides) by leading-joint angle at one load. */
export interface ResistanceTable {
  readonly load: number;
  readonly torqueAt: (angle: number) => number;
}

/**
 * Extension torques one side must supply to hold a lift, as a function of its leading angle.
 *
 * @param load kg on the bar, hung, or on the machine's stack
 * @param machine measured resistance; without it a machine resists with load · g · arm
 * @returns for an angle in radians: torques with extension positive, or why the posture cannot be
 *   taken
 */
export function demandOf(
  lift: Lift,
  body: Body,
  load: number,
  machine?: ResistanceTable,
): (leading: number) => Demand | Impossible {
  const stance = new Stance(lift, body, load);
  return (leading) => {
    const held = stance.posture(leading);
    if ('impossible' in held) return held;
    const whole = requiredTorques(held.placement, held.loads);
    if (lift.resistance.kind === 'machine torque')
      whole[lift.leading] += machine
        ? (load / machine.load) * machine.torqueAt(leading)
        : load * standardGravity * lift.resistance.arm;
    const share = (joint: Joint) => whole[joint] / lift.sides;
    return {
      angles: held.angles,
      torques: { ankle: share('ankle'), knee: share('knee'), hip: share('hip') },
    };
  };
}
