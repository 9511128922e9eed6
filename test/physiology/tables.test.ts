import { describe, expect, it } from 'vitest';
import { bodyOf } from '../../src/physiology/body.ts';
import { deLeva, dempster, lengthShares } from '../../src/tables/segments.ts';

describe('segment closure', () => {
  it.each([
    ['male', 1.0],
    ['female', 0.9999],
  ] as const)('de Leva 1996 shares of a %s body sum to %d (sum over the table)', (sex, sum) => {
    const t = deLeva[sex];
    const limbs = ['upper arm', 'forearm', 'hand', 'thigh', 'shank', 'foot'] as const;
    const total =
      t.head.mass + t.trunk.mass + 2 * limbs.reduce((mass, limb) => mass + t[limb].mass, 0);
    expect(total).toBeCloseTo(sum, 6);
  });

  it('Dempster by Winter 2009: upper body and two legs make one; leg and shank rows agree', () => {
    const { headTrunkArms, totalLeg, thigh, footAndShank, shank, foot } = dempster;
    expect(headTrunkArms.mass + 2 * totalLeg).toBeCloseTo(1, 3);
    expect(thigh.mass + footAndShank).toBeCloseTo(totalLeg, 6);
    expect(shank.mass + foot.mass).toBeCloseTo(footAndShank, 6);
  });

  it('Drillis and Contini 1966: ankle, shank, thigh and trunk stack to shoulder height 0.818', () => {
    const { ankleHeight, shank, thigh, trunk, shoulderHeight } = lengthShares;
    expect(ankleHeight + shank + thigh + trunk).toBeCloseTo(shoulderHeight, 12);
  });

  it('a body built from any table weighs what the person weighs', () => {
    for (const reference of ['male', 'female', 'pooled'] as const) {
      const { segments } = bodyOf({ reference, stature: 1.75, mass: 70, lengths: {}, limits: {} });
      const { foot, shank, thigh, 'trunk, head and arms': upper } = segments;
      const whole = upper.mass + 2 * (foot.mass + shank.mass + thigh.mass);
      expect(Math.abs(whole - 70)).toBeLessThan(0.02);
    }
  });
});
