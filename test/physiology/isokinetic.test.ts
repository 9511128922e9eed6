import { describe, expect, it } from 'vitest';
import { gridDeg, gridStepDeg } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import type { Moment } from '../../src/physiology/dose.ts';
import { torqueWhileMoving } from '../../src/physiology/forceVelocity.ts';
import {
  bestWhileMoving,
  type IsokineticExercise,
  isokineticMoments,
} from '../../src/physiology/isokinetic.ts';
import { minutesPerWeek } from '../../src/physiology/minutes.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { type WeekDose, WeekOfWork } from '../../src/physiology/weekOfWork.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { loweringStrength } from '../../src/tables/movingStrength.ts';
import { placeOfMuscle } from '../../src/tables/trainedMuscles.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const person = meanPerson('male', false);
const knee = person.groups['knee extension'];

const work = (change: Partial<IsokineticExercise> = {}): IsokineticExercise => ({
  kind: 'isokinetic',
  action: 'knee extension',
  from: toRadians(10),
  to: toRadians(100),
  speed: toRadians(60),
  ways: ['lifting'],
  effort: 1,
  sets: 4,
  reps: 8,
  ...change,
});

/** Drive of knee extension, and fibre tension of one of its muscles. */
function kneeDose({ drive, muscles }: WeekDose) {
  const muscle = muscles[placeOfMuscle('vastus lateralis')];
  if (!muscle) throw new Error('no work of the vastus lateralis');
  return { drive: drive['knee extension'], tension: muscle.all, muscle };
}

function firstWeek(exercise: IsokineticExercise) {
  const block = {
    weeks: 1,
    sessionsPerWeek: 1,
    exercises: [exercise],
    progress: 0,
    deloads: [],
  };
  const dose = train(person, block, c).firstWeek;
  if (!dose) throw new Error('no first week');
  return kneeDose(dose);
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('isokinetic work', () => {
  it('takes as long as the machine turns: 90° at 60°/s is 1.5 s each way', () => {
    const seconds = (exercise: IsokineticExercise) =>
      sum(isokineticMoments(exercise).map((moment) => moment.seconds));
    expect(seconds(work())).toBeCloseTo(1.5, 12);
    expect(seconds(work({ ways: ['lifting', 'lowering'] }))).toBeCloseTo(3, 12);
    // Ends between grid points: 12 to 47° is 35°.
    expect(seconds(work({ from: toRadians(12), to: toRadians(47) }))).toBeCloseTo(35 / 60, 12);
  });

  it('at nearly no speed it is a sweep of holds: the same drive and tension at every angle', () => {
    const speed = toRadians(1e-7);
    const slow = firstWeek(work({ speed, sets: 1, reps: 1 }));
    const swept = new WeekOfWork(person);
    const step = toRadians(gridStepDeg);
    gridDeg.forEach((deg) => {
      if (deg < 10 || deg > 100) return;
      const half = deg === 10 || deg === 100 ? 0.5 : 1;
      const seconds = (half * step) / speed;
      const moments = [{ angle: toRadians(deg), seconds, effort: 1 }];
      swept.addAlone('knee extension', moments, 1, 'isometric');
    });
    const holds = kneeDose(swept.dose(c));
    gridDeg.forEach((_, i) => {
      const drive = holds.drive.isometric[i] ?? 0;
      expect(slow.drive.dynamic[i]).toBeCloseTo(drive, 3);
      expect(Math.abs((slow.drive.dynamic[i] ?? 0) - drive)).toBeLessThanOrEqual(1e-7 * drive);
    });
    expect(slow.tension / holds.tension).toBeCloseTo(1, 7);
    expect(slow.muscle.length / holds.muscle.length).toBeCloseTo(1, 7);
    expect(sum(slow.drive.isometric)).toBe(0);
  });

  it('drive counts the will, tension the torque: at 60°/s against the same sweep of holds', () => {
    const time = (dose: ReturnType<typeof firstWeek>) => [sum(dose.drive.dynamic), dose.tension];
    const slow = toRadians(1e-7);
    // A repetition at 60°/s is shorter by the ratio of the speeds.
    const [driveHeld = 0, tensionHeld = 0] = time(firstWeek(work({ speed: slow }))).map(
      (dose) => dose * (slow / toRadians(60)),
    );
    const [drive = 0, tension = 0] = time(firstWeek(work()));
    expect(drive / driveHeld).toBeCloseTo(1, 6);
    const power = c.growthTensionPower;
    expect(tension / tensionHeld).toBeCloseTo((17 / 22) ** power, 6);
    const [, lowered = 0] = time(firstWeek(work({ ways: ['lowering'] })));
    expect(lowered / tensionHeld).toBeCloseTo(loweringStrength.value ** power, 6);
  });

  it('both ways give the sum of each', () => {
    const both = firstWeek(work({ ways: ['lifting', 'lowering'] }));
    const [up, down] = [firstWeek(work()), firstWeek(work({ ways: ['lowering'] }))];
    expect(both.tension).toBeCloseTo(up.tension + down.tension, 12);
    both.drive.dynamic.forEach((drive, i) => {
      expect(drive).toBeCloseTo((up.drive.dynamic[i] ?? 0) + (down.drive.dynamic[i] ?? 0), 12);
    });
  });

  it('the best torque is that of the strongest angle inside, times the ratio of its speed', () => {
    const exercise = work({ ways: ['lifting', 'lowering'] });
    const inside = knee.torque.filter((_, i) => {
      const deg = gridDeg[i] ?? 0;
      return deg >= 10 && deg <= 100;
    });
    const strongest = Math.max(...inside);
    expect(bestWhileMoving(exercise, restingCapacity(person))).toEqual([
      { way: 'lifting', torque: strongest * torqueWhileMoving('lifting', exercise.speed) },
      { way: 'lowering', torque: strongest * loweringStrength.value },
    ]);
  });

  it('trains no single and counts there and back in time: 4 × 8 × 3 s and 3 × 60 s is 276 s', () => {
    const state = train(
      person,
      { weeks: 4, sessionsPerWeek: 2, exercises: [work()], progress: 0, deloads: [] },
      c,
    );
    expect(state.practice).toEqual({});
    expect(minutesPerWeek(1, [{ ...work(), rest: 60 }])).toBeCloseTo(276 / 60, 12);
  });
});

describe('a moment’s tension', () => {
  it('left out, it is the effort: the doses are the same to the last bit', () => {
    const moments = [20, 47.3, 90, 111.1].map((deg, i) => ({
      angle: toRadians(deg),
      seconds: 3 + i,
      effort: 0.4 + 0.15 * i,
    }));
    const collect = (list: readonly Moment[]) => {
      const week = new WeekOfWork(person);
      week.addAlone('knee extension', list, 7, 'dynamic');
      return week.dose(c);
    };
    expect(collect(moments.map((m) => ({ ...m, tension: m.effort })))).toEqual(collect(moments));
  });

  it('a dose by hand: 24 s of all effort on a grid point is one set, times s to its power; of fibres at half of their most 0.5 to its own', () => {
    const s = knee.tension[gridDeg.indexOf(60)] ?? 0;
    const week = new WeekOfWork(person);
    // Efforts and tensions stand on slices, where powers are exact.
    const moment = { angle: toRadians(60), seconds: 24, effort: 1, tension: 0.5 / s };
    week.addAlone('knee extension', [moment], 1, 'dynamic');
    const { drive, tension, muscle } = kneeDose(week.dose(c));
    expect(drive.dynamic[gridDeg.indexOf(60)]).toBeCloseTo(
      (s ** c.driveTensionPower) ** c.driveEffortPower,
      9,
    );
    expect(tension).toBeCloseTo(0.5 ** c.growthTensionPower, 9);
    // Short of the middle, 70°: x = tanh((60 − 70)/25) = −0.380.
    expect(muscle.length / tension).toBeCloseTo(-0.38, 3);
    expect(muscle.long).toBe(0);
  });
});
