import type { Lift } from '../../mechanics/lift.ts';
import { actionNamed } from '../../tables/actions.ts';
import { checkActionRange } from '../checkActionRange.ts';
import { actionNames } from '../knownNames.ts';
import {
  checkKneeLimit,
  checkLiftRange,
  type End,
  type KneeLimit,
  readEnd,
  readRange,
} from '../range.ts';
import type { Reading } from '../reading.ts';
import { type KnownLifts, namedLift } from '../readLifts.ts';
import type { Path, Radian } from '../scenario.ts';

/** Angles at which a study tested an action or a lift. */

interface Around {
  readonly lifts: KnownLifts;
  readonly kneeLimit: KneeLimit | undefined;
}

interface Written {
  readonly at?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

interface Span {
  readonly from: Radian;
  readonly to: Radian;
}

/**
 * Reads what was tested and at which angles.
 *
 * @param name a joint action or a lift
 * @param path of the name; the angles stand beside it
 * @returns both ends equal for one angle; "none" if the file gives no angle; problems are collected
 */
export function readTestPlace(
  reading: Reading,
  name: string | undefined,
  written: Written,
  path: Path,
  around: Around,
): (Span & { readonly of: string }) | 'none' | undefined {
  const lift = namedLift(reading, name, path, around.lifts, actionNames);
  const joint = lift?.leading ?? (name === undefined ? undefined : actionNamed(name)?.joint);
  if (name === undefined || !joint) return undefined;
  const beside = path.slice(0, -1);
  const ends = readEnds(reading, written, beside, joint);
  if (!ends || ends === 'none') return ends;
  const before = reading.problems.length;
  const [from, to] = ends;
  checkActionRange(reading, name, ends);
  if (lift) checkLiftRange(reading, lift, ends);
  if (joint === 'knee') checkKneeLimit(reading, to, around.kneeLimit, `test of ${name}`);
  if (reading.problems.length > before) return undefined;
  return { of: name, from: from.angle, to: to.angle };
}

/**
 * Reads the range of a tested lift.
 *
 * @returns the ends by rising flexion, or undefined; problems are collected, never thrown
 */
export function readSpan(
  reading: Reading,
  lift: Lift,
  written: Written,
  path: Path,
  { kneeLimit }: Around,
): Span | undefined {
  const range = readRange(reading, written, path, (raw, at) =>
    readEnd(reading, raw, at, lift.leading),
  );
  if (!range) return undefined;
  const before = reading.problems.length;
  checkLiftRange(reading, lift, [range.from, range.to]);
  if (lift.leading === 'knee') checkKneeLimit(reading, range.to, kneeLimit, lift.name);
  if (reading.problems.length > before) return undefined;
  return { from: range.from.angle, to: range.to.angle };
}

function readEnds(
  reading: Reading,
  written: Written,
  path: Path,
  joint: string,
): readonly [End, End] | 'none' | undefined {
  const hasAt = Object.hasOwn(written, 'at');
  const hasRange = Object.hasOwn(written, 'from') || Object.hasOwn(written, 'to');
  if (hasAt && hasRange) {
    const message = 'at stands beside from and to; a test is at one angle or a mean over a range';
    const hint = 'keep at:, or from: and to:';
    reading.refuse([...path, 'at'], { code: 'two-places', message, hint, key: true });
    return undefined;
  }
  if (hasAt) {
    const end = readEnd(reading, written.at, [...path, 'at'], joint);
    return end && [end, end];
  }
  if (!hasRange) return 'none';
  for (const name of ['from', 'to'] as const)
    if (!Object.hasOwn(written, name)) {
      const message = `${name} is missing; a mean over a range needs from and to`;
      reading.refuse(path, { code: 'missing', message });
    }
  const range = readRange(reading, written, path, (raw, at) => readEnd(reading, raw, at, joint));
  return range && [range.from, range.to];
}
