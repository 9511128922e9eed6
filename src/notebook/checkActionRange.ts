import { toRadians } from '../numeric/degrees.ts';
import { actionNamed, jointWords } from '../tables/actions.ts';
import type { End } from './range.ts';
import { isAbove, type Reading } from './reading.ts';

/**
 * Refuses angles at which the strength of a joint action is not known: nearly always a slip of the
 * pen, or an angle counted from elsewhere.
 *
 * @param name of the action; one that does not exist is reported where it is named
 * @returns whether all of them can be used
 * @param options.key the angle is itself the name of a value, as in `40 deg: [118]`
 */
export function checkActionRange(
  reading: Reading,
  name: string | undefined,
  ends: readonly (End | undefined)[],
  { key = false }: { readonly key?: boolean } = {},
): boolean {
  const action = name === undefined ? undefined : actionNamed(name);
  if (!action) return true;
  const before = reading.problems.length;
  const { joint, rangeDeg } = action;
  for (const end of ends) {
    if (
      !end ||
      (!isAbove(end.angle, toRadians(rangeDeg[1])) && !isAbove(toRadians(rangeDeg[0]), end.angle))
    )
      continue;
    const { angle, path } = end;
    const written = key ? 'an angle of the test' : path.at(-1);
    const message = `${written} is ${reading.flexionText(angle, joint)}; strength in ${name} is known from ${reading.spanText(rangeDeg, joint)}`;
    const hint = `write an angle within that; ${counting(reading, joint)}`;
    reading.refuse(path, { code: 'outside-action', message, hint, key });
  }
  return reading.problems.length === before;
}

/** From where a joint's angle counts in this file, and which way. */
function counting(reading: Reading, joint: keyof typeof jointWords): string {
  const { name, motion, zero } = jointWords[joint];
  if (reading.turns(joint)) return `the ${name} counts down from 180 deg (${zero})`;
  const also = reading.convention === 'included' ? ', whatever angles: says' : '';
  return `the ${name} counts from 0 deg (${zero}), ${motion} positive${also}`;
}
