import { toDegrees } from '../numeric/degrees.ts';
import { kneeExtensorTendonArm } from './quadriceps.ts';
import type { Knowledge } from './sourced.ts';

/**
 * Tendon arms by joint angle.
 *
 * Joint angle θ in degrees, flexion positive (ankle: dorsiflexion positive). Arm in metres,
 * positive when the muscle flexes the joint (ankle: dorsiflexes it), so arm = −dL/dθ with L the
 * length of muscle and tendon and θ in radians; a force F extends the joint with −arm·F. Arms at
 * one joint are taken not to change with the angle of another. Metres hold for a person of about
 * 1.75 m and are not scaled to the athlete here.
 */
export interface ArmCurve {
  readonly shape: ArmShape;
  /** Range of validity, degrees; the end values are held beyond it. */
  readonly fromDeg: number;
  readonly toDeg: number;
  /** One standard deviation or half the range of sources that conflict, m. */
  readonly spread: number;
  /** How the shape and size are known; the weaker of the two. */
  readonly known: Knowledge;
  readonly source: string;
}

export type ArmShape =
  /** Metres per radian to the power of the place in the list. */
  | { readonly kind: 'polynomial'; readonly coefficients: readonly number[] }
  /** Natural cubic spline, or straight lines, through the knots. */
  | {
      readonly kind: 'spline' | 'lines';
      readonly anglesDeg: readonly number[];
      readonly arm: readonly number[];
    };

/** Stature for which shank-relative lengths were turned into metres, and shank over stature (Drillis and Contini 1966). */
export const armReference = { stature: 1.75, shankShare: 0.246 } as const;
const shank = armReference.stature * armReference.shankShare;
const perRadian = toDegrees(1);

// Elbow, 0–140° (domain recalled). Coefficients: read, cm there. The page prints neither units nor
// the forearm's position: inferred, since the values land on independent measurements (test).
const elbowPage =
  'Bulgarian Academy of Sciences, page "Moment arms" (elbow polynomials; original paper not printed there)';

export const bicepsElbow = elbow(
  [1.963, -1.44, 3.031, 0.887, -1.418, 0.285],
  0.004,
  `${elbowPage}; spread: Murray 2000, J Biomech 33:943 (peak 4.7 cm), and another curve recalled loosely`,
);
export const brachialisElbow = elbow([1.554, 0.0813, -1.689, 3.523, -1.811, 0.276], 0.004);
export const brachioradialisElbow = elbow(
  [2.015, -0.458, 3.058, -1.081, 0.159, -0.0187],
  0.006,
  `${elbowPage}; spread: Murray 2000, J Biomech 33:943 (average peak 7.7 cm)`,
);
/** One curve for the three heads: they share the tendon. */
export const tricepsElbow = elbow(
  [-2.365, -1.015, 1.92, -1.035, 0.257, -0.0262],
  0.003,
  `${elbowPage}; spread: 1.4 mm SD of Sugisaki 2010, J Biomech 43:2844, and 2.3 cm of Murray 2000`,
);

/** The four heads of the quadriceps at the knee: the table of quadriceps.ts with this sign. */
export const quadricepsKnee: ArmCurve = {
  shape: {
    kind: 'lines',
    anglesDeg: kneeExtensorTendonArm.anglesDeg,
    arm: kneeExtensorTendonArm.arm.map((arm) => -arm),
  },
  fromDeg: 0,
  toDeg: 85,
  spread: kneeExtensorTendonArm.spread,
  known: kneeExtensorTendonArm.known,
  source: kneeExtensorTendonArm.source,
};

// Knee flexors. No curve by angle was read; handbook ranges without an angle (after Spoor and van
// Leeuwen 1992; read) against slopes of length regressions (Hawkins and Hull 1990, J Biomech
// 23:487; recalled; times thigh 0.245 × 1.75 m) and one lever of all hamstrings, 26 mm (van Soest
// and Bobbert 1993, from Visser's data; recalled).
const kneeFlexorSources =
  'handbook ranges after Spoor and van Leeuwen 1992 (read); Hawkins and Hull 1990, J Biomech 23:487 (recalled); van Soest and Bobbert 1993 (recalled)';

/** Constant over the range (Visser 1990; read). 20 mm (handbook) against 39 mm (Hawkins and Hull): midway. */
export const bicepsFemorisKnee = constant(
  0.03,
  0.01,
  `Visser 1990, Eur J Appl Physiol 61:453 (constant); ${kneeFlexorSources}`,
);
/** 40–55 mm (handbook), 43.7 mm (Hawkins and Hull), 26 mm (all hamstrings). */
export const semitendinosusKnee = constant(0.045, 0.01, kneeFlexorSources);
/** 20–40 mm (handbook) against 54.5 mm (Hawkins and Hull): the middle of 20 and 54.5. */
export const semimembranosusKnee = constant(0.0372, 0.0173, kneeFlexorSources);

const grieve =
  'Grieve, Pheasant and Cavanagh 1978 (length of gastrocnemius over shank; recalled), shank 0.246 × 1.75 m';
/**
 * dL = 6.46251 − 0.07987·K + 0.00011·K² per cent of the shank, K knee flexion in degrees: 19.7 mm
 * straight, 14.8 mm at 90°. Handbook: 12–20 mm (read); Hawkins and Hull 15.3, van Soest and
 * Bobbert 17 mm (recalled).
 */
export const gastrocnemiusKnee: ArmCurve = {
  shape: {
    kind: 'polynomial',
    coefficients: [0.0007987 * perRadian * shank, -0.0000022 * perRadian ** 2 * shank],
  },
  fromDeg: 0,
  toDeg: 140,
  spread: 0.004,
  known: 'recalled',
  source: grieve,
};
/**
 * dL = −22.18468 + 0.30141·A − 0.00061·A² per cent of the shank, A = 90° + dorsiflexion: 50.3 mm at
 * 10° of plantarflexion. Studies there span 36–64 mm by method alone (survey in Manal 2013, Physiol
 * Rep 1:e00139, Table 2; read); this is their middle, half the range is the spread.
 */
export const achillesAnkle: ArmCurve = {
  shape: {
    kind: 'polynomial',
    coefficients: [
      -(0.0030141 - 2 * 90 * 0.0000061) * perRadian * shank,
      2 * 0.0000061 * perRadian ** 2 * shank,
    ],
  },
  fromDeg: -45,
  toDeg: 30,
  spread: 0.014,
  known: 'recalled',
  source: `${grieve}; spread: Manal 2013, Physiol Rep 1:e00139, Table 2 (read)`,
};

// Hip. Neutral posture: Dostal, Soderberg and Andrews 1986, Phys Ther 66:351 (straight lines in one
// cadaver; recalled). Direction of change with angle is published, the amounts are priors.
const dostal = 'Dostal, Soderberg and Andrews 1986, Phys Ther 66:351 (neutral; recalled)';
const nemeth =
  'shape: Németh and Ohlsén 1985, J Biomech 18:129 (direction, recalled; amounts prior)';

/**
 * Neutral 46 mm (Dostal) against 79 mm (Németh, recalled loosely): midway, which is also the one
 * lever of van Soest and Bobbert 1993 (62 mm; recalled). Falls with flexion (published in words);
 * that it falls to 0.6 at 90° is a prior.
 */
export const gluteusMaximusHip = spline(
  [-20, 0, 30, 60, 90, 120],
  [-0.064, -0.062, -0.056, -0.047, -0.037, -0.029],
  0.017,
  `${dostal}; ${nemeth}; van Soest and Bobbert 1993 (recalled)`,
);

// Share of the neutral lever: rises, then falls, the peak in mid-range (direction published).
const hamstringAngles = [-20, 0, 30, 45, 60, 90, 120];
const hamstringShape = [0.87, 1, 1.14, 1.17, 1.14, 0.98, 0.76];
const hamstringSource = `${dostal}; ${nemeth}; spread: 49–51 mm (Hawkins and Hull 1990) to 77 mm (van Soest and Bobbert 1993), recalled`;
export const bicepsFemorisHip = hamstring(0.054);
export const semitendinosusHip = hamstring(0.056);
export const semimembranosusHip = hamstring(0.046);

/**
 * Middle of the anterior (15 mm) and the posterior part (58 mm) of Dostal; Németh has 15 mm for the
 * whole (recalled loosely), carried as spread. Rises strongly to a peak near 75° (direction
 * published); the factor 1.7 is a prior.
 */
export const adductorMagnusHip = spline(
  [-20, 0, 30, 60, 75, 90, 120],
  [-0.0285, -0.0365, -0.05, -0.0605, -0.062, -0.0605, -0.05],
  0.021,
  `${dostal}; ${nemeth}`,
);

const kumazaki = 'shape: Kumazaki 2022, Juntendo Med J 68(4), pp. 356–360 (read; amounts prior)';
/** Neutral between 43 mm (Dostal), 36.8 (Hawkins and Hull) and 35 (van Soest and Bobbert); peak at 40°. */
export const rectusFemorisHip = spline(
  [-20, 0, 20, 40, 60, 90, 120],
  [0.033, 0.04, 0.0446, 0.046, 0.0446, 0.037, 0.027],
  0.008,
  `${dostal}; Hawkins and Hull 1990, van Soest and Bobbert 1993 (recalled); ${kumazaki}`,
);
/** 18 mm in neutral, constant to 50°, then a steep rise past the rectus femoris in deep flexion. */
export const psoasHip = spline(
  [-20, 0, 20, 40, 50, 60, 75, 90, 105, 120],
  [0.018, 0.018, 0.018, 0.018, 0.0183, 0.0205, 0.029, 0.039, 0.046, 0.05],
  0.008,
  `${dostal}; ${kumazaki}`,
);
/** Mean of four parts: constant to 10–60°, passing the rectus femoris between 40–60° and 70–80°. */
export const iliacusHip = spline(
  [-20, 0, 20, 40, 50, 60, 75, 90, 120],
  [0.018, 0.018, 0.018, 0.019, 0.024, 0.036, 0.0515, 0.058, 0.062],
  0.01,
  `${dostal}; ${kumazaki}`,
);

function elbow(centimetres: readonly number[], spread: number, source = elbowPage): ArmCurve {
  const coefficients = centimetres.map((c) => c / 100);
  const shape = { kind: 'polynomial', coefficients } as const;
  return { shape, fromDeg: 0, toDeg: 140, spread, known: 'read', source };
}

function constant(arm: number, spread: number, source: string): ArmCurve {
  const shape = { kind: 'polynomial', coefficients: [arm] } as const;
  return { shape, fromDeg: 0, toDeg: 140, spread, known: 'derived', source };
}

function spline(
  anglesDeg: readonly number[],
  arm: readonly number[],
  spread: number,
  source: string,
): ArmCurve {
  const [fromDeg, toDeg] = [Math.min(...anglesDeg), Math.max(...anglesDeg)];
  const shape = { kind: 'spline', anglesDeg, arm } as const;
  return { shape, fromDeg, toDeg, spread, known: 'prior', source };
}

function hamstring(neutral: number): ArmCurve {
  const arm = hamstringShape.map((share) => -neutral * share);
  return spline(hamstringAngles, arm, 0.013, hamstringSource);
}
