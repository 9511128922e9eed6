import { toRadians } from '../numeric/degrees.ts';
import { actionNamed } from '../tables/actions.ts';
import { checkActionRange } from './checkActionRange.ts';
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
  const joint = actionNamed(target.action ?? '')?.joint ?? 'knee';
  const range = readRange(reading, target, path, (raw, at) => readEnd(reading, raw, at, joint));
  if (range) {
    const isKnown = checkActionRange(reading, target.action, [range.from, range.to]);
    if (isKnown && joint === 'knee') checkKneeLimit(reading, range.to, limit, 'target');
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

/** Allowed, but a gain never lands on so few degrees alone. */
function remarkOnWidth(reading: Reading, { from, to }: Range, path: Path): void {
  if (!isAbove(toRadians(narrowDeg), to.angle - from.angle)) return;
  const width = degreesText(to.angle - from.angle);
  const message = `target is ${width} deg wide; gains spread wider than that, so programs will look alike`;
  reading.remark(path, { code: 'narrow-target', message, key: true });
}
