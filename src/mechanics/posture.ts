import { standardGravity, type Vector } from './forces.ts';
import type { FollowRule, Joint, Lift, Segment } from './lift.ts';
import {
  type AttachedLoad,
  type JointAngles,
  type LinkForce,
  type Placement,
  placeChain,
  type SegmentBody,
  weights,
} from './linkage.ts';

/** What mechanics needs to know of a body: metres, kilograms, radians; limbs one side each. */
export interface Body {
  readonly segments: Readonly<Record<Segment, SegmentBody>>;
  readonly footLength: number;
  /** Horizontal distances forward from the heel. */
  readonly ankleFromHeel: number;
  readonly footCentreFromHeel: number;
  readonly ankleHeight: number;
  /** Largest ankle dorsiflexion and knee flexion the athlete reaches. */
  readonly limits: { readonly ankle: number; readonly knee: number };
}

export interface Posture {
  readonly angles: Readonly<Record<Joint, number>>;
  readonly placement: Placement;
  readonly loads: readonly AttachedLoad[];
}

/** A posture that cannot be taken, with the reason in plain words. */
export interface Impossible {
  readonly impossible: string;
}

/**
 * A lift with one body and one load: places the chain and solves the rules that need balance.
 */
export class Stance {
  readonly lift: Lift;
  readonly loads: readonly AttachedLoad[];
  private readonly body: Body;
  private readonly segments: Readonly<Record<Segment, SegmentBody>>;
  /** Angle of each joint that would balance the straight body. */
  private readonly upright = new Map<Joint, number>();

  /** @param load mass on the bar or hung weight, kg */
  constructor(lift: Lift, body: Body, load: number) {
    this.lift = lift;
    this.body = body;
    const { resistance } = lift;
    this.loads = resistance.kind === 'mass' ? [{ ...resistance, mass: load }] : [];
    this.segments = bothSides(body.segments, lift.sides);
  }

  /**
   * Posture at one angle of the leading joint, radians.
   *
   * The other joints follow the lift's rules in the order they are declared; joints with no rule
   * stay straight.
   */
  posture(leading: number): Posture | Impossible {
    const { lift } = this;
    const angles: Record<Joint, number> = { ankle: 0, knee: 0, hip: 0 };
    angles[lift.leading] = leading;
    for (const rule of lift.follow) {
      // Rules are asked while their own joint is still straight.
      const angle = this.follow(rule, angles, leading);
      if (Number.isNaN(angle))
        return {
          impossible: `body and load cannot be balanced over the foot by turning the ${rule.joint}`,
        };
      angles[rule.joint] = angle;
    }
    return { angles, placement: this.place(angles), loads: this.loads };
  }

  private place(angles: JointAngles): Placement {
    const { lift, body } = this;
    const base = { x: 0, y: lift.support === 'feet' ? body.ankleHeight : 0 };
    const direction = (lift.supportDirectionDeg * Math.PI) / 180;
    return placeChain(lift.chain, this.segments, base, direction, angles);
  }

  private follow(rule: FollowRule, angles: JointAngles, leading: number): number {
    if (rule.rule === 'balance') return this.balancingAngle(rule.joint, angles);
    const upright = this.upright.get(rule.joint) ?? this.balancingAngle(rule.joint, straight);
    this.upright.set(rule.joint, upright);
    const limit = rule.joint === 'ankle' ? this.body.limits.ankle : Number.POSITIVE_INFINITY;
    const room = Math.max((rule.mostDeg * Math.PI) / 180 - upright, 0);
    const flexed = room === 0 ? 0 : room * (1 - Math.exp((-rule.perLeading * leading) / room));
    return Math.min(upright + flexed, limit);
  }

  /**
   * Angle of one joint, straight in `angles`, that brings body and load over the middle of the foot.
   *
   * Everything beyond the joint turns as one rigid piece. With (u, v) its centre of mass from the
   * joint while the joint is straight, a turn β moves it to u·cos β + v·sin β = R·sin(β + φ),
   * R = √(u² + v²), φ = atan2(u, v), which must equal the horizontal place the balance needs.
   * NaN if that lies beyond R.
   */
  private balancingAngle(joint: Joint, angles: JointAngles): number {
    const index = this.lift.chain.findIndex((link) => link.joint === joint);
    const placement = this.place(angles);
    const all = weights(placement, this.loads);
    const moving = massCentre(all, (linkIndex) => linkIndex >= index);
    const fixed = massCentre(all, (linkIndex) => linkIndex < index);
    const pivot = placement.links[index];
    if (!pivot) return Number.NaN;
    const { footLength, ankleFromHeel, footCentreFromHeel } = this.body;
    const feet = this.segments.foot.mass;
    const wanted =
      (moving.mass + fixed.mass + feet) * (footLength / 2 - ankleFromHeel) -
      fixed.mass * fixed.centre.x -
      feet * (footCentreFromHeel - ankleFromHeel);
    const u = moving.centre.x - pivot.start.x;
    const v = moving.centre.y - pivot.start.y;
    const needed = wanted / moving.mass - pivot.start.x;
    const turned = Math.asin(needed / Math.hypot(u, v)) - Math.atan2(u, v);
    return turned * pivot.link.turn;
  }
}

const straight: JointAngles = {};

/** Total mass and centre of mass of the weights that hang from a part of the chain. */
function massCentre(
  forces: readonly LinkForce[],
  counts: (linkIndex: number) => boolean,
): { readonly mass: number; readonly centre: Vector } {
  let mass = 0;
  let x = 0;
  let y = 0;
  for (const { linkIndex, force } of forces) {
    if (!counts(linkIndex)) continue;
    const m = -force.force.y / standardGravity;
    mass += m;
    x += m * force.at.x;
    y += m * force.at.y;
  }
  return { mass, centre: mass === 0 ? { x: 0, y: 0 } : { x: x / mass, y: y / mass } };
}

/** Limb masses of the sides that work together; the trunk is there once. */
function bothSides(
  segments: Readonly<Record<Segment, SegmentBody>>,
  sides: 1 | 2,
): Readonly<Record<Segment, SegmentBody>> {
  const times = (segment: Segment) => ({
    ...segments[segment],
    mass: segments[segment].mass * sides,
  });
  return {
    foot: times('foot'),
    shank: times('shank'),
    'shank and foot': times('shank and foot'),
    thigh: times('thigh'),
    'trunk, head and arms': segments['trunk, head and arms'],
  };
}
