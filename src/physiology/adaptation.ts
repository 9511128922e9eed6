import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { type MuscleHead, regions } from '../tables/quadriceps.ts';
import type { ExtensorGroup } from './athlete.ts';
import type { Contraction, WeeklyDose } from './dose.ts';
import { type HeadChange, headTorque, unchangedHead } from './muscle.ts';

/** What training has changed in one extensor group, as shares of the first state. */
export interface GroupChange {
  /** Filled share (0 to 1) of the neural gain by angle, per contraction trained. */
  readonly drive: Readonly<Record<Contraction, OverAngles>>;
  /** One entry a head; a group without heads has one entry, whose fibres keep their length. */
  readonly heads: readonly HeadChange[];
}

export const mechanisms = ['neural drive', 'regional growth', 'sarcomeres in series'] as const;
export type Mechanism = (typeof mechanisms)[number];

/** State before any training. */
export function untouched(group: ExtensorGroup): GroupChange {
  const none = gridDeg.map(() => 0);
  const heads = group.heads.length > 0 ? group.heads.map(() => unchangedHead) : [unchangedHead];
  return { drive: { dynamic: none, isometric: none }, heads };
}

/** Coefficients for one person: a trained one has `trainedShare` of every amplitude. */
export function coefficientsFor(trained: boolean, c: Coefficients): Coefficients {
  const share = trained ? c.trainedShare : 1;
  return {
    ...c,
    driveAmplitude: share * c.driveAmplitude,
    growthAmplitude: share * c.growthAmplitude,
    seriesLong: share * c.seriesLong,
    seriesShort: share * c.seriesShort,
    practiceAmplitude: share * c.practiceAmplitude,
  };
}

/**
 * One week later: every state moves toward the level this week's dose could sustain by
 * 1 − exp(−1/τ), so a week without work is detraining by the same rule.
 */
export function oneWeekLater(
  group: ExtensorGroup,
  change: GroupChange,
  dose: WeeklyDose,
  c: Coefficients,
): GroupChange {
  const toward = (now: number, goal: number, weeks: number) =>
    now + (goal - now) * (1 - Math.exp(-1 / weeks));
  const drive = (contraction: Contraction) => {
    const goal = saturatedDrive(dose.drive[contraction], c);
    return change.drive[contraction].map((now, i) => toward(now, goal[i] ?? 0, c.driveWeeks));
  };
  const heads = change.heads.map((now, h) => {
    const goal = headGoal(group.heads[h], dose.tension, c);
    return {
      growth: now.growth.map((g, r) => toward(g, goal.growth[r] ?? 0, c.growthWeeks)),
      lengthened: toward(now.lengthened, goal.lengthened, c.seriesWeeks),
      shortened: toward(now.shortened, goal.shortened, c.growthWeeks),
    };
  });
  return { drive: { dynamic: drive('dynamic'), isometric: drive('isometric') }, heads };
}

/**
 * Share of the neural gain that a drive dose fills at each angle.
 *
 * Local dose D(θ) = Σ dose(θ')·h(θ')·K(θ − θ'), filled share D/(D + D50). K falls off as a normal
 * curve whose width is set apart for the shorter and the longer side and grows with the length
 * trained at; h fades with length. Saturation is local: work anywhere lowers nothing elsewhere.
 */
function saturatedDrive(dose: OverAngles, c: Coefficients): number[] {
  const local = gridDeg.map(() => 0);
  dose.forEach((amount, source) => {
    if (amount === 0) return;
    const trained = gridDeg[source] ?? 0;
    const fade = Math.max(1 - c.driveFadePerDeg * Math.max(trained - 40, 0), 0.2);
    const shorter = width(c.widthShorterAt40, c.widthShorterAt90, trained);
    const longer = width(c.widthLongerAt40, c.widthLongerAt90, trained);
    gridDeg.forEach((deg, i) => {
      const z = (deg - trained) / (deg < trained ? shorter : longer);
      local[i] = (local[i] ?? 0) + amount * fade * Math.exp(-0.5 * z * z);
    });
  });
  return local.map((d) => d / (d + c.driveHalfDose));
}

/** Kernel width (degrees) by trained angle: a straight line through its values at 40° and 90°, from 20° to 110°. */
function width(at40: number, at90: number, trained: number): number {
  const inside = Math.min(Math.max(trained, 20), 110);
  return Math.max(at40 + ((at90 - at40) * (inside - 40)) / 50, 6);
}

/**
 * Growth and added sarcomeres that a tension dose can sustain in one head.
 *
 * With x from −1 (short) to 1 (long) for the mean angle of the work, which for these muscles is
 * resting length on another scale, and S = D/(D + D50):
 * growth = G·S·(1 + b·x), tilted between the proximal and distal region by t·x; fibre length goes
 * up by S·x times the long amplitude or down by S·|x| times the short one. Lengthening is over in
 * weeks (Blazevich 2007: no more after five), shortening is given the pace of growth, so that it
 * never outruns it: no study here found strength lost at any angle. A head that is not in the
 * tables grows evenly and keeps its length.
 */
function headGoal(head: MuscleHead | undefined, tension: OverAngles, c: Coefficients): HeadChange {
  const dose = tension.reduce((sum, d) => sum + d, 0);
  if (dose === 0) return unchangedHead;
  const meanDeg = tension.reduce((sum, d, i) => sum + d * (gridDeg[i] ?? 0), 0) / dose;
  const x = Math.tanh((meanDeg - regions.neutralDeg) / 25);
  const filled = dose / (dose + c.growthHalfDose);
  const size = c.growthAmplitude * filled * (1 + c.growthLengthSlope * x);
  const tilt = c.growthDistalTilt * x;
  const growth = [size * (1 - tilt), size * (1 + tilt)];
  if (!head) return { ...unchangedHead, growth: growth.map(() => size) };
  const shift = dose / (dose + c.seriesHalfDose);
  return {
    growth,
    lengthened: shift * Math.max(x, 0) * c.seriesLong,
    shortened: shift * Math.max(-x, 0) * c.seriesShort,
  };
}

/**
 * Torque of a group after training over its torque before, by angle, in a test of one kind.
 *
 * (1 + drive gain) times the muscles' changed over unchanged torque. The drive gain is the
 * amplitude times the filled share; work of the other contraction passes only part of its share
 * and only into what is still unfilled.
 *
 * @param counted mechanisms to include, for splitting a gain between them
 */
export function torqueRatio(
  group: ExtensorGroup,
  change: GroupChange,
  test: Contraction,
  c: Coefficients,
  counted: ReadonlySet<Mechanism>,
): number[] {
  const other: Contraction = test === 'dynamic' ? 'isometric' : 'dynamic';
  const heads = change.heads.map((head) => ({
    growth: counted.has('regional growth') ? head.growth : unchangedHead.growth,
    lengthened: counted.has('sarcomeres in series') ? head.lengthened : 0,
    shortened: counted.has('sarcomeres in series') ? head.shortened : 0,
  }));
  return gridDeg.map((deg, i) => {
    const own = change.drive[test][i] ?? 0;
    const filled = own + c.transferAcross * (change.drive[other][i] ?? 0) * (1 - own);
    const drive = counted.has('neural drive') ? c.driveAmplitude * filled : 0;
    return (1 + drive) * sizeRatio(group, heads, deg);
  });
}

function sizeRatio(group: ExtensorGroup, heads: readonly HeadChange[], deg: number): number {
  if (group.heads.length === 0) return 1 + (heads[0]?.growth[0] ?? 0);
  let before = 0;
  let after = 0;
  group.heads.forEach((head, h) => {
    before += unchangedTorque(head, deg);
    after += headTorque(head, deg, heads[h] ?? unchangedHead);
  });
  return after / before;
}

const remembered = new Map<MuscleHead, Map<number, number>>();

/** Torque of an untrained head at a grid angle; asked for at every week, so kept. */
function unchangedTorque(head: MuscleHead, deg: number): number {
  const byAngle = remembered.get(head) ?? new Map<number, number>();
  remembered.set(head, byAngle);
  const torque = byAngle.get(deg) ?? headTorque(head, deg, unchangedHead);
  byAngle.set(deg, torque);
  return torque;
}
