import { setUpDifference } from './setUpDifference.ts';
import type { TorqueTest } from './strengthTest.ts';

/** Something that holds a torque test: the test as read, or with its torques. */
export interface Tested {
  readonly test: TorqueTest;
}

/**
 * Torque tests by set-up (action, side, neighbour angles, score, treatment of the limb's weight), in
 * order of the first of each. Within one occasion a side that is not stated is a set-up of its own,
 * so that left and right can never meet in it.
 */
export function setUpsOf<T extends Tested>(tested: readonly T[]): (readonly T[])[] {
  const found: T[][] = [];
  for (const one of tested) {
    const own = found.find((setUp) => setUp.every((other) => isOneSetUp(other, one)));
    if (own) own.push(one);
    else found.push([one]);
  }
  return found;
}

const isOneSetUp = ({ test: one }: Tested, { test: other }: Tested): boolean =>
  one.action === other.action &&
  one.side === other.side &&
  setUpDifference(one, other) === undefined;
