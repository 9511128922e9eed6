import { actionNamed } from '../tables/actions.ts';
import { lifts } from '../tables/lifts.ts';
import { segmentEnds } from '../tables/segmentEnds.ts';
import type { Path, Scenario } from './scenario.ts';
import { valueAt } from './schemaAt.ts';

/**
 * An example that fits what stands beside a missing value, where the schema's own may not: an end
 * of a range that the lift has, a joint that the segment has.
 *
 * @param example the schema's own, in flexion
 * @returns the example to show, angles in flexion or ready in the file's words; never throws
 */
export function fittingExample(path: Path, file: unknown, example: unknown): unknown {
  const group = path.slice(0, -1);
  const name = path.at(-1);
  if (name === 'joint' && path[0] === 'lifts' && path[2] === 'chain')
    return jointOf(group, file) ?? example;
  if (name !== 'from' && name !== 'to' && name !== 'at') return example;
  const known = knownRange(valueAt(file, group), file);
  const degrees = Number(/^(-?\d+) deg$/.exec(String(example))?.[1] ?? Number.NaN);
  if (!known || Number.isNaN(degrees)) return example;
  const { joint, rangeDeg } = known;
  const [first, last] = rangeDeg;
  const middle = 5 * Math.round((first + last) / 10);
  const usual = joint === 'knee' && degrees >= first && degrees <= last ? degrees : undefined;
  const fitting = usual ?? (name === 'from' ? first : name === 'to' ? last : middle);
  const turns = valueAt(file, ['angles']) === ('included' satisfies Scenario['convention']);
  return `${turns && turned.has(joint) ? 180 - fitting : fitting} deg`;
}

const turned: ReadonlySet<string> = new Set(['knee', 'hip', 'elbow']);

/** Names beside which an end of a range stands, in work, tests and findings of studies. */
const heads = ['lift', 'hold', 'isokinetic', 'action', 'isometric', 'single', 'repetition maximum'];

/** The joint and range (degrees of flexion) of the lift or action that a group names. */
function knownRange(group: unknown, file: unknown) {
  const named = heads.flatMap((key) => {
    const value = valueAt(group, [key]);
    return typeof value === 'string' ? [value] : [];
  })[0];
  if (named === undefined) return undefined;
  const like = valueAt(file, ['lifts', named, 'like']);
  const lift = lifts.find(({ name }) => name === named || name === like);
  if (lift) return { joint: lift.leading, rangeDeg: lift.rangeDeg };
  return actionNamed(named);
}

/** A joint at the segment's end nearer the support, best one at which the segment before ends. */
function jointOf(link: Path, file: unknown): string | undefined {
  const endsOf = (at: Path, isFar: boolean): readonly string[] => {
    const [segment, near] = ['segment', 'near'].map((key) => valueAt(file, [...at, key]));
    const found = Object.entries(segmentEnds).find(([name]) => name === segment)?.[1];
    if (!found || (near !== 'proximal' && near !== 'distal')) return [];
    const far = near === 'proximal' ? 'distal' : 'proximal';
    return found[isFar ? far : near];
  };
  const index = Number(link.at(-1));
  const before = index > 0 ? endsOf([...link.slice(0, -1), index - 1], true) : [];
  const own = endsOf(link, false);
  return own.find((joint) => before.includes(joint)) ?? own[0];
}
