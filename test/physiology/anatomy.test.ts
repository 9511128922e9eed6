import { describe, expect, it } from 'vitest';
import { momentAbout, type PointForce, resultant, weight } from '../../src/mechanics/forces.ts';
import { toDegrees, toRadians } from '../../src/numeric/degrees.ts';
import { sarcomereForce } from '../../src/physiology/lengthTension.ts';
import {
  meanArm,
  muscleNamed,
  muscleTendonExcursion,
} from '../../src/physiology/muscleGeometry.ts';
import { kneeExtensorHeads } from '../../src/tables/quadriceps.ts';
import { armMm, degreesOf } from './askMuscle.ts';

/** Each check names its source and its tolerance; the numbers keep their order. */

const pivot = { x: 0, y: 0 };
const down = (newtons: number, x: number): PointForce => ({
  at: { x, y: 0 },
  force: { x: 0, y: -newtons },
});
/** Force along a unit direction at a point that balances the loads about the elbow. */
const balancing = (
  loads: readonly PointForce[],
  at: PointForce['at'],
  force: PointForce['force'],
) => -momentAbout(pivot, loads) / momentAbout(pivot, [{ at, force }]);

describe('statics of the elbow', () => {
  const up = { x: 0, y: 1 };

  it('4: forearm 15 N, ball 20 N: biceps 275 N, joint 240 N (Taylor & Francis chapter abstract; levers 15, 30, 3 cm inferred)', () => {
    const loads = [down(15, 0.15), down(20, 0.3)];
    const biceps = balancing(loads, { x: 0.03, y: 0 }, up);
    expect(biceps).toBeCloseTo(275, 9);
    expect(resultant([...loads, down(-biceps, 0.03)]).y).toBeCloseTo(240, 9);
  });

  it('5: oblique biceps, 30 and 4 cm from an elbow at 100°: "somewhat greater than 10 W", joint "about 9.5 W" (Johnson ch. 2, after Davidovits 1975), 1 %', () => {
    const at = { x: 0.04, y: 0 };
    const origin = { x: 0.3 * Math.cos(toRadians(100)), y: 0.3 * Math.sin(toRadians(100)) };
    const length = Math.hypot(origin.x - at.x, origin.y - at.y);
    const along = { x: (origin.x - at.x) / length, y: (origin.y - at.y) / length };
    const load = down(1, 0.4);
    const biceps = balancing([load], at, along);
    const force = { x: biceps * along.x, y: biceps * along.y };
    const joint = resultant([load, { at, force }]);
    // 10.47, 72.7° and 9.52 were computed by hand from those levers in the notes.
    expect(Math.abs(biceps / 10.47 - 1)).toBeLessThan(0.01);
    expect(Math.abs(toDegrees(Math.acos(-along.x)) / 72.7 - 1)).toBeLessThan(0.01);
    expect(Math.abs(Math.hypot(joint.x, joint.y) / 9.52 - 1)).toBeLessThan(0.01);
  });

  it('6: biceps 113.96 N at 3.5 cm, ball 0.6 kg at 37 cm: forearm (1 kg) centred at 18.5 cm, joint 98.28 N (physics problem 142312; g = 9.8), 0.1 %', () => {
    const ball = weight(0.6, { x: 0.37, y: 0 }, 9.8);
    const pull = down(-113.96, 0.035);
    const centre = momentAbout(pivot, [ball, pull]) / 9.8;
    expect(Math.abs(centre / 0.185 - 1)).toBeLessThan(0.001);
    const joint = resultant([ball, pull, weight(1, { x: centre, y: 0 }, 9.8)]).y;
    expect(Math.abs(joint / 98.28 - 1)).toBeLessThan(0.001);
  });

  it('7: 15 N at 30 cm, biceps at 3.5 cm: 4.5 N·m, 128.6 N (textbook example 2.4), 0.1 %', () => {
    const load = [down(15, 0.3)];
    expect(Math.abs(-momentAbout(pivot, load) / 4.5 - 1)).toBeLessThan(0.001);
    const biceps = balancing(load, { x: 0.035, y: 0 }, up);
    expect(Math.abs(biceps / 128.6 - 1)).toBeLessThan(0.001);
  });
});

describe('tendon arms', () => {
  it.each([
    [66.2, 0, 90, 42.1],
    [9.49, 30, 40, 54.4],
    [5.4, 80, 90, 30.9],
  ])(
    '8: %d mm over %d–%d° imply a mean arm of %d mm, within 0.2 (Wendt and Johnson 1985; division by hand)',
    (mm, from, to, arm) => {
      expect(Math.abs(-1000 * meanArm(mm / 1000, from, to) - arm)).toBeLessThan(0.2);
    },
  );

  it('8: the knee table keeps that excursion within its SD, 66.2 ± 5.5 mm (one of its sources: consistency)', () => {
    const mm = 1000 * muscleTendonExcursion(muscleNamed('vastus medialis'), 'knee', 0, 90);
    expect(Math.abs(mm - 66.2)).toBeLessThan(5.51);
  });

  it.each([
    [30, 23.9, 1.4],
    [110, 17.4, 1.3],
  ])(
    '9: triceps at %d°: %d ± %d mm (magnetic resonance, Sugisaki 2010: outside check of the polynomial), 1 SD',
    (deg, mm, sd) => {
      expect(Math.abs(-armMm('triceps long head', 'elbow', deg) - mm)).toBeLessThan(sd);
    },
  );

  it('10: biceps peak within 5 % of 47 mm (Murray 2000: outside check of the polynomial)', () => {
    const peak = Math.max(...degreesOf(0, 140).map((d) => armMm('biceps long head', 'elbow', d)));
    expect(Math.abs(peak / 47 - 1)).toBeLessThan(0.05);
  });
});

describe('force and area, force and length', () => {
  it('11: 746.0 N at the ankle over 0.117 is 6.37 kN; stress by head 233, 239, 281, 242, mean 250 kN/m² (Narici 1992), 1 %', () => {
    // By the law of moments the tendon force over its arm meets the ankle force over its own.
    const [arm, force] = [0.117, 746.0];
    const tendon = -momentAbout(pivot, [down(force, 1)]) / arm;
    expect(Math.abs(tendon / 6370 - 1)).toBeLessThan(0.01);
    const stress = [1452, 1997, 1914, 1601].map(
      (newtons, i) => (10 * newtons) / (kneeExtensorHeads[i]?.area ?? 0),
    );
    for (const [i, expected] of [232.7, 239.2, 281.5, 241.8].entries())
      expect(Math.abs((stress[i] ?? 0) / expected - 1)).toBeLessThan(0.01);
    expect(Math.abs(stress.reduce((a, b) => a + b, 0) / 4 / 250 - 1)).toBeLessThan(0.01);
  });

  it('12: sarcomere force 0.979 at 2.84 µm and 0.748 at 3.17 µm; 1 at 2.7, 0 at 4.24 and 1.27 (lengths Chen 2016, corners Walker and Schrodt 1974), 1e-3', () => {
    for (const [length, force] of [
      [2.84, 0.979],
      [3.17, 0.748],
      [2.7, 1],
      [4.24, 0],
      [1.27, 0],
    ])
      expect(Math.abs(sarcomereForce(length ?? 0) - (force ?? 0))).toBeLessThan(1e-3);
  });
});
