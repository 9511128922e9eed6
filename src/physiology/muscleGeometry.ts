import { toRadians } from '../numeric/degrees.ts';
import { naturalSpline, piecewiseLinear } from '../numeric/interpolation.ts';
import type { Muscle, MuscleJoint, MusclePosture } from '../tables/muscleRow.ts';
import { livingOverCadaver } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { sarcomereCorners } from '../tables/quadriceps.ts';
import type { ArmCurve } from '../tables/tendonArms.ts';

interface CompiledArm {
  /** Arm, m, by joint angle, degrees. */
  readonly arm: (deg: number) => number;
  /** ∫ arm dθ, m, from the start of the curve to an angle in degrees. */
  readonly primitive: (deg: number) => number;
}

const compiled = new WeakMap<ArmCurve, CompiledArm>();

/** The muscle of that name. @throws if the tables have none, which is a mistake of the caller */
export function muscleNamed(name: string): Muscle {
  const found = muscles.find((muscle) => muscle.name === name);
  if (!found) throw new Error(`no muscle named ${name}`);
  return found;
}

/**
 * Tendon arm at a joint angle, m: positive when the muscle flexes the joint (ankle: dorsiflexes
 * it), zero at a joint it does not cross. The torque of a force F toward flexion is arm·F.
 *
 * Held constant beyond the curve's range of validity.
 *
 * @param angleDeg flexion positive, ankle dorsiflexion positive
 */
export function tendonArmAt(muscle: Muscle, joint: MuscleJoint, angleDeg: number): number {
  const curve = muscle.arms[joint];
  return curve ? compiledArm(curve).arm(angleDeg) : 0;
}

/**
 * Change of muscle–tendon length when one joint turns, m: ΔL = −∫ arm dθ, positive when it
 * lengthens. Exact to rounding.
 */
export function muscleTendonExcursion(
  muscle: Muscle,
  joint: MuscleJoint,
  fromDeg: number,
  toDeg: number,
): number {
  const curve = muscle.arms[joint];
  if (!curve) return 0;
  const { primitive } = compiledArm(curve);
  return primitive(fromDeg) - primitive(toDeg);
}

/**
 * Mean arm that a measured excursion implies, m: −ΔL/Δθ, Δθ in radians.
 *
 * @param lengthening change of muscle–tendon length, m
 */
export function meanArm(lengthening: number, fromDeg: number, toDeg: number): number {
  return -lengthening / toRadians(toDeg - fromDeg);
}

/**
 * Fibre length in optimum lengths:
 * l = (l_ref + Σ_joints stretch) · (1 − shortening · effort).
 *
 * l_ref is the resting length in the table's posture. The muscle tables hold for one person's size:
 * no scaling.
 *
 * @param anglesDeg joints left out stay as in the table's posture
 * @param effort 0 at rest to 1 at full activation
 */
export function operatingLength(muscle: Muscle, anglesDeg: MusclePosture, effort: number): number {
  const { postureDeg, shortening } = muscle;
  const angle = (joint: MuscleJoint) => anglesDeg[joint] ?? postureDeg[joint] ?? 0;
  let resting = restingLength(muscle);
  for (const joint of jointsOf(muscle)) resting += fibreStretch(muscle, joint, angle(joint));
  return resting * (1 - effort * shorteningShare(muscle, angle(shortening.joint)));
}

/** Resting fibre length in the table's posture, optimum lengths. */
export function restingLength({ restingSarcomere }: Muscle): number {
  return restingSarcomere.value / sarcomereCorners.optimum;
}

/**
 * Change of resting fibre length from the table's posture when one joint turns to an angle, optimum
 * lengths: gear · ΔL/L0. The gear is below one because tendon and fibre rotation take part of ΔL.
 */
export function fibreStretch(muscle: Muscle, joint: MuscleJoint, deg: number): number {
  const excursion = muscleTendonExcursion(muscle, joint, muscle.postureDeg[joint] ?? 0, deg);
  return (muscle.gear.value * excursion) / muscle.fibreLength.value;
}

/** Share by which fibres shorten at full effort, at an angle of the table's joint. */
export function shorteningShare({ shortening }: Muscle, deg: number): number {
  return piecewiseLinear(shortening.anglesDeg, shortening.share)(deg);
}

/** Joints the muscle crosses. */
export function jointsOf(muscle: Muscle): readonly MuscleJoint[] {
  const all: readonly MuscleJoint[] = ['ankle', 'knee', 'hip', 'elbow'];
  return all.filter((joint) => muscle.arms[joint] !== undefined);
}

/** Area of a young living muscle, cm²: the table's, enlarged where it was taken from cadavers. */
export function livingArea(muscle: Muscle): number {
  return muscle.area.value * (muscle.sample === 'cadaver' ? livingOverCadaver.value : 1);
}

/**
 * Leverage of each region as a share of the whole muscle's arm, in the order of the table, by the
 * angle of the regions' joint in degrees.
 */
export function regionLevers(muscle: Muscle, angleDeg: number): readonly number[] {
  const { neutralDeg, parts } = muscle.regions;
  return parts.map(
    ({ lever, tiltPer40Deg }) => lever + (tiltPer40Deg * (angleDeg - neutralDeg)) / 40,
  );
}

function compiledArm(curve: ArmCurve): CompiledArm {
  const known = compiled.get(curve);
  if (known) return known;
  const arm = armFunction(curve);
  const made = { arm, primitive: primitiveOf(arm, breaksOf(curve)) };
  compiled.set(curve, made);
  return made;
}

function armFunction({ shape, fromDeg, toDeg }: ArmCurve): (deg: number) => number {
  const inside = (deg: number) => Math.min(Math.max(deg, fromDeg), toDeg);
  if (shape.kind === 'polynomial') {
    const { coefficients } = shape;
    return (deg) => coefficients.reduceRight((sum, c) => sum * toRadians(inside(deg)) + c, 0);
  }
  const through = shape.kind === 'spline' ? naturalSpline : piecewiseLinear;
  const curve = through(shape.anglesDeg, shape.arm);
  return (deg) => curve(inside(deg));
}

/** Angles between which a curve is one polynomial; beyond the first and last it is constant. */
function breaksOf({ shape, fromDeg, toDeg }: ArmCurve): readonly number[] {
  const knots = shape.kind === 'polynomial' ? [] : shape.anglesDeg;
  return [fromDeg, ...knots.filter((deg) => deg > fromDeg && deg < toDeg), toDeg];
}

/**
 * ∫ f dθ from the first break, θ in radians. Gauss–Legendre with three nodes is exact for
 * polynomials up to degree five (Press et al., Numerical Recipes, section 4.6), the highest here.
 */
function primitiveOf(
  f: (deg: number) => number,
  breaks: readonly number[],
): (deg: number) => number {
  const piece = (from: number, to: number) => {
    const [middle, half] = [(from + to) / 2, (to - from) / 2];
    const node = half * Math.sqrt(3 / 5);
    const weighted = 5 * f(middle - node) + 8 * f(middle) + 5 * f(middle + node);
    return (weighted / 9) * toRadians(half);
  };
  const whole = [0];
  breaks.forEach((at, i) => {
    if (i > 0) whole.push((whole[i - 1] ?? 0) + piece(breaks[i - 1] ?? at, at));
  });
  return (deg) => {
    const next = breaks.findIndex((at) => at > deg);
    const i = next === -1 ? breaks.length - 1 : Math.max(next - 1, 0);
    return (whole[i] ?? 0) + piece(breaks[i] ?? deg, deg);
  };
}
