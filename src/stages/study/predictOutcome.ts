import { reachDeg } from '../../inference/forecast.ts';
import { peakAngle } from '../../inference/ranking.ts';
import { atAngle, gridAngles, type OverAngles } from '../../mechanics/angleGrid.ts';
import type { Outcome } from '../../notebook/study/study.ts';
import { toRadians } from '../../numeric/degrees.ts';
import { coefficientsFor } from '../../physiology/adaptation.ts';
import type { Athlete } from '../../physiology/athlete.ts';
import type { Contraction } from '../../physiology/dose.ts';
import { rangeAngles } from '../../physiology/heaviestLoad.ts';
import { type NearbySingle, nearbyGain } from '../../physiology/nearbySingle.ts';
import { capacityAfter, type TrainedState } from '../../physiology/trainedState.ts';
import { type ActionName, actions, isAction } from '../../tables/actions.ts';
import type { Coefficients } from '../../tables/adaptation.ts';
import { predictMuscle } from './predictMuscle.ts';

/** A predicted change (a share; radians for an optimum), or why the model has none. */
export type Prediction =
  | { readonly change: number; readonly because?: undefined }
  | { readonly change?: undefined; readonly because: string };

/** A group after training. */
export interface Trained {
  readonly athlete: Athlete;
  readonly state: TrainedState;
  readonly coefficients: Coefficients;
  /** The lift tested, if one was. */
  readonly single: NearbySingle | undefined;
}

/**
 * What the model says of one published outcome.
 *
 * A repetition maximum gains like the heaviest single, since the share that so many repetitions
 * allow stays; a single holds the practice of its lift, holds and set speeds in a lift do not. At a
 * set speed strength gains as in moving work: that gains may differ by speed is left out.
 */
export function predictOutcome(outcome: Outcome, trained: Trained): Prediction {
  switch (outcome.kind) {
    case 'isometric':
      return isAction(outcome.of)
        ? jointGain(outcome.of, 'isometric', trained, outcome)
        : liftGain(trained, 'isometric');
    case 'isokinetic':
      return isAction(outcome.of)
        ? jointGain(outcome.of, 'dynamic', trained, outcome)
        : outcome.from === undefined
          ? { because: 'a lift is tested over a range, and none is given' }
          : liftGain(trained, 'dynamic');
    case 'single':
    case 'repetition maximum':
      return liftGain(trained, 'dynamic', trained.state.practice);
    case 'optimum':
      return isAction(outcome.of)
        ? peakShift(outcome.of, trained)
        : { because: `no action "${outcome.of}"` };
    default:
      return predictMuscle(outcome, trained);
  }
}

function capacityOf({ athlete, state, coefficients }: Trained, test: Contraction) {
  return capacityAfter(athlete, state, test, coefficientsFor(athlete, coefficients));
}

function liftGain(
  trained: Trained,
  test: Contraction,
  practice: TrainedState['practice'] = {},
): Prediction {
  const { single } = trained;
  if (!single)
    return { because: 'no load can be held there before training, or none is too heavy' };
  return { change: nearbyGain(single, capacityOf(trained, test), practice) };
}

/** Gain of mean torque over the angles; without angles, of the largest torque wherever it lies. */
function jointGain(
  action: ActionName,
  test: Contraction,
  trained: Trained,
  { from, to }: { readonly from?: number; readonly to?: number },
): Prediction {
  const before = trained.athlete.groups[action].torque;
  const after = capacityOf(trained, test)[action];
  if (from === undefined || to === undefined) {
    const [least, most] = reachDeg(action, trained.athlete).map(toRadians);
    const inside = (torque: OverAngles) =>
      torque.filter((_, i) => isWithin(gridAngles[i] ?? 0, least ?? 0, most ?? 0));
    return { change: Math.max(...inside(after)) / Math.max(...inside(before)) - 1 };
  }
  const angles = rangeAngles(Math.min(from, to), Math.max(from, to), gridAngles);
  const sum = (torque: OverAngles) => angles.reduce((s, angle) => s + atAngle(torque, angle), 0);
  return { change: sum(after) / sum(before) - 1 };
}

const isWithin = (angle: number, from: number, to: number) =>
  angle >= from - 1e-9 && angle <= to + 1e-9;

/** Shift of the angle of the largest torque in a hold, radians, positive toward longer muscle. */
function peakShift(action: ActionName, trained: Trained): Prediction {
  const [from = 0, to = 0] = reachDeg(action, trained.athlete).map(toRadians);
  const { shortDeg, longDeg } = actions[action];
  const peak = (torque: OverAngles) => peakAngle(torque, { from, to });
  const shift =
    peak(capacityOf(trained, 'isometric')[action]) - peak(trained.athlete.groups[action].torque);
  return { change: Math.sign(longDeg - shortDeg) * shift };
}
