import { describe, expect, it } from 'vitest';
import { nearestIndex } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import type { HoldExercise, LiftExercise } from '../../src/physiology/exercise.ts';
import { heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import { unchangedMuscle } from '../../src/physiology/muscleChange.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { type Block, train } from '../../src/physiology/training.ts';
import { type Phase, weekPlan } from '../../src/physiology/weekPlan.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { liftingStrength } from '../../src/tables/movingStrength.ts';
import { placeOfMuscle } from '../../src/tables/trainedMuscles.ts';
import { meanPerson } from '../studies/meanPerson.ts';

// Expected numbers are hand calculations from the rule of change, shown in each test.

const man = meanPerson('male', true);

function holdAt(deg: number): HoldExercise {
  const of = { action: 'knee extension' } as const;
  return { kind: 'hold', of, at: toRadians(deg), effort: 0.9, sets: 4, reps: 5, seconds: 5 };
}

const range = { lift: liftNamed('back squat'), from: 0, to: toRadians(100) };
const single = heaviestLoad(range, man.body, restingCapacity(man), liftingStrength.value).load;
const squat: LiftExercise = {
  ...{ kind: 'lift', range, load: 0.7 * single, heaviest: single, sets: 3, reps: 5 },
  tempo: [2, 0, 1],
};

const exercises = [holdAt(40), holdAt(90), squat];
const phase = (weeks: number, places: readonly number[], more: Partial<Phase> = {}): Phase => ({
  ...{ weeks, sessionsPerWeek: 2, progress: 0, deloads: [], places },
  ...more,
});

function inPhases(...phases: readonly Phase[]): Block {
  const weeks = phases.reduce((sum, one) => sum + one.weeks, 0);
  return { weeks, sessionsPerWeek: 2, exercises, progress: 0, deloads: [], phases };
}

const trained = (...phases: readonly Phase[]) => train(man, inPhases(...phases), c);
const driveOf = (...phases: readonly Phase[]) => trained(...phases).changes.drive['knee extension'];
const driveAt = (deg: number, ...phases: readonly Phase[]) =>
  driveOf(...phases).isometric[nearestIndex(toRadians(deg))] ?? Number.NaN;

describe('phases of a block', () => {
  it('without any work change nothing: every goal is zero', () => {
    const { changes, practice } = trained(phase(5, []), phase(5, []));
    for (const { dynamic, isometric } of Object.values(changes.drive))
      expect([...dynamic, ...isometric].every((share) => share === 0)).toBe(true);
    for (const { growth, lengthened, drawn, shortened } of changes.muscles)
      expect([...growth, lengthened, drawn, shortened].every((x) => x === 0)).toBe(true);
    expect(practice).toEqual({});
  });

  it('that are the same twice are one of both lengths, and the block without phases', () => {
    const all = [0, 1, 2];
    const halves = trained(phase(4, all), phase(4, all));
    expect(halves).toEqual(trained(phase(8, all)));
    const { phases: _, ...plain } = inPhases(phase(8, all));
    expect(halves).toEqual(train(man, plain, c));
  });

  it.each([1, 4, 10])('%d weeks off leave exp(−weeks/τ) of what was there', (weeks) => {
    const eight = phase(8, [1, 2]);
    const [before, later] = [trained(eight).changes, trained(eight, phase(weeks, [])).changes];
    const [old, now] = [before.drive['knee extension'], later.drive['knee extension']];
    const drive = Math.exp(-weeks / c.driveWeeks);
    const growth = Math.exp(-weeks / c.growthWeeks);
    const series = Math.exp(-weeks / c.seriesWeeks);
    const compare = (now: readonly number[], then: readonly number[], share: number) =>
      now.forEach((x, i) => {
        expect(x).toBeCloseTo((then[i] ?? Number.NaN) * share, 12);
      });
    expect(Math.max(...old.isometric)).toBeGreaterThan(0.1);
    compare(now.isometric, old.isometric, drive);
    compare(now.dynamic, old.dynamic, drive);
    later.muscles.forEach((muscle, i) => {
      const first = before.muscles[i] ?? unchangedMuscle;
      compare(muscle.growth, first.growth, growth);
      compare([muscle.shortened], [first.shortened], growth);
      compare([muscle.lengthened, muscle.drawn], [first.lengthened, first.drawn], series);
    });
    const vastus = before.muscles[placeOfMuscle('vastus lateralis')];
    expect(vastus?.growth[0]).toBeGreaterThan(0);
    expect(vastus?.lengthened).toBeGreaterThan(0);
  });

  it('follow one another: goal a for n weeks, goal b for m is a(1 − e⁻ⁿ)e⁻ᵐ + b(1 − e⁻ᵐ), e to the 1/τ', () => {
    const [n, m] = [5, 3];
    const decay = (weeks: number) => Math.exp(-weeks / c.driveWeeks);
    for (const deg of [40, 65, 90]) {
      // One week from nothing is the goal times 1 − exp(−1/τ).
      const goal = (place: number) => driveAt(deg, phase(1, [place])) / (1 - decay(1));
      const byHand = goal(0) * (1 - decay(n)) * decay(m) + goal(1) * (1 - decay(m));
      expect(driveAt(deg, phase(n, [0]), phase(m, [1]))).toBeCloseTo(byHand, 12);
    }
  });

  it('matter in their order: what was worked last has faded least', () => {
    const [short, long] = [phase(6, [0]), phase(6, [1])];
    expect(driveAt(90, short, long)).toBeGreaterThan(driveAt(90, long, short));
    expect(driveAt(40, short, long)).toBeLessThan(driveAt(40, long, short));
    expect(driveAt(90, phase(6, []), long)).toBeGreaterThan(driveAt(90, long, phase(6, [])));
  });

  it('judged earlier are cut off there', () => {
    const block = inPhases(phase(4, [0]), phase(6, [1]));
    expect(train(man, { ...block, weeks: 5 }, c)).toEqual(trained(phase(4, [0]), phase(1, [1])));
    expect(train(man, { ...block, weeks: 4 }, c)).toEqual(trained(phase(4, [0])));
  });
});

describe('a week of a block in phases', () => {
  const block = inPhases(
    phase(3, [0, 2], { progress: 0.1, deloads: [{ week: 2, sets: 0.5 }], sessionsPerWeek: 4 }),
    phase(1, []),
    phase(3, [1], { progress: 0.02, deloads: [{ week: 3, sets: 0.6 }] }),
  );

  it.each([
    // week, sessions × share of sets, load over that planned, places
    [1, 4, 1, [0, 2]],
    [2, 2, 1.1, [0, 2]],
    [3, 4, 1.21, [0, 2]],
    [4, 2, 1, []],
    [5, 2, 1, [1]],
    [6, 2, 1.02, [1]],
    [7, 1.2, 1.0404, [1]],
    [8, 0, 1, []],
  ])(
    'counts loads and lighter weeks from the phase’s first: week %d',
    (week, times, load, places) => {
      const plan = weekPlan(block, week);
      expect(plan.perWeek).toBeCloseTo(times, 12);
      expect(plan.progressed).toBeCloseTo(load, 12);
      expect(plan.exercises.map(({ place }) => place)).toEqual(places);
    },
  );
});
