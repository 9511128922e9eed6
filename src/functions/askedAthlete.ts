import { reach } from '../inference/forecast.ts';
import { gridAngles } from '../mechanics/angleGrid.ts';
import type { Measured } from '../notebook/scenario.ts';
import type { Athlete } from '../physiology/athlete.ts';
import type { ActionName } from '../tables/actions.ts';

/** What functions about the athlete answer from: results, or what is known before any program. */
export interface AskedAthlete {
  readonly athlete: Athlete;
  readonly scenario: Pick<Measured, 'convention' | 'lifts'>;
}

/** Grid angles (radians) over which an action is looked at. */
export function reachOf(action: ActionName, { athlete }: Pick<AskedAthlete, 'athlete'>): number[] {
  const [least, most] = reach(action, athlete);
  return gridAngles.filter((at) => at >= least - 1e-9 && at <= most + 1e-9);
}
