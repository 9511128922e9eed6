import type { ActionName } from './actions.ts';
import type { Knowledge, Sourced } from './sourced.ts';

/**
 * How strong people are at which angle, before any test of the athlete at hand.
 */

/**
 * Shape of maximal isometric knee extension torque, share of the peak, by knee flexion (degrees).
 *
 * 20–100°: Marginson and Eston 2001, J Sports Sci 19:875 (eight men, 35.2 ± 4.3, 63.6 ± 9.1,
 * 93.6 ± 6.5, 100, 77.9 ± 13.7 %; read), moved inside 1.5 of its own SD toward a 2021 study (Front
 * Physiol 12:789867, 16 men; read) that found 110° only 42 ± 12 % above 20°, where the first,
 * continued, gives about double. The curve meets both at their edges (+53 %); the difference is
 * carried as spread. 0° is continued by eye. Beyond 110° no isometric test was read; squats
 * below parallel lose only 3.6 % of load to those at parallel (Cotter 2013, J Strength Cond Res
 * 27:1765), so the curve is continued flatter (prior; passive stretch and the calf against the
 * thigh are part of it).
 */
export const kneeExtensionShape = {
  anglesDeg: [0, 20, 40, 60, 80, 100, 110, 125, 150],
  share: [0.25, 0.415, 0.67, 0.936, 1, 0.71, 0.635, 0.6, 0.57],
  spread: [0.12, 0.06, 0.09, 0.065, 0.05, 0.12, 0.15, 0.2, 0.2],
  known: 'derived',
  source:
    'Marginson and Eston 2001, J Sports Sci 19:875; Front Physiol 2021, 12:789867; ends continued by eye',
} as const;

/**
 * Mid-range maximal knee extension torque, N·m per kg of body mass: middle of the 95 % bands of
 * the mean of Šarabon, Kozinc and Perman 2021, Front Physiol 12:767941 (411 studies, men
 * 2.92–3.45, women 2.08–2.74; read), taken to hold at 60°. `spread` is between persons (20–25 %).
 */
export const kneeExtensionPerKg: Readonly<Record<'male' | 'female' | 'pooled', Sourced>> = {
  male: perKg(3.185, 'Šarabon 2021, Front Physiol 12:767941'),
  female: perKg(2.41, 'Šarabon 2021, Front Physiol 12:767941'),
  pooled: perKg(2.8, 'midway between the sexes of Šarabon 2021'),
};
export const kneeExtensionReferenceDeg = 60;

/** Years of training from which a person counts as trained (common practice for hard programs). */
export const trainedFromYears = 1;

/**
 * Hip extension, shape by hip flexion (degrees): share of the value at 90°, from the mean-strength
 * regression 3338.1 − 15.711·α + 0.04626·α², α the included angle (Chaffin and Andersson,
 * Occupational Biomechanics; recalled). The extensors act as one group; that the curve still
 * rises beyond 90° is that regression's, no measurement beyond 120° was read.
 */
export const hipExtensionShape = {
  anglesDeg: [0, 30, 60, 90, 120, 150],
  share: [0.874, 0.88, 0.922, 1, 1.114, 1.114],
  known: 'recalled',
  source: 'Chaffin and Andersson, Occupational Biomechanics (regression)',
} as const;

/**
 * Hip extension at 90°, N·m per kg, one side. The sources differ twofold: 2.8 by regressions on
 * dynamometer tests (225 N·m for the mean man, Chaffin and Andersson; 227 N·m for 80 kg by
 * Anderson, Madigan and Nussbaum 2007; both recalled), while powerlifters carried 324 N·m a side
 * at 65 % of their best (Wretenberg 1996, Med Sci Sports Exerc 28:218; read), and the areas and
 * levers of the muscles would allow more than 5. Set between, with the difference as spread;
 * women at 0.8 of men (0.53 and 1.04 in the two regressions).
 */
export const hipExtensionPerKg: Readonly<Record<'male' | 'female' | 'pooled', Sourced>> = {
  male: hip(3.9),
  female: hip(3.1),
  pooled: hip(3.5),
};

/** Strength of an action by angle before any test: shape, and size at one angle by body mass. */
export interface StrengthCurve {
  /** Degrees of flexion and share of the value at `atDeg`. */
  readonly anglesDeg: readonly number[];
  readonly share: readonly number[];
  readonly atDeg: number;
  /** N·m per kg of body mass at `atDeg`, one side. */
  readonly perKg: Readonly<Record<'male' | 'female' | 'pooled', Sourced>>;
}

/** Strength curves of the actions other than knee extension, which has its own above. */
export const strengthCurves: Readonly<
  Record<Exclude<ActionName, 'knee extension'>, StrengthCurve>
> = {
  'hip extension': { ...hipExtensionShape, atDeg: 90, perKg: hipExtensionPerKg },
  /**
   * Men 0.85–1.20 extended, 1.15–1.62 in mid-range, 0.96–1.54 flexed (Šarabon 2021; read), taken
   * at 20°, 60° and 95°; women at 0.84 of men per kg (norms at 80°, PMC10823066; read). A review
   * recalled otherwise puts the seated peak at 20–45°: carried as spread.
   */
  'knee flexion': {
    anglesDeg: [0, 20, 60, 95, 130],
    share: [0.68, 0.74, 1, 0.9, 0.6],
    atDeg: 60,
    perKg: sexes(1.385, 1.16, 'Šarabon 2021, Front Physiol 12:767941; PMC10823066'),
  },
  /**
   * Flat: one large study finds the most at 105° of 0–105° (Ito 2024, Isokinet Exerc Sci 32:359;
   * read), older models near 0° (recalled). Size between 2.0 and 2.9 N·m/kg of two models (recalled).
   */
  'hip flexion': {
    anglesDeg: [-20, 120],
    share: [1, 1],
    atDeg: 45,
    perKg: sexes(2.4, 1.7, 'Anderson 2007; Chaffin and Andersson (recalled)', 'recalled'),
  },
  /**
   * 207.8 ± 38.1 N·m at 25° of dorsiflexion in ten men, falling steadily toward plantarflexion
   * (Solianik, Baltic J Sport Health Sci; read); the shape between from a recalled cosine with its
   * peak at 23° (Anderson 2007). Straight knee.
   */
  'ankle plantarflexion': {
    anglesDeg: [-45, -25, 0, 25, 40],
    share: [0.2, 0.45, 0.82, 1, 0.97],
    atDeg: 25,
    perKg: sexes(2.66, 1.9, 'Solianik; women 35 % lower (Fugl-Meyer 1980)'),
  },
  /**
   * 85, 60 and 52 N·m for men and 43, 23 and 24 for women at 90°, 45° and 135° of flexion (Kamon
   * 1981 in Johnson, Biomechanics and Exercise Physiology, Table 2.2.2, read as included angles).
   */
  'elbow flexion': {
    anglesDeg: [0, 45, 90, 135],
    share: [0.5, 0.7, 1, 0.6],
    atDeg: 90,
    perKg: sexes(1.09, 0.69, 'Kamon 1981 in Johnson, Table 2.2.2'),
  },
  /**
   * Flexion over 1.19 (Lategan and Krüger 2003, isokinetic; read); broad peak from 60° to 100°, about
   * 78 % at 30° and 120° (recalled).
   */
  'elbow extension': {
    anglesDeg: [0, 30, 60, 100, 120, 140],
    share: [0.6, 0.78, 1, 1, 0.78, 0.6],
    atDeg: 80,
    perKg: sexes(0.92, 0.58, 'Lategan and Krüger 2003; Kamon 1981'),
  },
  /** Men 89.9 N·m at 0° and 68.6 at 45°, women about half (occupational study; read); beyond 45° continued. */
  'shoulder flexion': {
    anglesDeg: [-20, 0, 45, 90, 150],
    share: [1, 1, 0.763, 0.6, 0.4],
    atDeg: 0,
    perKg: sexes(1.15, 0.7, 'dynamic shoulder flexion strength, occupational study'),
  },
  /** Nothing was found by angle: as strong as shoulder flexion at 0°, at every angle (prior). */
  'shoulder horizontal adduction': {
    anglesDeg: [-20, 120],
    share: [1, 1],
    atDeg: 45,
    perKg: sexes(1.15, 0.7, 'no number found; taken as shoulder flexion', 'prior'),
  },
};

/**
 * Plantarflexion torque with the knee bent by 90° or more over that with it straight: 0.60 to 0.94
 * in three studies (PMID 39577118; Fugl-Meyer 1980; a student thesis; read), the middle here.
 */
export const bentKneePlantarflexion: Sourced = {
  value: 0.75,
  unit: 'ratio',
  spread: 0.15,
  known: 'derived',
  source: 'PMID 39577118; Fugl-Meyer 1980',
};

/**
 * Share of a muscle that the will can use. Constant over angles: studies disagree even on the
 * sign of a slope (Kubo 2004 up, Babault 2003 down, Kooistra 2007 flat). Recommended working
 * values of a reading of eight studies.
 */
export const neuralDrive: Readonly<Record<'trained' | 'untrained', Sourced>> = {
  trained: drive(0.95),
  untrained: drive(0.9),
};

/**
 * Torque the antagonists take back, share of the agonists': 7–8 % (O'Brien 2009, Eur J Appl
 * Physiol 106:849; read).
 */
export const coactivation: Sourced = {
  value: 0.075,
  unit: 'share',
  spread: 0.02,
  known: 'read',
  source: 'O’Brien 2009, Eur J Appl Physiol 106:849',
};

function perKg(value: number, source: string): Sourced {
  return { value, unit: 'N·m/kg', spread: 0.22 * value, known: 'derived', source };
}

function sexes(
  male: number,
  female: number,
  source: string,
  known: Knowledge = 'derived',
): StrengthCurve['perKg'] {
  const row = (value: number): Sourced => ({
    value,
    unit: 'N·m/kg',
    spread: 0.25 * value,
    known,
    source,
  });
  return { male: row(male), female: row(female), pooled: row((male + female) / 2) };
}

function hip(value: number): Sourced {
  return {
    value,
    unit: 'N·m/kg',
    spread: 0.3 * value,
    known: 'derived',
    source: 'Chaffin and Andersson; Anderson 2007 (recalled); Wretenberg 1996, which conflict',
  };
}

function drive(value: number): Sourced {
  return {
    value,
    unit: 'share',
    spread: 0.05,
    known: 'derived',
    source: 'Kooistra 2007, O’Brien 2009, Babault 2001 and others, which conflict',
  };
}
