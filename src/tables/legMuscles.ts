import {
  evenHalves,
  fibreGear,
  kneeExtensorGear,
  kneeExtensorRegions,
  kneeExtensorShortening,
  type Muscle,
  type RegionSet,
  row,
  typicalShortening,
} from './muscleRow.ts';
import { kneeExtensorHeads, type MuscleHead } from './quadriceps.ts';
import {
  achillesAnkle,
  adductorMagnusHip,
  bicepsFemorisHip,
  bicepsFemorisKnee,
  gastrocnemiusKnee,
  gluteusMaximusHip,
  iliacusHip,
  psoasHip,
  quadricepsKnee,
  rectusFemorisHip,
  semimembranosusHip,
  semimembranosusKnee,
  semitendinosusHip,
  semitendinosusKnee,
} from './tendonArms.ts';

/**
 * Muscles of hip, knee and ankle.
 *
 * Areas, fibre lengths (normalised to sarcomeres of 2.7 µm), pennation and sarcomere lengths: Ward,
 * Eng, Smallwood and Lieber 2009, Clin Orthop 467:1074 (21 cadaver limbs fixed near anatomical
 * posture). Its table was recalled row by row, not read; the abstract, read, confirms the order of
 * areas and of fibre lengths. Left out: sartorius and gracilis (no lever at the knee was had; 2 cm²
 * each), gluteus medius and the small hip muscles (mostly frontal plane).
 */
const ward =
  'Ward, Eng, Smallwood and Lieber 2009, Clin Orthop 467:1074, table of 27 muscles (SDs of a few rows recalled, else by their pattern)';
const kumazaki = 'Kumazaki 2022, Juntendo Med J 68(4), pp. 356–360 (22 limbs; read)';
const manal = 'Manal 2006, J Appl Biomech 22:255 (men at full effort; read)';

/**
 * The quadriceps keeps the values of quadriceps.ts: living areas, resting sarcomeres at 50° of knee
 * flexion (hip position not stated there: taken straight). Its rectus femoris adds a lever at the hip.
 */
export const kneeExtensors: readonly Muscle[] = kneeExtensorHeads.map(kneeExtensor);

export const hipMuscles: readonly Muscle[] = [
  // 33.4 (Ward) against 26, range 16–36 (Barker 2014): midway, spread Ward's recalled SD.
  leg('gluteus maximus', [33.4, 0.1569, 21.9, 2.6], 'hip', {
    area: row(29.7, 8.8, 'cm²', 'derived', `${ward}; Barker 2014, Clin Anat (read)`),
    fibreLength: row(0.1569, 0.0257, 'm', 'recalled', ward),
    arms: { hip: gluteusMaximusHip },
    regions: evenHalves('hip', 'superior', 'inferior'),
  }),
  // Sarcomere length recalled only as 2.7–2.8 µm.
  leg('adductor magnus', [20.5, 0.1444, 15.5, 2.75], 'hip', {
    arms: { hip: adductorMagnusHip },
    regions: adductorRegions(),
  }),
  // 7.7 (Ward) against 5.45 (Kumazaki); pennation 10.6 against 6.3: midway.
  leg('psoas major', [7.7, 0.1169, 10.6, 3.11], 'hip', {
    area: row(6.6, 2, 'cm²', 'derived', `${ward}; ${kumazaki}`),
    pennation: row(8.5, 2.1, 'degrees', 'derived', `${ward}; ${kumazaki}`),
    arms: { hip: psoasHip },
  }),
  // 9.9 (Ward) against 5.4 (iliopsoas "comparable with" rectus femoris 10.88, less psoas 5.45).
  leg('iliacus', [9.9, 0.1066, 14.3, 3.02], 'hip', {
    area: row(7.7, 2.2, 'cm²', 'derived', `${ward}; ${kumazaki}`),
    pennation: row(11.1, 3.2, 'degrees', 'derived', `${ward}; ${kumazaki}`),
    arms: { hip: iliacusHip },
  }),
];

export const hamstrings: readonly Muscle[] = [
  leg('biceps femoris long head', [11.3, 0.0976, 11.6, 2.35], 'hip', {
    fibreLength: row(0.0976, 0.0262, 'm', 'recalled', ward),
    arms: { hip: bicepsFemorisHip, knee: bicepsFemorisKnee },
  }),
  leg('biceps femoris short head', [5.1, 0.1103, 12.3, 3.31], 'knee', {
    fibreLength: row(0.1103, 0.0206, 'm', 'recalled', ward),
    arms: { knee: bicepsFemorisKnee },
  }),
  leg('semitendinosus', [4.8, 0.193, 12.8, 2.89], 'hip', {
    arms: { hip: semitendinosusHip, knee: semitendinosusKnee },
  }),
  leg('semimembranosus', [18.4, 0.069, 15.1, 2.61], 'hip', {
    arms: { hip: semimembranosusHip, knee: semimembranosusKnee },
  }),
];

/**
 * Pennation midway between rest in cadavers (9.9, 12.0, 28.3°) and full effort in men (34.6, 23.7,
 * 40.1°). Sarcomere spread wider: the ankle of a fixed limb may not have been square.
 */
export const calf: readonly Muscle[] = [
  leg('gastrocnemius medialis', [21.1, 0.051, 9.9, 2.59], 'ankle', {
    fibreLength: row(0.051, 0.0098, 'm', 'recalled', ward),
    pennation: row(22, 12, 'degrees', 'derived', `${ward}; ${manal}`),
    restingSarcomere: row(2.59, 0.5, 'µm', 'recalled', ward),
    arms: { knee: gastrocnemiusKnee, ankle: achillesAnkle },
  }),
  leg('gastrocnemius lateralis', [9.7, 0.0588, 12, 2.71], 'ankle', {
    fibreLength: row(0.0588, 0.0095, 'm', 'recalled', ward),
    pennation: row(18, 6, 'degrees', 'derived', `${ward}; ${manal}`),
    restingSarcomere: row(2.71, 0.5, 'µm', 'recalled', ward),
    arms: { knee: gastrocnemiusKnee, ankle: achillesAnkle },
  }),
  leg('soleus', [51.8, 0.044, 28.3, 2.12], 'ankle', {
    area: row(51.8, 14.9, 'cm²', 'recalled', ward),
    fibreLength: row(0.044, 0.0099, 'm', 'recalled', ward),
    pennation: row(34, 6, 'degrees', 'derived', `${ward}; ${manal}`),
    restingSarcomere: row(2.12, 0.5, 'µm', 'recalled', ward),
    arms: { ankle: achillesAnkle },
  }),
];

/**
 * A row of Ward's table: area cm², fibre length m, pennation degrees, sarcomere length µm, at the
 * straight posture. Spreads where no SD is known: area 35 % (recalled SDs of three muscles are
 * 26–46 %), fibre length 20 %, pennation 4°, sarcomere 0.4 µm, by which the living vastus lateralis
 * (2.57 µm, Chen 2016 continued to 0°; derived) exceeds Ward's 2.14.
 */
function leg(
  name: string,
  [area, fibre, pennation, sarcomere]: readonly [number, number, number, number],
  joint: 'ankle' | 'knee' | 'hip',
  more: Partial<Muscle> & Pick<Muscle, 'arms'>,
): Muscle {
  return {
    name,
    area: row(area, 0.35 * area, 'cm²', 'recalled', ward),
    sample: 'cadaver',
    fibreLength: row(fibre, 0.2 * fibre, 'm', 'recalled', ward),
    pennation: row(pennation, 4, 'degrees', 'recalled', ward),
    restingSarcomere: row(sarcomere, 0.4, 'µm', 'recalled', ward),
    postureDeg: { hip: 0, knee: 0, ankle: 0 },
    gear: fibreGear,
    shortening: typicalShortening(joint),
    regions: evenHalves(joint),
    ...more,
  };
}

function kneeExtensor(head: MuscleHead): Muscle {
  const chen = 'Chen 2016, J Biomech 49:2989';
  const measured = head.name === 'vastus lateralis';
  return {
    name: head.name,
    area: row(head.area, head.areaSpread, 'cm²', 'read', 'Narici 1992, Eur J Appl Physiol 65:438'),
    sample: 'living',
    fibreLength: row(head.fibreLength, 0.18 * head.fibreLength, 'm', 'recalled', ward),
    pennation: row(head.pennationDeg, 4, 'degrees', 'recalled', ward),
    restingSarcomere: measured
      ? row(head.restingSarcomere, 0.16, 'µm', 'read', chen)
      : row(head.restingSarcomere, 0.3, 'µm', 'derived', `${chen}, times ratios of ${ward}`),
    postureDeg: { hip: 0, knee: 50 },
    gear: kneeExtensorGear,
    shortening: kneeExtensorShortening,
    arms:
      head.name === 'rectus femoris'
        ? { hip: rectusFemorisHip, knee: quadricepsKnee }
        : { knee: quadricepsKnee },
    regions: kneeExtensorRegions,
  };
}

/**
 * Levers in neutral: anterior 15, posterior 58 mm (Dostal 1986, Phys Ther 66:351; recalled) over
 * their mean. Even shares, and the anterior part gaining with flexion, as the adductors in front of
 * it turn into extensors between 50 and 70° (read): priors.
 */
function adductorRegions(): RegionSet {
  return {
    joint: 'hip',
    neutralDeg: 0,
    parts: [
      { name: 'anterior', share: 0.5, lever: 0.41, tiltPer40Deg: 0.3 },
      { name: 'posterior', share: 0.5, lever: 1.59, tiltPer40Deg: -0.3 },
    ],
    tiltSpread: 0.3,
    known: 'prior',
    source: 'Dostal 1986, Phys Ther 66:351 (levers in neutral, recalled); shares and change: prior',
  };
}
