import { gridDeg, gridPlace, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import type { MuscleGroup } from './athlete.ts';

/** How a stretch of work was done: against a moving load, or held still. */
export type Contraction = 'dynamic' | 'isometric';

/** Some seconds of work of one joint at one angle (rad), at an effort from 0 to 1. */
export interface Moment {
  readonly angle: number;
  readonly seconds: number;
  readonly effort: number;
  /** Share of a hold's best torque that the fibres carry, where it is not the effort. */
  readonly tension?: number;
  /** Whether the fibres were drawn out while they pulled. */
  readonly lowering?: true;
}

/** A week's training of one extensor group. */
export interface WeeklyDose {
  /** Drive dose by angle, hard sets a week, for each contraction. */
  readonly drive: Readonly<Record<Contraction, OverAngles>>;
  /** Tension dose by angle, hard sets a week, both contractions. */
  readonly tension: OverAngles;
  /** The part of the tension dose that was done while lowering. */
  readonly lowered: OverAngles;
}

/** Seconds of full effort that count as one hard set: six repetitions of four seconds. */
export const hardSetSeconds = 24;

/**
 * Collects moments of work into doses over the angle grid.
 *
 * Drive dose: time · (effort · s^κ)^u. Tension dose: time · (effort · s)^g, with s the fibre
 * tension possible at that angle over its largest; a moment may name a tension share of its own. Time between grid points is split linearly.
 */
export class DoseCollector {
  private readonly group: MuscleGroup;
  private readonly c: Coefficients;
  private readonly drive = { dynamic: gridDeg.map(() => 0), isometric: gridDeg.map(() => 0) };
  private readonly tension = gridDeg.map(() => 0);
  private readonly lowered = gridDeg.map(() => 0);

  constructor(group: MuscleGroup, coefficients: Coefficients) {
    this.group = group;
    this.c = coefficients;
  }

  /** Adds moments, each counted `times` times. */
  add(moments: readonly Moment[], times: number, contraction: Contraction): void {
    for (const moment of moments) {
      const { index, share } = gridPlace(moment.angle);
      this.deposit(index, moment, times * (1 - share), contraction);
      this.deposit(index + 1, moment, times * share, contraction);
    }
  }

  private deposit(index: number, moment: Moment, times: number, contraction: Contraction): void {
    if (times === 0) return;
    const { driveEffortPower, driveTensionPower, growthTensionPower } = this.c;
    const s = this.group.tension[index] ?? 0;
    const sets = (times * moment.seconds) / hardSetSeconds;
    const driven = sets * (moment.effort * s ** driveTensionPower) ** driveEffortPower;
    const tense = sets * ((moment.tension ?? moment.effort) * s) ** growthTensionPower;
    this.drive[contraction][index] = (this.drive[contraction][index] ?? 0) + driven;
    this.tension[index] = (this.tension[index] ?? 0) + tense;
    if (moment.lowering) this.lowered[index] = (this.lowered[index] ?? 0) + tense;
  }

  total(): WeeklyDose {
    return { drive: this.drive, tension: this.tension, lowered: this.lowered };
  }
}
