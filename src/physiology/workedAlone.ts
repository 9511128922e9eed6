import type { Demand } from '../mechanics/demand.ts';
import { type ActionName, actions, carriesItself } from '../tables/actions.ts';
import { muscles } from '../tables/muscles.ts';
import type { Athlete } from './athlete.ts';
import { available } from './jointEfforts.ts';
import { testPosture } from './muscleScales.ts';
import { sharedLoad } from './sharing.ts';
import { restingCapacity } from './trainedState.ts';

/** How the muscles share work of one joint by itself. */
interface WorkedAlone {
  readonly asked: Demand;
  /** Share of its best that each muscle gives, by place among the trained muscles. */
  readonly effortOf: (place: number) => number;
}

/**
 * An action worked alone in the posture of its test, at a share of its best torque there: shared
 * between muscles as in a lift. All alike at the shoulder, whose muscles the tables lack, and where
 * the joint is so straight that a load would rest on it.
 *
 * @param angle radians
 * @param effort 0 to 1
 */
export function workedAlone(
  athlete: Athlete,
  action: ActionName,
  angle: number,
  effort: number,
): WorkedAlone {
  const { joint, sense } = actions[action];
  const capacity = restingCapacity(athlete);
  const angles = testPosture(action, angle);
  const torque = sense * effort * available(action, angles, capacity);
  const asked = { angles, torques: { [joint]: torque } };
  const shared = carriesItself(action, angle) ? [] : sharedLoad(asked, capacity).muscles;
  const isShared = shared.some((one) => one > 0);
  return {
    asked,
    effortOf: (place) => (isShared && place < muscles.length ? (shared[place] ?? 0) : effort),
  };
}
