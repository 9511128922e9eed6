import type { Coefficients } from '../tables/adaptation.ts';
import { EffortTally } from './effortTally.ts';

/** A week's training of one muscle, hard sets: in all, and weighed by length x (−1 short, 1 long). */
export interface MuscleDose {
  readonly all: number;
  /** Σ x and Σ x² of the sets. */
  readonly length: number;
  readonly lengthSquared: number;
  /** Σ max(x, 0). */
  readonly long: number;
  /** The part done while lowering. */
  readonly lowered: number;
}

/**
 * Collects one muscle's work over a week, so that it can be weighed with any coefficients. Dose:
 * sets · tension^g.
 */
export class MuscleWork {
  private readonly all = new EffortTally();
  private readonly length = new EffortTally();
  private readonly lengthSquared = new EffortTally();
  private readonly long = new EffortTally();
  private readonly lowered = new EffortTally();

  /**
   * @param tension fibre tension over its largest in a hold
   * @param x length, −1 to 1
   * @param sets hard sets of 24 s
   */
  add(tension: number, x: number, sets: number, isLowered: boolean): void {
    this.all.add(tension, sets);
    this.length.add(tension, sets * x);
    this.lengthSquared.add(tension, sets * x * x);
    if (x > 0) this.long.add(tension, sets * x);
    if (isLowered) this.lowered.add(tension, sets);
  }

  /** The week's dose with given coefficients. */
  dose({ growthTensionPower: power }: Coefficients): MuscleDose {
    return {
      all: this.all.weighed(power),
      length: this.length.weighed(power),
      lengthSquared: this.lengthSquared.weighed(power),
      long: this.long.weighed(power),
      lowered: this.lowered.weighed(power),
    };
  }
}
