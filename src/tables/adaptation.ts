import type { Sourced } from './sourced.ts';

/**
 * Coefficients of the adaptation model; `physiology/adaptation.ts` and `dose.ts` give the
 * equations. Rows marked fitted are the least-squares values, with their standard errors, of
 * `test/recipes/fitAdaptation.ts` over ten studies of squats and knee extension; the rest those
 * studies cannot tell.
 */
export const adaptation = {
  /** Largest neural gain of an untrained person. */
  driveAmplitude: fitted(0.395, 'share', 0.11),
  /** Local drive dose that fills half of it. */
  driveHalfDose: fitted(2.42, 'hard sets a week', 1.2),
  /** u: how steeply effort counts toward drive. */
  driveEffortPower: fitted(2.22, 'exponent', 0.56),
  /** κ: how far low fibre tension lowers the drive dose. */
  driveTensionPower: fitted(0.957, 'exponent', 0.33),
  /** h: fall of the drive dose for each degree trained beyond 40°. */
  driveFadePerDeg: fitted(0.00951, 'share per degree', 0.004),
  /** Spread toward shorter muscle when trained at 40° … */
  widthShorterAt40: fitted(9.7, 'degrees', 3.7),
  /** … and at 90° (held near wide: gains reach 15–105°, Bandy 1993). */
  widthShorterAt90: fitted(35.1, 'degrees', 6.6),
  /** Spread toward longer muscle when trained at 40° … */
  widthLongerAt40: fitted(24.6, 'degrees', 7.0),
  /** … and at 90°. */
  widthLongerAt90: fitted(17.9, 'degrees', 6.2),
  /** Pace of neural gains. */
  driveWeeks: {
    value: 4,
    unit: 'weeks',
    spread: 1,
    known: 'prior',
    source: 'early gains come within weeks; a working value',
  },
  /** G: largest growth of an untrained person at middle length. */
  growthAmplitude: fitted(0.301, 'share', 0.063),
  /** Tension dose that fills half of it. */
  growthHalfDose: {
    value: 5,
    unit: 'hard sets a week',
    spread: 2,
    known: 'prior',
    source:
      'size rises with weekly sets and flattens (Pelland 2024, preprint); the number is a judgement',
  },
  /** g: how steeply tension counts toward growth. */
  growthTensionPower: {
    value: 1,
    unit: 'exponent',
    spread: 0.3,
    known: 'prior',
    source: 'nothing published',
  },
  /** b: growth at long against middle length; 1.4 to 2.7 long against short in untrained people. */
  growthLengthSlope: fitted(0.35, 'share', 0.13),
  /** t: distal against proximal growth after long-length work. */
  growthDistalTilt: {
    value: 0.25,
    unit: 'share',
    spread: 0.15,
    known: 'prior',
    source: 'direction Noorkõiv 2014, Ema 2013; size is a judgement',
  },
  /** Pace of growth, and of fibre shortening. */
  growthWeeks: {
    value: 20,
    unit: 'weeks',
    spread: 6,
    known: 'prior',
    source: 'growth still rises after months; a working value',
  },
  /** Largest fibre lengthening by long-length work. */
  seriesLong: {
    value: 0.065,
    unit: 'share',
    spread: 0.03,
    known: 'derived',
    source:
      '+5.4 ± 4.9 % (Noorkõiv 2014), +4.9 ± 2.0 % (Valamatos 2018), +6.3 and +3.1 % (Blazevich 2007) at usual doses',
  },
  /** Largest fibre shortening by short-length work. */
  seriesShort: {
    value: 0.03,
    unit: 'share',
    spread: 0.02,
    known: 'derived',
    source: '−3 % in another muscle (Hinks 2021)',
  },
  /** Tension dose that fills half of either. */
  seriesHalfDose: {
    value: 5,
    unit: 'hard sets a week',
    spread: 2,
    known: 'prior',
    source: 'taken as that of growth',
  },
  /** Pace of lengthening. */
  seriesWeeks: {
    value: 4,
    unit: 'weeks',
    spread: 1,
    known: 'derived',
    source: 'no more after five weeks (Blazevich 2007)',
  },
  /** Share of neural gain that passes between moving and held work. */
  transferAcross: fitted(0.545, 'share', 0.098),
  /** K: largest gain of a single from practising the lift. */
  practiceAmplitude: fitted(0.195, 'share', 0.06),
  /** r: how steeply the practised effort counts. */
  practicePower: fitted(2.22, 'exponent', 0.63),
  /** Sets a week that fill half of it. */
  practiceHalfDose: {
    value: 2,
    unit: 'sets a week',
    spread: 1,
    known: 'prior',
    source: 'nothing published',
  },
  /** Amplitudes of a trained person over those of an untrained one. */
  trainedShare: fitted(0.45, 'share', 0.096),
} as const satisfies Readonly<Record<string, Sourced>>;

export type Coefficients = Readonly<Record<keyof typeof adaptation, number>>;

/** The coefficients as plain numbers. */
export const coefficients = Object.fromEntries(
  Object.entries(adaptation).map(([name, row]) => [name, row.value]),
) as Coefficients;

/**
 * Fixed shape of the dose–gain curves, degrees of knee flexion: the two angles at which the widths
 * and the fade are stated, the stretch over which the width changes, its floor and that of the
 * fade, and the angle over which work passes from short to long. Working values: no study tells
 * them apart from the fitted coefficients.
 */
export const kernel = {
  shortAtDeg: 40,
  longAtDeg: 90,
  fromDeg: 20,
  toDeg: 110,
  leastWidthDeg: 6,
  leastFade: 0.2,
  lengthScaleDeg: 25,
} as const;

/**
 * Largest gain of isometric torque found in a group of the studies read: +40.5 % (Kubo 2010, after
 * months of holds; read). No forecast goes beyond it.
 */
export const largestGain: Sourced = {
  value: 0.405,
  unit: 'share',
  spread: 0.1,
  known: 'read',
  source: 'Kubo 2010, knee extension holds',
};

/**
 * How far the model misses the difference between two groups of one study, as a share of the
 * larger predicted gain (root mean square over the studies it was fitted to). Programs closer than
 * this cannot be told apart.
 */
export const contrastMiss: Sourced = {
  value: 0.48,
  unit: 'share of the larger gain',
  spread: 0.1,
  known: 'fitted',
  source: fittedTo(),
};

/** The same for one group's gain itself, share of the gain. */
export const gainMiss: Sourced = {
  value: 0.42,
  unit: 'share of the gain',
  spread: 0.1,
  known: 'fitted',
  source: fittedTo(),
};

function fitted(value: number, unit: string, spread: number): Sourced {
  return { value, unit, spread, known: 'fitted', source: fittedTo() };
}

/** Studies behind every fitted row. */
export const fittedStudies: readonly string[] = [
  'Rhea 2016',
  'Kubo 2019',
  'Bloomquist 2013',
  'Hartmann 2012',
  'Pallarés 2020',
  'Valamatos 2018',
  'McMahon 2014',
  'Noorkõiv 2014',
  'Alegre 2014',
  'Folland 2005',
];

function fittedTo(): string {
  return 'ten studies of squats and knee extension, named above';
}
