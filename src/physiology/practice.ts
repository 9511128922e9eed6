import { gridAngles, gridStepDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Lift } from '../mechanics/lift.ts';
import { toRadians } from '../numeric/degrees.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import type { Sample } from './exercise.ts';

/** Gain from practising a lift, share, by leading-joint angle, for each lift by name. */
export type Practice = Readonly<Record<string, OverAngles>>;

/** Collects one week's practice of lifts. */
export class WeekOfPractice {
  private readonly goals = new Map<string, OverAngles>();
  private readonly c: Coefficients;

  constructor(c: Coefficients) {
    this.c = c;
  }

  /** Adds sets of a lift; where it is done twice, the better practice of each angle counts. */
  add({ name }: Lift, samples: readonly Sample[], sets: number): void {
    const before = this.goals.get(name);
    const goal = practiceGoal(samples, sets, this.c);
    this.goals.set(name, before ? goal.map((gain, i) => Math.max(gain, before[i] ?? 0)) : goal);
  }

  /** Gains move toward this week's goals; without practice they fade, both as fast as drive. */
  oneWeekLater(practice: Practice): Practice {
    const rate = 1 - Math.exp(-1 / this.c.driveWeeks);
    const names = new Set([...Object.keys(practice), ...this.goals.keys()]);
    const later = (name: string) =>
      gridAngles.map((_, i) => {
        const now = practice[name]?.[i] ?? 0;
        return now + rate * ((this.goals.get(name)?.[i] ?? 0) - now);
      });
    return Object.fromEntries([...names].map((name) => [name, later(name)]));
  }
}

/** Practice goal at each angle of the grid: K · effort^r, filled by the number of sets a week. */
function practiceGoal(samples: readonly Sample[], sets: number, c: Coefficients): OverAngles {
  // Samples stand at every second grid angle.
  const half = toRadians(1.01 * gridStepDeg);
  const filled = sets / (sets + c.practiceHalfDose);
  return gridAngles.map((angle) => {
    const near = samples.find(({ leading }) => Math.abs(leading - angle) <= half);
    const effort = Math.min(near?.whole ?? 0, 1);
    return near ? c.practiceAmplitude * filled * effort ** c.practicePower : 0;
  });
}
