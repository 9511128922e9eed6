import { gridAngles, type OverAngles } from '../mechanics/angleGrid.ts';

/** An angle range in radians. */
export interface AngleRange {
  readonly from: number;
  readonly to: number;
}

/** What a program does to the target, before it is compared with others. */
export interface Landing {
  /** Mean relative gain of torque inside the target; 0.1 is ten per cent. */
  readonly meanGain: number;
  /** Part of the total gain of torque over all angles that lies inside the target, 0 to 1. */
  readonly hitShare: number;
  /** Angle of the largest torque before and after, radians. */
  readonly peakBefore: number;
  readonly peakAfter: number;
  /** The angles around the peak where the curve is level, if it has no peak to speak of. */
  readonly levelBefore?: AngleRange;
  readonly levelAfter?: AngleRange;
}

/**
 * A curve is level where it stays this near its largest value over more than so many degrees: less
 * than the error of a torque test (working values).
 */
const level = { within: 0.03, widerThanDeg: 40 };

/**
 * How a gain by angle meets a target range.
 *
 * Averages are integrals over the shared grid by the trapezoid rule with the range's own ends.
 * Only gains count toward the hit share; a loss somewhere is seen in the curve, not here.
 *
 * @param torque N·m before training
 * @param ratio torque after over before
 * @param reach angles that count at all, radians
 */
export function landing(
  torque: OverAngles,
  ratio: OverAngles,
  target: AngleRange,
  reach: AngleRange,
): Landing {
  const gain = ratio.map((r) => r - 1);
  const newtonMetres = torque.map((t, i) => Math.max(t * (gain[i] ?? 0), 0));
  const inside = integral(newtonMetres, target);
  const everywhere = integral(newtonMetres, {
    from: Math.min(reach.from, target.from),
    to: Math.max(reach.to, target.to),
  });
  const after = torque.map((t, i) => t * (ratio[i] ?? 1));
  const [before, later] = [levelAround(torque, reach), levelAround(after, reach)];
  return {
    meanGain: integral(gain, target) / (target.to - target.from),
    hitShare: everywhere > 0 ? inside / everywhere : 0,
    peakBefore: peakAngle(torque, reach),
    peakAfter: peakAngle(after, reach),
    ...(before ? { levelBefore: before } : {}),
    ...(later ? { levelAfter: later } : {}),
  };
}

/** Mean of a quantity over a range of angles. */
export function meanOver(values: OverAngles, range: AngleRange): number {
  return integral(values, range) / (range.to - range.from);
}

/** Sum over the grid points of a range (its upper end left out). */
export function sumOver(values: OverAngles, range: AngleRange): number {
  const tiny = 1e-9;
  return gridAngles.reduce(
    (sum, angle, i) =>
      angle >= range.from - tiny && angle < range.to - tiny ? sum + (values[i] ?? 0) : sum,
    0,
  );
}

/** ∫ values dθ over a range, straight lines between grid points. */
function integral(values: OverAngles, range: AngleRange): number {
  let sum = 0;
  for (let i = 0; i + 1 < gridAngles.length; i++) {
    const [a, b] = [gridAngles[i] ?? 0, gridAngles[i + 1] ?? 0];
    const [low, high] = [Math.max(a, range.from), Math.min(b, range.to)];
    if (high <= low) continue;
    const at = (x: number) => {
      const share = (x - a) / (b - a);
      return (1 - share) * (values[i] ?? 0) + share * (values[i + 1] ?? 0);
    };
    sum += ((at(low) + at(high)) / 2) * (high - low);
  }
  return sum;
}

/** The stretch of grid angles around the largest value where a curve is level, if it is. */
function levelAround(values: OverAngles, { from, to }: AngleRange): AngleRange | undefined {
  const within = gridAngles.flatMap((angle, i) =>
    angle >= from - 1e-9 && angle <= to + 1e-9 ? [{ angle, value: values[i] ?? 0 }] : [],
  );
  const most = Math.max(...within.map(({ value }) => value));
  const top = within.findIndex(({ value }) => value === most);
  const isLow = ({ value }: { readonly value: number }) => value < (1 - level.within) * most;
  const next = within.findIndex((point, i) => i > top && isLow(point));
  const first = within[within.slice(0, Math.max(top, 0)).findLastIndex(isLow) + 1];
  const last = within[(next < 0 ? within.length : next) - 1];
  if (!first || !last) return undefined;
  const wide = ((last.angle - first.angle) * 180) / Math.PI > level.widerThanDeg + 1e-9;
  return wide ? { from: first.angle, to: last.angle } : undefined;
}

/** Angle of the largest value within reach, with a parabola through the three points around it. */
export function peakAngle(values: OverAngles, { from, to }: AngleRange): number {
  let top = -1;
  gridAngles.forEach((angle, i) => {
    const inside = angle >= from - 1e-9 && angle <= to + 1e-9;
    if (inside && (top < 0 || (values[i] ?? 0) > (values[top] ?? 0))) top = i;
  });
  const here = gridAngles[top] ?? from;
  const [before, at, after] = [values[top - 1], values[top] ?? 0, values[top + 1]];
  if (before === undefined || after === undefined || before > at || after > at) return here;
  const bend = before - 2 * at + after;
  const step = (gridAngles[1] ?? 0) - (gridAngles[0] ?? 0);
  return bend === 0 ? here : here + (step * (before - after)) / (2 * bend);
}

/** Differences below this (share) are never told apart, however small the gains: a working value. */
const leastMargin = 0.02;

/** Gains below this round to 0 %: nothing of the work lands, and nothing ties with the best. */
const nothing = 0.005;

/** A program's place, 1 for the best. */
export interface Placed<P> {
  readonly program: P;
  readonly place: number;
  /** True when it cannot be told from the best program. */
  readonly tiesWithBest: boolean;
  /** How far the model typically misses such a gain, share like the gain. */
  readonly margin: number;
}

/**
 * Orders programs by mean gain in the target, equal gains by hit share, then by name so that the
 * order never depends on the order of writing.
 *
 * A program that adds nothing ties with none, however little the best adds.
 *
 * @param blur differences below this share of the best gain cannot be told apart
 * @param miss typical miss as a share of the gain itself
 */
export function rank<P extends { readonly name: string; readonly landing: Landing }>(
  programs: readonly P[],
  blur: number,
  miss: number,
): Placed<P>[] {
  const ordered = [...programs].sort(
    (a, b) =>
      b.landing.meanGain - a.landing.meanGain ||
      b.landing.hitShare - a.landing.hitShare ||
      (a.name < b.name ? -1 : 1),
  );
  const best = ordered[0]?.landing.meanGain ?? 0;
  return ordered.map((program, i) => ({
    program,
    place: i + 1,
    margin: Math.max(miss * Math.abs(program.landing.meanGain), leastMargin),
    tiesWithBest: i === 0 || cannotTell(best, program.landing.meanGain, blur),
  }));
}

function cannotTell(best: number, gain: number, blur: number): boolean {
  return gain >= nothing && best - gain <= Math.max(blur * Math.abs(best), leastMargin);
}
