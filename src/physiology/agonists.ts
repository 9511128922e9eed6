import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type Action, type ActionName, actions } from '../tables/actions.ts';
import type { Muscle, MuscleJoint, MusclePosture } from '../tables/muscleRow.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';
import { armGrowth } from './armGrowth.ts';
import { lengthTension } from './lengthTension.ts';
import { meanGrowth } from './muscleChange.ts';
import { livingArea, operatingLength, regionLevers, tendonArmAt } from './muscleGeometry.ts';

/** A muscle that works for an action, over the angles of the action's joint in its test posture. */
interface Agonist {
  /** Place among the trained muscles. */
  readonly place: number;
  readonly home: ActionName;
  /** Area · cos(pennation) · arm: torque a unit of fibre stress at the best length, cm²·m. */
  readonly strength: OverAngles;
  /** Fibre length at full effort, optimum lengths. */
  readonly length: OverAngles;
  /** Share of the area times relative lever, one list a region; over the regions they sum to 1. */
  readonly levers: readonly OverAngles[];
}

/** What of a muscle's change acts on torque: added area by region, added fibre length; shares. */
export interface Acting {
  readonly growth: readonly number[];
  readonly fibre: number;
}

interface Agonists {
  readonly all: readonly Agonist[];
  /** Their torque together before training, a unit of fibre stress. */
  readonly before: OverAngles;
}

const known = new Map<ActionName, Agonists>();

/** Places, among the trained muscles, of those that work for an action at any angle. */
export function agonistPlaces(action: ActionName): readonly number[] {
  return agonistsOf(action).all.map(({ place }) => place);
}

/** Torque of an action's muscles before training, N·m per N/cm² of fibre stress, over the grid. */
export function tableTorque(action: ActionName): OverAngles {
  return agonistsOf(action).before;
}

/**
 * Torque of an action's muscles after over before training at a place of the angle grid.
 *
 * T = Σ_muscles area · cos(pennation) · arm · f(l) · Σ_regions share·lever·(1 + growth), with the
 * fibre length l = l before / (1 + fibre) and the arm grown with the area. 1 where
 * the tables' muscles have no torque. Left out: passive tension (no number read), slowing by
 * velocity.
 */
export function sizeRatio(action: ActionName, changes: readonly Acting[], grid: number): number {
  const { all, before } = agonistsOf(action);
  let after = 0;
  for (const agonist of all) {
    const change = changes[agonist.place];
    if (change) after += changedTorque(agonist, change, grid);
  }
  const unchanged = before[grid] as number;
  return unchanged > 0 ? after / unchanged : 1;
}

function changedTorque(
  { home, strength, length, levers }: Agonist,
  { growth, fibre }: Acting,
  grid: number,
): number {
  const best = strength[grid] as number;
  if (best === 0) return 0;
  const force = lengthTension((length[grid] as number) / (1 + fibre));
  let sized = 0;
  for (let r = 0; r < levers.length; r++)
    sized += ((levers[r] as OverAngles)[grid] as number) * (1 + (growth[r] ?? 0));
  return best * force * sized * (1 + armGrowth(home, meanGrowth({ growth })));
}

function agonistsOf(action: ActionName): Agonists {
  const found = known.get(action);
  if (found) return found;
  const all = trainedMuscles.flatMap(({ home, row }, place) => {
    if (row) return agonist(row, action, { place, home });
    return home === action ? [unmodelled(place, home)] : [];
  });
  const before = gridDeg.map((_, i) =>
    all.reduce(
      (sum, { strength, length }) => sum + (strength[i] ?? 0) * lengthTension(length[i] ?? 0),
      0,
    ),
  );
  const made = { all, before };
  known.set(action, made);
  return made;
}

/** The muscle's part in an action; none if it never turns the joint that way. */
function agonist(row: Muscle, action: ActionName, at: Pick<Agonist, 'place' | 'home'>): Agonist[] {
  const { joint, sense, testedAt = {} }: Action = actions[action];
  if (!isMuscleJoint(joint) || !row.arms[joint]) return [];
  const posture = (deg: number): MusclePosture => ({ ...testedAt, [joint]: deg });
  const area = livingArea(row) * Math.cos(toRadians(row.pennation.value));
  const strength = gridDeg.map((deg) => area * Math.max(-sense * tendonArmAt(row, joint, deg), 0));
  if (strength.every((torque) => torque === 0)) return [];
  const levers = gridDeg.map((deg) => {
    const angle = posture(deg)[row.regions.joint] ?? row.postureDeg[row.regions.joint] ?? 0;
    return regionLevers(row, angle);
  });
  return [
    {
      ...at,
      strength,
      length: gridDeg.map((deg) => operatingLength(row, posture(deg), 1)),
      levers: row.regions.parts.map(({ share }, r) => levers.map((by) => share * (by[r] ?? 1))),
    },
  ];
}

const isMuscleJoint = (joint: string): joint is MuscleJoint =>
  joint === 'ankle' || joint === 'knee' || joint === 'hip' || joint === 'elbow';

/** Muscles that the tables do not have: even over the angles, at their best length. */
function unmodelled(place: number, home: ActionName): Agonist {
  const even = (value: number) => gridDeg.map(() => value);
  return { place, home, strength: even(1), length: even(1), levers: [even(0.5), even(0.5)] };
}
