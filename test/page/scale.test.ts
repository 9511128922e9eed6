import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { multiples, roundScale, rowCount, tickText } from '../../src/page/scale.ts';

function labels(low: number, high: number): string[] {
  const scale = roundScale(low, high, 16);
  return multiples(scale.low, scale.high, scale.step).map((value) => tickText(value, scale.step));
}

describe('roundScale', () => {
  // Read by eye: the labels someone drawing the axis by hand on 16 lines would choose.
  it('labels gains from zero in even steps', () => {
    expect(labels(0.4, 11.2)).toEqual(['0', '2', '4', '6', '8', '10', '12']);
  });

  it('leaves out a zero that would flatten the differences', () => {
    expect(labels(118, 176)).toEqual(['110', '120', '130', '140', '150', '160', '170', '180']);
  });

  it('crosses zero in round numbers', () => {
    expect(labels(-14, 10)).toEqual(['-15', '-10', '-5', '0', '5', '10']);
  });

  it('gives values that are all zero a height', () => {
    expect(labels(0, 0)).toEqual(['0.0', '0.2', '0.4', '0.6', '0.8', '1.0']);
  });

  it('holds every value, within the rows, for any range', () => {
    const value = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        const scale = roundScale(Math.min(a, b), Math.max(a, b), 16);
        const slack = scale.step * 1e-6;
        expect(scale.low - slack).toBeLessThanOrEqual(Math.min(a, b));
        expect(scale.high + slack).toBeGreaterThanOrEqual(Math.max(a, b));
        expect(rowCount(scale)).toBeGreaterThanOrEqual(4);
        expect(rowCount(scale)).toBeLessThanOrEqual(16);
      }),
    );
  });
});
