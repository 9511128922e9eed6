import { describe, expect, it } from 'vitest';
import { torqueRows } from '../../src/page/torqueRows.ts';

/** Two invented curves from 0 to 100 degrees: 100 N·m and a tenth of the angle more after. */
const points = Array.from({ length: 41 }, (_, i) => ({
  deg: 2.5 * i,
  before: 100,
  after: 100 + 0.25 * i,
}));

const degOf = (rows: ReturnType<typeof torqueRows>) => rows.map(({ deg }) => deg);

describe('rows of torque before and after', () => {
  it('stand every 25 degrees where nothing else is wanted', () => {
    // The ends of the target, 75 and 100, are such angles themselves.
    expect(degOf(torqueRows(points, [], [75, 100]))).toEqual([0, 25, 50, 75, 100]);
  });

  it('stand at tested angles and the target’s ends, and at others only farther than 10 degrees', () => {
    // By hand: 25 is 5 from 30, 50 is 10 from 60, 75 is 5 from 70; 0 and 100 are farther.
    const rows = torqueRows(points, [30, 60], [60, 70]);
    expect(degOf(rows)).toEqual([0, 30, 60, 70, 100]);
    expect(rows.filter(({ isTested }) => isTested).map(({ deg }) => deg)).toEqual([30, 60]);
  });

  it('put an angle between two points, or beyond them, at the nearest', () => {
    expect(degOf(torqueRows(points, [31, 104], [50, 75]))).toEqual([0, 30, 50, 75, 100]);
  });

  it('add up as they are printed', () => {
    const [row] = torqueRows([{ deg: 0, before: 120.4, after: 131.5 }], [0], []);
    // 132 − 120; the difference itself, 11.1, would print as 11.
    expect(row).toMatchObject({ difference: 12, digits: 0 });
    const [small] = torqueRows([{ deg: 0, before: 8.04, after: 8.86 }], [0], []);
    expect(small?.digits).toBe(1);
    expect(small?.difference).toBeCloseTo(0.9, 12);
  });
});
