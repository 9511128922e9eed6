import { gridAngles } from '../mechanics/angleGrid.ts';
import { type Demand, demandOf } from '../mechanics/demand.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { Body, Impossible } from '../mechanics/posture.ts';
import { noRig, type Rig } from '../mechanics/rig.ts';
import { risingRoot } from '../numeric/rootFinding.ts';
import { type ActionName, actionNames, actions } from '../tables/actions.ts';
import { type Capacity, hardest, jointEfforts } from './jointEfforts.ts';
import { leastEffort } from './sharing.ts';

/** A lift over a range of its leading joint (radians), with its machine, chains or bands if any. */
export interface Range {
  readonly lift: Lift;
  readonly from: number;
  readonly to: number;
  readonly rig?: Rig | undefined;
}

/** The posture of a range that asks most of the muscles, and how much of their best it asks. */
export interface StickingPoint {
  /** Leading-joint angle, radians. */
  readonly angle: number;
  readonly action: ActionName;
  /** Share of their best that the muscles need; infinite where the posture cannot be balanced. */
  readonly effort: number;
}

/** Ends of a range and the angles of a list between them. */
export function rangeAngles(from: number, to: number, angles: readonly number[]): number[] {
  if (from === to) return [from];
  return [from, ...angles.filter((angle) => angle > from + tiny && angle < to - tiny), to];
}

/** Rounding must not look twice at one angle. */
const tiny = 1e-9;
/** Postures of a lift are looked at every second grid angle (5 degrees). */
export const lookedAt = gridAngles.filter((_, i) => i % 2 === 0);

/** What a lift asks at one angle of its range. */
export interface AskedAt {
  readonly leading: number;
  readonly asked: Demand | Impossible;
}

type ByLoad = Map<string, readonly AskedAt[]>;
const remembered = new WeakMap<Body, WeakMap<Lift, WeakMap<Rig, ByLoad>>>();

/** What is kept of a body, a lift and a rig, each known by its identity. */
function keptOf(body: Body, lift: Lift, rig: Rig): ByLoad {
  const byLift = remembered.get(body) ?? new WeakMap<Lift, WeakMap<Rig, ByLoad>>();
  remembered.set(body, byLift);
  const byRig = byLift.get(lift) ?? new WeakMap<Rig, ByLoad>();
  byLift.set(lift, byRig);
  const byLoad = byRig.get(rig) ?? new Map<string, readonly AskedAt[]>();
  byRig.set(rig, byLoad);
  return byLoad;
}

/**
 * What a range asks with a load, angle by angle.
 *
 * Kept for each body, lift and rig: programs share lifts and loads, and strength does not enter.
 *
 * @param load kg
 */
export function demandsOver(range: Range, body: Body, load: number): readonly AskedAt[] {
  const { lift, from, to, rig = noRig } = range;
  const compute = () => {
    const demandAt = demandOf(lift, body, load, rig);
    return rangeAngles(from, to, lookedAt).map((leading) => ({
      leading,
      asked: demandAt(leading),
    }));
  };
  const byLoad = keptOf(body, lift, rig);
  const key = `${from} ${to} ${load}`;
  const known = byLoad.get(key) ?? compute();
  byLoad.set(key, known);
  return known;
}

/** A posture with what its hardest joint asks alone. */
interface Posture {
  readonly angle: number;
  readonly asked: Demand;
  readonly alone: NonNullable<ReturnType<typeof hardest>>;
}

/** Postures of a range by what their hardest joint asks alone, hardest first; or where balance fails. */
function posturesOf(
  range: Range,
  body: Body,
  capacity: Capacity,
  load: number,
): readonly Posture[] | { readonly unbalancedAt: number } {
  const postures: Posture[] = [];
  for (const { leading: angle, asked } of demandsOver(range, body, load)) {
    if ('impossible' in asked) return { unbalancedAt: angle };
    const alone = hardest(jointEfforts(asked, capacity));
    if (alone) postures.push({ angle, asked, alone });
  }
  return postures.sort((a, b) => b.alone.effort - a.alone.effort);
}

/**
 * In no posture of the catalogue do muscles over two joints raise the effort by more than this over
 * that of the hardest joint alone (held by a test).
 */
const mostTied = 1.5;

/**
 * Where in a range a load is hardest to hold: the posture whose joints together need the largest
 * share of what their muscles can give.
 *
 * Together joints need at least what the hardest needs alone, mostly little more: starting with
 * that posture spares nearly all the others.
 *
 * @param load kg
 */
export function stickingPoint(
  range: Range,
  body: Body,
  capacity: Capacity,
  load: number,
): StickingPoint {
  const action = leadingAction(range.lift);
  const postures = posturesOf(range, body, capacity, load);
  if ('unbalancedAt' in postures)
    return { angle: postures.unbalancedAt, action, effort: Number.POSITIVE_INFINITY };
  let worst: StickingPoint = { angle: range.from, action, effort: 0 };
  for (const { angle, asked, alone } of postures) {
    if (alone.effort * mostTied < worst.effort) break;
    const effort = leastEffort(asked, capacity);
    if (effort > worst.effort) worst = { angle, action: alone.action, effort };
  }
  return worst;
}

/** First action of the leading joint: it names a posture that no muscle limits. */
function leadingAction(lift: Lift): ActionName {
  return actionNames.find((name) => actions[name].joint === lift.leading) ?? 'knee extension';
}

/** A load, kg, and the posture that is hardest with it. */
export interface HeaviestLoad {
  readonly load: number;
  readonly at: StickingPoint;
}

/**
 * Load at which the sticking point of a range asks a given effort; by default all of it, which is
 * the heaviest load of the range before any calibration.
 *
 * The load at which one posture asks the effort is never below the answer, so it comes down from
 * posture to posture, from the one whose joints are hardest alone, until no other is harder.
 * Quasi-static: no bounce, no momentum, no limit of the back.
 *
 * @returns 0 kg when even the empty body asks more
 */
export function heaviestLoad(
  range: Range,
  body: Body,
  capacity: Capacity,
  atEffort = 1,
): HeaviestLoad {
  const hardestWith = (load: number) => stickingPoint(range, body, capacity, load);
  const isHeld = (load: number) => {
    const postures = posturesOf(range, body, capacity, load);
    if ('unbalancedAt' in postures) return false;
    const alone = postures[0]?.alone.effort ?? 0;
    return alone < atEffort && (alone * mostTied < atEffort || hardestWith(load).effort < atEffort);
  };
  // A light bar, or one that bands nearly carry, may leave a deep posture unbalanced that a heavier
  // one allows.
  const lightest = [0, 20, 40, 80, 160].find(isHeld);
  if (lightest === undefined) return { load: 0, at: hardestWith(0) };
  const first = posturesOf(range, body, capacity, mostLoad);
  let angle = 'unbalancedAt' in first ? first.unbalancedAt : (first[0]?.angle ?? range.to);
  let load = mostLoad;
  for (;;) {
    const posture = { ...range, from: angle, to: angle };
    const excess = (kg: number) => stickingPoint(posture, body, capacity, kg).effort - atEffort;
    load = risingRoot(excess, lightest, load, 1e-6);
    const at = hardestWith(load);
    if (at.effort <= atEffort + 2e-6 || at.angle === angle) return { load, at };
    angle = at.angle;
  }
}

/** No load beyond this is looked for, kg. */
export const mostLoad = 1500;
