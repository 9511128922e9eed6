import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EffortTally } from '../../src/physiology/effortTally.ts';

// Expected sums are worked out entry by entry.

const entriesFrom = (min: number) =>
  fc.array(
    fc.record({
      effort: fc.double({ min, max: 2, noNaN: true }),
      amount: fc.double({ min: 0, max: 5, noNaN: true }),
    }),
    { maxLength: 30 },
  );

describe('work kept by effort', () => {
  // The remainder of a parabola through three points (any textbook of numerical analysis): with
  // slices of 1/64 and p = 1.4 at e = 0.05 it is 1e-5. Below, where powers bend most, no work is lost:
  // what remains is small beside a set.
  it.each([
    [0.05, 2e-5],
    [0, 3e-4],
  ])(
    'weighed by a power is the sum of its entries: from effort %d to %d of the work',
    (least, off) => {
      const power = fc.double({ min: 1, max: 3, noNaN: true });
      fc.assert(
        fc.property(entriesFrom(least), power, (list, p) => {
          const tally = new EffortTally();
          for (const { effort, amount } of list) tally.add(effort, amount);
          const exact = list.reduce((sum, { effort, amount }) => sum + amount * effort ** p, 0);
          const all = list.reduce((sum, { amount }) => sum + amount, 0);
          expect(Math.abs(tally.weighed(p) - exact)).toBeLessThanOrEqual(off * all + 1e-12);
        }),
      );
    },
  );

  it('is exact for squares and on a slice', () => {
    const tally = new EffortTally();
    tally.add(0.3, 2);
    tally.add(0.75, 1);
    expect(tally.weighed(2)).toBeCloseTo(2 * 0.09 + 0.5625, 12);
  });
});
