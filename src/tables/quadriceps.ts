import type { Sourced } from './sourced.ts';

/**
 * The four heads of the knee extensors.
 *
 * Areas: Narici, Landoni and Minetti 1992, Eur J Appl Physiol 65:438 (in vivo, six men; read).
 * Cadaver areas are three times smaller and give the vastus intermedius a smaller share (Ward
 * 2009, recalled): the absolute size is fitted to each athlete, the shares carry that conflict.
 * Fibre lengths and pennation: Ward, Eng, Smallwood and Lieber 2009, Clin Orthop 467:1074
 * (recalled). Resting sarcomere length at 50° of knee flexion: vastus lateralis 2.84 µm measured
 * in vivo (Chen, Sanchez, Schnitzer and Delp 2016, J Biomech 49:2989; read); the other heads
 * scaled by Ward's ratios at one posture (derived).
 */
export interface MuscleHead {
  readonly name: string;
  /** Physiological cross-section, cm², and its spread. */
  readonly area: number;
  readonly areaSpread: number;
  /** Fibre length at the optimum, m. */
  readonly fibreLength: number;
  /** Degrees. */
  readonly pennationDeg: number;
  /** Resting sarcomere length at 50° of knee flexion, µm. */
  readonly restingSarcomere: number;
}

export const kneeExtensorHeads: readonly MuscleHead[] = [
  {
    name: 'vastus lateralis',
    area: 62.4,
    areaSpread: 25.4,
    fibreLength: 0.0994,
    pennationDeg: 18.4,
    restingSarcomere: 2.84,
  },
  {
    name: 'vastus intermedius',
    area: 83.5,
    areaSpread: 11.7,
    fibreLength: 0.0993,
    pennationDeg: 4.5,
    restingSarcomere: 2.88,
  },
  {
    name: 'vastus medialis',
    area: 68.0,
    areaSpread: 26.6,
    fibreLength: 0.0968,
    pennationDeg: 29.6,
    restingSarcomere: 2.97,
  },
  {
    name: 'rectus femoris',
    area: 66.2,
    areaSpread: 12.1,
    fibreLength: 0.0759,
    pennationDeg: 13.9,
    restingSarcomere: 3.21,
  },
];

/** Force per area, N/cm²: 25 ± 2 (Narici 1992) and 30 ± 5 (Erskine 2009), both read, both in vivo. */
export const specificTension: Sourced = {
  value: 27.5,
  unit: 'N/cm²',
  spread: 5,
  known: 'read',
  source: 'Narici 1992; Erskine 2009, Eur J Appl Physiol',
};

/**
 * Effective lever of the quadriceps tendon (knee torque over quadriceps force), metres, by knee
 * flexion in degrees. In vivo 45.5–47.1 mm at 10° and 31.5–32.9 mm at 50° (effective quadriceps
 * moment arm study, J Biomech 2015); cadaver excursion 54.4 mm at 35°, 30.9 mm at 85°, mean 42.1
 * over 0–90° (Wendt and Johnson 1985). They conflict between 20° and 70°: midway here, spread
 * 10 mm. Beyond 85° nothing was read: held constant.
 */
export const kneeExtensorTendonArm = {
  anglesDeg: [0, 10, 35, 50, 85],
  arm: [0.046, 0.0463, 0.046, 0.04, 0.0309],
  spread: 0.01,
  known: 'derived',
  source:
    'J Biomech 2015 (effective quadriceps moment arm); Wendt and Johnson 1985, J Bone Joint Surg 67A:726',
} as const;

/** Resting fibre stretch by knee flexion, optimum lengths per degree: (3.17 − 2.84) µm over 60°, over 2.7 µm. */
export const restingStretch: Sourced = {
  value: 0.33 / 60 / 2.7,
  unit: 'optimum lengths per degree',
  spread: 0.0006,
  known: 'derived',
  source: 'Chen 2016, J Biomech 49:2989 (vastus lateralis, 50° and 110°)',
};

/**
 * Share by which fibres shorten when they contract fully: 30 % near extension, 5 % flexed
 * (Fukunaga 1997, vastus lateralis; read). "Near extension" is taken as 10°, "flexed" as 100°.
 */
export const activeShortening = {
  nearExtensionDeg: 10,
  nearExtension: 0.3,
  flexedDeg: 100,
  flexed: 0.05,
  known: 'read',
  source: 'Fukunaga 1997, J Biomech (keynote abstract)',
} as const;

/**
 * Corner points of the human sarcomere's length–tension curve, µm and share of the largest force
 * (filament lengths of Walker and Schrodt 1974; values as used by Rassier, MacIntosh and Herzog
 * 1999, J Appl Physiol 86:1445; recalled). Optimum: the middle of the plateau as used with
 * normalised fibre lengths, 2.7 µm.
 */
export const sarcomereCorners = {
  lengths: [1.27, 1.7, 2.64, 2.81, 4.24],
  forces: [0, 0.84, 1, 1, 0],
  optimum: 2.7,
  known: 'recalled',
  source: 'Walker and Schrodt 1974; Rassier, MacIntosh and Herzog 1999',
} as const;

/** Spread of sarcomere length inside one muscle, µm (Chen 2016; read): rounds the curve's corners. */
export const sarcomereSpread: Sourced = {
  value: 0.21,
  unit: 'µm',
  spread: 0.09,
  known: 'read',
  source: 'Chen 2016, J Biomech 49:2989',
};

/**
 * Regions of each head: share of area and relative lever by knee angle. No published numbers
 * exist for the quadriceps; the distal half is given a lever that leads when the knee is flexed,
 * by 3 % at 110° and lagging as much at 30° (a prior with a spread as large as itself).
 */
export const regions = {
  names: ['proximal', 'distal'],
  area: [0.5, 0.5],
  leverTiltPer40Deg: 0.03,
  neutralDeg: 70,
  known: 'prior',
  source: 'no published number; prior of this project',
} as const;
