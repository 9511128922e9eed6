import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type Action, type ActionName, actions } from '../tables/actions.ts';
import type { Muscle, MusclePosture } from '../tables/muscleRow.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';
import { armGrowth } from './armGrowth.ts';
import { lengthTension, lengthTensionSlope } from './lengthTension.ts';
import { meanGrowth } from './muscleChange.ts';
import {
  jointsOf,
  livingArea,
  operatingLength,
  regionLevers,
  shorteningShare,
  tendonArmAt,
} from './muscleGeometry.ts';

/** A muscle that works for an action, over the angles of the action's joint in its test posture. */
interface Agonist {
  /** Place among the trained muscles. */
  readonly place: number;
  readonly home: ActionName;
  /** Area · cos(pennation) · arm: torque a unit of fibre stress at the best length, cm²·m. */
  readonly strength: OverAngles;
  /** Fibre length at full effort before training, optimum lengths. */
  readonly length: OverAngles;
  /** Share by which full effort shortens the fibres there. */
  readonly shortening: OverAngles;
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
 * fibre length l of `forceAfter` and the arm grown with the area. 1 where
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
  { home, strength, length, shortening, levers }: Agonist,
  { growth, fibre }: Acting,
  grid: number,
): number {
  const best = strength[grid] as number;
  if (best === 0) return 0;
  const force = forceAfter(length[grid] as number, shortening[grid] as number, fibre);
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

/**
 * Force at full effort of fibres that are longer by a share, over the largest.
 *
 * On the short side of the optimum f = f(l) at l = l_rest/(1 + fibre) · (1 − s·f/f_before), since a
 * muscle stretches its tendon, and so shortens, by what it pulls: where longer fibres lose force they
 * are shortened less, which gives back part of it (near straight, where they shorten by 30 %, about
 * half). On the long side they shorten little, and l = l_before/(1 + fibre).
 */
function forceAfter(length: number, shortening: number, fibre: number): number {
  const before = lengthTension(length);
  if (fibre === 0 || before === 0) return before;
  if (lengthTensionSlope(length) <= 0) return lengthTension(length / (1 + fibre));
  const resting = length / ((1 - shortening) * (1 + fibre));
  const byForce = (resting * shortening) / before;
  let force = before;
  // Newton's steps; two or three do.
  for (let step = 0; step < 20; step++) {
    const at = resting - byForce * force;
    const miss = force - lengthTension(at);
    if (Math.abs(miss) < 1e-7) break;
    force -= miss / (1 + byForce * lengthTensionSlope(at));
  }
  return force;
}

/** The muscle's part in an action; none if it never turns the joint that way. */
function agonist(row: Muscle, action: ActionName, at: Pick<Agonist, 'place' | 'home'>): Agonist[] {
  const { sense, testedAt = {}, joint: turned }: Action = actions[action];
  const joint = jointsOf(row).find((crossed) => crossed === turned);
  if (!joint) return [];
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
      shortening: gridDeg.map((deg) =>
        shorteningShare(row, posture(deg)[row.shortening.joint] ?? 0),
      ),
      levers: row.regions.parts.map(({ share }, r) => levers.map((by) => share * (by[r] ?? 1))),
    },
  ];
}

/** Muscles that the tables do not have: even over the angles, at their best length. */
function unmodelled(place: number, home: ActionName): Agonist {
  const even = (value: number) => gridDeg.map(() => value);
  const levers = [even(0.5), even(0.5)];
  return { place, home, strength: even(1), length: even(1), shortening: even(0), levers };
}
