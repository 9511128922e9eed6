import { toRadians } from '../numeric/degrees.ts';
import { optional } from './complete.ts';
import { degreesText, isAbove, type Reading } from './reading.ts';
import type { Path, PlacedHeight, Radian } from './scenario.ts';

/** One end of a range: its anatomical angle and where the file says so. */
export interface End {
  readonly angle: Radian;
  /** The height it was written as, if it was. */
  readonly placed?: PlacedHeight;
  readonly path: Path;
}

export interface Range {
  readonly from: End;
  readonly to: End;
}

/** What a range of a lift is held against. */
interface LiftRange {
  readonly name: string;
  readonly support: string;
  readonly leading: string;
  readonly rangeDeg: readonly [number, number];
}

/** How far the athlete's knee goes, and where the file says so or could. */
export interface KneeLimit {
  readonly angle: Radian;
  /** The file does not say: the limit of most knees. */
  readonly isUsual?: true;
  readonly path: Path;
}

/**
 * Reads one end of a range.
 *
 * @returns undefined if there is none that can be used; problems are collected, never thrown
 */
export function readEnd(
  reading: Reading,
  raw: string | undefined,
  path: Path,
  joint: string,
): End | undefined {
  const angle = reading.angle(path, raw, joint);
  return angle === undefined ? undefined : { angle, path };
}

/**
 * Reads `from` and `to` of a group.
 *
 * Included angles fall while flexion rises, so a file with that convention may write the range in
 * either order, and so may one end that is a height; else the smaller angle comes first.
 *
 * @param path of the group that holds them
 * @param read reads one end
 * @returns the ends by rising flexion, or undefined; problems are collected, never thrown
 */
export function readRange(
  reading: Reading,
  raw: { readonly from?: string | undefined; readonly to?: string | undefined },
  path: Path,
  read: (raw: string | undefined, path: Path) => End | undefined,
): Range | undefined {
  const from = read(raw.from, [...path, 'from']);
  const to = read(raw.to, [...path, 'to']);
  if (!from || !to) return undefined;
  if (isAbove(to.angle, from.angle)) return { from, to };
  const isEqual = !isAbove(from.angle, to.angle);
  const eitherOrder = reading.convention === 'included' || from.placed || to.placed;
  if (!isEqual && eitherOrder) return { from: to, to: from };
  const message = isEqual
    ? `from and to are both ${raw.to}; a range needs two different angles`
    : `from is ${raw.from} and to is ${raw.to}; from must be the smaller one`;
  const hint = isEqual ? undefined : `write from: ${raw.to}, to: ${raw.from}`;
  reading.refuse(from.path, { code: 'bad-range', message, ...optional('hint', hint) });
  return undefined;
}

/** Refuses ends beyond what a lift is known for; problems are collected, never thrown. */
export function checkLiftRange(reading: Reading, lift: LiftRange, ends: readonly End[]): void {
  const [least, most] = lift.rangeDeg;
  for (const { angle, path } of ends) {
    if (!isAbove(angle, toRadians(most)) && !isAbove(toRadians(least), angle)) continue;
    const message = `${path.at(-1)} is ${reading.flexionText(angle, lift.leading)}; ${lift.name} runs from ${reading.spanText(lift.rangeDeg, lift.leading)}`;
    reading.refuse(path, { code: 'outside-lift', message });
  }
}

/** Nearly straight, a standing lift is so heavy that back and balance give out first (judgement). */
const shallowestDeg = { range: 30, hold: 20 } as const;

/**
 * Refuses a standing lift that stays near the straight knee; problems are collected, never thrown.
 *
 * @param end the deepest angle of the range, or the angle of the hold
 */
export function checkDepth(
  reading: Reading,
  lift: LiftRange,
  end: End | undefined,
  kind: 'range' | 'hold',
): void {
  const least = toRadians(shallowestDeg[kind]);
  if (lift.support !== 'feet' || lift.leading !== 'knee' || !end || !isAbove(least, end.angle))
    return;
  const isIncluded = reading.convention === 'included';
  const enough = `${reading.angleText(least)} or ${isIncluded ? 'less' : 'more'}`;
  const [done, advice] =
    kind === 'range' ? ['to', `end the range at ${enough}`] : ['held at', `hold it at ${enough}`];
  const message = `a ${lift.name} ${done} ${reading.angleText(end.angle)} is limited by the back and by balance, which the model does not know; ${advice}`;
  reading.refuse(end.path, { code: 'too-shallow', message });
}

/**
 * Refuses an end beyond the athlete's knee, naming both.
 *
 * @param what the thing that goes too far, as in "target"
 */
export function checkKneeLimit(
  reading: Reading,
  end: End | undefined,
  limit: KneeLimit | undefined,
  what: string,
): void {
  if (!end || !limit || !isAbove(end.angle, limit.angle)) return;
  const owner = limit.path[0] === 'group' ? 'group' : 'athlete';
  if (limit.isUsual) {
    const message = `${what} goes to ${reading.flexionText(end.angle)}, past the usual limit of a knee, ${degreesText(limit.angle)} deg of flexion; the file gives no other`;
    const own = Math.ceil((end.angle * 180) / Math.PI - 1e-9);
    const hint = `end it at ${reading.angleText(limit.angle)} or, if this knee bends that far, write knee flexion: ${own} deg under ${owner}.limits`;
    reading.refuse(end.path, { code: 'past-knee-limit', message, hint });
    return;
  }
  const message = `${what} goes to ${reading.flexionText(end.angle)}, past the ${owner}'s limit of ${degreesText(limit.angle)} deg (${owner}.limits.knee flexion)`;
  reading.refuse(end.path, { code: 'past-knee-limit', message });
}
