import { type ActionName, actionNames } from './actions.ts';
import { adaptation, largestGain } from './adaptation.ts';
import { chainMassSource, rubberModulus } from './chainsAndBands.ts';
import { fastestTurnDeg, hillCurvature } from './forceVelocity.ts';
import { liftingStrength, loweringStrength } from './movingStrength.ts';
import { fibreGear } from './muscleRow.ts';
import {
  activeShortening,
  kneeExtensorTendonArm,
  restingStretch,
  sarcomereCorners,
  specificTension,
} from './quadriceps.ts';
import { repetitionChart } from './repetitionChart.ts';
import type { Knowledge, Sourced } from './sourced.ts';
import {
  coactivation,
  kneeExtensionPerKg,
  kneeExtensionShape,
  neuralDrive,
  strengthCurves,
} from './strength.ts';
import { residualReachDeg } from './strengthSpread.ts';
import { testErrors } from './testError.ts';

/** One table that a number rests on: what it holds, and where it is from. */
export interface TableRow {
  readonly what: string;
  readonly known: Knowledge;
  readonly source: string;
  /** Left out where the table holds many numbers. */
  readonly value?: number;
  readonly unit?: string;
  readonly spread?: number;
}

const row = (what: string, { known, source }: Pick<TableRow, 'known' | 'source'>): TableRow => ({
  what,
  known,
  source,
});

const single = (what: string, from: Sourced): TableRow => ({ ...from, what });

/** Tables behind the body: segment lengths where none was measured, masses and their centres. */
export const bodyRows = {
  lengths: row('segment lengths by stature', {
    source: 'Drillis and Contini 1966, in Winter 2009',
    known: 'read',
  }),
  masses: row('segment masses and centres', {
    source: 'de Leva 1996, J Biomech 29:1223; Dempster 1955 in Winter 2009',
    known: 'read',
  }),
};

/** Tables behind the strength of an action before any test, by sex. */
export function curveRows(action: ActionName, reference: 'male' | 'female' | 'pooled'): TableRow[] {
  if (action === 'knee extension')
    return [
      row('shape of knee extension torque', kneeExtensionShape),
      single('knee extension torque', kneeExtensionPerKg[reference]),
    ];
  return [single(`${action} torque`, strengthCurves[action].perKg[reference])];
}

/** Tables behind a fit to torque tests. */
export const fitRows: readonly TableRow[] = [
  single('error of a torque test', testErrors['single-joint dynamometer']),
  single('reach of a deviation along the curve', residualReachDeg),
];

/** Tables behind the knee extensors' fibres and tendon. */
export const kneeMuscleRows: readonly TableRow[] = [
  row('quadriceps areas', { source: 'Narici 1992, Eur J Appl Physiol 65:438', known: 'read' }),
  row('tendon lever at the knee', kneeExtensorTendonArm),
  single('fibre stretch by angle', restingStretch),
  row('fibre shortening when active', activeShortening),
];

/** Tables behind what all muscles together can give, and behind what a change of one is worth. */
export const muscleRows: readonly TableRow[] = [
  row('fibre lengths and pennation', {
    source: 'Ward 2009, Clin Orthop 467:1074; arm muscles Holzbaur 2005, Ann Biomed Eng 33:829',
    known: 'recalled',
  }),
  row('tendon levers of hip, ankle and hamstrings', {
    source:
      'Dostal 1986, Phys Ther 66:351; Hawkins and Hull 1990, J Biomech 23:487; Grieve 1978; ranges after Spoor and van Leeuwen 1992 (read)',
    known: 'recalled',
  }),
  single('share of the stretch that fibres take', fibreGear),
  single('force per area', specificTension),
  row('length–tension corners', sarcomereCorners),
  single('share the will can use', neuralDrive.trained),
  single('antagonists', coactivation),
];

export const loweringRow = single('strength while lowering', loweringStrength);
export const liftingRow = single('strength while lifting', liftingStrength);
export const repetitionRow = row('repetitions by load', repetitionChart);
export const speedRows: readonly TableRow[] = [
  single('torque by speed: no torque left', fastestTurnDeg),
  single('torque by speed: curvature', hillCurvature),
];
export const chainRow = row('weight of chains', chainMassSource);
export const rubberRow = single('stiffness of rubber', rubberModulus);

const coefficient = (name: keyof typeof adaptation, what: string): TableRow =>
  single(what, adaptation[name]);

/** Coefficients behind each cause of a gain, and the practice of a lift. */
export const adaptationRows = {
  drive: [
    coefficient('driveAmplitude', 'largest gain of drive'),
    coefficient('driveHalfDose', 'dose that fills half of it'),
    coefficient('driveEffortPower', 'how steeply effort counts'),
    coefficient('driveTensionPower', 'how far slack fibres lower the dose'),
    coefficient('driveFadePerDeg', 'fall of the dose with the angle trained'),
    coefficient('widthShorterAt40', 'spread toward short muscle, trained at 40°'),
    coefficient('widthShorterAt90', 'the same, trained at 90°'),
    coefficient('widthLongerAt40', 'spread toward long muscle, trained at 40°'),
    coefficient('widthLongerAt90', 'the same, trained at 90°'),
    coefficient('driveWeeks', 'pace of drive'),
    coefficient('transferAcross', 'share passed between moving and held work'),
  ],
  growth: [
    coefficient('growthAmplitude', 'largest growth'),
    coefficient('growthHalfDose', 'dose that fills half of it'),
    coefficient('growthTensionPower', 'how steeply tension counts'),
    coefficient('growthLengthSlope', 'more growth at long muscle'),
    coefficient('growthDistalTilt', 'growth far from the hip against near'),
    coefficient('growthWeeks', 'pace of growth'),
  ],
  series: [
    coefficient('seriesLong', 'largest lengthening of fibres'),
    coefficient('seriesLowering', 'worth of being drawn out at any length'),
    coefficient('seriesShort', 'largest shortening of fibres'),
    coefficient('seriesEffect', 'share of length from long work that moves torque'),
    coefficient('loweringEffect', 'the same of length from lowering'),
    coefficient('seriesHalfDose', 'dose that fills half of either'),
    coefficient('seriesWeeks', 'pace of lengthening'),
  ],
  practice: [
    coefficient('practiceAmplitude', 'largest gain from practising a lift'),
    coefficient('practicePower', 'how steeply the practised effort counts'),
    coefficient('practiceHalfDose', 'sets that fill half of it'),
  ],
  all: [
    coefficient('trainedShare', 'gains of trained over untrained people'),
    single('no gain goes beyond', largestGain),
  ],
} satisfies Readonly<Record<string, readonly TableRow[]>>;

/** Tables behind every action that no test of the athlete covers. */
export function untestedRows(
  tested: ReadonlySet<string>,
  reference: 'male' | 'female' | 'pooled',
): TableRow[] {
  return actionNames
    .filter((action) => !tested.has(action))
    .flatMap((action) => curveRows(action, reference));
}
