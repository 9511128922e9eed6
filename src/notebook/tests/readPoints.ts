import { checkActionRange } from '../checkActionRange.ts';
import { distinctAngles } from '../distinctAngles.ts';
import { isAbove, type Reading } from '../reading.ts';
import type { NewtonMetre, Path } from '../scenario.ts';
import type { TorquePoint } from './strengthTest.ts';
import type { Tested } from './tablePoints.ts';

/** No knee makes more torque; a larger number is in another unit or mistyped. */
const mostTorque = 1000;

/**
 * Reads trials that stand in the scenario itself, by angle.
 *
 * @param path of the group of angles
 * @returns the points by rising angle; problems are collected, never thrown
 */
export function readPoints(
  reading: Reading,
  trials: Readonly<Record<string, readonly (number | undefined)[] | undefined>> | undefined,
  { joint, action, measured }: Tested & { readonly action: string | undefined },
  path: Path,
): readonly TorquePoint[] {
  const entries = Object.entries(trials ?? {});
  if (trials && entries.length === 0) {
    const message = 'trials is empty; a test has trials at one angle or more';
    reading.refuse(path, { code: 'no-trials', message });
  }
  const points = entries.flatMap(([name, values]) => {
    const at = [...path, name];
    const angle = reading.angle(at, name, joint, { key: true });
    const torques = (values ?? []).flatMap((value, index) =>
      value === undefined || !measured
        ? []
        : readTrial(reading, measured.torqueOf(value), [...at, index]),
    );
    if (angle === undefined) return [];
    checkActionRange(reading, action, [{ angle, path: at }], { key: true });
    return [{ angle, trials: torques, path: at }];
  });
  return distinctAngles(reading, points, path);
}

/** One trial, refused where no joint makes so much; problems are collected, never thrown. */
export function readTrial(reading: Reading, torque: NewtonMetre, path: Path): NewtonMetre[] {
  if (!isAbove(torque, mostTorque)) return [torque];
  const message = `${Math.round(torque)} N m is more than a joint makes; is the unit right?`;
  reading.refuse(path, { code: 'out-of-bounds', message });
  return [];
}
