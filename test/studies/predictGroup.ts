import { liftFactors } from '../../src/inference/calibrateLifts.ts';
import { atAngle } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { coefficientsFor, mechanisms, torqueRatio } from '../../src/physiology/adaptation.ts';
import { type Athlete, athleteOf } from '../../src/physiology/athlete.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import type { Exercise } from '../../src/physiology/exercise.ts';
import type { Range } from '../../src/physiology/heaviestLoad.ts';
import {
  heaviestSingles,
  restingCapacity,
  type TrainedState,
  untrainedState,
} from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import type { Coefficients } from '../../src/tables/adaptation.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { regions } from '../../src/tables/quadriceps.ts';
import type { Observed, StudyGroup, StudyWork } from './studies.ts';

const sizes = { male: [1.78, 78], female: [1.65, 62], pooled: [1.72, 70] } as const;

/** The mean person a study's group stands for; sizes are round working values, not the papers'. */
export function meanPerson(reference: 'male' | 'female' | 'pooled', trained: boolean): Athlete {
  const [stature, mass] = sizes[reference];
  const body = bodyOf({ reference, stature, mass, lengths: {}, limits: {} });
  return athleteOf({
    body,
    reference,
    mass,
    trained,
    strengths: {},
    liftFactors: liftFactors([], lifts),
  });
}

function rangeOf(name: string, fromDeg: number, toDeg: number, athlete?: Athlete): Range {
  const lift = liftNamed(name);
  const range = { lift, from: toRadians(fromDeg), to: toRadians(toDeg) };
  if (!athlete) return range;
  const strength = restingCapacity(athlete)['knee extension'];
  // A machine whose resistance equals the athlete's own best at every angle, both legs.
  const torqueAt = (angle: number) => 2 * atAngle(strength, angle);
  return { ...range, rig: [{ kind: 'machine', load: 1, torqueAt }] };
}

function exerciseOf(work: StudyWork, athlete: Athlete, c: Coefficients): Exercise {
  if (work.hold)
    return {
      kind: 'hold',
      of: { action: work.hold },
      at: toRadians(work.toDeg),
      effort: work.effort ?? 1,
      sets: work.sets,
      reps: work.reps,
      seconds: work.seconds ?? 5,
    };
  const matched = work.share === 'matched';
  const range = rangeOf(
    work.lift ?? '',
    work.fromDeg ?? 0,
    work.toDeg,
    matched ? athlete : undefined,
  );
  const [best] = heaviestSingles(athlete, [range], untrainedState(athlete), c);
  const heaviest = best?.load ?? 0;
  return {
    kind: 'lift',
    range,
    // A matched machine is as hard at every repetition: its "maximum" is never the limit.
    load: matched ? 1 : heaviest * Number(work.share),
    heaviest: matched ? 10 : heaviest,
    sets: work.sets,
    reps: work.reps,
    tempo: work.tempo ?? [2, 0, 1],
  };
}

/** Predicted change in per cent for each observation of a group. */
export function predictGroup(group: StudyGroup, c: Coefficients): number[] {
  const athlete = meanPerson(group.reference, group.trained);
  const after = train(
    athlete,
    {
      weeks: group.weeks,
      sessionsPerWeek: group.perWeek,
      exercises: group.work.map((work) => exerciseOf(work, athlete, c)),
      progress: group.progress,
      deloads: [],
    },
    c,
  );
  return group.observed.map((observed) => 100 * predicted(observed, athlete, after, c));
}

function predicted(
  observed: Observed,
  athlete: Athlete,
  after: TrainedState,
  c: Coefficients,
): number {
  if (observed.kind === 'heaviest single') {
    const range = rangeOf(observed.lift, 0, observed.toDeg);
    const [then] = heaviestSingles(athlete, [range], after, c);
    const [before] = heaviestSingles(athlete, [range], untrainedState(athlete), c);
    return (then?.load ?? 0) / (before?.load ?? 1) - 1;
  }
  if (observed.kind === 'growth') {
    const { heads } = after.changes['knee extension'];
    const mean = (growth: readonly number[]) =>
      growth.reduce((sum, g, r) => sum + g * (regions.area[r] ?? 0), 0);
    return heads.reduce((sum, head) => sum + mean(head.growth), 0) / heads.length;
  }
  const ratio = torqueRatio(
    athlete.groups['knee extension'],
    after.changes['knee extension'],
    'isometric',
    coefficientsFor(athlete, c),
    new Set(mechanisms),
  );
  const [from, to] =
    typeof observed.atDeg === 'number' ? [observed.atDeg, observed.atDeg] : observed.atDeg;
  const angles = [0, 0.25, 0.5, 0.75, 1].map((share) => from + share * (to - from));
  const mean = angles.reduce((sum, deg) => sum + atAngle(ratio, toRadians(deg)), 0) / angles.length;
  return mean - 1;
}
