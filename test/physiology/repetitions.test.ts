import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutesPerWeek } from '../../src/physiology/minutes.ts';
import { possibleRepetitions, shareForRepetitions } from '../../src/physiology/repetitions.ts';

describe('repetitions by load', () => {
  it('reads the textbook chart (common practice): 80 % allows 8, 70 % allows 11', () => {
    expect(possibleRepetitions(0.8)).toBeCloseTo(8, 9);
    expect(possibleRepetitions(0.7)).toBeCloseTo(11, 9);
    expect(shareForRepetitions(5)).toBeCloseTo(0.87, 9);
  });

  it('is one at the maximum and none above it', () => {
    expect(possibleRepetitions(1)).toBe(1);
    expect(possibleRepetitions(1.01)).toBe(0);
  });

  it('goes back and forth, and lighter always allows more', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (reps) => {
        expect(possibleRepetitions(shareForRepetitions(reps))).toBeCloseTo(reps, 6);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 0.99, noNaN: true }), (share) => {
        expect(possibleRepetitions(share - 0.01)).toBeGreaterThan(possibleRepetitions(share));
      }),
    );
  });
});

describe('minutes', () => {
  it('5 × 5 at 4 s with 180 s between sets is 820 s (hand calculation)', () => {
    const squat = { kind: 'lift', sets: 5, reps: 5, rest: 180, tempo: [2, 0, 2] } as const;
    expect(minutesPerWeek(1, [squat])).toBeCloseTo(820 / 60, 9);
    expect(minutesPerWeek(2, [squat, squat])).toBeCloseTo((2 * (2 * 820 + 90)) / 60, 9);
  });

  it('one side after the other: ten such sets and nine rests, 10 · 20 + 9 · 180 s', () => {
    const lunge = { kind: 'lift', sets: 5, reps: 5, rest: 180, tempo: [2, 0, 2] } as const;
    expect(minutesPerWeek(1, [{ ...lunge, oneSided: true }])).toBeCloseTo(1820 / 60, 9);
  });
});
