import { activeShortening, regions as quadricepsRegions } from './quadriceps.ts';
import type { Knowledge, Sourced } from './sourced.ts';
import type { ArmCurve } from './tendonArms.ts';

/** Joints the muscles of these tables turn. The shoulder end of biceps and triceps is left out. */
export type MuscleJoint = 'ankle' | 'knee' | 'hip' | 'elbow';

/** Joint angles, degrees: flexion positive, ankle dorsiflexion positive, 0 = standing straight. */
export type MusclePosture = Readonly<Partial<Record<MuscleJoint, number>>>;

/** One muscle or one head of it, one side of the body. */
export interface Muscle {
  readonly name: string;
  /** Physiological cross-section, cm², as published for the kind of body named by `sample`. */
  readonly area: Sourced;
  readonly sample: 'cadaver' | 'living';
  /** Fibre length at the optimum, m. */
  readonly fibreLength: Sourced;
  /** Angle between fibres and tendon, degrees. */
  readonly pennation: Sourced;
  /** Resting sarcomere length, µm, at `postureDeg`. */
  readonly restingSarcomere: Sourced;
  readonly postureDeg: MusclePosture;
  /** Change of resting fibre length over change of muscle–tendon length. */
  readonly gear: Sourced;
  readonly shortening: ActiveShortening;
  readonly arms: Readonly<Partial<Record<MuscleJoint, ArmCurve>>>;
  readonly regions: RegionSet;
}

/** Share by which fibres shorten at full effort, by the angle of one joint; straight lines, held beyond. */
export interface ActiveShortening {
  readonly joint: MuscleJoint;
  readonly anglesDeg: readonly number[];
  readonly share: readonly number[];
  readonly spread: number;
  readonly known: Knowledge;
  readonly source: string;
}

/**
 * Regions of a muscle and their leverage at one joint, as a share of the whole muscle's arm:
 * lever + tiltPer40Deg · (θ − neutralDeg)/40. Weighted by share of area they average 1 at any angle.
 */
export interface RegionSet {
  readonly joint: MuscleJoint;
  readonly neutralDeg: number;
  readonly parts: readonly {
    readonly name: string;
    /** Share of the area. */
    readonly share: number;
    readonly lever: number;
    readonly tiltPer40Deg: number;
  }[];
  /** Spread of tiltPer40Deg. */
  readonly tiltSpread: number;
  readonly known: Knowledge;
  readonly source: string;
}

/**
 * Area of a young living muscle over that of the cadaver tables. The quadriceps is known both ways:
 * 280.1 cm² in six men (Narici 1992; read) against 85.9 cm² (Ward 2009; recalled), ratio 3.26. For
 * the muscles known only from cadavers: midway between 1 and that ratio, half the range as spread.
 * With 27.5 N/cm² it brings plantarflexion (160 N·m), hip extension (220–250) and seated knee flexion
 * (100) near measured torques and leaves the elbow at half of them; the size is fitted to each
 * athlete, so the balance between muscles is what this row decides.
 */
export const livingOverCadaver: Sourced = {
  value: 2.13,
  unit: 'ratio',
  spread: 1.13,
  known: 'derived',
  source:
    'Narici 1992, Eur J Appl Physiol 65:438 (read), over Ward 2009, Clin Orthop 467:1074 (recalled)',
};

/**
 * Areas of the knee extensors in cadavers, cm² (Ward 2009; recalled), the other side of the
 * conflict with quadriceps.ts.
 */
export const cadaverKneeExtensorArea: Readonly<Record<string, number>> = {
  'vastus lateralis': 35.1,
  'vastus intermedius': 16.7,
  'vastus medialis': 20.6,
  'rectus femoris': 13.5,
};

/**
 * Share of the muscle–tendon length change that resting fibres take. 0.30 in the vastus lateralis
 * (Chen 2016; derived with a lever of 40 mm) and 0.55 ± 0.13 in the tibialis anterior (Herbert
 * 2002, J Physiol 539:637; read): midway, half the difference as spread.
 */
export const fibreGear: Sourced = {
  value: 0.425,
  unit: 'share',
  spread: 0.125,
  known: 'derived',
  source: 'Chen 2016, J Biomech 49:2989; Herbert 2002, J Physiol 539:637',
};

/**
 * Gear of the knee extensors: the resting stretch measured between 50° and 110° (0.33 µm of 2.7)
 * over the excursion of this project's lever between them (35.1 mm, 0.354 fibre lengths of the
 * vastus lateralis). With a lever of 40 mm throughout it would be 0.30; 0.55 as in the tibialis
 * anterior is carried as spread.
 */
export const kneeExtensorGear: Sourced = {
  value: 0.3457,
  unit: 'share',
  spread: 0.125,
  known: 'derived',
  source: 'Chen 2016, J Biomech 49:2989, over the levers of quadriceps.ts; Herbert 2002',
};

/** Knee extensors: measured in the vastus lateralis (quadriceps.ts). */
export const kneeExtensorShortening: ActiveShortening = {
  joint: 'knee',
  anglesDeg: [activeShortening.nearExtensionDeg, activeShortening.flexedDeg],
  share: [activeShortening.nearExtension, activeShortening.flexed],
  spread: 0.05,
  known: 'read',
  source: activeShortening.source,
};

/**
 * Other muscles: no number by angle was read. The middle of the vastus lateralis' 30 and 5 % at
 * every angle, half the range as spread.
 */
export function typicalShortening(joint: MuscleJoint): ActiveShortening {
  return {
    joint,
    anglesDeg: [0],
    share: [0.175],
    spread: 0.125,
    known: 'prior',
    source: 'prior from the vastus lateralis (Fukunaga 1997, J Biomech)',
  };
}

/** Knee extensors: the regions of quadriceps.ts, proximal and distal. */
export const kneeExtensorRegions: RegionSet = {
  joint: 'knee',
  neutralDeg: quadricepsRegions.neutralDeg,
  parts: quadricepsRegions.names.map((name, i) => ({
    name,
    share: quadricepsRegions.area[i] ?? 0,
    lever: 1,
    tiltPer40Deg: (i === 0 ? -1 : 1) * quadricepsRegions.leverTiltPer40Deg,
  })),
  tiltSpread: quadricepsRegions.leverTiltPer40Deg,
  known: quadricepsRegions.known,
  source: quadricepsRegions.source,
};

/** Two halves with the same lever: nothing is published, so no tilt, with the knee extensors' spread. */
export function evenHalves(joint: MuscleJoint, first = 'proximal', second = 'distal'): RegionSet {
  return {
    joint,
    neutralDeg: 0,
    parts: [first, second].map((name) => ({ name, share: 0.5, lever: 1, tiltPer40Deg: 0 })),
    tiltSpread: 0.03,
    known: 'prior',
    source: 'no published number; prior of this project',
  };
}

/** A value with the middle and half the range of two sources, or one source and its spread. */
export function row(
  value: number,
  spread: number,
  unit: string,
  known: Knowledge,
  source: string,
): Sourced {
  return { value, unit, spread, known, source };
}
