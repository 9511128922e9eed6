import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { ActionName } from '../tables/actions.ts';
import { type Coefficients, largestGain } from '../tables/adaptation.ts';
import { regions } from '../tables/quadriceps.ts';
import type { TrainedMuscle } from '../tables/trainedMuscles.ts';
import { type Acting, agonistPlaces, sizeRatio } from './agonists.ts';
import type { Athlete } from './athlete.ts';
import type { Contraction, DriveDose } from './dose.ts';
import { driveSpread } from './driveSpread.ts';
import { actingFibre, type MuscleChange, unchangedMuscle } from './muscleChange.ts';
import type { MuscleDose } from './muscleWork.ts';

/** Filled share (0 to 1) of the neural gain of an action by angle, per contraction trained. */
export type DriveChange = Readonly<Record<Contraction, OverAngles>>;

/** What training has changed in the muscles of a person. */
export interface Changes {
  readonly drive: Readonly<Record<ActionName, DriveChange>>;
  /** By place among the trained muscles. */
  readonly muscles: readonly MuscleChange[];
}

export const mechanisms = ['neural drive', 'regional growth', 'sarcomeres in series'] as const;
export type Mechanism = (typeof mechanisms)[number];

const none = gridDeg.map(() => 0);

/** Drive before any training; compared by identity to save work. */
export const unchangedDrive: DriveChange = { dynamic: none, isometric: none };

/** Whether nothing behind an action has been trained; saves finding that out by angle. */
export function isUntouched(action: ActionName, { drive, muscles }: Changes): boolean {
  return (
    drive[action] === unchangedDrive &&
    agonistPlaces(action).every((place) => muscles[place] === unchangedMuscle)
  );
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

/** One week toward a goal: by 1 − exp(−1/τ), so a week without work is detraining by the same rule. */
const toward = (now: number, goal: number, weeks: number) =>
  now + (goal - now) * (1 - Math.exp(-1 / weeks));

/** Drive one week later: every angle moves toward the level that this week's dose could sustain. */
export function driveLater(
  action: ActionName,
  change: DriveChange,
  dose: DriveDose,
  c: Coefficients,
): DriveChange {
  const later = (contraction: Contraction) => {
    const now = change[contraction];
    const isDone = dose[contraction].some((amount) => amount > 0);
    if (now === none && !isDone) return now;
    const goal = isDone ? saturatedDrive(dose[contraction], action, c) : none;
    return now.map((filled, i) => toward(filled, goal[i] ?? 0, c.driveWeeks));
  };
  const [dynamic, isometric] = [later('dynamic'), later('isometric')];
  return dynamic === none && isometric === none ? unchangedDrive : { dynamic, isometric };
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

/** A muscle one week later: growth and fibre length move toward what this week could sustain. */
export function muscleLater(
  muscle: TrainedMuscle,
  change: MuscleChange,
  dose: MuscleDose | undefined,
  c: Coefficients,
): MuscleChange {
  if (change === unchangedMuscle && !dose) return change;
  const goal = dose ? muscleGoal(muscle, dose, c) : unchangedMuscle;
  return {
    growth: change.growth.map((g, r) => toward(g, goal.growth[r] ?? 0, c.growthWeeks)),
    lengthened: toward(change.lengthened, goal.lengthened, c.seriesWeeks),
    drawn: toward(change.drawn, goal.drawn, c.seriesWeeks),
    shortened: toward(change.shortened, goal.shortened, c.growthWeeks),
  };
}

/**
 * Growth and fibre length that a week's dose can sustain in a muscle.
 *
 * Each set counts by the length x, −1 (short) to 1 (long), at which the muscle worked. Growth of a
 * region = G·D_r/(D_r + D50) with D_r = Σ dose·(1 + b·x)·(1 ± t·x): work anywhere adds. Fibre length
 * goes up by S·D/(D + D50), once with D = Σ dose·max(x, 0) for work at long length and once with
 * D = w·(ranges drawn out) for lowering, so that neither takes from the other. It goes down by the
 * short amplitude times the share that short work has of all, filled like growth. Lengthening is
 * over in weeks (Blazevich 2007: no more after five); shortening is given the pace of growth, so that
 * it does not outrun it. The tilt t along the muscle is that of the knee extensors, others grow
 * evenly (sources conflict on where they lead); a muscle that the tables lack keeps its length.
 */
function muscleGoal({ home, row }: TrainedMuscle, dose: MuscleDose, c: Coefficients): MuscleChange {
  const { all, length, lengthSquared, long, drawn } = dose;
  if (all === 0) return unchangedMuscle;
  const filled = (amount: number, half: number) => amount / (amount + half);
  const b = c.growthLengthSlope;
  const grownDose = (tilt: number) => all + (b + tilt) * length + b * tilt * lengthSquared;
  const grown = (tilt: number) => c.growthAmplitude * filled(grownDose(tilt), c.growthHalfDose);
  const tilt = home === 'knee extension' ? c.growthDistalTilt : 0;
  const growth = tilt === 0 ? regions.names.map(() => grown(0)) : [grown(-tilt), grown(tilt)];
  if (!row) return { ...unchangedMuscle, growth };
  const short = long - length;
  return {
    growth,
    lengthened: c.seriesLong * filled(long, c.seriesHalfDose),
    drawn: c.seriesLong * filled(c.seriesLowering * drawn, c.seriesHalfDose),
    shortened: c.seriesShort * (short / all) * filled(grownDose(0), c.growthHalfDose),
  };
}

/**
 * Torque of an action after training over its torque before, by angle, in a test of one kind.
 *
 * (1 + drive gain) times the muscles' changed over unchanged torque, never above the largest gain
 * seen in a group. The drive gain is the amplitude times the filled share; work of the other
 * contraction passes only part of its share and only into what is still unfilled. Fibre length acts
 * by a share of what is measured: fascicles seen by ultrasound grow more than torque moves, and
 * those grown by lowering may have as many sarcomeres as before (Pincheira 2022, abstract).
 *
 * @param counted mechanisms to include, for splitting a gain between them
 */
export function torqueRatio(
  action: ActionName,
  { drive, muscles }: Changes,
  test: Contraction,
  c: Coefficients,
  counted: ReadonlySet<Mechanism> = all,
): number[] {
  const other: Contraction = test === 'dynamic' ? 'isometric' : 'dynamic';
  const acting = muscles.map((change) => counts(change, counted, c));
  const { [test]: same, [other]: across } = drive[action];
  return gridDeg.map((_, i) => {
    const own = same[i] ?? 0;
    const filled = own + c.transferAcross * (across[i] ?? 0) * (1 - own);
    const driven = counted.has('neural drive') ? c.driveAmplitude * filled : 0;
    return Math.min((1 + driven) * sizeRatio(action, acting, i), 1 + largestGain.value);
  });
}

const all: ReadonlySet<Mechanism> = new Set(mechanisms);

/** What of a muscle's change acts on torque. */
function counts(change: MuscleChange, counted: ReadonlySet<Mechanism>, c: Coefficients): Acting {
  return {
    growth: counted.has('regional growth') ? change.growth : unchangedMuscle.growth,
    fibre: counted.has('sarcomeres in series') ? actingFibre(change, c) : 0,
  };
}
