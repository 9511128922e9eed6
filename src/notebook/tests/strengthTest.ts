/**
 * Strength tests as read: torques of what the device or scale pulled against, still with the
 * weight of the limb in them unless the file says otherwise. SI, anatomical angles.
 */

import type {
  Fraction,
  Kilogram,
  Metre,
  NewtonMetre,
  Path,
  PlacedHeight,
  Radian,
} from '../scenario.ts';

export const sides = ['left', 'right', 'both'] as const;
export const postures = ['seated', 'prone', 'supine', 'standing', 'lying on the side'] as const;

/** Trials at one joint angle. */
export interface TorquePoint {
  readonly angle: Radian;
  readonly trials: readonly NewtonMetre[];
  readonly path: Path;
}

/** What the weight of the limb did to the numbers; `pulls` is 1 against the effort, −1 with it. */
export type Gravity =
  /** The device took it out, or nobody did. */
  | { readonly kind: 'corrected' }
  | { readonly kind: 'none' }
  /** From the body's own segments; torque with the limb held level. */
  | { readonly kind: 'estimated'; readonly pulls: 1 | -1 }
  | { readonly kind: 'weighed'; readonly level: NewtonMetre; readonly pulls: 1 | -1 }
  /** Torque of the relaxed limb against the effort, by rising angle. */
  | {
      readonly kind: 'relaxed';
      readonly points: readonly { readonly angle: Radian; readonly against: NewtonMetre }[];
    };

/** How the file gives the numbers of a torque test. */
export interface Measure {
  readonly unit: string;
  /** Where a force was measured: its distance from the joint. */
  readonly lever?: Metre;
}

/** Maximal isometric torque trials at several joint angles, of one day. */
export interface TorqueTest {
  readonly kind: 'torque';
  readonly action: string;
  readonly date?: string;
  /** Both: pushed with both limbs together, the trials are their sum. */
  readonly side?: (typeof sides)[number];
  readonly posture?: (typeof postures)[number];
  /** Angles of the neighbour joints during the test. */
  readonly neighbours: Readonly<Record<string, Radian>>;
  /** An angle set at rest changes in the effort. */
  readonly angleTaken?: 'at rest' | 'during effort';
  /** Sessions of practice before the test, or whether there were any. */
  readonly familiarised?: 'yes' | 'no' | number;
  readonly score: 'best' | 'mean';
  readonly measure: Measure;
  /** Left out where the file does not say. */
  readonly gravity?: Gravity;
  /** The file beside the scenario that holds the trials. */
  readonly table?: string;
  readonly points: readonly TorquePoint[];
  readonly path: Path;
}

/** A single estimated from a set to failure. */
export interface EstimatedSingle {
  readonly reps: number;
  readonly load: Kilogram;
  /** Least and most of the published formulas. */
  readonly least: Kilogram;
  readonly most: Kilogram;
}

/** Heaviest single repetition of a lift over a stated range. */
export interface LiftTest {
  readonly kind: 'lift';
  readonly lift: string;
  readonly date?: string;
  /** Start of the range; the lift's first angle if it is not written. */
  readonly from?: Radian;
  /** The far end of the range (leading-joint angle). */
  readonly to: Radian;
  readonly best: Kilogram;
  /** Only present where `best` was not lifted but estimated. */
  readonly estimated?: EstimatedSingle;
  /** Ends that the file gives as heights; only present if there are any. */
  readonly heights?: readonly PlacedHeight[];
  readonly path: Path;
}

export type Test = TorqueTest | LiftTest;

/** The same tests again, each with its date. */
export interface Retest {
  /** Program done since the tests before. */
  readonly after?: string;
  readonly tests: readonly Test[];
  readonly path: Path;
}

/** What was repeated: a joint action, or a lift to an angle. */
export type Repeated = { readonly action: string } | { readonly lift: string; readonly to: Radian };

/** One person's repeated test days. */
export interface RepeatedDays {
  /** Left out for the athlete of the file. */
  readonly person?: string;
  readonly days: readonly (readonly TorquePoint[])[];
}

/** How far a test differs between days without training between them. */
export type RepeatedTest =
  | {
      readonly kind: 'days';
      readonly of: Repeated;
      readonly score: 'best' | 'mean';
      readonly measure: Measure;
      readonly side?: TorqueTest['side'];
      readonly people: readonly RepeatedDays[];
      readonly path: Path;
    }
  | {
      readonly kind: 'typical error';
      readonly of: Repeated;
      /** A share of the value, or in its own unit. */
      readonly error:
        | { readonly share: Fraction }
        | { readonly torque: NewtonMetre }
        | { readonly mass: Kilogram };
      /** From how many people and days it comes. */
      readonly from: { readonly people: number; readonly days: number };
      readonly path: Path;
    };
