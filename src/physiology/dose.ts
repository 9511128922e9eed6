import { gridDeg, gridPlace, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { EffortTally } from './effortTally.ts';

/** How a stretch of work was done: against a moving load, or held still. */
export type Contraction = 'dynamic' | 'isometric';

/** Some seconds of work of one joint at one angle (rad), at an effort from 0 to 1. */
export interface Moment {
  readonly angle: number;
  readonly seconds: number;
  readonly effort: number;
  /** Share of a hold's best torque that the fibres carry, where it is not the effort. */
  readonly tension?: number;
  /** How far the joint turned against the pull, rad; left out where it did not. */
  readonly yielded?: number;
}

/** Drive dose of one action by angle, hard sets a week, for each contraction. */
export type DriveDose = Readonly<Record<Contraction, OverAngles>>;

/** Seconds of full effort that count as one hard set: six repetitions of four seconds. */
export const hardSetSeconds = 24;

/**
 * Collects moments of work of one action and contraction, so that they can be weighed with any
 * coefficients.
 *
 * Drive dose: time · (effort · s^κ)^u, with s the fibre tension possible at that angle over its
 * largest. Time between grid points is split linearly.
 */
export class DriveWork {
  private readonly places: (EffortTally | undefined)[] = [];

  /** Adds moments, each counted `times` times. */
  add(moments: readonly Moment[], times: number): void {
    for (const { angle, seconds, effort } of moments) {
      const { index, share } = gridPlace(angle);
      const sets = (times * seconds) / hardSetSeconds;
      this.deposit(index, effort, sets * (1 - share));
      this.deposit(index + 1, effort, sets * share);
    }
  }

  private deposit(place: number, effort: number, sets: number): void {
    if (sets === 0) return;
    this.places[place] ??= new EffortTally();
    this.places[place].add(effort, sets);
  }

  /** The dose by angle; `tension` is that possible at each angle, 0 to 1. */
  dose(tension: OverAngles, c: Coefficients): OverAngles {
    const { driveEffortPower, driveTensionPower } = c;
    return gridDeg.map((_, place) => {
      const done = Math.max(this.places[place]?.weighed(driveEffortPower) ?? 0, 0);
      return done && done * (tension[place] ?? 0) ** (driveTensionPower * driveEffortPower);
    });
  }
}
