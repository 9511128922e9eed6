import type { OverAngles } from '../mechanics/angleGrid.ts';
import { averageOverOrders } from '../numeric/averageOverOrders.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import {
  coefficientsFor,
  type Mechanism,
  mechanisms,
  torqueRatio,
} from '../physiology/adaptation.ts';
import type { Athlete } from '../physiology/athlete.ts';
import type { Range } from '../physiology/heaviestLoad.ts';
import type { TrainedState } from '../physiology/trainedState.ts';
import type { Block } from '../physiology/training.ts';
import { type ActionName, actions } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { angleBands, sumsByBand } from './angleBands.ts';
import type { MuscleOutcome } from './muscleOutcomes.ts';
import { type AngleRange, type Landing, landing, meanOver } from './ranking.ts';
import { trainWeekly, type Week } from './weekly.ts';

/** What one program is expected to do to one athlete. */
export interface Forecast {
  readonly name: string;
  /** Weeks trained when judged. */
  readonly weeks: number;
  readonly state: TrainedState;
  /** The weeks up to then. */
  readonly weekly: readonly Week[];
  /** The muscles that work for the target's action. */
  readonly muscles: readonly MuscleOutcome[];
  /** Isometric torque after over before, by angle of the target joint. */
  readonly ratio: OverAngles;
  /** N·m of one side after the program, by angle. */
  readonly torqueAfter: OverAngles;
  /** Relative gain by angle owed to each mechanism; they sum to `ratio` − 1. */
  readonly shares: ReadonlyMap<Mechanism, OverAngles>;
  /** Mean relative gain inside the target owed to each mechanism. */
  readonly targetShares: ReadonlyMap<Mechanism, number>;
  readonly landing: Landing;
  readonly bands: readonly Band[];
}

/** A band of angles, 25 degrees wide: what is put there and what comes of it. */
export interface Band extends AngleRange {
  /** Hard sets of drive dose, both contractions: of the first week, or the mean week where there are phases. */
  readonly hardSets: number;
  readonly gain: number;
  readonly shares: ReadonlyMap<Mechanism, number>;
}

export interface Question {
  readonly action: ActionName;
  readonly target: AngleRange;
  /** Weeks after which programs are judged; a shorter one is judged at its end. */
  readonly weeks?: number;
  /** Lift ranges whose heaviest single is asked for. */
  readonly ranges: readonly Range[];
}

/** Trains the athlete through a block and reads off gains in an isometric test of the joint. */
export function forecast(
  name: string,
  athlete: Athlete,
  block: Block,
  question: Question,
  coefficients: Coefficients,
): Forecast {
  const { action, target } = question;
  const group = athlete.groups[action];
  const weeks = Math.min(block.weeks, question.weeks ?? block.weeks);
  const [least, most] = reach(action, athlete);
  const bands = angleBands(least, most);
  const trained = trainWeekly(
    athlete,
    { ...block, weeks },
    { action, target, bands },
    coefficients,
  );
  const { state, weekly, dose, muscles } = trained;
  const sets = sumsByBand(dose, bands);
  const own = coefficientsFor(athlete, coefficients);
  const ratioBy = (counted: ReadonlySet<Mechanism>) =>
    torqueRatio(action, state.changes, 'isometric', own, counted);
  const ratio = ratioBy(new Set(mechanisms));
  const shares = averageOverOrders(mechanisms, ratioBy);
  const meansOver = (range: AngleRange) =>
    new Map([...shares].map(([cause, by]) => [cause, meanOver(by, range)]));
  return {
    name,
    weeks,
    state,
    weekly,
    muscles,
    ratio,
    torqueAfter: group.torque.map((torque, i) => torque * (ratio[i] ?? 1)),
    shares,
    targetShares: meansOver(target),
    landing: landing(group.torque, ratio, target, { from: least, to: most }),
    bands: bands.map((band, i) => ({
      ...band,
      hardSets: sets[i] ?? 0,
      gain: meanOver(ratio, band) - 1,
      shares: meansOver(band),
    })),
  };
}

/** Angles over which an action is looked at: its table's range, the knee's up to the athlete's limit. */
export function reach(action: ActionName, athlete: Athlete): [number, number] {
  const { joint, rangeDeg } = actions[action];
  const [least, most] = [toRadians(rangeDeg[0]), toRadians(rangeDeg[1])];
  return [least, joint === 'knee' ? athlete.body.limits.knee : most];
}

/** The same in degrees, a limit of 120° as 120 and not a hair below, where grid angles are compared with it. */
export function reachDeg(action: ActionName, athlete: Athlete): [number, number] {
  const [least, most] = reach(action, athlete);
  const exact = (angle: number) => Number(toDegrees(angle).toFixed(9));
  return [exact(least), exact(most)];
}
