import type { Athlete } from './athlete.ts';
import { type Sample, samplesOf } from './exercise.ts';
import { heaviestLoad, type Range } from './heaviestLoad.ts';
import {
  fromTheTop,
  lossOfControl,
  loweringLimit,
  loweringLimits,
  underControl,
} from './lowering.ts';
import { restingCapacity } from './trainedState.ts';

/** How far a load is lowered under control; angles of the leading joint, radians. */
export type Control =
  | { readonly state: 'whole range' }
  /** Lost at an angle, which lies between two if strength while lowering is weak or strong. */
  | { readonly state: 'lost'; readonly at: number; readonly between: readonly [number, number] }
  /** Lost at the very top; could begin further down, if there is such an angle. */
  | { readonly state: 'none'; readonly top: number; readonly beginAt?: number }
  | { readonly state: 'unbalanced' };

/** What is lowered in the first week, and how. */
export interface PlannedLowering {
  /** kg. */
  readonly load: number;
  /** Most that can be lowered under control over the range, kg; 0 if the body alone is too much. */
  readonly heaviest: number;
  readonly control: Control;
  /** Efforts under control as shares of what can be given while lowering, in the range's order. */
  readonly samples: readonly Sample[];
}

/**
 * Most that can be lowered under control over a range, kg: the load whose sticking point asks the
 * lowering limit.
 *
 * @param strength strength shown in the lift over that of the curves
 */
export function heaviestLowered(range: Range, athlete: Athlete, strength: number): number {
  return heaviestLoad(range, athlete.body, restingCapacity(athlete), strength * loweringLimit).load;
}

/** Plans the way down of a lift with a load in kg. */
export function planLowering(
  range: Range,
  athlete: Athlete,
  load: number,
  strength: number,
): PlannedLowering {
  const heaviest = heaviestLowered(range, athlete, strength);
  const limited = strength * loweringLimit;
  const samples = samplesOf(range, athlete, load, limited);
  const down = fromTheTop(samples);
  const kept = new Set(underControl(down, 1));
  return {
    load,
    heaviest,
    control: controlOf(down),
    samples: samples.filter((sample) => kept.has(sample)),
  };
}

/** @param down efforts as shares of what can be given while lowering, from the top */
function controlOf(down: readonly Sample[]): Control {
  const [top, low] = [down[0], down[down.length - 1]];
  if (!top || !low) return { state: 'unbalanced' };
  if (underControl(down, 1).length === down.length) return { state: 'whole range' };
  const at = lossOfControl(down, 1);
  if (at === undefined) {
    const from = down.findIndex((_, i) => underControl(down.slice(i), 1).length > 1);
    const beginAt = down[from]?.leading;
    return { state: 'none', top: top.leading, ...(beginAt === undefined ? {} : { beginAt }) };
  }
  const [weak = top.leading, strong = low.leading] = loweringLimits.map(
    (limit, i) =>
      lossOfControl(down, limit / loweringLimit) ?? (i === 0 ? top.leading : low.leading),
  );
  return { state: 'lost', at, between: [weak, strong] };
}
