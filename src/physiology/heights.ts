/** Heights above the floor, at which coaches end a lift, turned into angles of the leading joint. */
import type { Lift } from '../mechanics/lift.ts';
import { attachedAt } from '../mechanics/linkage.ts';
import { type Body, type Posture, Stance } from '../mechanics/posture.ts';
import { reachOf, type ValueAt } from '../mechanics/reaching.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { seatToHipJoint } from '../tables/seat.ts';

/** Where a lift ends: thigh level, sitting on a box, or the bar at a height, metres. */
export type Height =
  | { readonly kind: 'thigh level' }
  | { readonly kind: 'box' | 'pins'; readonly height: number };

/** The angle of a height, or what heights there are. */
export type HeightAngle =
  | {
      readonly state: 'found';
      /** Leading angle, radians, to a tenth of a degree. */
      readonly angle: number;
      /** Height of the hip joint there, metres. */
      readonly hip: number;
      /** The load it was found with, kg, where the angle depends on it. */
      readonly load: number;
      /** Leading angles with lighter and heavier loads, where they differ by more than 1°. */
      readonly spread?: { readonly loads: readonly number[]; readonly angles: readonly number[] };
    }
  /** Lowest and highest that can be reached: of the thigh the rise of hip over knee. */
  | { readonly state: 'beyond'; readonly least: ValueAt; readonly most: ValueAt }
  | { readonly state: 'several'; readonly angles: readonly number[] }
  /** No balance there, or nowhere: the nearest higher place that can be held, if any. */
  | { readonly state: 'unbalanced'; readonly higher?: ValueAt };

/** What the load is, or would usually be, kg. */
export interface LoadGuess {
  readonly known?: number;
  readonly usual: number;
}

/** Lighter and heavier loads than usual, as parts of it (working values). */
const lighterAndHeavier = [0.5, 1.5] as const;
/** Nobody measures a box or pins finer than to half a centimetre (working value), metres. */
const measured = 0.005;

/**
 * Leading angle at which a body in a lift is at a height.
 *
 * Hip joint = box + seat to hip joint; thigh level = hip and knee joint equally high; pins = the
 * middle of the bar, in hanging hands as low as the athlete's own arms are long. The load moves the
 * balance and with it the angle: where it is not known, the answer says how much.
 *
 * @param stretch first and last leading angle to look at, radians
 */
export function angleAtHeight(
  lift: Lift,
  body: Body,
  height: Height,
  { known, usual }: LoadGuess,
  stretch: readonly [number, number],
): HeightAngle {
  const load = known ?? usual;
  const found = angleWithLoad(lift, body, height, load, stretch);
  if (found.state !== 'found' || known !== undefined) return found;
  const loads = lighterAndHeavier.map((part) => part * usual);
  const others = loads.map((other) => angleWithLoad(lift, body, height, other, stretch));
  const angles = others.map((other) => (other.state === 'found' ? other.angle : Number.NaN));
  const differs = angles.some((angle) => !(Math.abs(angle - found.angle) <= toRadians(1)));
  return differs ? { ...found, spread: { loads, angles } } : found;
}

function angleWithLoad(
  lift: Lift,
  body: Body,
  height: Height,
  load: number,
  stretch: readonly [number, number],
): HeightAngle {
  const stance = new Stance(lift, body, load);
  const wanted = height.kind === 'thigh level' ? 0 : height.height;
  const measure = (posture: Posture) => heightOf(height.kind, posture, lift, body);
  const { angles, extremes, below, above } = reachOf(stance, stretch, measure, wanted);
  const [angle, ...more] = angles;
  if (!extremes) return { state: 'unbalanced' };
  if (more.length > 0) return { state: 'several', angles };
  const [least, most] = extremes;
  const nearest = Math.abs(least.value - wanted) < Math.abs(most.value - wanted) ? least : most;
  const met = angle ?? (Math.abs(nearest.value - wanted) <= measured ? nearest.angle : undefined);
  if (met === undefined)
    return below && above
      ? { state: 'unbalanced', higher: above }
      : { state: 'beyond', least, most };
  const posture = stance.posture(met);
  const hip = 'impossible' in posture ? Number.NaN : hipHeight(posture);
  const rounded = toRadians(Math.round(10 * toDegrees(met)) / 10);
  return { state: 'found', angle: Math.min(rounded, stretch[1]), hip, load };
}

/** What is measured of a posture, metres: as a coach would measure it from the floor. */
function heightOf(kind: Height['kind'], posture: Posture, lift: Lift, body: Body): number {
  if (kind === 'box') return hipHeight(posture) - seatToHipJoint.value;
  if (kind === 'pins') return barHeight(posture, lift, body);
  const thigh = posture.placement.links.find(({ link }) => link.segment === 'thigh');
  return thigh ? thigh.body.length * Math.cos(thigh.direction) : Number.NaN;
}

function hipHeight({ placement }: Posture): number {
  return placement.links.find(({ link }) => link.joint === 'hip')?.start.y ?? Number.NaN;
}

function barHeight({ placement }: Posture, { resistance }: Lift, body: Body): number {
  if (resistance.kind !== 'mass') return Number.NaN;
  const { 'upper arm': upper, 'forearm and hand': lower } = body.segments;
  const hang = resistance.below === undefined ? 0 : upper.length + lower.length;
  return (attachedAt(placement, resistance)?.at.y ?? Number.NaN) - hang;
}
