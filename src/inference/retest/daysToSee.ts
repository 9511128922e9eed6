import type { AngleChange } from './angleChanges.ts';
import type { Judged, NotJudged } from './verdict.ts';

/**
 * Test days on each side at which a wanted gain of the target would stand out: the error of a change
 * falls with the root of the days, reckoned in logarithms as the verdict is.
 *
 * @param wanted share
 * @returns whole days; undefined where the gain stands out already or nothing can be judged
 */
export function daysToSee(
  target: Judged | NotJudged,
  angles: readonly AngleChange[],
  wanted: number,
): number | undefined {
  if ('refused' in target || target.detectableGain <= wanted) return undefined;
  const days = angles.filter(({ inTarget }) => inTarget).map((one) => one.days);
  const each = Math.min(...days.map(({ before, after }) => 2 / (1 / before + 1 / after)));
  const times = (Math.log1p(target.detectableGain) / Math.log1p(wanted)) ** 2;
  return Math.ceil(each * times - 1e-9);
}
