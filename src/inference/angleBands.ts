import { gridAngles, gridStepDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { toRadians } from '../numeric/degrees.ts';
import type { AngleRange } from './ranking.ts';

const width = toRadians(25);

/** More would not stand side by side in a report of 80 columns. */
const mostBands = 7;

/** Slack for sums of angles that land just beside a grid point. */
const tiny = 1e-9;

/**
 * Bands of 25 degrees that together cover a range of angles (radians); the last one ends with it,
 * narrower, or wider where seven would not reach.
 */
export function angleBands(least: number, most: number): AngleRange[] {
  const count = Math.min(Math.ceil((most - least) / width - tiny), mostBands);
  return Array.from({ length: count }, (_, i) => ({
    from: least + i * width,
    to: i === count - 1 ? most : least + (i + 1) * width,
  }));
}

/**
 * Sums of a dose by angle over bands that follow one another; what lies at the edge of two counts
 * half in each.
 *
 * Work between two grid points is split over both, so the first and the last band take in the grid
 * point just outside; what lies farther out belongs to no band.
 */
export function sumsByBand(dose: OverAngles, bands: readonly AngleRange[]): number[] {
  const sums = bands.map(() => 0);
  const [first, last] = [bands[0], bands.at(-1)];
  if (!first || !last) return sums;
  const step = toRadians(gridStepDeg) - 2 * tiny;
  gridAngles.forEach((angle, i) => {
    if (angle <= first.from - step || angle >= last.to + step) return;
    const put = (place: number, sets: number) => {
      sums[place] = (sums[place] ?? 0) + sets;
    };
    const next = bands.findIndex(({ to }) => angle < to + tiny);
    const place = next < 0 ? bands.length - 1 : next;
    const isEdge = place < bands.length - 1 && Math.abs(angle - (bands[place]?.to ?? 0)) < tiny;
    const sets = dose[i] ?? 0;
    put(place, isEdge ? sets / 2 : sets);
    if (isEdge) put(place + 1, sets / 2);
  });
  return sums;
}
