import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import { type ActionName, byAction } from '../tables/actions.ts';
import { type Coefficients, kernel, largestGain } from '../tables/adaptation.ts';
import { type MuscleHead, regions } from '../tables/quadriceps.ts';
import { armGrowth } from './armGrowth.ts';
import type { Athlete, MuscleGroup } from './athlete.ts';
import type { Contraction, WeeklyDose } from './dose.ts';
import { driveSpread, lengthScales } from './driveSpread.ts';
import { type HeadChange, headTorque, unchangedHead } from './muscle.ts';

/** What training has changed in one muscle group, as shares of the first state. */
export interface GroupChange {
  /** Filled share (0 to 1) of the neural gain by angle, per contraction trained. */
  readonly drive: Readonly<Record<Contraction, OverAngles>>;
  /** One entry a head; a group without heads has one entry, whose fibres keep their length. */
  readonly heads: readonly HeadChange[];
}

export const mechanisms = ['neural drive', 'regional growth', 'sarcomeres in series'] as const;
export type Mechanism = (typeof mechanisms)[number];

/** Whether nothing has been trained; saves the work of finding that out by angle. */
export function isUntouched(change: GroupChange): boolean {
  return change === nothing.get(change.heads.length);
}

const nothing = new Map<number, GroupChange>();

/** State before any training. */
export function untouched(group: MuscleGroup): GroupChange {
  const count = Math.max(group.heads.length, 1);
  const none = gridDeg.map(() => 0);
  const heads = Array.from({ length: count }, () => unchangedHead);
  const known = nothing.get(count) ?? { drive: { dynamic: none, isometric: none }, heads };
  nothing.set(count, known);
  return known;
}

const ofPerson = new WeakMap<Coefficients, Map<number, Coefficients>>();

/**
 * Coefficients for one person: a trained one has `trainedShare` of every amplitude, and what retests
 * showed of this one multiplies it. The same object for the same share, so that what is kept by it
 * is found again.
 */
export function coefficientsFor(
  { trained, response }: Pick<Athlete, 'trained' | 'response'>,
  c: Coefficients,
): Coefficients {
  const share = (trained ? c.trainedShare : 1) * response;
  if (share === 1) return c;
  const byShare = ofPerson.get(c) ?? new Map<number, Coefficients>();
  ofPerson.set(c, byShare);
  const known = byShare.get(share) ?? scaledBy(share, c);
  byShare.set(share, known);
  return known;
}

function scaledBy(share: number, c: Coefficients): Coefficients {
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
  group: MuscleGroup,
  change: GroupChange,
  dose: WeeklyDose,
  c: Coefficients,
): GroupChange {
  if (isUntouched(change) && dose.tension.every((amount) => amount === 0)) return change;
  const toward = (now: number, goal: number, weeks: number) =>
    now + (goal - now) * (1 - Math.exp(-1 / weeks));
  const drive = (contraction: Contraction) => {
    const goal = saturatedDrive(dose.drive[contraction], group.action, c);
    return change.drive[contraction].map((now, i) => toward(now, goal[i] ?? 0, c.driveWeeks));
  };
  const goal = headGoal(group.heads.length > 0, dose, shortOrLong[group.action], c);
  const heads = change.heads.map((now) => {
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
function saturatedDrive(dose: OverAngles, action: ActionName, c: Coefficients): number[] {
  const local = new Float64Array(gridDeg.length);
  for (const [source, amount] of dose.entries()) {
    if (amount === 0) continue;
    const spread = driveSpread(action, source, c);
    for (let i = 0; i < local.length; i++)
      local[i] = (local[i] as number) + amount * (spread[i] as number);
  }
  return Array.from(local, (d) => d / (d + c.driveHalfDose));
}

/**
 * Growth and fibre length that a tension dose can sustain in every head of a group.
 *
 * Each angle's dose counts by its length x, −1 (short) to 1 (long), an S-curve of the angle that
 * for these muscles stands for resting length. Growth of a region = G·D_r/(D_r + D50) with D_r =
 * Σ dose·(1 + b·x)·(1 ± t·x): work anywhere adds. Fibre length goes up by the long amplitude times
 * D_l/(D_l + D50), D_l = Σ dose·max(x, 0), and down by the short one times the share that short
 * work has of all, filled like growth. Lengthening is over in weeks (Blazevich 2007: no more after five); shortening is
 * given the pace of growth, so that it does not outrun it: no study here found strength lost at an
 * angle. A group without heads in the tables grows evenly and keeps its length.
 */
function headGoal(
  hasHeads: boolean,
  { tension, lowered }: WeeklyDose,
  length: OverAngles,
  c: Coefficients,
): HeadChange {
  const done = tension.flatMap((dose, i) => (dose === 0 ? [] : [{ dose, x: length[i] ?? 0 }]));
  const sum = (weight: (x: number) => number) =>
    done.reduce((total, { dose, x }) => total + dose * weight(x), 0);
  const all = sum(() => 1);
  if (all === 0) return unchangedHead;
  const filled = (dose: number, half: number) => dose / (dose + half);
  const grownDose = (tilt: number) => sum((x) => (1 + c.growthLengthSlope * x) * (1 + tilt * x));
  const grown = (tilt: number) => c.growthAmplitude * filled(grownDose(tilt), c.growthHalfDose);
  const long = sum((x) => Math.max(x, 0)) + c.seriesLowering * lowered.reduce((a, b) => a + b, 0);
  const short = sum((x) => Math.max(-x, 0));
  return {
    growth: hasHeads
      ? [grown(-c.growthDistalTilt), grown(c.growthDistalTilt)]
      : regions.names.map(() => grown(0)),
    lengthened: c.seriesLong * filled(long, c.seriesHalfDose),
    shortened: c.seriesShort * (short / all) * filled(grownDose(0), c.growthHalfDose),
  };
}

/** Whether work at each grid angle is short (−1) or long (1): an S-curve of the length scale. */
const shortOrLong = byAction((name) =>
  lengthScales[name].map((at) => Math.tanh((at - regions.neutralDeg) / kernel.lengthScaleDeg)),
);

/**
 * Torque of a group after training over its torque before, by angle, in a test of one kind.
 *
 * (1 + drive gain) times the muscles' changed over unchanged torque, never above the largest gain
 * seen in a group. The drive gain is the amplitude times the filled share; work of the other
 * contraction passes only part of its share and only into what is still unfilled. Fibre length acts
 * by a share of what is measured: fascicles seen by ultrasound grow more than torque moves.
 *
 * @param counted mechanisms to include, for splitting a gain between them
 */
export function torqueRatio(
  group: MuscleGroup,
  change: GroupChange,
  test: Contraction,
  c: Coefficients,
  counted: ReadonlySet<Mechanism>,
): number[] {
  const other: Contraction = test === 'dynamic' ? 'isometric' : 'dynamic';
  const heads = change.heads.map((head) => ({
    growth: counted.has('regional growth') ? head.growth : unchangedHead.growth,
    lengthened: counted.has('sarcomeres in series') ? c.seriesEffect * head.lengthened : 0,
    shortened: counted.has('sarcomeres in series') ? c.seriesEffect * head.shortened : 0,
  }));
  return gridDeg.map((deg, i) => {
    const own = change.drive[test][i] ?? 0;
    const filled = own + c.transferAcross * (change.drive[other][i] ?? 0) * (1 - own);
    const drive = counted.has('neural drive') ? c.driveAmplitude * filled : 0;
    return Math.min((1 + drive) * sizeRatio(group, heads, deg), 1 + largestGain.value);
  });
}

function sizeRatio(group: MuscleGroup, heads: readonly HeadChange[], deg: number): number {
  if (group.heads.length === 0) {
    const grown = heads[0]?.growth[0] ?? 0;
    return (1 + grown) * (1 + armGrowth(group.action, grown));
  }
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
