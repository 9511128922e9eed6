/**
 * Body segment parameters. Mass: share of body mass, one side. Centre: share of segment length
 * from the upper end.
 */

export interface SegmentRow {
  readonly mass: number;
  readonly centre: number;
}

export type SegmentName =
  | 'head'
  | 'trunk'
  | 'upper arm'
  | 'forearm'
  | 'hand'
  | 'thigh'
  | 'shank'
  | 'foot';

/**
 * de Leva 1996, J Biomech 29:1223–1230, Table 4 (head and trunk: Table 5 end points, mid-shoulder
 * to mid-hip for the trunk). Read in a transcription of the paper. Foot centre: share of foot
 * length from the heel.
 */
export const deLeva: Readonly<
  Record<'male' | 'female', Readonly<Record<SegmentName, SegmentRow>>>
> = {
  male: {
    head: { mass: 0.0694, centre: 0.5002 },
    trunk: { mass: 0.4346, centre: 0.431 },
    'upper arm': { mass: 0.0271, centre: 0.5772 },
    forearm: { mass: 0.0162, centre: 0.4574 },
    hand: { mass: 0.0061, centre: 0.79 },
    thigh: { mass: 0.1416, centre: 0.4095 },
    shank: { mass: 0.0433, centre: 0.4395 },
    foot: { mass: 0.0137, centre: 0.4415 },
  },
  female: {
    head: { mass: 0.0668, centre: 0.4841 },
    trunk: { mass: 0.4257, centre: 0.3782 },
    'upper arm': { mass: 0.0255, centre: 0.5754 },
    forearm: { mass: 0.0138, centre: 0.4559 },
    hand: { mass: 0.0056, centre: 0.7474 },
    thigh: { mass: 0.1478, centre: 0.3612 },
    shank: { mass: 0.0481, centre: 0.4352 },
    foot: { mass: 0.0129, centre: 0.4014 },
  },
};

/**
 * Dempster 1955 as adapted by Winter 2009, Table 4.1, sexes not separated; read in a
 * transcription. `head, trunk and arms` is that table's own lumped row (its centre is given from
 * the hip end: 0.626, so 0.374 from the shoulder end).
 */
export const dempster = {
  thigh: { mass: 0.1, centre: 0.433 },
  shank: { mass: 0.0465, centre: 0.433 },
  foot: { mass: 0.0145, centre: 0.5 },
  headTrunkArms: { mass: 0.678, centre: 0.374 },
  /** Head, neck and trunk without arms: centre 0.66 from the hip end. */
  headTrunkCentreFromHip: 0.66,
  headTrunk: 0.578,
  upperArm: { mass: 0.028, centre: 0.436 },
  /** Centre of forearm and hand 0.682 of elbow to wrist, about half of elbow to grip. */
  forearmAndHand: { mass: 0.022, centre: 0.5 },
  totalLeg: 0.161,
  footAndShank: 0.061,
} as const;

/** Drillis and Contini 1966 (in Winter 2009, Fig. 4.1): shares of stature; read in transcriptions. */
export const lengthShares = {
  ankleHeight: 0.039,
  shank: 0.246,
  thigh: 0.245,
  trunk: 0.288,
  shoulderHeight: 0.818,
  foot: 0.152,
  upperArm: 0.186,
  forearm: 0.146,
  /** Wrist to the middle of a closed fist, about half the hand's 0.108. */
  handToGrip: 0.054,
} as const;

/** Heel to ankle joint as a share of foot length: a working assumption, no table read. */
export const ankleFromHeelShare = 0.25;

/**
 * Joint limits used when the athlete's own are not given, degrees. Ankle: heels-flat squat,
 * Hemmerich 2006 (recalled, 38.5 ± 5.9). Knee: Roaas and Andersson 1982 (recalled, 144 ± 6.5).
 */
export const defaultLimitsDeg = { ankle: 38.5, knee: 144 } as const;
