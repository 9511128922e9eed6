import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleBands, sumsByBand } from '../../src/inference/angleBands.ts';
import { gridDeg } from '../../src/mechanics/angleGrid.ts';
import { toDegrees, toRadians } from '../../src/numeric/degrees.ts';

const bands = (fromDeg: number, toDeg: number) =>
  angleBands(toRadians(fromDeg), toRadians(toDeg)).map(({ from, to }) =>
    [from, to].map((angle) => Math.round(toDegrees(angle))),
  );

/** A dose that is zero but at the angles named. */
const doseAt = (sets: Readonly<Record<number, number>>) => gridDeg.map((deg) => sets[deg] ?? 0);

const sums = (sets: Readonly<Record<number, number>>, fromDeg = 0, toDeg = 60) =>
  sumsByBand(doseAt(sets), angleBands(toRadians(fromDeg), toRadians(toDeg)));

describe('bands of angles', () => {
  // Hand calculation: steps of 25 from the first angle, the last cut off at the end.
  it('are 25 degrees wide and cover the range', () => {
    expect(bands(0, 60)).toEqual([
      [0, 25],
      [25, 50],
      [50, 60],
    ]);
    expect(bands(-45, 30)).toEqual([
      [-45, -20],
      [-20, 5],
      [5, 30],
    ]);
  });

  it('are seven at most, the last one wider where it must be: -20 to 160 is 180 degrees', () => {
    expect(bands(-20, 160)).toHaveLength(7);
    expect(bands(-20, 160).at(-1)).toEqual([130, 160]);
  });

  it('share what lies at the edge of two, and hold the ends of the range (hand calculation)', () => {
    // 0–25: 1 + 2 + 4/2; 25–50: 4/2 + 8 + 16/2; 50–60: 16/2 + 32.
    expect(sums({ 0: 1, 22.5: 2, 25: 4, 47.5: 8, 50: 16, 60: 32 })).toEqual([5, 18, 40]);
  });

  // Work at 58° is split over 57.5° and 60°, at -1° over -2.5° and 0°.
  it('take in what work at their very ends puts on the next grid angle outside', () => {
    expect(sums({ 60: 1 }, 0, 58)).toEqual([0, 0, 1]);
    expect(sums({ '-2.5': 1, 0: 2 }, -1, 58)).toEqual([3, 0, 0]);
  });

  it('leave out what lies farther outside', () => {
    expect(sums({ '-2.5': 1, 62.5: 1 })).toEqual([0, 0, 0]);
    expect(sums({ '-60': 1, 180: 1, 30: 5 })).toEqual([0, 5, 0]);
  });

  it('together have all work inside the range, whatever its ends', () => {
    const ranges = fc
      .tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: 10, max: 120 }))
      .map(([from, width]) => [from, from + width] as const);
    const dose = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), {
      minLength: gridDeg.length,
      maxLength: gridDeg.length,
    });
    fc.assert(
      fc.property(ranges, dose, ([from, to], sets) => {
        const inside = sets.map((one, i) => {
          const deg = gridDeg[i] ?? 0;
          return deg >= from && deg <= to ? one : 0;
        });
        const all = inside.reduce((a, b) => a + b, 0);
        const found = sumsByBand(inside, angleBands(toRadians(from), toRadians(to)));
        expect(found.reduce((a, b) => a + b, 0)).toBeCloseTo(all, 9);
      }),
    );
  });
});
