import type { Family } from './calibrationValues.ts';

/**
 * What the last calibration found, as stored in `evidence.json`: points and, for an optimum,
 * degrees; rounded to a tenth. Written by `npm run calibrate` only.
 */
export interface EvidenceResults {
  readonly studies: readonly EvidenceStudy[];
  /** The model and what it is held against, each without the study predicted. */
  readonly scores: readonly ScoreLine[];
  /** How many observations lie inside their 80 % intervals. */
  readonly coverage: readonly {
    readonly family: Family;
    readonly inside: number;
    readonly count: number;
  }[];
  /** Contrasts of 4 points or more by study. */
  readonly contrasts: readonly {
    readonly study: string;
    readonly family: Family;
    readonly right: number;
    readonly count: number;
    readonly weighted: number;
  }[];
  /** Spread of ln gain between studies, and what the model leaves out by family. */
  readonly amplitudeSpread: number;
  readonly discrepancy: Readonly<Record<Family, number>>;
  /** Left-out miss of a strength gain over the predicted gain; of a difference over the larger. */
  readonly gainMiss: number;
  readonly contrastMiss: number;
}

export interface EvidenceStudy {
  readonly name: string;
  readonly title: string;
  /** Its own gain over that of the studies’ middle, by the fit to all. */
  readonly amplitude: number;
  readonly groups: readonly {
    readonly program: string;
    readonly trained: boolean;
    readonly people?: number;
    readonly outcomes: readonly EvidenceOutcome[];
  }[];
}

export interface EvidenceOutcome {
  readonly what: string;
  readonly family: Family;
  readonly observed?: number;
  readonly error?: number;
  /** True where the source gives no error and a working value stands in. */
  readonly errorTaken?: boolean;
  /** Where the source says only which way it went. */
  readonly found?: string;
  /** By the fit to all studies with this study’s own amplitude; without the study; its 80 % interval. */
  readonly fitted?: number;
  readonly predicted?: number;
  readonly low?: number;
  readonly high?: number;
  /** Why the model has no value. */
  readonly because?: string;
  readonly doubt?: string;
  /** For the record only: neither fitted nor scored. */
  readonly record?: boolean;
}

export interface ScoreLine {
  readonly name: string;
  readonly kind: 'model' | 'fitted' | 'baseline' | 'without';
  readonly families: Readonly<
    Record<
      'strength' | 'growth' | 'fibres' | 'optimum',
      {
        readonly count: number;
        readonly miss: number;
        readonly relative: number;
        readonly weightedMiss: number;
        readonly shapeMiss: number;
      }
    >
  >;
  /** Of all clear contrasts, and of strength alone; left out for rules that tell no groups apart. */
  readonly directions?: DirectionLine;
  readonly strengthDirections?: DirectionLine;
}

export interface DirectionLine {
  readonly right: number;
  readonly count: number;
  readonly low: number;
  readonly high: number;
  readonly weighted: number;
  readonly meanOfStudies: number;
  readonly studies: number;
}
