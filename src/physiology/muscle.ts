import { toRadians } from '../numeric/degrees.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';
import {
  activeShortening,
  kneeExtensorHeads,
  kneeExtensorTendonArm,
  type MuscleHead,
  regions,
  restingStretch,
  sarcomereCorners,
} from '../tables/quadriceps.ts';
import { lengthTension } from './lengthTension.ts';

/** What training has changed in one head, as shares of its first state (0.1 = ten per cent more). */
export interface HeadChange {
  /** Added area, one entry a region. */
  readonly growth: readonly number[];
  /** Fibre length added (sarcomeres in series) by work at long length. */
  readonly lengthened: number;
  /** Fibre length taken by work at short length. */
  readonly shortened: number;
}

export const unchangedHead: HeadChange = {
  growth: regions.names.map(() => 0),
  lengthened: 0,
  shortened: 0,
};

/**
 * Lever of the quadriceps tendon at the knee, metres, by knee flexion in degrees.
 *
 * Tendon excursion identity: lever = −dL/dθ. Straight lines between the rows of the table;
 * constant beyond them.
 */
export const tendonArm = piecewiseLinear(
  kneeExtensorTendonArm.anglesDeg,
  kneeExtensorTendonArm.arm,
);

/** Fibre length of the head whose stretch was measured, m. */
const measuredFibreLength = kneeExtensorHeads[0]?.fibreLength ?? Number.NaN;

/**
 * Resting fibre length in optimum lengths by knee flexion in degrees.
 *
 * l = l(50°) + stretch · (θ − 50°) · (L0 of vastus lateralis / L0 of the head). The stretch is the
 * measured one: a rigid tendon and the lever above would give about three times as much, the rest
 * goes into tendon and fibre rotation. Range of validity 0–120°.
 */
export function restingLength(head: MuscleHead, kneeDeg: number): number {
  const perDegree = (restingStretch.value * measuredFibreLength) / head.fibreLength;
  return head.restingSarcomere / sarcomereCorners.optimum + perDegree * (kneeDeg - 50);
}

const shortening = piecewiseLinear(
  [activeShortening.nearExtensionDeg, activeShortening.flexedDeg],
  [activeShortening.nearExtension, activeShortening.flexed],
);

/**
 * Torque of one head at full drive, N·m per N/cm² of fibre stress, by knee flexion in degrees.
 *
 * T = Σ_regions share·(1 + growth)·lever_r · area · f(l) · cos(pennation) · arm, with the fully
 * active length l = resting length · (1 − shortening) / (1 + lengthened − shortened). Left out: passive tension
 * (no number read), the hip's effect on the rectus femoris, slowing by velocity.
 */
export function headTorque(head: MuscleHead, kneeDeg: number, change: HeadChange): number {
  const fibre = 1 + change.lengthened - change.shortened;
  const length = (restingLength(head, kneeDeg) * (1 - shortening(kneeDeg))) / fibre;
  const lead = (regions.leverTiltPer40Deg * (kneeDeg - regions.neutralDeg)) / 40;
  const sized = regions.area.reduce((sum, share, i) => {
    const lever = i === 0 ? 1 - lead : 1 + lead;
    return sum + share * (1 + (change.growth[i] ?? 0)) * lever;
  }, 0);
  const pennation = Math.cos(toRadians(head.pennationDeg));
  return head.area * sized * lengthTension(length) * pennation * tendonArm(kneeDeg);
}
