import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Minimum, minimumSteps } from '../../src/numeric/minimum.ts';

/** Runs the steps on a plain function; counts its calls. */
function minimum(f: (x: number) => number, a: number, x: number, b: number, tolerance: number) {
  const steps = minimumSteps({ a, fa: f(a), x, fx: f(x), b, fb: f(b) }, tolerance);
  let calls = 0;
  let step = steps.next();
  while (!step.done) {
    calls++;
    step = steps.next(f(step.value));
  }
  return { found: step.value, calls };
}

describe('minimum', () => {
  // By hand: a parabola turns at its vertex; d/dx (x⁴ − 2x) = 0 at x = 2^(−1/3); cos has −1 at π;
  // x ln x has its minimum −1/e at 1/e; |x − 0.3| is least at 0.3; x + 1/x at 1.
  it.each([
    ['a parabola', (x: number) => (x - 70) ** 2, 60, 69, 90, 70],
    ['x⁴ − 2x', (x: number) => x ** 4 - 2 * x, 0, 1, 2, 2 ** (-1 / 3)],
    ['cosine', Math.cos, 2, 3, 5, Math.PI],
    ['x ln x', (x: number) => x * Math.log(x), 0.01, 0.5, 2, 1 / Math.E],
    ['a corner', (x: number) => Math.abs(x - 0.3), -1, 0, 2, 0.3],
    ['x + 1/x', (x: number) => x + 1 / x, 0.1, 0.5, 30, 1],
  ])('of %s lies where calculus puts it', (_, f, a, x, b, place) => {
    const { found, calls } = minimum(f, a, x, b, 1e-6);
    expect(Math.abs(found.x - place)).toBeLessThanOrEqual(2e-6);
    expect(found.fx).toBe(f(found.x));
    // Golden section alone needs log(4e-6 / 3) / log(0.618) = 28 on an interval of 3, 34 on one of 30.
    expect(calls).toBeLessThanOrEqual(45);
  });

  it('of a smooth function takes far fewer steps than golden section', () => {
    // Golden section alone: log(4e-5 / 3) / log(0.618) = 23.
    expect(minimum(Math.cos, 2, 3, 5, 1e-5).calls).toBeLessThanOrEqual(10);
  });

  it('of any parabola or corner is found, the interval always around it and never wider', () => {
    const part = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.constantFrom(1, 2, 4), (vertex, start, power) => {
        const f = (x: number) => Math.abs(x - vertex) ** power;
        if (f(start) > Math.min(f(0), f(1))) return;
        const { found, calls } = minimum(f, 0, start, 1, 1e-4);
        // A fourth power is flat at its turn: (1e-4)^4 = 1e-16 is lost against nothing, so still exact.
        expect(Math.abs(found.x - vertex)).toBeLessThanOrEqual(2.1e-4);
        expect(found.a).toBeLessThanOrEqual(vertex + 1e-12);
        expect(found.b).toBeGreaterThanOrEqual(vertex - 1e-12);
        expect(found.b - found.a).toBeLessThanOrEqual(4.1e-4);
        expect(calls).toBeLessThanOrEqual(60);
      }),
    );
  });

  it('ends on a level and on a jump, which show in the ends', () => {
    const level = minimum(() => 1, 0, 0.4, 1, 1e-3).found;
    expect([level.fa, level.fx, level.fb]).toEqual([1, 1, 1]);
    // Falls to 0.6, then jumps up by 5: the place is just below 0.6, the far end just above.
    const jump: Minimum = minimum((x) => (x < 0.6 ? -x : 5 - x), 0, 0.5, 1, 1e-4).found;
    expect(jump.x).toBeLessThan(0.6);
    expect(jump.x).toBeGreaterThan(0.6 - 4e-4);
    expect(jump.fb - jump.fx).toBeGreaterThan(4);
  });
});
