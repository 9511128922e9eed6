/**
 * Published training groups that the single-joint and squat part of the model can run, each in
 * its paper's own terms. `se` is the standard error of the change in points where the source lets
 * it be estimated, else a working value of 4. Doses the sources leave open are marked `assumed`.
 */

export interface ObservedSingle {
  readonly kind: 'heaviest single';
  readonly lift: string;
  readonly toDeg: number;
  readonly change: number;
  readonly se: number;
}

export interface ObservedTorque {
  readonly kind: 'isometric torque';
  readonly atDeg: number | readonly [number, number];
  readonly change: number;
  readonly se: number;
}

export interface ObservedGrowth {
  readonly kind: 'growth';
  readonly change: number;
  readonly se: number;
}

export type Observed = ObservedSingle | ObservedTorque | ObservedGrowth;

export interface StudyWork {
  readonly lift?: string;
  readonly hold?: 'knee extension';
  readonly fromDeg?: number;
  readonly toDeg: number;
  /** Share of the range's heaviest single; "matched" makes a machine as strong as the athlete. */
  readonly share?: number | 'matched';
  readonly effort?: number;
  readonly sets: number;
  readonly reps: number;
  readonly seconds?: number;
  readonly tempo?: readonly [number, number, number];
}

export interface StudyGroup {
  readonly study: string;
  readonly group: string;
  readonly reference: 'male' | 'female' | 'pooled';
  readonly trained: boolean;
  readonly weeks: number;
  readonly perWeek: number;
  readonly progress: number;
  readonly work: readonly StudyWork[];
  readonly observed: readonly Observed[];
  readonly assumed: string;
}

const single = (lift: string, toDeg: number, change: number, se: number): ObservedSingle => ({
  kind: 'heaviest single',
  lift,
  toDeg,
  change,
  se,
});
const torque = (
  atDeg: number | readonly [number, number],
  change: number,
  se: number,
): ObservedTorque => ({ kind: 'isometric torque', atDeg, change, se });
const growth = (change: number, se: number): ObservedGrowth => ({ kind: 'growth', change, se });

const squat = (toDeg: number, share: number, sets: number, reps: number): StudyWork => ({
  lift: 'back squat',
  toDeg,
  share,
  sets,
  reps,
});

/**
 * Rhea et al. 2016, Human Movement 17:43–49; changes as extracted by a published meta-analysis
 * (figures digitised), depth classes 60°, 90°, 110°.
 */
const rhea = (group: string, toDeg: number, changes: readonly number[], se: readonly number[]) => ({
  study: 'Rhea 2016',
  group,
  reference: 'male' as const,
  trained: true,
  weeks: 16,
  perWeek: 2,
  progress: 0.005,
  work: [squat(toDeg, 0.88, 6, 5)],
  observed: [60, 90, 110].map((deg, i) => single('back squat', deg, changes[i] ?? 0, se[i] ?? 4)),
  assumed: 'load rising 0.5 % a week',
});

/** Kubo, Ikebukuro and Yata 2019, Eur J Appl Physiol 119:1933–1942; changes from the abstract. */
const kubo = (
  group: string,
  toDeg: number,
  deep: readonly [number, number],
  half: readonly [number, number],
  volume: number,
) => ({
  study: 'Kubo 2019',
  group,
  reference: 'male' as const,
  trained: false,
  weeks: 10,
  perWeek: 2,
  progress: 0.035,
  work: [squat(toDeg, 0.65, 3, 8)],
  observed: [
    single('back squat', 140, deep[0], deep[1]),
    single('back squat', 90, half[0], half[1]),
    growth(volume, 1),
  ],
  assumed: '65 % rising to about 90 % of the first best',
});

/** Bloomquist et al. 2013, Eur J Appl Physiol 113:2133–2142; changes from the abstract. */
const bloomquist = (group: string, toDeg: number, observed: readonly Observed[]) => ({
  study: 'Bloomquist 2013',
  group,
  reference: 'male' as const,
  trained: false,
  weeks: 12,
  perWeek: 3,
  progress: 0.015,
  work: [squat(toDeg, 0.78, 3, 7)],
  observed,
  assumed: '3–10 RM written as 78 % rising 1.5 % a week',
});

/**
 * Hartmann et al. 2012, J Strength Cond Res 26:3243–3261; changes as extracted by a published
 * meta-analysis; the deep group is taken as the back-squat one.
 */
const hartmann = (group: string, toDeg: number, observed: readonly Observed[]) => ({
  study: 'Hartmann 2012',
  group,
  reference: 'pooled' as const,
  trained: false,
  weeks: 10,
  perWeek: 2,
  progress: 0.01,
  work: [squat(toDeg, 0.8, 5, 7)],
  observed,
  assumed: 'periodised loads written as 80 % rising 1 % a week',
});

/**
 * Pallarés et al. 2020, trained men, guided-bar squat; changes as extracted by a published
 * meta-analysis. "Full" is taken as 140°, "parallel" as 120°.
 */
const pallares = (
  group: string,
  toDeg: number,
  changes: readonly number[],
  se: readonly number[],
) => ({
  study: 'Pallarés 2020',
  group,
  reference: 'male' as const,
  trained: true,
  weeks: 10,
  perWeek: 2,
  progress: 0.03,
  work: [squat(toDeg, 0.6, 4.5, 6)],
  observed: [140, 120, 90].map((deg, i) => single('back squat', deg, changes[i] ?? 0, se[i] ?? 4)),
  assumed: 'velocity-based 60–80 % written as 60 % rising 3 % a week; free bar instead of guided',
});

/** Valamatos et al. 2018, Eur J Appl Physiol 118:1969–1983; extracted by a published meta-analysis. */
const valamatosAngles = [30, 40, 50, 60, 70, 75, 80, 85, 90, 100];
const valamatos = (
  group: string,
  toDeg: number,
  reps: number,
  changes: readonly number[],
  se: readonly number[],
  volume: number,
) => ({
  study: 'Valamatos 2018',
  group,
  reference: 'male' as const,
  trained: false,
  weeks: 15,
  perWeek: 3,
  progress: 0,
  work: [
    {
      lift: 'machine knee extension',
      toDeg,
      share: 'matched' as const,
      sets: 7,
      reps,
      tempo: [0, 0, toDeg / 60] as const,
    },
  ],
  observed: [
    ...valamatosAngles.map((deg, i) => torque(deg, changes[i] ?? 0, se[i] ?? 5)),
    growth(volume, 3),
  ],
  assumed: 'isokinetic at 60°/s, written as a machine that matches the athlete at every angle',
});

/** McMahon et al. 2014, J Strength Cond Res 28:245–255; extracted by a published meta-analysis. */
const mcmahonAngles = [30, 50, 60, 65, 70, 75, 90];
const mcmahon = (group: string, toDeg: number, changes: readonly number[]) => ({
  study: 'McMahon 2014',
  group,
  reference: 'pooled' as const,
  trained: false,
  weeks: 8,
  perWeek: 3,
  progress: 0.02,
  work: [squat(toDeg, 0.8, 3, 10)],
  observed: mcmahonAngles.map((deg, i) => torque(deg, changes[i] ?? 0, 5)),
  assumed: 'several leg exercises written as three sets of squats; SE 5',
});

const hold = (toDeg: number, effort: number, sets: number, reps: number, seconds: number) => ({
  hold: 'knee extension' as const,
  toDeg,
  effort,
  sets,
  reps,
  seconds,
});

export const squatStudies: readonly StudyGroup[] = [
  rhea('quarter, 60°', 60, [11.8, 5.8, 1.4], [2.2, 2.7, 3.6]),
  rhea('half, 90°', 90, [7.6, 13.4, 0.3], [2.0, 2.7, 3.0]),
  rhea('full, 110°', 110, [5.6, 5.2, 13.6], [1.7, 6.1, 8.8]),
  kubo('full, 140°', 140, [31.8, 5.3], [24.2, 2.5], 4.9),
  kubo('half, 90°', 90, [11.3, 2.9], [32.0, 4.0], 4.6),
  bloomquist('deep, 120°', 120, [
    single('back squat', 120, 20, 3),
    single('back squat', 60, 20, 3),
    torque(75, 6, 2),
    torque(105, 8, 2),
  ]),
  bloomquist('shallow, 60°', 60, [
    single('back squat', 120, 9, 2),
    single('back squat', 60, 36, 4),
  ]),
  hartmann('deep, 110°', 110, [
    single('back squat', 110, 26.5, 7.7),
    single('back squat', 60, 25.2, 5.6),
  ]),
  hartmann('quarter, 60°', 60, [
    single('back squat', 110, -5.1, 5.2),
    single('back squat', 60, 35.4, 4.3),
  ]),
  pallares('full', 140, [16.4, 13.1, 11.9], [3.3, 2.8, 3.8]),
  pallares('parallel', 120, [10.3, 13.5, 10.1], [3.3, 3.5, 4.0]),
  pallares('half, 90°', 90, [2.7, 3.6, 7.0], [3.0, 3.2, 3.7]),
];

export const kneeStudies: readonly StudyGroup[] = [
  valamatos(
    'partial, 0–60°',
    60,
    19.6,
    [13.9, 15.2, 19.1, 22.5, 27.2, 21.6, 20.6, 12.9, 11.4, 4.4],
    [5.0, 4.1, 3.8, 3.7, 3.9, 5.0, 5.3, 5.6, 6.0, 6.4],
    6.7,
  ),
  valamatos(
    'full, 0–100°',
    100,
    12.4,
    [5.1, 7.7, 18.0, 19.4, 21.8, 29.4, 39.6, 38.9, 30.0, 15.6],
    [4.8, 4.6, 4.6, 4.6, 4.5, 3.6, 5.2, 5.6, 6.2, 5.2],
    7.6,
  ),
  mcmahon('long, 0–90°', 90, [24.5, 22.9, 14.5, 19.1, 22.3, 20.2, 29.2]),
  mcmahon('short, 0–50°', 50, [1.9, 4.8, 3.1, 4.3, 6.1, -1.4, 0.9]),
  {
    study: 'Noorkõiv 2014',
    group: 'holds at 38°',
    reference: 'male',
    trained: false,
    weeks: 6,
    perWeek: 3,
    progress: 0,
    work: [hold(38, 1, 5, 5, 5)],
    observed: [torque(38, 13.4, 3.4), growth(-1.4, 3)],
    assumed: '',
  },
  {
    study: 'Noorkõiv 2014',
    group: 'holds at 88°',
    reference: 'male',
    trained: false,
    weeks: 6,
    perWeek: 3,
    progress: 0,
    work: [hold(87.5, 1, 5, 5, 5)],
    observed: [growth(5.2, 3.4)],
    assumed: '',
  },
  {
    study: 'Alegre 2014',
    group: 'holds at 90°',
    reference: 'pooled',
    trained: false,
    weeks: 8,
    perWeek: 2.6,
    progress: 0,
    work: [hold(90, 0.725, 3.5, 6, 5)],
    observed: [torque([60, 90], 23.5, 6), growth(12.8, 5.2)],
    assumed: 'peak isokinetic torque read as the mean over 60–90°; thickness as growth',
  },
  {
    study: 'Alegre 2014',
    group: 'holds at 50°',
    reference: 'pooled',
    trained: false,
    weeks: 8,
    perWeek: 2.6,
    progress: 0,
    work: [hold(50, 0.725, 3.5, 6, 5)],
    observed: [torque([50, 80], 10, 6), growth(4.5, 5.2)],
    assumed: 'peak isokinetic torque read as the mean over 50–80°; thickness as growth',
  },
  {
    study: 'Folland 2005',
    group: 'holds at four angles',
    reference: 'male',
    trained: false,
    weeks: 9,
    perWeek: 3,
    progress: 0,
    work: [50, 70, 90, 110].map((deg) => hold(deg, 0.75, 1, 10, 2)),
    observed: [torque([50, 110], 18, 3)],
    assumed: 'angles 50–110° and four sets of ten two-second efforts at 75 %',
  },
  {
    study: 'Folland 2005',
    group: 'dynamic',
    reference: 'male',
    trained: false,
    weeks: 9,
    perWeek: 3,
    progress: 0.02,
    work: [
      { lift: 'machine knee extension', fromDeg: 10, toDeg: 110, share: 0.75, sets: 4, reps: 10 },
    ],
    observed: [torque([50, 110], 13.1, 3)],
    assumed: 'four sets of ten at 75 %, 10–110° (the start angle matters: the load is lost there)',
  },
];
