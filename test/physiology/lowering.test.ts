import { describe, expect, it } from 'vitest';
import { gridDeg } from '../../src/mechanics/angleGrid.ts';
import { toDegrees, toRadians } from '../../src/numeric/degrees.ts';
import { type LiftExercise, type Sample, samplesOf } from '../../src/physiology/exercise.ts';
import { heaviestLoad, stickingPoint } from '../../src/physiology/heaviestLoad.ts';
import {
  fromTheTop,
  lossOfControl,
  loweredPasses,
  loweringLimit,
  underControl,
} from '../../src/physiology/lowering.ts';
import { minutesPerWeek } from '../../src/physiology/minutes.ts';
import { momentsOf, type Pass, setPasses } from '../../src/physiology/passes.ts';
import { heaviestLowered, planLowering } from '../../src/physiology/planLowering.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { actionNames } from '../../src/tables/actions.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { liftingStrength, loweringStrength } from '../../src/tables/movingStrength.ts';
import { placeOfMuscle } from '../../src/tables/trainedMuscles.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const man = meanPerson('male', true);
const capacity = restingCapacity(man);
/** The strength factor of a lift without a test. */
const untested = liftingStrength.value;

const rangeOf = (name: string, from: number, to: number) => ({
  lift: liftNamed(name),
  from: toRadians(from),
  to: toRadians(to),
});
const squat = rangeOf('back squat', 0, 110);
const nordic = rangeOf('Nordic lowering', 15, 90);

const samples = (range = squat, load = 60) => samplesOf(range, man, load, untested);

function squatted(change: Partial<LiftExercise>): LiftExercise {
  const heaviest = heaviestLoad(squat, man.body, capacity, untested).load;
  const tempo = [3, 0, 1] as const;
  return { kind: 'lift', range: squat, load: 60, heaviest, sets: 4, reps: 1, tempo, ...change };
}

const trained = (exercise: LiftExercise, weeks = 1, progress = 0) =>
  train(man, { weeks, sessionsPerWeek: 2, exercises: [exercise], progress, deloads: [] }, c);

describe('which way is down', () => {
  it.each([
    ['back squat', 0, 110, 'to'],
    ['Romanian deadlift', 5, 85, 'to'],
    ['bench press', 10, 80, 'from'],
    ['Nordic lowering', 15, 90, 'from'],
    ['chin-up', 10, 130, 'from'],
    ['machine knee extension', 10, 100, 'to'],
    ['lying leg curl', 10, 100, 'from'],
    ['standing calf raise', -20, 15, 'to'],
  ] as const)(
    '%s %d–%d°: the low end is its "%s" (by what is seen in a gym)',
    (name, from, to, low) => {
      const range = rangeOf(name, from, to);
      const down = fromTheTop(samples(range, 20));
      expect(down.length).toBeGreaterThan(5);
      expect(down[down.length - 1]?.leading).toBeCloseTo(range[low], 12);
    },
  );
});

describe('the dose of lowering alone', () => {
  const fresh = [1, 0.95, 0.9];
  const whole = Number.POSITIVE_INFINITY;

  it.each(actionNames)('is the lowering part of the full set’s, moment by moment: %s', (action) => {
    const down = fromTheTop(samples());
    const full = setPasses(samples(), [3, 0, 1], fresh, down).filter(({ lowering }) => lowering);
    const alone = loweredPasses(down, whole, [3, 0, 1], fresh).filter(({ seconds }) => seconds > 0);
    expect(momentsOf(action, alone)).toEqual(momentsOf(action, full));
  });

  it('through a week of training: with one repetition, lowered and lifted add up to the full set', () => {
    const dose = (change: Partial<LiftExercise>) =>
      trained(squatted(change)).firstWeek?.drive['knee extension'].dynamic ?? [];
    const full = dose({});
    const alone = dose({ lowerOnly: true });
    const lifted = dose({ tempo: [0, 0, 1] });
    gridDeg.forEach((_, i) => {
      expect((alone[i] ?? 0) + (lifted[i] ?? 0)).toBeCloseTo(full[i] ?? 0, 12);
    });
    expect(Math.max(...alone)).toBeGreaterThan(0);
  });

  it('a pause at the low end is a hold there, at the effort of the held load', () => {
    const down = fromTheTop(samples());
    const passes = loweredPasses(down, whole, [0, 2, 1], [1]);
    const low = momentsOf('knee extension', passes).at(-1);
    expect(low).toMatchObject({ seconds: 2, angle: toRadians(110) });
    expect(low?.effort).toBe(down.at(-1)?.effort['knee extension']);
  });

  it('counts as no practice of the single, as nothing was found that it does', () => {
    expect(trained(squatted({ lowerOnly: true }), 8).practice).toEqual({});
    expect(Object.keys(trained(squatted({}), 8).practice)).toEqual(['back squat']);
  });

  it('a heavier load on the way down adds there and takes nothing from the way up', () => {
    const set = (lowered: readonly Sample[]) =>
      setPasses(samples(), [3, 0, 1], [1], fromTheTop(lowered));
    const [plain, heavier] = [set(samples()), set(samples(squat, 80))];
    const efforts = (passes: readonly Pass[], isDown: boolean) =>
      momentsOf(
        'knee extension',
        passes.filter(({ lowering }) => (lowering !== undefined) === isDown),
      ).map(({ effort }) => effort);
    expect(efforts(heavier, false)).toEqual(efforts(plain, false));
    const [down, heavierDown] = [efforts(plain, true), efforts(heavier, true)];
    expect(down.some((effort) => effort > 0)).toBe(true);
    down.forEach((effort, i) => {
      if (effort > 0) expect(heavierDown[i]).toBeGreaterThan(effort);
    });
    const gain = (change: Partial<LiftExercise>) =>
      trained(squatted(change)).firstWeek?.muscles[placeOfMuscle('vastus lateralis')]?.all ?? 0;
    const heaviest = heaviestLowered(squat, man, untested);
    expect(gain({ lowering: { load: 80, heaviest } })).toBeGreaterThan(gain({}));
  });

  it('takes the same time: what lifting would take, others need to bring it up; 2 × (4 × 6 × 6 s + 3 × 150 s) is 19.8 min', () => {
    const timed = { kind: 'lift', sets: 4, reps: 6, rest: 150, tempo: [4, 0, 2] } as const;
    expect(minutesPerWeek(2, [timed])).toBeCloseTo(19.8, 12);
  });
});

describe('the most that can be lowered under control', () => {
  it('asks, by the curves, just the strength while lowering where no single was tested', () => {
    const load = heaviestLowered(squat, man, untested);
    expect(stickingPoint(squat, man.body, capacity, load).effort).toBeCloseTo(
      loweringStrength.value,
      5,
    );
    expect(load).toBeGreaterThan(heaviestLoad(squat, man.body, capacity).load);
  });

  it('is under control over the whole range, and a hundredth more is not', () => {
    const load = heaviestLowered(squat, man, untested);
    expect(planLowering(squat, man, load, untested).control.state).toBe('whole range');
    expect(planLowering(squat, man, 1.01 * load, untested).control.state).toBe('lost');
  });
});

describe('the Nordic lowering with the body alone', () => {
  const { control, heaviest, samples: kept } = planLowering(nordic, man, 0, untested);
  const at = control.state === 'lost' ? control.at : Number.NaN;

  it('cannot be held over the whole range; it is lowered to where a hold would ask 1.05 of the best', () => {
    expect(heaviest).toBe(0);
    const hold = (angle: number) =>
      stickingPoint({ ...nordic, from: angle, to: angle }, man.body, capacity, 0).effort;
    expect(hold(at)).toBeCloseTo(loweringStrength.value, 2);
    // The last angle that can be held at all is more bent than the last under control.
    expect(hold(at + toRadians(3))).toBeLessThan(1);
    expect(kept.every(({ leading }) => leading >= at)).toBe(true);
    // Postures stand 5° apart, from 90° down to the last before control is lost.
    expect(kept.length).toBe(Math.floor((toRadians(90) - at) / toRadians(5)) + 1);
  });

  it('the mean trained man loses it near 58° (J Sports Sci Med 2021, 20:216), within 10°', () => {
    expect(Math.abs(toDegrees(at) - 58)).toBeLessThan(10);
  });

  it('weak and strong lowering lie on its two sides', () => {
    if (control.state !== 'lost') throw new Error('control is kept');
    const [weak, strong] = control.between;
    expect(weak).toBeGreaterThan(at);
    expect(strong).toBeLessThan(at);
  });

  it('counts nothing below the loss of control, and more of the range as strength grows', () => {
    const exercise: LiftExercise = {
      kind: 'lift',
      range: nordic,
      load: 0,
      heaviest: 0,
      sets: 4,
      reps: 6,
      tempo: [4, 0, 2],
      lowerOnly: true,
    };
    const { firstWeek, shortfalls } = trained(exercise, 8);
    const { dynamic } = firstWeek?.drive['knee flexion'] ?? { dynamic: [] };
    gridDeg.forEach((deg, i) => {
      if (deg < toDegrees(at) - 2.5) expect(dynamic[i]).toBe(0);
    });
    expect(Math.max(...dynamic)).toBeGreaterThan(0);
    expect(shortfalls).toEqual([]);
    const down = fromTheTop(samples(nordic, 0));
    const lost = (limit: number) => lossOfControl(down, limit) ?? 0;
    expect(lost(1.1 * loweringLimit)).toBeLessThan(lost(loweringLimit));
  });
});

describe('a chin-up begun at the top', () => {
  const chinUp = rangeOf('chin-up', 10, 130);

  it('is out of control at once, and told from where it would be held', () => {
    const { control } = planLowering(chinUp, man, 0, untested);
    expect(control.state).toBe('none');
    const begin = control.state === 'none' ? (control.beginAt ?? 0) : 0;
    const shorter = { ...chinUp, to: begin };
    expect(planLowering(shorter, man, 0, untested).control.state).toBe('whole range');
  });

  it('what is fallen through does not count where it would be easy again', () => {
    const effort = (value: number): Sample => ({
      share: 0.25,
      leading: value,
      asked: { angles: {}, torques: {} },
      effort: { 'elbow flexion': value },
      muscles: [],
      whole: value,
    });
    const down = [0.5, 1.5, 0.4].map(effort);
    expect(underControl(down, 1)).toEqual(down.slice(0, 1));
    // A straight line from 0.5 to 1.5 crosses 1 half way: leading angles are the efforts here.
    expect(lossOfControl(down, 1)).toBeCloseTo(1, 12);
  });
});
