import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridDeg } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import {
  coefficientsFor,
  type Mechanism,
  mechanisms,
  torqueRatio,
} from '../../src/physiology/adaptation.ts';
import { liftFactor } from '../../src/physiology/athlete.ts';
import type { Exercise } from '../../src/physiology/exercise.ts';
import { heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import { heaviestLowered } from '../../src/physiology/planLowering.ts';
import {
  heaviestSingles,
  restingCapacity,
  untrainedState,
} from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { meanPerson } from '../studies/meanPerson.ts';

/** Invariants of the forecast on random programs; no outside numbers are needed. */

const athletes = [meanPerson('male', false), meanPerson('female', true)];
const every: ReadonlySet<Mechanism> = new Set(mechanisms);

const hold = fc.record({
  kind: fc.constant('hold' as const),
  of: fc.constant({ action: 'knee extension' as const }),
  at: fc.integer({ min: 15, max: 115 }).map(toRadians),
  effort: fc.double({ min: 0.4, max: 1, noNaN: true }),
  sets: fc.integer({ min: 1, max: 6 }),
  reps: fc.integer({ min: 1, max: 8 }),
  seconds: fc.integer({ min: 2, max: 8 }),
});
const squat = fc
  .record({
    name: fc.constantFrom('back squat', 'front squat', 'box squat'),
    to: fc.integer({ min: 50, max: 120 }),
    share: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
    sets: fc.integer({ min: 1, max: 6 }),
    reps: fc.integer({ min: 1, max: 10 }),
  })
  .map(({ name, to, share, sets, reps }): Exercise => {
    const lift = liftNamed(name);
    const range = { lift, from: 0, to: toRadians(to) };
    const [single] = heaviestSingles(person, [range], untrainedState, c);
    const heaviest = single?.load ?? 0;
    return { kind: 'lift', range, load: share * heaviest, heaviest, sets, reps, tempo: [2, 0, 1] };
  });
const lowered = squat.map((work): Exercise => {
  if (work.kind !== 'lift') return work;
  const strength = liftFactor(person, work.range);
  const heaviest = heaviestLowered(work.range, person, strength);
  return { ...work, load: 1.1 * work.load, heaviest, lowerOnly: true };
});
const atSpeed = fc
  .record({
    speed: fc.integer({ min: 5, max: 400 }).map(toRadians),
    to: fc.integer({ min: 60, max: 130 }).map(toRadians),
    sets: fc.integer({ min: 1, max: 6 }),
  })
  .map(({ speed, to, sets }): Exercise => {
    const ways = ['lifting', 'lowering'] as const;
    const action = 'knee extension';
    return { kind: 'isokinetic', action, from: 0.2, to, speed, ways, effort: 1, sets, reps: 8 };
  });
const [person] = athletes as [(typeof athletes)[number], (typeof athletes)[number]];
const heldSquat = fc
  .record({
    at: fc.integer({ min: 40, max: 115 }).map(toRadians),
    effort: fc.double({ min: 0.4, max: 1, noNaN: true }),
    sets: fc.integer({ min: 1, max: 6 }),
  })
  .map(({ at, effort, sets }): Exercise => {
    const lift = liftNamed('back squat');
    const range = { lift, from: at, to: at };
    const strength = effort * liftFactor(person, range);
    const load = heaviestLoad(range, person.body, restingCapacity(person), strength).load;
    const of = { range, load };
    return { kind: 'hold', of, at, effort, sets, reps: 4, seconds: 4 };
  });
const holds = fc.array(fc.oneof(hold, heldSquat), { minLength: 1, maxLength: 3 });
const drive: ReadonlySet<Mechanism> = new Set(['neural drive']);
const growth: ReadonlySet<Mechanism> = new Set(['regional growth']);
const series: ReadonlySet<Mechanism> = new Set(['sarcomeres in series']);
const weeks = fc.integer({ min: 1, max: 16 });

function gains(
  work: readonly Exercise[],
  forWeeks: number,
  counted = every,
  progress = 0,
  athlete = person,
): number[] {
  const block = { weeks: forWeeks, sessionsPerWeek: 2, exercises: work, progress, deloads: [] };
  const state = train(athlete, block, c);
  const own = coefficientsFor(athlete, c);
  const ratios = torqueRatio('knee extension', state.changes, 'isometric', own, counted);
  return ratios.flatMap((ratio, i) => (inReach(gridDeg[i] ?? 0) ? [ratio - 1] : []));
}

/** Angles a knee takes; the grid goes further for other joints. */
function inReach(deg: number): boolean {
  return deg >= 0 && deg <= 140;
}

const withMoreSets = (work: Exercise, more: number): Exercise => ({
  ...work,
  sets: work.sets + more,
});

describe('properties of the forecast', () => {
  it('zero dose gives zero gain, in torque and in every heaviest single', () => {
    expect(gains([], 8)).toEqual(gridDeg.filter(inReach).map(() => 0));
    const before = untrainedState;
    const idle = train(
      person,
      { weeks: 8, sessionsPerWeek: 2, exercises: [], progress: 0, deloads: [] },
      c,
    );
    const range = { lift: lifts[0] as (typeof lifts)[number], from: 0, to: toRadians(100) };
    expect(heaviestSingles(person, [range], idle, c)[0]?.load).toBe(
      heaviestSingles(person, [range], before, c)[0]?.load,
    );
  });

  it('adding work anywhere lowers no angle’s gain by drive or by growth: both are local sums', () => {
    fc.assert(
      fc.property(
        holds,
        fc.oneof(hold, heldSquat, squat, lowered, atSpeed),
        weeks,
        (work, added, forWeeks) => {
          for (const counted of [drive, growth]) {
            const before = gains(work, forWeeks, counted);
            const after = gains([...work, added], forWeeks, counted);
            before.forEach((gain, i) => {
              expect((after[i] ?? 0) - gain).toBeGreaterThan(-1e-12);
            });
          }
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
  }, 30_000);

  it('adding a set of an exercise to a program of it alone raises the mean gain, and lowers an angle’s only where and as far as longer or shorter fibres take it', () => {
    fc.assert(
      fc.property(fc.oneof(hold, heldSquat, squat, lowered, atSpeed), weeks, (work, forWeeks) => {
        const added = (counted: ReadonlySet<Mechanism>) => {
          const fewer = gains([work], forWeeks, counted);
          return gains([withMoreSets(work, 1)], forWeeks, counted).map(
            (gain, i) => gain - (fewer[i] ?? 0),
          );
        };
        const [all, bySeries] = [added(every), added(series)];
        expect(all.reduce((sum, more) => sum + more, 0)).toBeGreaterThan(0);
        all.forEach((more, i) => {
          // Drive and growth multiply what the fibres take, by no more than the largest gain.
          expect(more).toBeGreaterThan(1.405 * Math.min(bySeries[i] ?? 0, 0) - 1e-9);
        });
      }),
      { numRuns: 60, endOnFailure: true },
    );
  }, 30_000);

  it('gains stay within what has been seen: at most +40.5 %, the largest isometric gain of a group (Kubo 2010, months of holds), and no loss beyond 10 %', () => {
    const heavy = Array.from(
      { length: 6 },
      (_, i): Exercise => ({
        kind: 'hold',
        of: { action: 'knee extension' },
        at: toRadians(20 + 18 * i),
        effort: 1,
        sets: 20,
        reps: 20,
        seconds: 10,
      }),
    );
    for (const athlete of athletes)
      for (const work of [heavy, heavy.slice(0, 1), heavy.slice(5)])
        for (const gain of gains(work, 104, every, 0, athlete)) {
          expect(gain).toBeGreaterThan(-0.1);
          expect(gain).toBeLessThan(0.405 + 1e-12);
        }
  });
});
