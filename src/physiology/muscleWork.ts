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
  /** What drew the muscle out while it pulled: twelve full ranges count as one set. */
  readonly drawn: number;
}

/** Full ranges of lowering that count as one set: two seconds each (a working value). */
const rangesPerSet = 12;

/**
 * Collects one muscle's work over a week, so that it can be weighed with any coefficients. Dose:
 * sets · tension^g.
 */
export class MuscleWork {
  private readonly all = new EffortTally();
  private readonly length = new EffortTally();
  private readonly lengthSquared = new EffortTally();
  private readonly long = new EffortTally();
  private readonly drawn = new EffortTally();

  /**
   * @param tension fibre tension over its largest in a hold
   * @param x length, −1 to 1
   * @param sets hard sets of 24 s
   * @param ranges shares of its range by which the muscle was drawn out
   */
  add(tension: number, x: number, sets: number, ranges: number): void {
    this.all.add(tension, sets);
    this.length.add(tension, sets * x);
    this.lengthSquared.add(tension, sets * x * x);
    if (x > 0) this.long.add(tension, sets * x);
    if (ranges > 0) this.drawn.add(tension, ranges / rangesPerSet);
  }

  /** The week's dose with given coefficients. */
  dose({ growthTensionPower: power }: Coefficients): MuscleDose {
    return {
      all: Math.max(this.all.weighed(power), 0),
      length: this.length.weighed(power),
      lengthSquared: this.lengthSquared.weighed(power),
      long: Math.max(this.long.weighed(power), 0),
      drawn: Math.max(this.drawn.weighed(power), 0),
    };
  }
}
