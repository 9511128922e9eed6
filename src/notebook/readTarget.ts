import { toRadians } from '../numeric/degrees.ts';
import { actionNamed } from '../tables/actions.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import { checkKneeLimit, type KneeLimit, type Range, readEnd, readRange } from './range.ts';
import { degreesText, type Expected, isAbove, type Reading } from './reading.ts';
import type { Path, Target } from './scenario.ts';
import type { TargetFile } from './schema.ts';

const gain: Expected = {
  dimension: 'share',
  example: '10 %',
  least: 1e-6,
  most: 1,
  bounds: 'a wanted gain lies above 0 % and up to 100 %',
};
const within: Expected = {
  dimension: 'weeks',
  least: 1,
  most: 104,
  bounds: 'a time lies between 1 and 104 weeks',
};
/** Bounds of a target whose action is not known (that is said elsewhere). */
const kneeRangeDeg = [0, 140] as const;
const narrowDeg = 10;

/**
 * Reads the range to make stronger.
 *
 * @param limit how far the athlete's knee goes, if the file says so
 * @returns the target with anatomical angles, or undefined; problems are collected, never thrown
 */
export function readTarget(
  reading: Reading,
  target: Draft<TargetFile>,
  limit: KneeLimit | undefined,
): Target | undefined {
  if (!target) return undefined;
  const path: Path = ['target'];
  const action = target.action === undefined ? undefined : actionNamed(target.action);
  const joint = action?.joint ?? 'knee';
  const range = readRange(reading, target, path, (raw, at) => readEnd(reading, raw, at, joint));
  if (range) {
    checkBounds(reading, range, joint, action?.rangeDeg ?? kneeRangeDeg);
    if (joint === 'knee') checkKneeLimit(reading, range.to, limit, 'target');
    remarkOnWidth(reading, range, path);
  }
  return complete<Target>({
    action: target.action,
    from: range?.from.angle,
    to: range?.to.angle,
    ...optional('gain', reading.quantity([...path, 'gain'], target.gain, gain)),
    ...optional('weeks', reading.quantity([...path, 'within'], target.within, within)),
    path,
  });
}

function checkBounds(
  reading: Reading,
  { from, to }: Range,
  joint: string,
  [least, most]: readonly [number, number],
): void {
  for (const { angle, path } of [from, to]) {
    if (!isAbove(angle, toRadians(most)) && !isAbove(toRadians(least), angle)) continue;
    const message = `${path.at(-1)} is ${reading.flexionText(angle, joint)}; a target lies within ${least} to ${most} deg`;
    reading.refuse(path, { code: 'outside-target', message });
  }
}

/** Allowed, but a gain never lands on so few degrees alone. */
function remarkOnWidth(reading: Reading, { from, to }: Range, path: Path): void {
  if (!isAbove(toRadians(narrowDeg), to.angle - from.angle)) return;
  const width = degreesText(to.angle - from.angle);
  const message = `target is ${width} deg wide; gains spread wider than that, so programs will look alike`;
  reading.remark(path, { code: 'narrow-target', message, key: true });
}
