import { describe, expect, it } from 'vitest';
import { fixedPoint } from '../../src/numeric/fixedPoint.ts';

describe('fixed point', () => {
  it('x = cos x at 0.739085133215 (known constant), in fewer calls than plain steps need', () => {
    let calls = 0;
    const f = (x: number) => {
      calls++;
      return Math.cos(x);
    };
    expect(fixedPoint(f, 0, 1e-12)).toBeCloseTo(0.739085133215, 11);
    // Plain steps shrink the error by sin 0.739 = 0.674 each: ln 1e-12 / ln 0.674 = 70 calls.
    expect(calls).toBeLessThan(12);
  });

  it('a straight line is met after one secant: x = 3 − x/2 at 2 (by hand)', () => {
    expect(fixedPoint((x) => 3 - x / 2, 100, 1e-12)).toBeCloseTo(2, 12);
  });

  it('is undefined where f has no value or the steps run away', () => {
    expect(fixedPoint((x) => (x > 1 ? undefined : x + 1), 0, 1e-6)).toBeUndefined();
    expect(fixedPoint((x) => 2 * x + 1, 1, 1e-6)).toBeUndefined();
  });
});
