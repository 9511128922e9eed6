/** What is said of heights that a lift does not have or a body does not reach, each with a way out. */
import type { Lift } from '../mechanics/lift.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import type { KneeLimit } from './range.ts';
import { isAbove, type Reading } from './reading.ts';
import type { Height, Metre, Radian } from './scenario.ts';

interface Complaint {
  readonly message: string;
  readonly hint: string;
}

/** A leading angle and the height there, as the coach measures it. */
export interface HeightAt {
  readonly angle: Radian;
  readonly value: Metre;
}

/**
 * Whether a lift has heights of a kind at all: thighs and hips above feet on the floor, a box only
 * where the knees lead and both legs could sit, pins only where a bar is carried or hangs in the hands.
 *
 * @returns what is wrong, or undefined; never throws
 */
export function unfitComplaint(
  reading: Reading,
  { kind }: Height,
  lift: Lift,
): Complaint | undefined {
  const { name, support, chain, resistance, freeLeg, leading, rangeDeg } = lift;
  const stands = support === 'feet' || (support === 'ball of foot' && kind === 'pins');
  const hint = `write the angle, at most ${reading.flexionText(toRadians(rangeDeg[1]), leading)}`;
  if (!stands)
    return {
      message: `the ${name} does not stand on flat feet, so ${kind} says nothing of it`,
      hint,
    };
  if (kind === 'pins') {
    const carried = resistance.kind === 'mass' && resistance.on.startsWith('trunk');
    // What hangs lower than the shoulder hangs on a strap whose length is only drawn.
    const hasBar = carried && (resistance.below === undefined || resistance.along === 1);
    return hasBar ? undefined : { message: `the ${name} has no bar whose height counts`, hint };
  }
  if (
    !chain.some(({ segment }) => segment === 'thigh') ||
    !chain.some(({ joint }) => joint === 'hip')
  )
    return { message: `the ${name} moves no thigh and hip, so ${kind} says nothing of it`, hint };
  if (kind === 'box' && leading !== 'knee')
    return {
      message: `the ${name} is led by the ${leading}, so it does not sit down on a box`,
      hint,
    };
  return kind === 'box' && freeLeg
    ? { message: `the other leg of the ${name} hangs down, so it cannot sit on a box`, hint }
    : undefined;
}

/**
 * A height beyond what a body reaches in a lift: from where to where it does, and the nearest.
 *
 * @param end last angle looked at, and the knee limit if that may be it
 */
export function beyondComplaint(
  reading: Reading,
  height: Height,
  lift: Lift,
  { end, limit }: { readonly end: Radian; readonly limit: KneeLimit | undefined },
  { least, most }: { readonly least: HeightAt; readonly most: HeightAt },
): Complaint {
  const angle = (at: HeightAt) => reading.flexionText(at.angle, lift.leading);
  const why =
    limit && least.angle === limit.angle
      ? limit.isUsual
        ? ', the usual limit of a knee'
        : ', the athlete’s limit'
      : isAbove(end, least.angle + toRadians(1))
        ? ', beyond which it cannot be held in balance'
        : '';
  if (height.kind === 'thigh level') {
    const left = Math.max(Math.round(100 * least.value), 1);
    return {
      message: `the ${lift.name} does not come to thigh level with this body: at ${angle(least)}${why}, the hip is still ${left} cm above the knee`,
      hint: `write the angle, at most ${angle(least)}`,
    };
  }
  const { kind } = height;
  const [low, high] = [Math.ceil(100 * least.value - 0.5), Math.floor(100 * most.value + 0.5)];
  const what = kind === 'box' ? `the ${lift.name} sits on a box` : `the bar of the ${lift.name} is`;
  return {
    message: `${kind} ${centimetres(height.height)} cannot be reached: with this body ${what} ${low} cm high at ${angle(least)}${why}, and ${high} cm at ${angle(most)}`,
    hint: `write ${kind} ${height.height < least.value ? low : high} cm, or a height between the two`,
  };
}

/** A height at which body and load cannot be balanced: the nearest one, coming down, at which they can. */
export function unbalancedComplaint(
  reading: Reading,
  height: Height,
  lift: Lift,
  { higher }: { readonly higher?: HeightAt },
): Complaint {
  const check = 'check the segment lengths and the ankle limit';
  const where = higher ? `at ${nameOf(height)}` : 'anywhere';
  const message = `the ${lift.name} cannot be held in balance ${where} with this body`;
  if (!higher) return { message, hint: check };
  const angle = reading.flexionText(higher.angle, lift.leading);
  const nearest =
    height.kind === 'thigh level'
      ? angle
      : `${height.kind} ${Math.ceil(100 * higher.value)} cm (${angle})`;
  return { message, hint: `it can be down to ${nearest}: write that, or ${check}` };
}

/** A height that is met more than once, as happens near standing. */
export function severalComplaint(
  reading: Reading,
  height: Height,
  lift: Lift,
  { angles }: { readonly angles: readonly Radian[] },
): Complaint {
  const shown = angles.map((angle) => Math.round(toDegrees(angle)));
  const [first = 0] = angles;
  return {
    message: `${nameOf(height)} is met at ${shown.join(' and ')} deg of flexion in the ${lift.name}, so it does not tell the angle`,
    hint: `write the angle, for example ${reading.angleText(toRadians(Math.round(toDegrees(first))))}`,
  };
}

const centimetres = (height: Metre): string => `${Number((100 * height).toFixed(1))} cm`;

const nameOf = (height: Height): string =>
  height.kind === 'thigh level' ? 'thigh level' : `${height.kind} ${centimetres(height.height)}`;
