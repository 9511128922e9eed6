import { toRadians } from '../numeric/degrees.ts';
import { fixedPoint } from '../numeric/fixedPoint.ts';
import { carried, working } from './carried.ts';
import { type PointForce, type Vector, weight } from './forces.ts';
import type { FollowRule, Joint, Lift, Segment } from './lift.ts';
import {
  type AttachedLoad,
  type JointAngles,
  massCentre,
  type Placement,
  placeChain,
  pointOn,
  type SegmentBody,
  weights,
} from './linkage.ts';
import { addedMass, heightOfLoad, mostAdded, noRig, type Rig } from './rig.ts';

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
  /** Radians; joints that are not in the chain are missing. */
  readonly angles: JointAngles;
  readonly placement: Placement;
  readonly loads: readonly AttachedLoad[];
}

/** A posture that cannot be taken, with the reason in plain words. */
export interface Impossible {
  readonly impossible: string;
}

/** Error of the mass (kg) at which a posture under a rig counts as found. */
const settledWithin = 1e-6;
const unsettled: Impossible = { impossible: 'no posture balances chains or bands so strong' };

/**
 * A lift with one body, one load and its rig: places the chain and solves the rules that need
 * balance.
 */
export class Stance {
  readonly lift: Lift;
  private readonly load: number;
  private readonly rig: Rig;
  /** Whether the height of the load decides how heavy it is. */
  private readonly hasHangingRig: boolean;
  private readonly body: Body;
  private readonly segments: Readonly<Record<Segment, SegmentBody>>;
  /** Angle of each joint that would balance the straight body. */
  private readonly upright = new Map<Joint, number>();

  /** @param load mass on the bar or hung weight, kg */
  constructor(lift: Lift, body: Body, load: number, rig: Rig = noRig) {
    this.lift = lift;
    this.load = load;
    this.rig = rig;
    this.hasHangingRig =
      lift.resistance.kind === 'mass' && rig.some(({ kind }) => kind !== 'machine');
    this.body = body;
    this.segments = working(body, lift);
  }

  /**
   * Posture at one angle of the leading joint, radians.
   *
   * The other joints follow the lift's rules in the order they are declared; joints with no rule
   * stay straight.
   */
  posture(leading: number): Posture | Impossible {
    return this.settled((loads) => this.postureUnder(loads, leading));
  }

  private postureUnder(loads: readonly AttachedLoad[], leading: number): Posture | Impossible {
    const { lift } = this;
    const angles: Partial<Record<Joint, number>> = { [lift.leading]: leading };
    for (const rule of lift.follow) {
      // Rules are asked while their own joint is still straight.
      const angle = this.follow(rule, angles, leading, loads);
      if (Number.isNaN(angle)) return { impossible: whyNot(rule) };
      angles[rule.joint] = angle;
    }
    return { angles, placement: this.place(angles), loads };
  }

  /**
   * Posture under chains and bands, whose pull depends on the height of the load, which depends on
   * the balance that the pull shifts: m = load + added(height of the posture under m), to 1e-6 kg.
   * A kilogram moves a balanced bar by about a millimetre, so each step shrinks the error by the
   * rig's kilograms per millimetre. A light bar may leave unbalanced what the rig then balances:
   * the steps begin anew from all that the rig can add.
   */
  private settled(
    pose: (loads: readonly AttachedLoad[]) => Posture | Impossible,
  ): Posture | Impossible {
    const { lift, body, load, rig } = this;
    if (!this.hasHangingRig) return pose(carried(lift, body, load));
    let posed: Posture | Impossible = unsettled;
    const addedBy = (added: number) => {
      posed = pose(carried(lift, body, load + added));
      return 'impossible' in posed
        ? undefined
        : addedMass(rig, heightOfLoad(lift, body, posed.placement));
    };
    for (const start of [0, mostAdded(rig)])
      if (fixedPoint(addedBy, start, settledWithin) !== undefined) return posed;
    return 'impossible' in posed ? posed : unsettled;
  }

  /** Angle of one joint that balances the otherwise straight body, with the rig as it then hangs. */
  private uprightAngle(joint: Joint): number {
    const held = this.settled((loads) => {
      const angles = { [joint]: this.balancingAngle(joint, straight, loads) };
      return { angles, placement: this.place(angles), loads };
    });
    return 'impossible' in held ? Number.NaN : (held.angles[joint] ?? Number.NaN);
  }

  /** Where the ground carries a body on flat feet; the ankle joint is at x = 0. */
  get middleOfFoot(): Vector {
    return { x: this.body.footLength / 2 - this.body.ankleFromHeel, y: 0 };
  }

  /** Weight of the feet under the chain. */
  get feetWeight(): PointForce {
    const x = this.body.footCentreFromHeel - this.body.ankleFromHeel;
    return weight(this.segments.foot.mass, { x, y: 0 });
  }

  private place(angles: JointAngles): Placement {
    const { lift, body } = this;
    const base = { x: 0, y: lift.support === 'feet' ? body.ankleHeight : 0 };
    const direction = toRadians(lift.supportDirectionDeg);
    return placeChain(lift.chain, this.segments, base, direction, angles);
  }

  private follow(
    rule: FollowRule,
    angles: JointAngles,
    leading: number,
    loads: readonly AttachedLoad[],
  ): number {
    switch (rule.rule) {
      case 'balance':
        return this.balancingAngle(rule.joint, angles, loads);
      case 'leveling off': {
        const upright = this.upright.get(rule.joint) ?? this.uprightAngle(rule.joint);
        this.upright.set(rule.joint, upright);
        const limit = rule.joint === 'ankle' ? this.body.limits.ankle : Number.POSITIVE_INFINITY;
        const room = Math.max(toRadians(rule.mostDeg) - upright, 0);
        const flexed = room === 0 ? 0 : room * (1 - Math.exp((-rule.perLeading * leading) / room));
        return Math.min(upright + flexed, limit);
      }
      case 'linear':
        return toRadians(rule.fromDeg) + rule.perLeading * leading;
      case 'direction':
      case 'end on line':
        return this.pointingAngle(rule, angles);
    }
  }

  /**
   * Angle of one joint that makes its own segment, or the line from it to the chain's end, point in
   * a direction: the present direction is read off the placed chain and the joint makes up the rest.
   * With the end r from the joint and the line a beside it, the end points asin(a/r) off the line;
   * NaN if the line lies beyond r.
   */
  private pointingAngle(
    rule: FollowRule & { readonly rule: 'direction' | 'end on line' },
    angles: JointAngles,
  ): number {
    const { links } = this.place(angles);
    const own = links.find(({ link }) => link.joint === rule.joint);
    const last = links[links.length - 1];
    if (!own || !last) return Number.NaN;
    const end = pointOn(last, last.body.length, 0);
    const reach = { x: end.x - own.start.x, y: end.y - own.start.y };
    const present = rule.rule === 'direction' ? own.direction : Math.atan2(reach.x, reach.y);
    const beside = rule.rule === 'direction' ? 0 : (rule.across ?? 0);
    const missing =
      toRadians(rule.deg) + Math.asin(beside / Math.hypot(reach.x, reach.y)) - present;
    return own.link.turn * Math.atan2(Math.sin(missing), Math.cos(missing));
  }

  /**
   * Angle of one joint, straight in `angles`, that brings body and load over the support: the middle
   * of the flat foot, else the chain's own first point.
   *
   * Everything beyond the joint turns as one rigid piece. With (u, v) its centre of mass from the
   * joint while the joint is straight, a turn β moves it to u·cos β + v·sin β = R·sin(β + φ),
   * R = √(u² + v²), φ = atan2(u, v), which must equal the horizontal place the balance needs.
   * NaN if that lies beyond R. Of the two solutions a standing body takes the one with its centre
   * above the joint, a hanging body the one below.
   */
  private balancingAngle(
    joint: Joint,
    angles: JointAngles,
    loads: readonly AttachedLoad[],
  ): number {
    const index = this.lift.chain.findIndex((link) => link.joint === joint);
    const placement = this.place(angles);
    const all = weights(placement, loads);
    const moving = massCentre(all, (linkIndex) => linkIndex >= index);
    const fixed = massCentre(all, (linkIndex) => linkIndex < index);
    const pivot = placement.links[index];
    if (!pivot) return Number.NaN;
    const onFeet = this.lift.support === 'feet';
    const feet = onFeet ? this.segments.foot.mass : 0;
    const place = onFeet ? this.middleOfFoot.x : 0;
    const wanted =
      (moving.mass + fixed.mass + feet) * place -
      fixed.mass * fixed.centre.x -
      feet * this.feetWeight.at.x;
    const u = moving.centre.x - pivot.start.x;
    const v = moving.centre.y - pivot.start.y;
    const needed = wanted / moving.mass - pivot.start.x;
    const above = Math.asin(needed / Math.hypot(u, v));
    const hangs = this.lift.support === 'bar';
    const angle = ((hangs ? Math.PI - above : above) - Math.atan2(u, v)) * pivot.link.turn;
    // Within −90° and 270°, so that arms overhead read 180° and not −180°.
    return angle - 2 * Math.PI * Math.floor((angle + Math.PI / 2) / (2 * Math.PI));
  }
}

const straight: JointAngles = {};

function whyNot(rule: FollowRule): string {
  return rule.rule === 'balance'
    ? `body and load cannot be balanced over the foot by turning the ${rule.joint}`
    : `the ${rule.joint} cannot follow`;
}
