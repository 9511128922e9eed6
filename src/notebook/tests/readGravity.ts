import { toRadians } from '../../numeric/degrees.ts';
import { type Action, actionNamed } from '../../tables/actions.ts';
import { distinctAngles } from '../distinctAngles.ts';
import { dimensionOf } from '../quantity.ts';
import { isAbove, type Reading } from '../reading.ts';
import type { NewtonMetre, Path, Radian } from '../scenario.ts';
import type { Gravity, Measure, TorquePoint, TorqueTest } from './strengthTest.ts';

export type GravityDraft =
  | 'corrected'
  | 'none'
  | 'estimated'
  | {
      readonly relaxed?: Readonly<Record<string, string | undefined>> | undefined;
      readonly pulls?: 'against' | 'with' | undefined;
    }
  | { readonly weighed?: string | undefined; readonly at?: string | undefined };

/** What the weight of the limb depends on. */
export interface Limb {
  readonly action: string;
  readonly posture: TorqueTest['posture'];
  readonly measure: Measure;
  readonly points: readonly TorquePoint[];
}

/** Beyond this from level too little weight is felt to tell the whole (working value: a quarter). */
const steepest = toRadians(75);
/** A relaxed value holds for angles this near to it (as near as an angle is read; working value). */
const near = toRadians(2);

/**
 * Reads what was done about the weight of the limb.
 *
 * Seated with the knee bent, the weight of shank and foot pulls toward a straight-hanging shank:
 * against extension, with flexion (standard in knee dynamometry; from memory). For other joints and
 * postures only a relaxed trial tells, and the coach says which way it pulls.
 *
 * @param path of `gravity`
 * @returns undefined if nothing is written or it cannot be used; problems are collected, never thrown
 */
export function readGravity(
  reading: Reading,
  draft: GravityDraft | undefined,
  limb: Limb,
  path: Path,
): Gravity | undefined {
  const action = actionNamed(limb.action);
  if (draft === undefined || !action) return undefined;
  if (draft === 'corrected') return { kind: 'corrected' };
  if (draft === 'none') {
    remarkOnNone(reading, limb, path);
    return { kind: 'none' };
  }
  if (draft !== 'estimated' && 'relaxed' in draft)
    return readRelaxed(reading, draft, { ...limb, joint: action }, path);
  const pulls = seatedKnee(limb, action);
  if (pulls === undefined) {
    refuseUnsure(reading, draft === 'estimated' ? 'estimated' : 'weighed', limb, path);
    return undefined;
  }
  if (draft === 'estimated') return { kind: 'estimated', pulls };
  if (!('weighed' in draft)) return undefined;
  const at = reading.angle([...path, 'at'], draft.at, 'knee');
  const weighed = readPull(reading, draft.weighed, limb.measure, [...path, 'weighed']);
  if (at === undefined || weighed === undefined) return undefined;
  if (weighed <= 0) {
    const message = `weighed is ${draft.weighed}; the weight of a limb is above 0`;
    reading.refuse([...path, 'weighed'], { code: 'bad-gravity', message });
    return undefined;
  }
  if (!isAbove(at, steepest)) return { kind: 'weighed', level: weighed / Math.cos(at), pulls };
  const message = `at is ${draft.at}; there the shank hangs almost straight down and its weight is hardly felt`;
  const hint = 'weigh it with the knee bent by 60 deg or less';
  reading.refuse([...path, 'at'], { code: 'bad-gravity', message, hint });
  return undefined;
}

/** Which way the weight pulls where that is sure: 1 against the effort, −1 with it. */
function seatedKnee({ posture }: Limb, { joint, sense }: Action): 1 | -1 | undefined {
  return joint === 'knee' && posture === 'seated' ? sense : undefined;
}

function readRelaxed(
  reading: Reading,
  draft: Extract<GravityDraft, { relaxed?: unknown }>,
  limb: Limb & { readonly joint: Action },
  path: Path,
): Gravity | undefined {
  const isSaid = draft.pulls === undefined ? undefined : draft.pulls === 'against' ? 1 : -1;
  const sign = isSaid ?? seatedKnee(limb, limb.joint);
  if (sign === undefined) {
    const message = `gravity does not say which way the relaxed limb pulls in this ${limb.action}`;
    const hint =
      'add "pulls: against" (the weight makes the effort harder) or "pulls: with" (it helps)';
    reading.refuse(path, { code: 'bad-gravity', message, hint, key: true });
    return undefined;
  }
  const below = [...path, 'relaxed'];
  const points = Object.entries(draft.relaxed ?? {}).flatMap(([name, raw]) => {
    const at = [...below, name];
    const angle = reading.angle(at, name, limb.joint.joint, { key: true });
    const pull = readPull(reading, raw, limb.measure, at);
    return angle === undefined || pull === undefined
      ? []
      : [{ angle, against: sign * pull, path: at }];
  });
  const sorted = distinctAngles(reading, points, below);
  if (sorted.length === 0) {
    const message = 'relaxed is empty; it holds the pull of the relaxed limb at each angle';
    if (draft.relaxed && Object.keys(draft.relaxed).length === 0)
      reading.refuse(below, { code: 'bad-gravity', message });
    return undefined;
  }
  const angles = sorted.map(({ angle }) => angle);
  for (const point of limb.points) refuseUncovered(reading, point, angles, limb.joint.joint, below);
  return { kind: 'relaxed', points: sorted.map(({ angle, against }) => ({ angle, against })) };
}

/** Between relaxed angles the pull is read off a straight line; beyond them nothing is known. */
function refuseUncovered(
  reading: Reading,
  { angle }: TorquePoint,
  angles: readonly Radian[],
  joint: string,
  path: Path,
): void {
  const [first = 0, last = first] = [angles[0], angles.at(-1)];
  if (!isAbove(first - near, angle) && !isAbove(angle, last + near)) return;
  const ends = [first, last].map((end) => reading.jointText(end, joint));
  const span = first === last ? `stands at ${ends[0]} only` : `covers ${ends.join(' to ')}`;
  const message = `the relaxed trial ${span}; there are trials at ${reading.jointText(angle, joint)}`;
  const hint = 'add the relaxed pull at the outer angles of the test';
  reading.refuse(path, { code: 'bad-gravity', message, hint, key: true });
}

/** A pull as a torque, or as a force at the lever arm of the test. */
function readPull(
  reading: Reading,
  raw: string | undefined,
  { lever }: Measure,
  path: Path,
): NewtonMetre | undefined {
  const isForce = raw !== undefined && dimensionOf(raw, reading.units) === 'force';
  if (!isForce || lever === undefined)
    return reading.quantity(path, raw, { dimension: 'torque', example: '8 N m', ...pullBounds });
  const force = reading.quantity(path, raw, { dimension: 'force' });
  return force === undefined ? undefined : force * lever;
}

/** No limb weighs more: a leg of 25 kg held level pulls about 100 N m (hand calculation). */
const pullBounds = {
  least: -150,
  most: 150,
  bounds: 'a relaxed limb pulls with less than 150 N m',
};

function refuseUnsure(
  reading: Reading,
  way: 'estimated' | 'weighed',
  { action, posture }: Limb,
  path: Path,
): void {
  const isKnee = actionNamed(action)?.joint === 'knee';
  const where = posture === undefined ? 'without its posture' : posture;
  const message = `gravity is ${way}, which is known for the knee of a seated athlete only; this is ${action}${isKnee ? ` ${where}` : ''}`;
  const relaxed =
    'measure the relaxed limb: gravity: { relaxed: { 40 deg: 8 N m }, pulls: against }';
  const hint =
    isKnee && posture === undefined ? `add "posture: seated" if so; else ${relaxed}` : relaxed;
  reading.refuse(path, { code: 'bad-gravity', message, hint, key: true });
}

function remarkOnNone(reading: Reading, { action, posture }: Limb, path: Path): void {
  const { joint, sense } = { joint: '', sense: 1, ...actionNamed(action) };
  const isSure = joint === 'knee' && posture === 'seated';
  const way = !isSure
    ? 'too small where the weight works against the effort, too large where it helps'
    : sense === 1
      ? 'too small, most near the straight knee'
      : 'too large, most near the straight knee';
  const message = `the weight of the limb is still in these trials of ${action}: they are ${way}`;
  const hint =
    'a relaxed trial at each angle takes it out: gravity: { relaxed: { 40 deg: 8 N m } }';
  reading.remark(path, { code: 'gravity-left-in', message, hint });
}
