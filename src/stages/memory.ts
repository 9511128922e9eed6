import type { Forecast } from '../inference/forecast.ts';
import type { Plan } from '../physiology/planProgram.ts';
import type { HeaviestSingle } from '../physiology/trainedState.ts';
import type { KnownAthlete } from './knowAthlete.ts';
import type { StudyFound } from './study/studyFound.ts';

/** Answers of one step by what it was given, which must be plain data that decides the answer. */
class Recall<T> {
  private readonly known = new Map<string, T>();

  /** How many answers have been computed. */
  get count(): number {
    return this.known.size;
  }

  /** The answer known for the same input, else the one computed now. */
  of(given: unknown, compute: () => T): T {
    const key = JSON.stringify(given);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const answer = compute();
    this.known.set(key, answer);
    return answer;
  }
}

/**
 * What the steps of runs came to, kept between runs of files that differ in little: a step that is
 * given the same again is not computed again.
 */
export class Memory {
  readonly athletes = new Recall<KnownAthlete>();
  readonly plans = new Recall<Plan>();
  readonly forecasts = new Recall<Forecast>();
  readonly studies = new Recall<StudyFound>();
  readonly singles = new Recall<readonly HeaviestSingle[]>();
}
