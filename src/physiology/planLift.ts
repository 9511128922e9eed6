import type { Lift } from '../mechanics/lift.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { countsWholeEffort } from '../tables/bodyLifts.ts';
import { liftNamed } from '../tables/lifts.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { hardestEffort, samplesOf } from './exercise.ts';
import { bodyTooHeavy, type SharedPosture, sharedAtHardest } from './hardPostures.ts';
import { heaviestLoad, type Range } from './heaviestLoad.ts';
import { type LoadRule, loadOf, loweringLoadOf, repetitionsOf } from './load.ts';
import { loweringLimit } from './lowering.ts';
import { isTestedRange, type MeasuredSingle } from './measuredSingle.ts';
import { type PlannedLowering, planLowering } from './planLowering.ts';
import type { PlannedExercise } from './planProgram.ts';
import { possibleRepetitions, shareForRepetitions } from './repetitions.ts';
import { type Equipment, rigOf } from './rigOf.ts';
import { rigUse } from './rigUse.ts';
import { heaviestSingles, restingCapacity, untrainedState } from './trainedState.ts';
import type { WrittenLift } from './writtenProgram.ts';

/** Who trains with what, and the lifts that work may name. */
export interface Setting {
  readonly athlete: Athlete;
  readonly equipment: Equipment;
  readonly singles: readonly MeasuredSingle[];
  readonly coefficients: Coefficients;
  readonly catalogue: readonly Lift[];
}

/**
 * Plans a lift: its loads in kg, and what they ask along the range.
 *
 * A share, a repetition maximum or a reserve refers to the heaviest single of the same lift over
 * the same range with the same chains or bands: the tested one if there is a test over it, else
 * the one the model predicts.
 */
export function planLift(work: WrittenLift, setting: Setting): PlannedExercise {
  const { athlete, equipment, singles, coefficients, catalogue } = setting;
  const lift = liftNamed(work.lift, catalogue);
  const range = { lift, from: work.from, to: work.to, rig: rigOf(work, equipment) };
  const strength = liftFactor(athlete, range);
  const [predicted] = heaviestSingles(athlete, [range], untrainedState, coefficients);
  if (!predicted) throw new Error('one range asked for, none answered');
  const measured = singles.find((single) => isTestedRange(single, work, lift));
  const heaviest = measured?.best ?? predicted.load;
  const { sets, reps, tempo } = work;
  const whole = !work.lowerOnly && countsWholeEffort(lift, heaviest);
  const load =
    (whole ? bodyLoad(work.load, reps, range, athlete, strength) : undefined) ??
    loadOf(work.load, heaviest, reps);
  const exercise = { kind: 'lift', range, load, heaviest, sets, reps, tempo } as const;
  const common = {
    heaviest: predicted,
    oneSided: lift.sides === 1,
    tested: measured !== undefined,
    rigUse: rigUse(range, athlete.body, { first: load, heaviest }),
  };
  if (work.lowerOnly) {
    const lowering = planLowering(range, athlete, load, strength);
    return {
      ...common,
      exercise: { ...exercise, heaviest: lowering.heaviest, lowerOnly: true },
      samples: lowering.samples,
      strength: strength * loweringLimit,
      lowering,
      shared: sharedWhileLowering(range, athlete, lowering, strength),
    };
  }
  const lowered = work.loweringLoad && loweringLoadOf(work.loweringLoad, load);
  const lowering =
    lowered === undefined ? undefined : planLowering(range, athlete, lowered, strength);
  const samples = samplesOf(range, athlete, load, strength);
  return {
    ...common,
    ...(whole ? wholeUse(work, load, hardestEffort(samples)) : {}),
    exercise: { ...exercise, lowering },
    samples,
    strength,
    lowering,
    shared: sharedAtHardest(range, athlete, load, strength),
    weak: heaviest > 0 ? undefined : bodyTooHeavy(range, athlete),
  };
}

/**
 * Added load (kg) that allows just so many repetitions where they are counted on the whole effort.
 *
 * @returns 0 if the body alone allows fewer, undefined for a load that is not given by repetitions
 */
function bodyLoad(
  rule: LoadRule,
  reps: number,
  range: Range,
  athlete: Athlete,
  strength: number,
): number | undefined {
  const possible = repetitionsOf(rule, reps);
  if (possible === undefined) return undefined;
  const effort = strength * shareForRepetitions(possible);
  return heaviestLoad(range, athlete.body, restingCapacity(athlete), effort).load;
}

/** The share of the heaviest single's effort, and whether even the body alone exceeds what was meant. */
function wholeUse(
  work: WrittenLift,
  load: number,
  wholeShare: number,
): Pick<PlannedExercise, 'wholeShare' | 'lessThanBody'> {
  const wanted = repetitionsOf(work.load, work.reps);
  const possible = Math.floor(possibleRepetitions(Math.min(wholeShare, 1)) + tiny);
  const isLess = load <= 0 && wanted !== undefined && possible < wanted && wholeShare < 1 + tiny;
  return { wholeShare, ...(isLess ? { lessThanBody: { wanted, possible } } : {}) };
}

/** An effort of 1 is found to about a millionth. */
const tiny = 1e-4;

/** The shared posture of the part that is lowered under control. */
function sharedWhileLowering(
  range: Range,
  athlete: Athlete,
  { load, samples }: PlannedLowering,
  strength: number,
): SharedPosture | undefined {
  const [first, last] = [samples[0], samples[samples.length - 1]];
  if (!first || !last) return undefined;
  const controlled = { ...range, from: first.leading, to: last.leading };
  return sharedAtHardest(controlled, athlete, load, strength * loweringLimit);
}
