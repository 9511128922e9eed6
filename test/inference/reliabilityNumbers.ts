/**
 * Worked numbers of strength statistics. Data are the published ones; "recomputed" means recomputed
 * with a general statistics package from those data, because the papers print fewer digits.
 */

/**
 * Shrout and Fleiss 1979, Psychol Bull 86:420, table 2: six targets, four judges. They print the
 * correlations to two digits (`printed`); the rest is recomputed.
 */
export const shroutFleiss = {
  table: [
    [9, 2, 5, 8],
    [6, 1, 3, 2],
    [8, 4, 6, 8],
    [7, 1, 2, 6],
    [10, 5, 6, 9],
    [6, 2, 4, 7],
  ],
  printed: { ICC11: 0.17, ICC21: 0.29, ICC31: 0.71, ICC1k: 0.44, ICC2k: 0.62, ICC3k: 0.91 },
  grand: 5.291666666666667,
  SSB: 56.20833333333334,
  SSJ: 97.45833333333334,
  SSE: 15.291666666666629,
  SSW: 112.74999999999997,
  SST: 168.95833333333331,
  BMS: 11.241666666666669,
  WMS: 6.2638888888888875,
  JMS: 32.486111111111114,
  EMS: 1.019444444444442,
  ICC11: 0.16574176840547553,
  ICC21: 0.2897637795275592,
  ICC31: 0.7148407148407154,
  ICC1k: 0.4427971336792688,
  ICC2k: 0.6200505475989893,
  ICC3k: 0.9093155423770697,
  ICC11_CI: [-0.13293232487475096, 0.7225600623281211],
  ICC1k_CI: [-0.8844421552381196, 0.9124154203407755],
  ICC31_CI: [0.34246476503392614, 0.9458582599553597],
  ICC3k_CI: [0.6756747138163055, 0.9858916781690623],
  v: 4.785143862212758,
  ICC21_CI: [0.018786513374712027, 0.761084369648953],
  ICC2k_CI: [0.0711368153025034, 0.927232040167722],
  rootRest: 1.0096754153907295,
  rootWithin: 2.5027762362802006,
  spreadOfAll: 2.7103532044280914,
  fromConsistency: 1.447336948164928,
  fromAgreement: 2.284164085364514,
} as const;

/**
 * Bland and Altman 1986, Lancet 327:307, table 1: peak expiratory flow (l/min) of 17 people, large
 * meter twice, mini meter twice. `printed` is what the paper gives from rounded steps (recalled),
 * the rest is recomputed.
 */
export const blandAltman = {
  rows: [
    [494, 490, 512, 525],
    [395, 397, 430, 415],
    [516, 512, 520, 508],
    [434, 401, 428, 444],
    [476, 470, 500, 500],
    [557, 611, 600, 625],
    [413, 415, 364, 460],
    [442, 431, 380, 390],
    [650, 638, 658, 642],
    [433, 429, 445, 432],
    [417, 420, 432, 420],
    [656, 633, 626, 605],
    [267, 275, 260, 227],
    [478, 492, 477, 467],
    [178, 165, 259, 268],
    [423, 372, 350, 370],
    [427, 421, 451, 443],
  ],
  n: 17,
  bias: -2.1176470588235294,
  sd: 38.76512987360738,
  loa_2sd: [-79.64790680603829, 75.41261268839122],
  loa_196sd: [-78.097301611094, 73.86200749344692],
  t16: 2.1199052992212546,
  bias_ci: [-22.04883769664517, 17.81354357899811],
  se_loa_approx: 16.284611795031495,
  r: 0.943279446890946,
  published: { bias: -2.1, sd: 38.8, loa: [-79.7, 75.5], bias_ci: [-22.0, 17.8] },
  repeat_large: {
    mean_diff: 4.9411764705882355,
    sd_diff: 21.724037919535395,
    typical_error: 15.361214527657173,
    sw: 15.306669057866863,
    coef_repeat_2sd: 43.44807583907079,
    ICC21: 0.9831640082594847,
    ICC31: 0.9830458419744516,
  },
  repeat_mini: {
    mean_diff: -2.8823529411764706,
    sd_diff: 28.872310162466167,
    typical_error: 20.415806304401094,
    sw: 19.91083063236158,
    coef_repeat_2sd: 57.744620324932335,
    ICC21: 0.9684707654593597,
    ICC31: 0.9669048047891129,
  },
} as const;

/** Hopkins 2000, Sports Med 30:1 (and his slides of 2001, "76.2 ± 2.8"): one person; recomputed. */
export const hopkinsOnePerson = {
  data: [76, 72, 74, 79, 79, 77],
  mean: 76.16666666666667,
  sd: 2.7868739954771304,
  cv: 3.6589155301669103,
} as const;

/** Six invented athletes tested twice, N·m; recomputed with a general statistics package. */
export const sixAthletes = {
  pre: [200, 250, 180, 300, 220, 260],
  post: [208, 243, 186, 309, 214, 272],
  mean_change: 3.6666666666666665,
  sd_change: 8.115828156551041,
  te: 5.738757124441958,
  te_ci95: [3.5821781200974177, 14.074956000287548],
  cv_log_pct: 2.4215346892138445,
  mean_change_log_pct: 1.522114059903501,
  icc31: 0.9834915118299685,
  icc21: 0.9828838607330711,
  icc11: 0.9828785714882273,
  paired_t: 1.1066600003051088,
  p: 0.3188209447575293,
} as const;

/** SD·√(1 − ICC), 1.645·√2 and 1.96·√2 of it (Weir 2005, J Strength Cond Res 19:231); recomputed. */
export const errorsFromCorrelation = [
  {
    sd: 30,
    icc: 0.91,
    mean: 250,
    sem: 8.999999999999998,
    mdc90: 20.935568766180122,
    mdc95_196: 24.94672724026139,
  },
  {
    sd: 25,
    icc: 0.84,
    mean: 200,
    sem: 10.0,
    mdc90: 23.261743073533477,
    mdc95_196: 27.718585822512665,
  },
  {
    sd: 45,
    icc: 0.96,
    mean: 300,
    sem: 9.000000000000004,
    mdc90: 20.93556876618014,
    mdc95_196: 24.946727240261406,
  },
] as const;

/** Flat-prior chances of a change of 18 with a typical error of 9, worthwhile from 6; recomputed. */
export const chances = [
  {
    d: 18,
    te: 9,
    swc: 6,
    n_pre: 1,
    n_post: 1,
    se: 12.727922061357857,
    p_up: 0.8271107069244198,
    p_trivial: 0.14321607367962028,
    p_down: 0.02967321939595994,
  },
  {
    d: 18,
    te: 9,
    swc: 6,
    n_pre: 2,
    n_post: 2,
    se: 9.0,
    p_up: 0.9087887802741321,
    p_trivial: 0.08738083915827814,
    p_down: 0.0038303805675897365,
  },
] as const;

/** A normal prior and a normal observation, by the formulas of any textbook; recomputed. */
export const normalPrior = {
  prior_mean: 8,
  prior_sd: 5,
  obs: 15,
  se: 7.0710678118654755,
  weight: 0.3333333333333333,
  post_mean: 10.333333333333334,
  post_sd: 4.08248290463863,
  ci95: [2.3318138096261833, 18.33485285704048],
  p_gt0: 0.9943153673296365,
  p_gt5: 0.9042907873811963,
} as const;

/** Kelley 1927, true score of one athlete of a squad; hand calculation: 250 + 0.9·60. */
export const kelley = {
  mean: 250,
  icc: 0.9,
  x: 310,
  true: 304.0,
  sd: 30,
  sem: 9.486832980505138,
  se_estimate: 9.0,
} as const;

/**
 * Rubin 1981, J Educ Stat 6:377: coaching in eight schools (data recalled); means by spread between
 * schools, recomputed.
 */
export const eightSchools = {
  y: [28.0, 8.0, -3.0, 7.0, -1.0, 1.0, 18.0, 12.0],
  sigma: [15.0, 10.0, 16.0, 11.0, 9.0, 11.0, 10.0, 18.0],
  byTau: [
    {
      tau: 0,
      mu: 7.685616724956035,
      se: 4.071919158402296,
      theta: [
        7.685616724956035, 7.685616724956035, 7.685616724956035, 7.685616724956035,
        7.685616724956036, 7.685616724956035, 7.685616724956035, 7.685616724956036,
      ],
    },
    {
      tau: 5,
      mu: 7.850983233901382,
      se: 4.492096425708879,
      theta: [
        9.865884910511244, 7.880786587121106, 6.8855932664724335, 7.705266926726487,
        5.763487188169925, 6.677869666452515, 9.880786587121108, 8.148190738636242,
      ],
    },
    {
      tau: 10,
      mu: 8.12647218557157,
      se: 5.519974562006595,
      theta: [
        14.241403820780318, 8.063236092785784, 5.001058650298657, 7.616756264498462,
        3.0842223592889346, 4.901824137801629, 13.063236092785784, 9.040040066332992,
      ],
    },
    {
      tau: 25,
      mu: 8.545911963052223,
      se: 9.891152523633572,
      theta: [
        22.85038846080794, 8.075298201800306, 0.35499825487102055, 7.250744433685414,
        0.09521086261647319, 2.2239347822108835, 16.69598785697272, 10.820732851453023,
      ],
    },
  ],
  Q: 4.707078864400158,
  df: 7,
  tau2: 0.0,
} as const;

/**
 * Efron and Morris 1977, Sci Am 236:119: batting of 18 players in 45 at-bats and in the rest of the
 * season (data recalled). They print a shrinking factor of 0.212; the rest is recomputed.
 */
export const batting = {
  first45: [
    0.4, 0.378, 0.356, 0.333, 0.311, 0.311, 0.289, 0.267, 0.244, 0.244, 0.222, 0.222, 0.222, 0.222,
    0.222, 0.2, 0.178, 0.156,
  ],
  rest: [
    0.346, 0.298, 0.276, 0.222, 0.273, 0.27, 0.263, 0.21, 0.269, 0.23, 0.264, 0.256, 0.303, 0.264,
    0.226, 0.285, 0.316, 0.2,
  ],
  mean: 0.26538888888888884,
  c: 0.2123905377045563,
  est: [
    0.2939790151587855, 0.28930642332928524, 0.28463383149978505, 0.27974884913258025,
    0.27507625730308, 0.27507625730308, 0.27040366547357975, 0.26573107364407955,
    0.26084609127687475, 0.26084609127687475, 0.2561734994473745, 0.2561734994473745,
    0.2561734994473745, 0.2561734994473745, 0.2561734994473745, 0.25150090761787425,
    0.24682831578837403, 0.24215572395887378,
  ],
  sse_raw: 0.07537400000000001,
  sse_js: 0.02130976309713251,
} as const;

/**
 * NIST/ITL Statistical Reference Datasets, SiRstv: resistance, five instruments, five readings each,
 * with the certified sums of squares; the correlations are recomputed from the certified mean squares.
 */
export const siRstv = {
  readings: [
    [196.3052, 196.124, 196.189, 196.2569, 196.3403],
    [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
    [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
    [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
    [196.2119, 196.1051, 196.185, 196.0052, 196.209],
  ],
  between: 5.11462616e-2,
  within: 2.1663656e-1,
  icc11: 0.03483518677680969,
  icc1k: 0.15287431290970444,
} as const;
