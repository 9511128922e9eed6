import type { Fraction, Path, Radian } from '../scenario.ts';

/**
 * A published training study, once read: what its groups gained, in SI units, radians and
 * anatomical angles. What the groups did are the scenario's programs of the same names.
 */

/** Where the study was published. */
export interface Citation {
  readonly authors: string;
  readonly year: number;
  readonly journal?: string;
  /** Volume and pages, as in "113:2133–2142". */
  readonly pages?: string;
  readonly doi?: string;
  /** How these details themselves are known. */
  readonly known: 'read' | 'recalled';
}

/** A joint action or a lift, over angles of the joint that leads; one angle when both are equal. */
interface Placed {
  readonly of: string;
  readonly from: Radian;
  readonly to: Radian;
}

/** Part of a muscle's length: a place from its upper end, or a third in words. */
interface Part {
  readonly place?: Fraction;
  readonly region?: 'proximal' | 'middle' | 'distal';
}

/** What was measured before and after. */
export type Outcome =
  /** Torque or force of maximal holds, mean over the angles. */
  | (Placed & { readonly kind: 'isometric' })
  /** Heaviest single repetition over a range. */
  | (Placed & { readonly kind: 'single' })
  /** Heaviest load for a number of repetitions over a range. */
  | (Placed & { readonly kind: 'repetition maximum'; readonly reps: number })
  /** Torque or force at a set speed; without angles the peak, wherever it lies. */
  | (Pick<Placed, 'of'> & {
      readonly kind: 'isokinetic';
      readonly from?: Radian;
      readonly to?: Radian;
      readonly way: 'lifting' | 'lowering' | 'both';
      /** Radians a second; undefined if it is not known. */
      readonly speed?: number;
    })
  /** Muscle size. `muscles` are rows of the muscle tables. */
  | (Part & {
      readonly kind: 'growth';
      readonly of: string;
      readonly muscles: readonly string[];
      readonly measure: 'volume' | 'area' | 'physiological area' | 'thickness';
    })
  /** Fibre (fascicle) length. */
  | (Part & { readonly kind: 'fibres'; readonly of: string; readonly muscles: readonly string[] })
  /** Angle of the largest torque, in radians, positive where the muscles are longer. */
  | { readonly kind: 'optimum'; readonly of: string }
  /** Lever of a muscle's tendon. */
  | { readonly kind: 'arm'; readonly of: string; readonly muscles: readonly string[] };

/** As given in the source: spread between people, or standard error of the change. */
export type Spread =
  | { readonly kind: 'sd' | 'se'; readonly value: number }
  | { readonly kind: 'unknown' };

/** A change of a share of the first value (radians for an optimum), or only which way it went. */
export type Finding =
  | { readonly kind: 'size'; readonly change: number; readonly spread: Spread }
  | {
      readonly kind: 'direction';
      readonly direction: 'clear rise' | 'no clear change' | 'clear fall';
    };

export interface Observed {
  readonly outcome: Outcome;
  readonly found: Finding;
  /** Weeks of training before it was measured; undefined: the whole program. */
  readonly afterWeeks?: number;
  readonly source: 'abstract' | 'table' | 'figure' | 'meta-analysis';
  /** Why it is weak. */
  readonly doubt?: string;
  /** False for what is kept for the record and not to be fitted. */
  readonly isForFit: boolean;
  readonly path: Path;
}

export interface StudyGroup {
  /** Name of the scenario's program. */
  readonly program: string;
  readonly people?: number;
  /** What the source leaves open and what was taken for it. */
  readonly assumed: readonly string[];
  /** What was also found and has no place among the outcomes. */
  readonly leftOut: readonly string[];
  readonly observed: readonly Observed[];
  readonly path: Path;
}

export interface Study {
  readonly cited: Citation;
  /** How the findings are known. */
  readonly known: 'read' | 'recalled';
  readonly groups: readonly StudyGroup[];
  readonly path: Path;
}
