import { describe, expect, it } from 'vitest';
import type { Lift } from '../../src/mechanics/lift.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { torque } from './askLift.ts';

/** Load at which a growing quantity reaches a value, by halving between 0 and 600 kg. */
function loadFor(value: (load: number) => number, wanted: number): number {
  let [low, high] = [0, 600];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (value(middle) < wanted) low = middle;
    else high = middle;
  }
  return low;
}

describe('partial against full squat: 87 kg, 1.84 m, full bar 140 kg with the thigh level and the shank at 30° (Williams 2015 measured +60.5 %; +61.2, +62.8 and +58.4 % are hand calculations; 140 kg is assumed)', () => {
  const body = bodyOf({ reference: 'male', stature: 1.84, mass: 87, lengths: {}, limits: {} });
  const { resistance, ...rest } = liftNamed('back squat');
  const squat = (lean: number): Lift => ({
    ...rest,
    supportDirectionDeg: lean,
    follow: [{ joint: 'hip', rule: 'balance' }],
    resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: 0 },
  });
  // Knee flexion = 90° + shank lean − thigh elevation.
  const at = (joint: 'hip' | 'knee', lean: number, thigh: number) => (bar: number) =>
    torque(squat(lean), joint, 90 + lean - thigh, bar, body);
  const rise = (joints: readonly ('hip' | 'knee')[]) => {
    const sum = (lean: number, thigh: number) => (bar: number) =>
      joints.reduce((total, joint) => total + at(joint, lean, thigh)(bar), 0);
    return loadFor(sum(24, 45), sum(30, 0)(140)) / 140 - 1;
  };

  it('the bar with the thigh at 45° may be 55 to 70 % heavier', () => {
    expect(resistance.kind).toBe('mass');
    expect(rise(['hip', 'knee'])).toBeGreaterThan(0.55);
    expect(rise(['hip', 'knee'])).toBeLessThan(0.7);
  });

  it.each([
    [['hip', 'knee'] as const, 0.612],
    [['hip'] as const, 0.628],
    [['knee'] as const, 0.584],
  ])('equal %s torque: +%d', (joints, expected) => {
    expect(Math.abs(rise(joints) - expected)).toBeLessThan(0.005);
  });
});

describe('signs of the knee torque', () => {
  it('bends the other way in the Romanian deadlift (−0.28 ± 0.10) than in the deadlift at its start (+0.21 ± 0.13; J Exerc Sci Fit 2018), and in the good morning (Schellenberg 2013)', () => {
    for (const bar of [40, 100, 160]) {
      expect(torque(liftNamed('deadlift'), 'knee', 125, bar)).toBeGreaterThan(0);
      expect(torque(liftNamed('Romanian deadlift'), 'knee', 100, bar)).toBeLessThan(0);
      expect(torque(liftNamed('good morning'), 'knee', 90, bar)).toBeLessThan(0);
    }
  });

  it('flexors work in curls of the leg and the arm, extensors in extensions (meaning of the signs)', () => {
    const cases = [
      ['seated leg curl', 'knee', 60, -1],
      ['lying leg curl', 'knee', 60, -1],
      ['Nordic lowering', 'knee', 40, -1],
      ['leg press', 'knee', 60, 1],
      ['standing calf raise', 'ankle', 0, 1],
      ['seated calf raise', 'ankle', 0, 1],
      ['leg-press calf raise', 'ankle', 0, 1],
      ['hip flexor raise', 'hip', 45, -1],
      ['cable hip flexor raise', 'hip', 45, -1],
      ['45-degree back extension', 'hip', 45, 1],
      ['standing curl', 'elbow', 60, -1],
      ['chin-up', 'elbow', 60, -1],
      ['triceps pushdown', 'elbow', 60, 1],
      ['overhead triceps extension', 'elbow', 60, 1],
      ['lying triceps extension', 'elbow', 60, 1],
      ['overhead press', 'elbow', 60, 1],
      ['bench press', 'shoulder across', 30, -1],
      ['front raise', 'shoulder', 45, -1],
    ] as const;
    for (const [name, joint, deg, sign] of cases)
      expect(sign * torque(liftNamed(name), joint, deg, 50), name).toBeGreaterThan(0);
  });
});

describe('hip thrust (ISBS 2017, 35:184: largest early, hip near 90°; Brazil 2021: falls through the lift)', () => {
  const hip = (deg: number) => torque(liftNamed('hip thrust'), 'hip', deg, 100);

  it('asks most of the hip in the lower half, within 5 % of it at 90°, less at lockout but still extension', () => {
    const most = Math.max(...Array.from({ length: 91 }, (_, deg) => hip(deg)));
    expect(hip(90)).toBeGreaterThan(0.95 * most);
    for (let deg = 0; deg < 45; deg++) expect(hip(deg)).toBeLessThan(hip(deg + 1));
    expect(hip(0)).toBeLessThan(0.9 * hip(90));
    expect(hip(0)).toBeGreaterThan(0);
  });
});
