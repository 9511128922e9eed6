/**
 * How a lift is declared: a chain of body segments outward from a support, the joint that leads,
 * the rule by which the other joints follow, and where the load acts. Every lift of the catalogue
 * is one such value; the statics in `posture.ts` know no lift by name.
 */

export type Joint = 'ankle' | 'knee' | 'hip';
export type Segment = 'foot' | 'shank' | 'shank and foot' | 'thigh' | 'trunk, head and arms';

export interface ChainLink {
  readonly segment: Segment;
  /** The joint at this segment's end nearer the support. */
  readonly joint: Joint;
  /** Which of the segment's ends that is. */
  readonly near: 'proximal' | 'distal';
  /** +1 where flexion turns the segment forward and down (clockwise seen from the right), else −1. */
  readonly turn: 1 | -1;
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
  /** Turns until body and load together stand over the middle of the foot. */
  | { readonly joint: Joint; readonly rule: 'balance' };

export type Resistance =
  /** A mass carried at a point of a segment. */
  | {
      readonly kind: 'mass';
      readonly on: Segment;
      /** Share of the segment's length from its end nearer the support. */
      readonly along: number;
      /** Offset square to the segment, metres, forward positive when the segment stands upright. */
      readonly across: number;
    }
  /** A machine whose resistance is a torque about the leading joint. */
  | { readonly kind: 'machine torque'; readonly arm: number };

export interface Lift {
  readonly name: string;
  readonly chain: readonly ChainLink[];
  /** Direction of the fixed segment before the first joint, degrees from straight up, forward positive. */
  readonly supportDirectionDeg: number;
  readonly support: 'feet' | 'seat';
  /** Limbs that share the load. */
  readonly sides: 1 | 2;
  readonly leading: Joint;
  readonly rangeDeg: readonly [number, number];
  readonly follow: readonly FollowRule[];
  readonly resistance: Resistance;
  /** What in this entry is a guess or a simplification, in words a coach can check. */
  readonly assumed: readonly string[];
  readonly source: string;
}
