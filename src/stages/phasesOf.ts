import type { Phase } from '../notebook/phase.ts';
import type { Program } from '../notebook/scenario.ts';
import { minutesPerWeek } from '../physiology/minutes.ts';
import type { Plan } from '../physiology/planProgram.ts';

/** A phase with its place among the weeks of the program and what it takes. */
export interface TimedPhase extends Phase {
  /** First and last week, from 1. */
  readonly from: number;
  readonly to: number;
  readonly minutesPerWeek: number;
}

/** The phases of a program in their order; one without phases is one phase of all its weeks. */
export function phasesOf(program: Program, plan: Plan): readonly TimedPhase[] {
  const { weeks, sessionsPerWeek, progress, deloads, work } = program;
  const whole = { weeks, sessionsPerWeek, progress, deloads, places: [...work.keys()] };
  let done = 0;
  return (program.phases ?? [whole]).map((phase) => {
    const from = done + 1;
    done += phase.weeks;
    const minutes = minutesPerWeek(phase.sessionsPerWeek, timed(program, plan, phase));
    return { ...phase, from, to: done, minutesPerWeek: minutes };
  });
}

/** A phase's work with what a time estimate must know of its lifts. */
function timed({ work }: Program, { exercises }: Plan, { places }: Phase) {
  return work.flatMap((entry, i) =>
    places.includes(i) ? [{ ...entry, oneSided: exercises[i]?.oneSided ?? false }] : [],
  );
}
