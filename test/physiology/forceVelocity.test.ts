import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/numeric/degrees.ts';
import { torqueWhileMoving } from '../../src/physiology/forceVelocity.ts';
import { fastestTurnDeg, hillCurvature } from '../../src/tables/forceVelocity.ts';
import { loweringStrength } from '../../src/tables/movingStrength.ts';

const lifting = (speedDeg: number) => torqueWhileMoving('lifting', toRadians(speedDeg));

describe('torque while a joint turns, over that in a hold', () => {
  // Hill's relation by hand, k = 0.25 and vmax = 1080: at 60, x = 1/18, (17/18)/(22/18) = 17/22;
  // at 180, x = 1/6, (5/6)/(10/6) = 1/2; at 400, x = 10/27, (17/27)/(67/27) = 17/67.
  it.each([
    [0, 1],
    [60, 17 / 22],
    [180, 1 / 2],
    [400, 17 / 67],
    [1080, 0],
    [2000, 0],
  ])('lifting at %d°/s: %f', (speed, expected) => {
    expect(lifting(speed)).toBeCloseTo(expected, 12);
  });

  it('lifting at 60°/s meets 0.773 (Stotz 2022, exp(−0.258)) to three digits', () => {
    expect(lifting(60)).toBeCloseTo(Math.exp(-0.258), 3);
  });

  it('the spread of vmax covers what the recalled ends of k give by the same sum: 673 and 1626', () => {
    // (1 − x)/(1 + x/k) = r  gives  x = (1 − r)/(1 + r/k).
    const fastest = (k: number) => 60 / ((1 - 0.773) / (1 + 0.773 / k));
    expect(fastest(hillCurvature.value)).toBeCloseTo(1081.6, 1);
    expect(fastest(0.5)).toBeCloseTo(672.9, 0);
    expect(fastest(0.15)).toBeCloseTo(1626.4, 0);
    const { value, spread } = fastestTurnDeg;
    expect(Math.abs(value - (672.9 + 1626.4) / 2)).toBeLessThan(spread);
    expect(spread).toBeCloseTo((1626.4 - 672.9) / 2, -1);
  });

  it('lowering: the table’s ratio at any speed', () => {
    expect(torqueWhileMoving('lowering', 0.1)).toBe(loweringStrength.value);
    expect(torqueWhileMoving('lowering', 5)).toBe(loweringStrength.value);
  });
});
