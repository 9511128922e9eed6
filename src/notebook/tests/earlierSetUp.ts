import { isSameAngle } from '../../numeric/degrees.ts';
import { isSameSetUp } from './isSameSetUp.ts';
import { setUpsOf, type Tested } from './setUpsOf.ts';

/** A set-up and the place of its occasion in time. */
export interface EarlierSetUp<T extends Tested> {
  readonly place: number;
  readonly setUp: readonly T[];
}

/**
 * What a retest is compared with: of the latest occasion that has the same set-up and shares an
 * angle with it, that set-up; one that states the same side goes before one that states none.
 *
 * @param setUp tests of one set-up
 * @param occasions all torque tests of each earlier occasion, in order of time
 */
export function earlierSetUp<T extends Tested>(
  setUp: readonly T[],
  occasions: readonly (readonly T[])[],
): EarlierSetUp<T> | undefined {
  const side = setUp[0]?.test.side;
  for (const [place, tested] of [...occasions.entries()].reverse()) {
    const alike = setUpsOf(tested).filter(
      (other) => isSameSetUp(other, setUp) && sharesAnAngle(other, setUp),
    );
    const found = alike.find(([one]) => one?.test.side === side) ?? alike[0];
    if (found) return { place, setUp: found };
  }
  return undefined;
}

const sharesAnAngle = (before: readonly Tested[], after: readonly Tested[]): boolean =>
  before.some(({ test: one }) => after.some(({ test: other }) => sharesAngle(one, other)));

const sharesAngle = (one: Tested['test'], other: Tested['test']): boolean =>
  one.points.some(({ angle }) => other.points.some((point) => isSameAngle(point.angle, angle)));
