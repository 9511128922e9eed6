import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EffortTally } from '../../src/physiology/effortTally.ts';

// Expected sums are worked out entry by entry.

const entries = fc.array(
  fc.record({
    effort: fc.double({ min: 0, max: 2, noNaN: true }),
    amount: fc.double({ min: 0, max: 5, noNaN: true }),
  }),
  { maxLength: 30 },
);

describe('work kept by effort', () => {
  it('weighed by a power is the sum of its entries, to a millionth of the work', () => {
    fc.assert(
      fc.property(entries, fc.double({ min: 1, max: 3, noNaN: true }), (list, power) => {
        const tally = new EffortTally();
        for (const { effort, amount } of list) tally.add(effort, amount);
        const exact = list.reduce((sum, { effort, amount }) => sum + amount * effort ** power, 0);
        const all = list.reduce((sum, { amount }) => sum + amount, 0);
        expect(Math.abs(tally.weighed(power) - exact)).toBeLessThanOrEqual(1e-6 * all + 1e-12);
      }),
    );
  });

  it('is exact for squares and on a slice', () => {
    const tally = new EffortTally();
    tally.add(0.3, 2);
    tally.add(0.75, 1);
    expect(tally.weighed(2)).toBeCloseTo(2 * 0.09 + 0.5625, 12);
  });
});
