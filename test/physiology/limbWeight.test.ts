import { describe, expect, it, test } from 'vitest';
import { bodyOf } from '../../src/physiology/body.ts';
import { levelShank, muscleTorque, pullOfLimb } from '../../src/physiology/limbWeight.ts';

const rad = (deg: number) => (deg * Math.PI) / 180;

const body = bodyOf({
  reference: 'pooled',
  stature: 1.75,
  mass: 80,
  lengths: { shank: 0.43 },
  limits: {},
});
const extension = { gravity: { kind: 'weighed', level: 12.5, pulls: 1 } } as const;
const flexion = { gravity: { kind: 'weighed', level: 12.5, pulls: -1 } } as const;

describe('the weight of shank and foot, seated', () => {
  // M·cos(flexion) with M = 12.5 N m (standard in knee dynamometry, from memory; hand calculation).
  test.each<[deg: number, pull: number]>([
    [0, 12.5],
    [15, 12.074072828613353],
    [30, 10.825317547305485],
    [45, 8.838834764831844],
    [60, 6.25],
    [75, 3.2352380637815092],
    [90, 0],
    [105, -3.2352380637815106],
  ])('at %d° pulls against extension, with flexion', (deg, pull) => {
    expect(pullOfLimb(extension.gravity, rad(deg), body)).toBeCloseTo(pull, 9);
    expect(pullOfLimb(flexion.gravity, rad(deg), body)).toBeCloseTo(-pull, 9);
  });

  it('200 N m of extension and 100 N m of flexion at 60° are 206.25 and 93.75', () => {
    // 12.5 × cos 60° = 6.25 (hand calculation).
    expect(muscleTorque(200, rad(60), extension, body)).toBeCloseTo(206.25, 9);
    expect(muscleTorque(100, rad(60), flexion, body)).toBeCloseTo(93.75, 9);
  });

  it('is estimated from the segments of the body', () => {
    // Dempster by Winter 2009, 80 kg, shank 0.43 m: shank 3.72 kg at 0.433 of its length, foot
    // 1.16 kg at the ankle: 9.80665 × 0.43 × (3.72 × 0.433 + 1.16) = 11.684 N m (hand calculation).
    expect(levelShank(body)).toBeCloseTo(11.684, 3);
    const estimated = { kind: 'estimated', pulls: 1 } as const;
    expect(pullOfLimb(estimated, rad(60), body)).toBeCloseTo(5.842, 3);
    // With the foot beyond the ankle Winter has the centre at 0.606 of the shank: 12.5 N m, 7 % more.
    expect(12.5 / levelShank(body)).toBeCloseTo(1.07, 2);
  });
});

describe('a relaxed trial', () => {
  const relaxed = {
    kind: 'relaxed',
    points: [
      { angle: rad(40), against: 8 },
      { angle: rad(80), against: -2 },
    ],
  } as const;

  it('is read off straight lines between its angles', () => {
    // A quarter of the way from 8 to −2: 5.5 (hand calculation).
    expect(pullOfLimb(relaxed, rad(50), body)).toBeCloseTo(5.5, 9);
    expect(muscleTorque(100, rad(80), { gravity: relaxed }, body)).toBeCloseTo(98, 9);
  });

  it('at one angle holds there', () => {
    const one = { kind: 'relaxed', points: [{ angle: rad(40), against: 8 }] } as const;
    expect(pullOfLimb(one, rad(40), body)).toBe(8);
    expect(pullOfLimb(one, rad(41), body)).toBe(8);
  });
});

describe('nothing is taken out', () => {
  it.each([undefined, { kind: 'none' }, { kind: 'corrected' }] as const)('for %o', (gravity) => {
    expect(muscleTorque(100, rad(10), gravity ? { gravity } : {}, body)).toBe(100);
  });
});

describe('both limbs together', () => {
  it('half is taken for each, after what both limbs weigh', () => {
    // Measured for both: (400 + 12.5) / 2; estimated for one: 400 / 2 + 11.684 (hand calculation).
    expect(muscleTorque(400, 0, { ...extension, side: 'both' }, body)).toBeCloseTo(206.25, 9);
    const estimated = { gravity: { kind: 'estimated', pulls: 1 }, side: 'both' } as const;
    expect(muscleTorque(400, 0, estimated, body)).toBeCloseTo(211.684, 3);
    expect(muscleTorque(400, 0, { side: 'both' }, body)).toBe(200);
  });
});
