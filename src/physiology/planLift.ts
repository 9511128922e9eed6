import type { Lift } from '../mechanics/lift.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { liftNamed } from '../tables/lifts.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { samplesOf } from './exercise.ts';
import { bodyTooHeavy, type SharedPosture, sharedAtHardest } from './hardPostures.ts';
import type { Range } from './heaviestLoad.ts';
import { loadOf, loweringLoadOf } from './load.ts';
import { loweringLimit } from './lowering.ts';
import { isTestedRange, type MeasuredSingle } from './measuredSingle.ts';
import { type PlannedLowering, planLowering } from './planLowering.ts';
import type { PlannedExercise } from './planProgram.ts';
import { type Equipment, rigOf } from './rigOf.ts';
import { rigUse } from './rigUse.ts';
import { heaviestSingles, untrainedState } from './trainedState.ts';
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
  const [predicted] = heaviestSingles(athlete, [range], untrainedState(athlete), coefficients);
  if (!predicted) throw new Error('one range asked for, none answered');
  const measured = singles.find((single) => isTestedRange(single, work, lift));
  const heaviest = measured?.best ?? predicted.load;
  const { sets, reps, tempo } = work;
  const load = loadOf(work.load, heaviest, reps);
  const exercise = { kind: 'lift', range, load, heaviest, sets, reps, tempo } as const;
  const common = {
    heaviest: predicted,
    tested: measured !== undefined,
    rigUse: rigUse(range, athlete.body, { first: load, heaviest }),
  };
  if (work.lowerOnly) {
    const lowering = planLowering(range, athlete, load, strength);
    return {
      ...common,
      exercise: { ...exercise, heaviest: lowering.heaviest, lowerOnly: true },
      samples: lowering.samples,
      lowering,
      shared: sharedWhileLowering(range, athlete, lowering, strength),
    };
  }
  const lowered = work.loweringLoad && loweringLoadOf(work.loweringLoad, load);
  const lowering =
    lowered === undefined ? undefined : planLowering(range, athlete, lowered, strength);
  return {
    ...common,
    exercise: { ...exercise, lowering },
    samples: samplesOf(range, athlete, load, strength),
    lowering,
    shared: sharedAtHardest(range, athlete, load, strength),
    weak: heaviest > 0 ? undefined : bodyTooHeavy(range, athlete),
  };
}

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
