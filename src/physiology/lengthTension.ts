import { piecewiseLinear } from '../numeric/interpolation.ts';
import { normalCumulative, normalDensity } from '../numeric/normal.ts';
import { sarcomereCorners, sarcomereSpread } from '../tables/quadriceps.ts';

/**
 * Active force of one sarcomere, share of the largest, by its length in µm: straight lines
 * between the corner points of the human filament lengths, zero outside.
 */
export const sarcomereForce = piecewiseLinear(sarcomereCorners.lengths, sarcomereCorners.forces);

const knots = sarcomereCorners.lengths.map((length, i) => {
  const { lengths, forces } = sarcomereCorners;
  const slope = (from: number, to: number) =>
    ((forces[to] ?? 0) - (forces[from] ?? 0)) / ((lengths[to] ?? 1) - (lengths[from] ?? 0));
  const before = i === 0 ? 0 : slope(i - 1, i);
  const after = i === lengths.length - 1 ? 0 : slope(i, i + 1);
  return {
    at: length / sarcomereCorners.optimum,
    bend: (after - before) * sarcomereCorners.optimum,
  };
});
const smear = sarcomereSpread.value / sarcomereCorners.optimum;

/**
 * Active force of a whole muscle, share of the largest possible, by fibre length in optimum
 * lengths (1 = 2.7 µm a sarcomere).
 *
 * The sarcomere polygon smeared by the normal spread σ of sarcomere lengths inside a muscle
 * (0.21 µm, Chen 2016). A polygon is a sum of ramps b·max(0, l − k), and a smeared ramp is
 * b·[(l − k)·Φ(z) + σ·φ(z)], z = (l − k)/σ. Keeps the polygon's area; differs from it most at the
 * very short end, by 0.16 at 1.27 µm, and by less than 0.065 from 2.0 to 3.9 µm.
 */
export function smearedForce(length: number): number {
  return knots.reduce((sum, { at, bend }) => {
    const z = (length - at) / smear;
    return sum + bend * ((length - at) * normalCumulative(z) + smear * normalDensity(z));
  }, 0);
}

const tableStep = 0.001;
const tabulated = Array.from({ length: 2001 }, (_, i) => smearedForce(i * tableStep));

/** `smearedForce` read from a table, for 0 to 2 optimum lengths; differs from it by under 4e-6. */
export function lengthTension(length: number): number {
  const place = Math.min(Math.max(length / tableStep, 0), tabulated.length - 2);
  const index = Math.floor(place);
  const left = tabulated[index] as number;
  return left + (place - index) * ((tabulated[index + 1] as number) - left);
}

/** Its slope, a unit of optimum length. */
export function lengthTensionSlope(length: number): number {
  const index = Math.floor(Math.min(Math.max(length / tableStep, 0), tabulated.length - 2));
  return ((tabulated[index + 1] as number) - (tabulated[index] as number)) / tableStep;
}
