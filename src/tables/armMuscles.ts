import { evenHalves, fibreGear, type Muscle, row, typicalShortening } from './muscleRow.ts';
import {
  type ArmCurve,
  bicepsElbow,
  brachialisElbow,
  brachioradialisElbow,
  tricepsElbow,
} from './tendonArms.ts';

/**
 * Muscles of the elbow. Their lengths over the shoulder are left out: no lever there was had.
 *
 * Areas, fibre lengths and pennation: Holzbaur, Murray and Delp 2005, Ann Biomed Eng 33:829, Table 1
 * (recalled; area = force over the 140 N/cm² used there, itself recalled), against Murray, Buchanan
 * and Delp 2000, J Biomech 33:943 (abstract read: fibre lengths of biceps long, triceps long and
 * brachioradialis, areas of brachioradialis and of the whole triceps, 14.9 cm²; its other cells
 * recalled loosely and used as spread only). Two numbers that conflict are met midway.
 *
 * Sarcomere length: no number was read. 2.7 µm, the optimum, at 90°, where elbow flexion is
 * strongest, is a prior. Pronation and supination are not modelled.
 */
const holzbaur = 'Holzbaur, Murray and Delp 2005, Ann Biomed Eng 33:829, Table 1 (recalled)';
const both = `${holzbaur}; Murray 2000, J Biomech 33:943 (abstract, read)`;
const loose = `${holzbaur}; spread: Murray 2000 (recalled loosely)`;

export const elbowFlexors: readonly Muscle[] = [
  elbow('biceps long head', 0, bicepsElbow, {
    area: row(4.5, 2, 'cm²', 'recalled', loose),
    fibreLength: row(0.122, 0.006, 'm', 'derived', both),
  }),
  elbow('biceps short head', 0, bicepsElbow, {
    area: row(3.1, 1, 'cm²', 'recalled', loose),
    fibreLength: row(0.132, 0.013, 'm', 'recalled', loose),
  }),
  elbow('brachialis', 0, brachialisElbow, {
    area: row(7.1, 1.7, 'cm²', 'recalled', loose),
    fibreLength: row(0.086, 0.013, 'm', 'recalled', loose),
  }),
  elbow('brachioradialis', 0, brachioradialisElbow, {
    area: row(1.55, 0.35, 'cm²', 'derived', both),
    fibreLength: row(0.175, 0.005, 'm', 'derived', both),
  }),
];

export const elbowExtensors: readonly Muscle[] = [
  elbow('triceps long head', 12, tricepsElbow, {
    area: row(5.7, 1.4, 'cm²', 'recalled', loose),
    fibreLength: row(0.1305, 0.0035, 'm', 'derived', both),
  }),
  elbow('triceps lateral head', 9, tricepsElbow, {
    area: row(4.5, 0.8, 'cm²', 'recalled', loose),
    fibreLength: row(0.114, 0.02, 'm', 'recalled', holzbaur),
  }),
  elbow('triceps medial head', 9, tricepsElbow, {
    area: row(4.5, 0.8, 'cm²', 'recalled', loose),
    fibreLength: row(0.114, 0.02, 'm', 'recalled', holzbaur),
  }),
];

function elbow(
  name: string,
  pennation: number,
  arm: ArmCurve,
  sizes: Pick<Muscle, 'area' | 'fibreLength'>,
): Muscle {
  return {
    name,
    sample: 'cadaver',
    pennation: row(pennation, 4, 'degrees', 'recalled', holzbaur),
    restingSarcomere: row(2.7, 0.4, 'µm', 'prior', 'no published number; prior of this project'),
    postureDeg: { elbow: 90 },
    gear: fibreGear,
    shortening: typicalShortening('elbow'),
    arms: { elbow: arm },
    regions: evenHalves('elbow'),
    ...sizes,
  };
}
