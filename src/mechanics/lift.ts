/**
 * How a lift is declared: a chain of body segments outward from a support, the joint that leads,
 * the rules by which the other joints follow, and where the load acts. Every lift of the catalogue
 * is one such value; the statics in `posture.ts` and `demand.ts` know no lift by name.
 */

export const muscledJoints = [
  'ankle',
  'knee',
  'hip',
  'shoulder',
  'shoulder across',
  'elbow',
] as const;

/** A joint that muscles turn. */
export type MuscledJoint = (typeof muscledJoints)[number];

/** A joint, or the free hinge by which the chain touches its support and which no muscle turns. */
export type Joint = MuscledJoint | 'hinge';

/** Segments of a chain. The foot in a chain is the lever from the ankle joint to the ball. */
export const segmentNames = [
  'foot',
  'shank',
  'shank and foot',
  'thigh',
  'trunk and head',
  'trunk, head and arms',
  'upper arm',
  'forearm and hand',
] as const;
export type Segment = (typeof segmentNames)[number];

export interface ChainLink {
  readonly segment: Segment;
  /** The joint at this segment's end nearer the support. */
  readonly joint: Joint;
  /** Which of the segment's ends that is. */
  readonly near: 'proximal' | 'distal';
  /** +1 where flexion turns the segment forward and down (clockwise seen from the right), else −1. */
  readonly turn: 1 | -1;
  /** Turn of the straight joint against the segment before, degrees; 180 where it folds back. */
  readonly offsetDeg?: number;
}

export type FollowRule =
  /**
   * Starts from the angle that balances the straight body, flexes by `perLeading` of the leading
   * joint's angle at first and levels off toward `mostDeg`; never beyond the athlete's own limit.
   */
  | {
      readonly joint: Joint;
      readonly rule: 'leveling off';
      readonly perLeading: number;
      readonly mostDeg: number;
    }
  /** `fromDeg` plus `perLeading` of the leading joint's angle. */
  | {
      readonly joint: Joint;
      readonly rule: 'linear';
      readonly fromDeg: number;
      readonly perLeading: number;
    }
  /** Turns until body and load together stand over the support. */
  | { readonly joint: Joint; readonly rule: 'balance' }
  /** Keeps its own segment pointing one way in space, degrees from straight up, forward positive. */
  | { readonly joint: Joint; readonly rule: 'direction'; readonly deg: number }
  /**
   * Keeps the chain's far end on a straight line, degrees from straight up, that runs through this
   * joint or `across` metres beside it (forward positive when the line points up).
   */
  | {
      readonly joint: Joint;
      readonly rule: 'end on line';
      readonly deg: number;
      readonly across?: number;
    };

/** A place on a segment. */
export interface Attachment {
  readonly on: Segment;
  /** Share of the segment's length from its end nearer the support. */
  readonly along: number;
  /** Offset square to the segment, metres, forward positive when the segment stands upright. */
  readonly across: number;
}

export type Resistance =
  /**
   * A mass carried at a point of a segment, or hanging `below` metres under it on straight arms or
   * a strap: only the vertical line through it enters statics, the height is for drawings and for
   * chains and bands.
   */
  | (Attachment & { readonly kind: 'mass'; readonly below?: number })
  /**
   * A machine whose resistance is a torque about the leading joint; `arm` in metres, negative where
   * the machine is pulled into flexion (it resists the flexors).
   */
  | { readonly kind: 'machine torque'; readonly arm: number }
  /** A force of constant size in one direction in space (cable from afar, sled), degrees from up. */
  | (Attachment & { readonly kind: 'force'; readonly deg: number; readonly gain: number })
  /** A cable to a pulley at a place measured from the chain's first joint, metres. */
  | (Attachment & { readonly kind: 'cable'; readonly x: number; readonly y: number });

/**
 * A second support that carries what the first cannot: a force in one direction at a point of the
 * chain, as large as leaves no torque at the free hinge or, standing on flat feet, brings the
 * pressure under the middle of the foot.
 */
export type Contact = Attachment & { readonly deg: number };

export interface Lift {
  readonly name: string;
  readonly chain: readonly ChainLink[];
  /** Direction of the fixed segment before the first joint, degrees from straight up. */
  readonly supportDirectionDeg: number;
  /** Flat feet, the ball of the foot, hands on a bar, or a seat or bench that holds everything. */
  readonly support: 'feet' | 'ball of foot' | 'bar' | 'seat';
  /** Limbs that share the load. */
  readonly sides: 1 | 2;
  /** Share of the upper body and the load on the working side, where another limb helps. */
  readonly workingShare?: number;
  /** The other leg hangs from the hip and is carried. */
  readonly freeLeg?: true;
  readonly leading: MuscledJoint;
  readonly rangeDeg: readonly [number, number];
  readonly follow: readonly FollowRule[];
  readonly resistance: Resistance;
  readonly contact?: Contact;
  /**
   * Height of the chain's origin above the floor, for chains and bands, with what that takes for
   * granted. Flat feet stand on the floor; another lift without it takes neither.
   */
  readonly aboveFloor?: {
    readonly metres: number | 'shoulder of someone standing';
    readonly assumed: string;
  };
  /** What in this entry is a guess or a simplification, in words a coach can check. */
  readonly assumed: readonly string[];
  readonly source: string;
}
