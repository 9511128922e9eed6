import { piecewiseLinear } from '../numeric/interpolation.ts';
import type { Stretch } from './rig.ts';

/** Tension (N) of bands at a length (m). */
export interface TensionPoint {
  readonly length: number;
  readonly tension: number;
}

/** How far beyond the longest length measured its slope is carried on: a tenth (working value). */
const beyondMeasured = 1.1;

/**
 * Tension between measured lengths by straight lines, continued by the first and the last slope;
 * where that reaches zero the bands are slack.
 *
 * @param points two or more, by rising length
 */
export function measuredStretch(points: readonly TensionPoint[]): Stretch {
  const [first, second] = points;
  const [last, before] = [points[points.length - 1], points[points.length - 2]];
  if (!first || !second || !last || !before) throw new Error('bands measured at fewer than two');
  const between = piecewiseLinear(
    points.map(({ length }) => length),
    points.map(({ tension }) => tension),
  );
  const slope = (a: TensionPoint, b: TensionPoint) =>
    (b.tension - a.tension) / (b.length - a.length);
  const [start, end] = [slope(first, second), slope(before, last)];
  const tensionAt = (length: number) => {
    const below = Math.min(length - first.length, 0) * start;
    const above = Math.max(length - last.length, 0) * end;
    return Math.max(between(length) + below + above, 0);
  };
  return { tensionAt, known: [first.length, last.length], longest: beyondMeasured * last.length };
}

/** Rubber bands as they lie, unstretched: metres. */
export interface Rubber {
  readonly width: number;
  readonly thickness: number;
  readonly rest: number;
  /** Strands side by side in one band (two in a loop), and bands. */
  readonly strands: number;
  readonly count: number;
}

/** Stretch (length over rest) up to which the formula is fair, and up to which it is used. */
const fairStretch = 2.5;
const usedStretch = 3;

/**
 * Tension by the neo-Hookean law: force over resting cross-section σ = G·(λ − 1/λ²), λ = length
 * over resting length, nothing below λ = 1 (Treloar, Physics of Rubber Elasticity). Real rubber
 * stiffens beyond λ of about 3, which the law leaves out (recalled).
 *
 * @param shearModulus G, pascals
 */
export function rubberStretch(rubber: Rubber, shearModulus: number): Stretch {
  const { width, thickness, rest, strands, count } = rubber;
  const area = width * thickness * strands * count;
  const tensionAt = (length: number) => {
    const stretch = Math.max(length / rest, 1);
    return shearModulus * area * (stretch - 1 / stretch ** 2);
  };
  return { tensionAt, known: [rest, fairStretch * rest], longest: usedStretch * rest };
}
