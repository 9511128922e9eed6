import type { Lift } from '../mechanics/lift.ts';
import type { LiftWork, Program } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import { degreesOf, kg, metres, overWhat, stretchOf } from './amounts.ts';

/** Bands stretched beyond what can be said of them, or a rig that leaves the load no balance. */
export function rigProblems(
  source: Source,
  work: LiftWork,
  { rigUse: use }: PlannedExercise,
  lift: Lift,
): Problem[] {
  if (!use) return [];
  const { load, least, bands, samples, unbalancedAt } = use;
  const at = source.at([...work.path, work.bands === undefined ? 'chains' : 'bands']);
  const far = Math.max(...samples.map(({ bandLength = 0 }) => bandLength));
  const where = samples.find(({ bandLength }) => bandLength === far);
  if (bands && where && far > bands.stretch.longest)
    return [
      {
        code: 'band-too-long',
        message: `at ${degreesOf(where.angle)} the bands "${work.bands}" are ${metres(far)} long; their pull is known to ${metres(bands.stretch.known[1])} and guessed no farther than ${metres(bands.stretch.longest)}`,
        at,
        hint: `measure their pull at ${metres(far)} too, or fix them nearer the bar`,
      },
    ];
  // A body that hangs from a bar may well be carried by more than the weight on its belt.
  if (least && lift.support !== 'bar' && load + least.added < 0)
    return [
      {
        code: 'bar-floats',
        message: `at ${degreesOf(least.angle)} the bands "${work.bands}" lift ${kg(-least.added)}, more than the load of ${kg(load)}: the bar would rise by itself`,
        at,
        hint: `use weaker bands, fix them lower, or load more than ${kg(-least.added)}`,
      },
    ];
  return unbalancedAt === undefined ? [] : [unbalancedRig(source, work, lift, load, unbalancedAt)];
}

/** A range that the load cannot go through in balance once the chains or bands are on. */
export function unbalancedRig(
  source: Source,
  work: LiftWork,
  lift: Lift,
  load: number,
  angle: number,
): Problem {
  const key = work.bands === undefined ? 'chains' : 'bands';
  return {
    code: 'cannot-balance',
    message: `with ${load > 0 ? `${kg(load)} and ` : ''}the ${key} "${work[key]}" the ${work.lift} cannot be held in balance${overWhat(lift)} at ${degreesOf(angle)}`,
    at: source.at([...work.path, key]),
    hint:
      key === 'bands'
        ? 'use weaker bands, another load, or end the range earlier'
        : 'use another load, or end the range earlier',
  };
}

/** Chains and bands that do nothing over the whole range: allowed, but worth a look. */
export function rigRemarks(
  source: Source,
  { work }: Program,
  planned: readonly PlannedExercise[],
): Problem[] {
  return work.flatMap((entry, i) => {
    const use = planned[i]?.rigUse;
    if (entry.kind !== 'lift' || !use || use.samples.some(({ added }) => Math.abs(added) > 0.05))
      return [];
    const key = entry.chains === undefined ? 'bands' : 'chains';
    return [
      {
        code: 'idle-rig',
        message: `the ${key} "${entry[key]}" add nothing to the ${entry.lift} ${stretchOf(entry)}: they stay ${key === 'bands' ? 'slack' : 'on the floor'}`,
        at: source.at([...entry.path, key]),
        hint: key === 'bands' ? 'check the lengths and the anchor' : 'check the cord and the lift',
      },
    ];
  });
}
