import { describe, expect, it } from 'vitest';
import { gridDeg, gridStepDeg } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { DoseCollector, type WeeklyDose } from '../../src/physiology/dose.ts';
import { torqueWhileMoving } from '../../src/physiology/forceVelocity.ts';
import {
  bestWhileMoving,
  type IsokineticExercise,
  isokineticMoments,
} from '../../src/physiology/isokinetic.ts';
import { minutesPerWeek } from '../../src/physiology/minutes.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { loweringStrength } from '../../src/tables/movingStrength.ts';
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

function firstWeek(exercise: IsokineticExercise): WeeklyDose {
  const block = {
    weeks: 1,
    sessionsPerWeek: 1,
    exercises: [exercise],
    progress: 0,
    deloads: [],
  };
  const dose = train(person, block, c).firstWeek?.['knee extension'];
  if (!dose) throw new Error('no first week');
  return dose;
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
    const swept = new DoseCollector(knee, c);
    const step = toRadians(gridStepDeg);
    gridDeg.forEach((deg) => {
      if (deg < 10 || deg > 100) return;
      const half = deg === 10 || deg === 100 ? 0.5 : 1;
      const seconds = (half * step) / speed;
      swept.add([{ angle: toRadians(deg), seconds, effort: 1 }], 1, 'isometric');
    });
    const holds = swept.total();
    gridDeg.forEach((_, i) => {
      const [drive = 0, tension = 0] = [holds.drive.isometric[i], holds.tension[i]];
      expect(slow.drive.dynamic[i]).toBeCloseTo(drive, 3);
      expect(Math.abs((slow.drive.dynamic[i] ?? 0) - drive)).toBeLessThanOrEqual(1e-7 * drive);
      expect(Math.abs((slow.tension[i] ?? 0) - tension)).toBeLessThanOrEqual(1e-7 * tension);
    });
    expect(sum(slow.drive.isometric)).toBe(0);
  });

  it('drive counts the will, tension the torque: at 60°/s against the same sweep of holds', () => {
    const time = (dose: WeeklyDose) => [sum(dose.drive.dynamic), sum(dose.tension)];
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
    both.tension.forEach((tension, i) => {
      expect(tension).toBeCloseTo((up.tension[i] ?? 0) + (down.tension[i] ?? 0), 12);
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
    const collect = (list: Parameters<DoseCollector['add']>[0]) => {
      const collector = new DoseCollector(knee, c);
      collector.add(list, 7, 'dynamic');
      return collector.total();
    };
    expect(collect(moments.map((m) => ({ ...m, tension: m.effort })))).toEqual(collect(moments));
  });

  it('a dose by hand: 24 s at effort 0.8 on a grid point is one set, times 0.8 s to its powers', () => {
    const collector = new DoseCollector(knee, c);
    collector.add([{ angle: toRadians(60), seconds: 24, effort: 0.8, tension: 0.5 }], 1, 'dynamic');
    const i = gridDeg.indexOf(60);
    const s = knee.tension[i] ?? 0;
    const { drive, tension } = collector.total();
    expect(drive.dynamic[i]).toBeCloseTo((0.8 * s ** c.driveTensionPower) ** c.driveEffortPower, 9);
    expect(tension[i]).toBeCloseTo((0.5 * s) ** c.growthTensionPower, 9);
  });
});
