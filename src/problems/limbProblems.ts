import type { Path } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { degreesOf } from './amounts.ts';

interface Corrected {
  readonly angle: number;
  /** N·m of the muscles, with the weight of the limb taken out. */
  readonly trials: readonly number[];
  readonly pull: number;
  readonly path: Path;
}

/** Trials of which the weight of the limb leaves nothing: the muscles would have pushed backward. */
export function limbProblems(source: Source, points: readonly Corrected[]): Problem[] {
  return points
    .filter(({ trials }) => trials.some((torque) => torque <= 0))
    .map(({ angle, pull, path }) => ({
      code: 'nothing-left',
      message: `the weight of the limb makes ${Math.abs(pull).toFixed(1)} N m at ${degreesOf(angle)}; taken from these trials it leaves nothing for the muscles`,
      at: source.at(path, { key: true }),
      hint: 'check gravity: and the unit; if the device took the weight out, write gravity: corrected',
    }));
}
