import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weekStretches } from '../../src/page/weekStretches.ts';

/** Weeks numbered from 1 by what each puts into two bands, invented. */
const weeks = (...sets: readonly (readonly number[])[]) =>
  sets.map((one, i) => ({ from: i + 1, to: i + 1, sets: one }));

const spans = (stretches: ReturnType<typeof weekStretches>) =>
  stretches.map(({ from, to }) => [from, to]);

describe('stretches of weeks', () => {
  it('put equal weeks together', () => {
    expect(weekStretches(weeks([0, 4], [0, 4], [0, 0], [0, 4]), 7)).toEqual([
      { from: 1, to: 2, sets: [0, 4] },
      { from: 3, to: 3, sets: [0, 0] },
      { from: 4, to: 4, sets: [0, 4] },
    ]);
  });

  // Hand calculation: a fifth of 5 is 1; the mean of 4, 4.5 and 5 is 4.5.
  it('put weeks together up to a fifth of the busiest band away from the first, as their mean', () => {
    expect(weekStretches(weeks([0, 4], [0.5, 4.5], [1, 5], [1, 5.5]), 7)).toEqual([
      { from: 1, to: 3, sets: [0.5, 4.5] },
      { from: 4, to: 4, sets: [1, 5.5] },
    ]);
  });

  it('start anew where work moves to another band, however alike the sum', () => {
    expect(spans(weekStretches(weeks([4, 0], [0, 4], [0, 4]), 7))).toEqual([
      [1, 1],
      [2, 3],
    ]);
  });

  it('tell little work from none', () => {
    expect(spans(weekStretches(weeks([0, 0.2], [0, 0], [0, 11]), 7))).toHaveLength(3);
  });

  it('are no more than wanted, weeks off apart as long as can be', () => {
    // 52 weeks: two that differ by a half in turn, and two weeks off.
    const year = weeks(
      ...Array.from({ length: 52 }, (_, i) =>
        i === 25 || i === 26 ? [0, 0] : i % 2 === 0 ? [2, 6] : [1, 3],
      ),
    );
    expect(spans(weekStretches(year, 7))).toEqual([
      [1, 25],
      [26, 27],
      [28, 52],
    ]);
    expect(spans(weekStretches(year, 1))).toEqual([[1, 52]]);
  });

  it('keep every week once, in order, and all sets', () => {
    const week = fc.array(fc.double({ min: 0, max: 30, noNaN: true }), {
      minLength: 3,
      maxLength: 3,
    });
    fc.assert(
      fc.property(
        fc.array(week, { maxLength: 104 }),
        fc.integer({ min: 1, max: 9 }),
        (all, most) => {
          const found = weekStretches(weeks(...all), most);
          expect(found.length).toBeLessThanOrEqual(Math.min(most, all.length));
          expect(found.flatMap(({ from, to }) => [to - from + 1]).reduce((a, b) => a + b, 0)).toBe(
            all.length,
          );
          for (const [i, { from }] of found.entries())
            expect(from).toBe((found[i - 1]?.to ?? 0) + 1);
          const total = (i: number) =>
            found.reduce((sum, { from, to, sets }) => sum + (to - from + 1) * (sets[i] ?? 0), 0);
          for (const i of [0, 1, 2])
            expect(total(i)).toBeCloseTo(
              all.reduce((sum, sets) => sum + (sets[i] ?? 0), 0),
              6,
            );
        },
      ),
    );
  });
});
