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
  const found: T[][][] = [];
  for (const alike of describedAlike(tested)) {
    const own = found.find((setUp) => setUp.every((other) => isOneSetUp(other, alike)));
    if (own) own.push(alike);
    else found.push([alike]);
  }
  return found.map((setUp) => setUp.flat());
}

/** Tests whose set-up is described in the same words: a table may hold hundreds of days of one. */
function describedAlike<T extends Tested>(tested: readonly T[]): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of tested) {
    const { action, side, score, angleTaken, gravity, neighbours } = one.test;
    const words = JSON.stringify([action, side, score, angleTaken, gravity?.kind, neighbours]);
    const known = groups.get(words);
    if (known) known.push(one);
    else groups.set(words, [one]);
  }
  return [...groups.values()];
}

const isOneSetUp = ([one]: readonly Tested[], [other]: readonly Tested[]): boolean =>
  one !== undefined &&
  other !== undefined &&
  one.test.action === other.test.action &&
  one.test.side === other.test.side &&
  setUpDifference(one.test, other.test) === undefined;
