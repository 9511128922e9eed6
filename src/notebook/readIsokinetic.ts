import { toRadians } from '../numeric/degrees.ts';
import { actionNamed } from '../tables/actions.ts';
import { speedBoundsDeg } from '../tables/forceVelocity.ts';
import { checkActionRange } from './checkActionRange.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import type { IsokineticWorkFile } from './programSchema.ts';
import { checkKneeLimit, type KneeLimit, readEnd, readRange } from './range.ts';
import type { Expected, Reading } from './reading.ts';
import type { IsokineticWork, Path } from './scenario.ts';
import { defaultRest, effort, rest } from './workQuantities.ts';

type IsokineticDraft = NonNullable<Draft<IsokineticWorkFile>>;

const { least, most } = speedBoundsDeg;
const speed: Expected = {
  dimension: 'speed',
  example: '60 deg/s',
  least: toRadians(least),
  most: toRadians(most),
  bounds: `a machine turns a joint at ${least} to ${most} deg/s`,
};

const ways = {
  both: ['lifting', 'lowering'],
  lifting: ['lifting'],
  lowering: ['lowering'],
} as const;

/**
 * Reads work at a set speed.
 *
 * @param path of the work
 * @returns the work in SI with anatomical angles, or undefined; problems are collected, never thrown
 */
export function readIsokinetic(
  reading: Reading,
  work: IsokineticDraft,
  path: Path,
  kneeLimit: KneeLimit | undefined,
): IsokineticWork | undefined {
  const name = work.isokinetic;
  const joint = (name === undefined ? undefined : actionNamed(name)?.joint) ?? 'knee';
  const range = readRange(reading, work, path, (raw, at) => readEnd(reading, raw, at, joint));
  const isKnown = checkActionRange(reading, name, [range?.from, range?.to]);
  if (isKnown && joint === 'knee')
    checkKneeLimit(reading, range?.to, kneeLimit, `isokinetic ${name}`);
  return complete<IsokineticWork>({
    kind: 'isokinetic',
    action: name,
    from: range?.from.angle,
    to: range?.to.angle,
    speed: reading.quantity([...path, 'speed'], work.speed, speed),
    ways: work.way && ways[work.way],
    effort: reading.quantity([...path, 'effort'], work.effort, effort),
    sets: work.sets,
    reps: work.reps,
    rest: reading.quantity([...path, 'rest'], work.rest ?? defaultRest, rest),
    ...optional('assumed', Object.hasOwn(work, 'rest') ? undefined : (['rest'] as const)),
    path,
  });
}
