/**
 * What is taken for each coefficient of adaptation before any study is seen: the middle and the
 * spread of its logarithm, so 0.4 is about 40 % either way. The fit is held to these; where the
 * studies say little, the prior is what remains.
 */
export interface Prior {
  readonly value: number;
  readonly unit: string;
  /** One standard deviation of the natural logarithm. */
  readonly logSpread: number;
  readonly source: string;
  /** No fit goes beyond; for shares that have an end. */
  readonly most?: number;
}

const row = (
  value: number,
  unit: string,
  logSpread: number,
  source: string,
  most?: number,
): Prior => ({ value, unit, logSpread, source, ...(most === undefined ? {} : { most }) });

const judged = 'a judgement; nothing is published';
const sets = 'hard sets a week';

export const adaptationPriors = {
  driveAmplitude: row(0.35, 'share', 0.4, 'up to +40 % in a group (Kubo 2010), most of it local'),
  driveHalfDose: row(3, sets, 0.6, judged),
  driveEffortPower: row(2, 'exponent', 0.3, judged),
  driveTensionPower: row(0.3, 'exponent', 0.5, judged),
  driveFadePerDeg: row(
    0.004,
    'share per degree',
    0.7,
    'more local gain at short length; a judgement',
  ),
  widthShorterAt40: row(
    12,
    'degrees',
    0.4,
    'narrow after short-length holds (Kitai 1989, Weir 1995)',
  ),
  widthShorterAt90: row(40, 'degrees', 0.2, 'trained at 90°, gains reach 15–105° (Bandy 1993)'),
  widthLongerAt40: row(
    15,
    'degrees',
    0.4,
    'narrow after short-length holds (Kitai 1989, Weir 1995)',
  ),
  widthLongerAt90: row(25, 'degrees', 0.4, judged),
  driveWeeks: row(4, 'weeks', 0.25, 'early gains come within weeks; a working value'),
  growthAmplitude: row(0.25, 'share', 0.5, judged),
  growthHalfDose: row(
    5,
    sets,
    0.4,
    'size rises with weekly sets and flattens (Pelland 2024, preprint); the number is a judgement',
  ),
  growthTensionPower: row(1, 'exponent', 0.3, judged),
  growthLengthSlope: row(
    0.33,
    'share',
    0.4,
    '1.4 to 2.7 times as much at long as at short length in untrained people',
    1,
  ),
  growthDistalTilt: row(
    0.25,
    'share',
    0.5,
    'direction Noorkõiv 2014, Ema 2013; size is a judgement',
    1,
  ),
  growthWeeks: row(20, 'weeks', 0.3, 'growth still rises after months; a working value'),
  seriesLong: row(
    0.065,
    'share',
    0.5,
    '+5.4 ± 4.9 % (Noorkõiv 2014), +4.9 ± 2.0 % (Valamatos 2018), +6.3 and +3.1 % (Blazevich 2007)',
  ),
  seriesLowering: row(
    0.5,
    'share',
    0.8,
    'longer fibres after lowering, not after lifting (Timmins 2016, Presland 2020, Franchi 2014); size is a judgement',
  ),
  seriesShort: row(0.03, 'share', 0.6, '−3 % in another muscle (Hinks 2021)'),
  seriesEffect: row(
    0.5,
    'share',
    0.5,
    'fascicles +10 % without a clear shift in some groups, a clear shift with none in others (Alegre 2014); size is a judgement',
    1,
  ),
  loweringEffect: row(
    0.25,
    'share',
    0.6,
    'after Nordic lowering sarcomeres were longer, not more (Pincheira 2022, abstract); lowering shifts the strongest angle (Brughelli 2010); size is a judgement',
    1,
  ),
  seriesHalfDose: row(5, sets, 0.4, 'taken as that of growth'),
  seriesWeeks: row(4, 'weeks', 0.25, 'no more after five weeks (Blazevich 2007)'),
  transferAcross: row(
    0.45,
    'share',
    0.2,
    'lifts pass about half of their gain to holds; a judgement',
    1,
  ),
  practiceAmplitude: row(0.25, 'share', 0.5, judged),
  practicePower: row(2, 'exponent', 0.3, judged),
  practiceHalfDose: row(2, 'sets a week', 0.4, judged),
  trainedShare: row(0.5, 'share', 0.3, 'trained people gain about half as much; a judgement', 1),
} as const satisfies Readonly<Record<string, Prior>>;

export type CoefficientName = keyof typeof adaptationPriors;

/** Names in the order of the fit. */
export const coefficientNames = Object.keys(adaptationPriors) as CoefficientName[];
