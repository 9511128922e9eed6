import { gridDeg, gridPlace, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Lift } from '../mechanics/lift.ts';
import { type ActionName, byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { coefficientsFor, oneWeekLater } from './adaptation.ts';
import type { Athlete } from './athlete.ts';
import { type Contraction, hardSetSeconds, type Moment, type WeeklyDose } from './dose.ts';
import type { Sample } from './exercise.ts';
import { WeekOfPractice } from './practice.ts';
import { type TrainedState, untrainedState } from './trainedState.ts';
import { type Block, train } from './training.ts';

/**
 * The work of a block as it was done once, so that it can be weighed again with other coefficients
 * without solving statics anew: what was lifted does not depend on them but through how much
 * strength gained allows, which changes little.
 */
export interface RecordedWork {
  readonly athlete: Athlete;
  readonly weeks: readonly RecordedWeek[];
}

interface RecordedWeek {
  readonly byAction: ReadonlyMap<ActionName, RecordedAction>;
  readonly practised: readonly {
    readonly lift: Lift;
    readonly samples: readonly Sample[];
    readonly sets: number;
  }[];
}

interface ByUse<T> {
  readonly drive: Readonly<Record<Contraction, T>>;
  readonly tension: T;
  readonly lowered: T;
}

type RecordedAction = ByUse<Packed>;

/** The same as lists, which are faster to go through. */
interface Packed {
  readonly places: Int32Array;
  readonly slices: Int32Array;
  readonly sets: Float64Array;
}

/** Hard sets by grid place and slice of effort: entry `place · perPlace + slice`. */
type Slices = Map<number, number>;

/**
 * Effort from 0 to 1 is kept in so many slices; work between two is split so that its mean effort
 * stays. An effort squared is then off by less than a ten-thousandth.
 */
const slices = 64;

/** Slices kept a place: fibres that a machine lengthens carry more than they hold, under twice. */
const perPlace = 2 * slices;

/** Trains once with the coefficients given and keeps the work that was done. */
export function recordWork(athlete: Athlete, block: Block, coefficients: Coefficients) {
  const weeks = Array.from({ length: block.weeks }, () => ({
    byAction: new Map<ActionName, ByUse<Slices>>(),
    practised: [] as { lift: Lift; samples: readonly Sample[]; sets: number }[],
  }));
  const state = train(athlete, block, coefficients, {
    worked: (week, action, moments, times, contraction) => {
      const into = weeks[week - 1]?.byAction;
      if (!into) return;
      const kept = into.get(action) ?? nothingYet();
      into.set(action, kept);
      for (const moment of moments) keep(kept, moment, times, contraction);
    },
    practised: (week, lift, samples, sets) =>
      weeks[week - 1]?.practised.push({ lift, samples, sets }),
  });
  const packed = weeks.map(({ byAction: kept, practised }) => ({
    byAction: new Map([...kept].map(([action, uses]) => [action, packedUses(uses)])),
    practised,
  }));
  const work: RecordedWork = { athlete, weeks: packed };
  return { work, state };
}

function packedUses({ drive, tension, lowered }: ByUse<Slices>): RecordedAction {
  return {
    drive: { dynamic: pack(drive.dynamic), isometric: pack(drive.isometric) },
    tension: pack(tension),
    lowered: pack(lowered),
  };
}

function pack(kept: Slices): Packed {
  return {
    places: Int32Array.from(kept.keys(), (key) => Math.floor(key / perPlace)),
    slices: Int32Array.from(kept.keys(), (key) => key % perPlace),
    sets: Float64Array.from(kept.values()),
  };
}

const nothingYet = (): ByUse<Slices> => ({
  drive: { dynamic: new Map(), isometric: new Map() },
  tension: new Map(),
  lowered: new Map(),
});

function keep(kept: ByUse<Slices>, moment: Moment, times: number, contraction: Contraction): void {
  const { index, share } = gridPlace(moment.angle);
  const sets = (times * moment.seconds) / hardSetSeconds;
  for (const [place, part] of [
    [index, 1 - share],
    [index + 1, share],
  ] as const) {
    if (part * sets === 0) continue;
    split(kept.drive[contraction], place, moment.effort, part * sets);
    split(kept.tension, place, moment.tension ?? moment.effort, part * sets);
    if (moment.lowering) split(kept.lowered, place, moment.tension ?? moment.effort, part * sets);
  }
}

function split(into: Slices, place: number, effort: number, sets: number): void {
  const at = Math.max(effort, 0) * slices;
  const below = Math.min(Math.floor(at), perPlace - 2);
  const key = place * perPlace + below;
  into.set(key, (into.get(key) ?? 0) + sets * (1 - (at - below)));
  into.set(key + 1, (into.get(key + 1) ?? 0) + sets * (at - below));
}

/**
 * What the recorded work makes of the athlete with other coefficients; the same equations as
 * `train`, given the same loads and repetitions.
 *
 * @param weeks how many of the recorded weeks to train
 */
export function replay(
  work: RecordedWork,
  coefficients: Coefficients,
  weeks = work.weeks.length,
): TrainedState {
  const { athlete } = work;
  const c = coefficientsFor(athlete, coefficients);
  const weigh = weighing(c);
  let state = untrainedState(athlete);
  for (const week of work.weeks.slice(0, weeks)) {
    const practice = new WeekOfPractice(c);
    for (const { lift, samples, sets } of week.practised) practice.add(lift, samples, sets);
    const now = state;
    const later = (action: ActionName) => {
      const dose = weigh(week.byAction.get(action), athlete.groups[action].tension);
      return oneWeekLater(athlete.groups[action], now.changes[action], dose, c);
    };
    state = { ...now, changes: byAction(later), practice: practice.oneWeekLater(now.practice) };
  }
  return state;
}

/** Doses of recorded work: as in `DoseCollector`, with the powers of every slice worked out once. */
function weighing(c: Coefficients) {
  const powers = (power: number) =>
    Array.from({ length: perPlace }, (_, slice) => (slice / slices) ** power);
  const driven = powers(c.driveEffortPower);
  const tensed = powers(c.growthTensionPower);
  const ofMuscle = new Map<OverAngles, { fromSlack: OverAngles; fromTension: OverAngles }>();
  return (kept: RecordedAction | undefined, tension: OverAngles): WeeklyDose => {
    if (!kept) return nothingDone;
    const { fromSlack, fromTension } = ofMuscle.get(tension) ?? {
      fromSlack: tension.map((s) => s ** (c.driveTensionPower * c.driveEffortPower)),
      fromTension: tension.map((s) => s ** c.growthTensionPower),
    };
    ofMuscle.set(tension, { fromSlack, fromTension });
    return {
      drive: {
        dynamic: summed(kept.drive.dynamic, driven, fromSlack),
        isometric: summed(kept.drive.isometric, driven, fromSlack),
      },
      tension: summed(kept.tension, tensed, fromTension),
      lowered: summed(kept.lowered, tensed, fromTension),
    };
  };
}

const none = gridDeg.map(() => 0);
const nothingDone: WeeklyDose = {
  drive: { dynamic: none, isometric: none },
  tension: none,
  lowered: none,
};

function summed(
  { places, slices: efforts, sets }: Packed,
  byEffort: readonly number[],
  byPlace: readonly number[],
): number[] {
  const dose = new Float64Array(gridDeg.length);
  for (let i = 0; i < sets.length; i++) {
    const place = places[i] as number;
    const worth = byEffort[efforts[i] as number] as number;
    dose[place] = (dose[place] as number) + (sets[i] as number) * worth;
  }
  return Array.from(dose, (d, place) => d * (byPlace[place] ?? 0));
}
