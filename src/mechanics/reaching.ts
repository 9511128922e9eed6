import { toRadians } from '../numeric/degrees.ts';
import type { Posture, Stance } from './posture.ts';

/** A value that a posture has, and the leading angle (rad) at which it has it. */
export interface ValueAt {
  readonly angle: number;
  readonly value: number;
}

/** Where along a lift a measure of the posture reaches a value, and what it can be at all. */
export interface Reach {
  /** Leading angles at which the value is reached, rising, radians. */
  readonly angles: readonly number[];
  /** Smallest and largest value over all postures that can be taken; missing if none can. */
  readonly extremes?: readonly [least: ValueAt, most: ValueAt];
  /** Nearest values below and above, where there are. */
  readonly below?: ValueAt;
  readonly above?: ValueAt;
}

const step = toRadians(1);

/**
 * Finds the leading angles at which a measure of the posture, a height for one, has a given value.
 *
 * The stretch is looked at degree by degree; between two neighbours on either side of the value the
 * crossing is closed in by halving, to a millionth of a degree.
 *
 * @param stretch first and last leading angle, radians
 * @param measure of a posture that can be taken; continuous
 */
export function reachOf(
  stance: Stance,
  [first, last]: readonly [number, number],
  measure: (posture: Posture) => number,
  wanted: number,
): Reach {
  const valueAt = (angle: number) => {
    const held = stance.posture(angle);
    return 'impossible' in held ? Number.NaN : measure(held);
  };
  const steps = Math.max(Math.ceil((last - first) / step - 1e-9), 1);
  const all = Array.from({ length: steps + 1 }, (_, i) => {
    const angle = Math.min(first + i * step, last);
    return { angle, value: valueAt(angle) };
  });
  const taken = all.filter(({ value }) => Number.isFinite(value));
  const rising = [...taken].sort((a, b) => a.value - b.value);
  const [least, most] = [rising[0], rising[rising.length - 1]];
  if (!least || !most) return { angles: [] };
  const below = rising.findLast(({ value }) => value < wanted);
  const above = rising.find(({ value }) => value > wanted);
  const angles = all.flatMap((here, i) => {
    if (here.value === wanted) return [here.angle];
    const next = all[i + 1];
    if (!next || !((here.value - wanted) * (next.value - wanted) < 0)) return [];
    return [crossing(valueAt, here, next.angle, wanted)];
  });
  const near = { ...(below ? { below } : {}), ...(above ? { above } : {}) };
  return { angles, extremes: [least, most], ...near };
}

function crossing(
  valueAt: (angle: number) => number,
  { angle, value }: ValueAt,
  beyond: number,
  wanted: number,
): number {
  let [low, high] = [angle, beyond];
  for (let halving = 0; halving < 20; halving++) {
    const middle = (low + high) / 2;
    if ((valueAt(middle) - wanted) * (value - wanted) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
