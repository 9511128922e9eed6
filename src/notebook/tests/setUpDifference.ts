import { toRadians } from '../../numeric/degrees.ts';
import type { Gravity, TorqueTest } from './strengthTest.ts';

/** Neighbour joints nearer than this are set alike (as near as a coach sets one; working value). */
const sameNeighbour = toRadians(10);
const dust = 1e-9;

/** What makes two torque tests of an action two measurements. */
export type SetUpDifference =
  | 'score'
  | 'side'
  | 'angle taken'
  | 'gravity'
  | { readonly neighbour: string };

/**
 * The first thing that makes two torque tests of one action two different measurements, or undefined
 * where they can be compared. What a test does not say of side, neighbours or angle counts as alike;
 * of gravity as what most devices do, so it is alike only to "corrected".
 */
export function setUpDifference(first: TorqueTest, test: TorqueTest): SetUpDifference | undefined {
  if (first.score !== test.score) return 'score';
  if (isStatedApart(first.side, test.side)) return 'side';
  if (isStatedApart(first.angleTaken, test.angleTaken)) return 'angle taken';
  if (!isTreatedAlike(first.gravity, test.gravity)) return 'gravity';
  const moved = Object.entries(test.neighbours).find(([joint, angle]) => {
    const then = first.neighbours[joint];
    return then !== undefined && Math.abs(then - angle) > sameNeighbour + dust;
  });
  return moved && { neighbour: moved[0] };
}

const isStatedApart = (one: string | undefined, other: string | undefined): boolean =>
  one !== undefined && other !== undefined && one !== other;

/** The limb's weight taken out in both, or left in both. */
function isTreatedAlike(one: Gravity | undefined, other: Gravity | undefined): boolean {
  if (one !== undefined && other !== undefined)
    return (one.kind === 'none') === (other.kind === 'none');
  const stated = one ?? other;
  return stated === undefined || stated.kind === 'corrected';
}
