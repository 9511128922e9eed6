/**
 * What a coach's file says, once read: SI units, radians, anatomical angles (0 = straight,
 * flexion positive; ankle 0 = foot square to the shank, dorsiflexion positive).
 * Plain readonly data. Nothing here computes.
 */

import type { Lift, MuscledJoint } from '../mechanics/lift.ts';
import type { NotebookBlock } from './blocks.ts';
import type { Phase } from './phase.ts';
import type { Study } from './study/study.ts';
import type { RepeatedTest, Retest, Test } from './tests/strengthTest.ts';

export type Metre = number;
export type Kilogram = number;
type Newton = number;
export type Second = number;
export type Radian = number;
export type NewtonMetre = number;
/** A share of one: 80 % is 0.8. */
export type Fraction = number;

/** Where a value stands in the file: keys and list places from the top. */
export type Path = readonly (string | number)[];

type Reference = 'female' | 'male' | 'pooled';
export type BodyLength = 'thigh' | 'shank' | 'trunk' | 'foot';
/** A height at which a range of a standing lift may end, from the floor under the working foot. */
export type Height =
  /** Hip and knee joint equally high. */
  | { readonly kind: 'thigh level' }
  /** Sitting down to a box, or the bar at the height of pins. */
  | { readonly kind: 'box' | 'pins'; readonly height: Metre };

/** A height and the angle it came to, with one body and one load. */
export interface PlacedHeight {
  readonly height: Height;
  readonly angle: Radian;
  /** Height of the hip joint there. */
  readonly hip: Metre;
  readonly load: Kilogram;
  /** Angles with lighter and heavier loads, where that is unknown and matters. */
  readonly spread?: { readonly loads: readonly Kilogram[]; readonly angles: readonly Radian[] };
}

export type LimitName = 'ankle dorsiflexion' | 'knee flexion';

/** One athlete, or the mean person of a stated kind when `isGroup` (then tests may be missing). */
export interface Subject {
  readonly isGroup: boolean;
  /** A pseudonym, or the group's name. */
  readonly code: string;
  readonly reference: Reference;
  readonly stature: Metre;
  readonly mass: Kilogram;
  /** Measured segment lengths; what is missing is estimated from stature. */
  readonly lengths: Readonly<Partial<Record<BodyLength, Metre>>>;
  readonly trainingYears: number;
  readonly limits: Readonly<Partial<Record<LimitName, Radian>>>;
  /** Share of the forecast gains that the athlete made so far; 1 if left out. */
  readonly response?: Fraction;
  readonly path: Path;
}

export interface Target {
  readonly action: string;
  readonly from: Radian;
  readonly to: Radian;
  /** Wanted gain inside the range, if the coach named one. */
  readonly gain?: Fraction;
  readonly weeks?: number;
  readonly path: Path;
}

/** A machine's resistance, measured by the coach: torque at some angles with a known load. */
export interface Machine {
  /** The joint it turns, whose angles the points are at. */
  readonly joint: MuscledJoint;
  readonly load: Kilogram;
  readonly points: readonly { readonly angle: Radian; readonly torque: NewtonMetre }[];
  readonly path: Path;
}

/** A pair of chains, one at each end of the bar. */
export interface Chains {
  /** Thickness of the link's wire, or what a metre of one chain weighs. */
  readonly weight: { readonly link: Metre } | { readonly kgPerMetre: number };
  readonly length: Metre;
  /** Light cord between bar and chain. */
  readonly cord: Metre;
  readonly path: Path;
}

/** Pull of all bands of a set together at one length. */
export interface TensionPoint {
  readonly length: Metre;
  readonly tension: Newton;
}

/** Bands between a bar and a place straight above or below it. */
export interface Bands {
  /** Measured, by rising length; or the rubber of each of `count` bands as it lies. */
  readonly pull:
    | { readonly points: readonly TensionPoint[] }
    | {
        readonly width: Metre;
        readonly thickness: Metre;
        readonly rest: Metre;
        readonly strands: number;
        readonly count: number;
      };
  /** Height of the fixed end above the floor. */
  readonly anchor: Metre;
  readonly path: Path;
}

export type Load =
  | { readonly kind: 'mass'; readonly mass: Kilogram }
  /** A share of the one-repetition maximum of the same lift over the same range. */
  | { readonly kind: 'share'; readonly share: Fraction }
  /** The load that allows exactly this many repetitions. */
  | { readonly kind: 'repetition maximum'; readonly reps: number }
  /** The load that would leave this many repetitions undone. */
  | { readonly kind: 'reserve'; readonly reps: number };

export interface LiftWork {
  readonly kind: 'lift';
  readonly lift: string;
  readonly from: Radian;
  readonly to: Radian;
  readonly load: Load;
  readonly sets: number;
  readonly reps: number;
  /** Seconds lowering, held at the bottom, lifting. */
  readonly tempo: readonly [Second, Second, Second];
  readonly rest: Second;
  /** Name of an entry of `machines`. */
  readonly machine?: string;
  /** Others bring it up, in the time of lifting, or it is not brought up. */
  readonly lowerOnly?: true;
  /** A heavier load on the way down. */
  readonly loweringLoad?:
    | { readonly kind: 'mass'; readonly mass: Kilogram }
    /** More than is lifted, by a share of it. */
    | { readonly kind: 'more'; readonly share: Fraction };
  /** Names of entries of `chains` and `bands`. */
  readonly chains?: string;
  readonly bands?: string;
  /** Ends that the file gives as heights; only present if there are any. */
  readonly heights?: readonly PlacedHeight[];
  /** What the file left out and a default stands for; only present if there is any. */
  readonly assumed?: readonly ('tempo' | 'rest')[];
  readonly path: Path;
}

export interface HoldWork {
  readonly kind: 'hold';
  /** A joint action ("knee extension") or a lift held still ("back squat"). */
  readonly of: string;
  readonly at: Radian;
  /** The angle as a height; only present if the file gives one. */
  readonly heights?: readonly PlacedHeight[];
  readonly effort: Fraction;
  readonly sets: number;
  readonly reps: number;
  readonly seconds: Second;
  readonly rest: Second;
  /** What a lift is pushed against, where it is not a weight that is held. */
  readonly against?: 'pins';
  /** What the file left out and a default stands for; only present if there is any. */
  readonly assumed?: readonly ('tempo' | 'rest')[];
  readonly path: Path;
}

/** Work against a machine that turns a joint at a set speed. */
export interface IsokineticWork {
  readonly kind: 'isokinetic';
  /** A joint action ("knee extension"). */
  readonly action: string;
  readonly from: Radian;
  readonly to: Radian;
  /** Radians a second. */
  readonly speed: number;
  readonly ways: readonly ('lifting' | 'lowering')[];
  readonly effort: Fraction;
  readonly sets: number;
  readonly reps: number;
  readonly rest: Second;
  /** What the file left out and a default stands for; only present if there is any. */
  readonly assumed?: readonly ('tempo' | 'rest')[];
  readonly path: Path;
}

export type Work = LiftWork | HoldWork | IsokineticWork;

/** With phases, the work of all of them one after the other, and the most sessions of any. */
export interface Program extends Omit<Phase, 'places' | 'name'> {
  readonly name: string;
  readonly work: readonly Work[];
  readonly phases?: readonly Phase[];
  readonly path: Path;
}

/** A calculation of the coach's own. */
export interface Cell {
  readonly name: string;
  /** Without its "=". */
  readonly formula: string;
  readonly note?: string;
  /** Unit to show the value in. */
  readonly unit?: string;
  /** What the value should lie between, as formulas. */
  readonly expect?: { readonly least?: string; readonly most?: string };
  readonly chart: boolean;
  /** Of the formula's text. */
  readonly path: Path;
}

/** What the file says of the athlete before any program. */
export type Measured = Pick<
  Scenario,
  'convention' | 'subject' | 'tests' | 'repeatability' | 'lifts'
>;

export interface Scenario {
  readonly file: string;
  readonly title: string;
  readonly note?: string;
  /** How the file writes angles; values here are already anatomical. */
  readonly convention: 'flexion' | 'included';
  readonly subject: Subject;
  readonly tests: readonly Test[];
  readonly target: Target;
  /** Lifts that the file declares beside those of the catalogue. */
  readonly lifts: readonly Lift[];
  readonly machines: Readonly<Record<string, Machine>>;
  readonly chains: Readonly<Record<string, Chains>>;
  readonly bands: Readonly<Record<string, Bands>>;
  readonly minutesPerWeek?: number;
  /** Tests after training, in order of time. */
  readonly retests: readonly Retest[];
  /** How far tests differ between days without training between them. */
  readonly repeatability: readonly RepeatedTest[];
  readonly programs: readonly Program[];
  readonly cells: readonly Cell[];
  /** The coach's own order of the report, in place of the standard one. */
  readonly notebook?: readonly NotebookBlock[];
  /** The published study whose training groups the programs are. */
  readonly study?: Study;
}
