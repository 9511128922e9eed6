import { describe, expect, it } from 'vitest';
import { gridDeg } from '../../src/mechanics/angleGrid.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { agonistPlaces, sizeRatio } from '../../src/physiology/agonists.ts';
import { liftFactor } from '../../src/physiology/athlete.ts';
import type { HoldExercise, LiftExercise } from '../../src/physiology/exercise.ts';
import { heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import type { IsokineticExercise } from '../../src/physiology/isokinetic.ts';
import { lengthTension } from '../../src/physiology/lengthTension.ts';
import {
  livingArea,
  muscleNamed,
  operatingLength,
  shorteningShare,
} from '../../src/physiology/muscleGeometry.ts';
import { muscleScales } from '../../src/physiology/muscleScales.ts';
import type { MuscleDose } from '../../src/physiology/muscleWork.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { actionNames } from '../../src/tables/actions.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { liftingStrength } from '../../src/tables/movingStrength.ts';
import { placeOfMuscle, trainedMuscles } from '../../src/tables/trainedMuscles.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const man = meanPerson('male', false);

/** What one set of ten at 70 % does to every muscle. */
function setOf(name: string, fromDeg: number, toDeg: number, more: Partial<LiftExercise> = {}) {
  const range = { lift: liftNamed(name), from: toRadians(fromDeg), to: toRadians(toDeg) };
  const strength = liftingStrength.value;
  const heaviest = heaviestLoad(range, man.body, restingCapacity(man), strength).load;
  const exercise: LiftExercise = {
    ...{ kind: 'lift', range, load: 0.7 * heaviest, heaviest, sets: 1, reps: 10 },
    ...{ tempo: [2, 0, 2], ...more },
  };
  const plan = { exercises: [exercise], progress: 0, deloads: [] };
  const dose = train(man, { weeks: 1, sessionsPerWeek: 1, ...plan }, c).firstWeek?.muscles ?? [];
  const none: MuscleDose = { all: 0, length: 0, lengthSquared: 0, long: 0, drawn: 0 };
  return (muscle: string): MuscleDose => dose[placeOfMuscle(muscle)] ?? none;
}

const lengthOf = ({ all, length }: MuscleDose) => length / all;

describe('the work of each muscle', () => {
  it('squats leave rectus femoris and hamstrings far behind vasti and gluteus (rectus: Escamilla 1998, direction; hamstrings: from memory)', () => {
    const squat = setOf('back squat', 0, 120);
    expect(squat('rectus femoris').all).toBeLessThan(0.5 * squat('vastus lateralis').all);
    expect(squat('biceps femoris long head').all).toBeLessThan(0.5 * squat('gluteus maximus').all);
    const machine = setOf('machine knee extension', 10, 100);
    expect(machine('rectus femoris').all).toBeGreaterThan(0.5 * machine('vastus lateralis').all);
    expect(machine('gluteus maximus').all).toBe(0);
  });

  it('hamstrings work longer in the seated curl than in the lying one, their short head alike (geometry of the hip; Maeo 2021: more growth seated, short head alike)', () => {
    const [seated, lying] = [setOf('seated leg curl', 5, 90), setOf('lying leg curl', 5, 90)];
    for (const name of ['biceps femoris long head', 'semitendinosus', 'semimembranosus'])
      expect(lengthOf(seated(name))).toBeGreaterThan(lengthOf(lying(name)) + 0.3);
    const short = 'biceps femoris short head';
    expect(Math.abs(lengthOf(seated(short)) - lengthOf(lying(short)))).toBeLessThan(0.3);
  });

  it('the gastrocnemius works shorter with the knee bent, the soleus alike (geometry of the knee; Kinoshita 2023)', () => {
    const [standing, seated] = [
      setOf('standing calf raise', -25, 15),
      setOf('seated calf raise', -25, 15),
    ];
    const calf = 'gastrocnemius medialis';
    expect(lengthOf(seated(calf))).toBeLessThan(lengthOf(standing(calf)) - 0.3);
    expect(Math.abs(lengthOf(seated('soleus')) - lengthOf(standing('soleus')))).toBeLessThan(0.3);
  });

  it.each([
    ['knee flexion', 'seated leg curl', 60],
    ['knee extension', 'machine knee extension', 70],
    ['ankle plantarflexion', 'leg-press calf raise', 0],
  ] as const)(
    'a hold of %s counts as the held lift of that joint, muscle by muscle: %s at %d°',
    (action, name, deg) => {
      const range = { lift: liftNamed(name), from: toRadians(deg), to: toRadians(deg) };
      const load = heaviestLoad(
        range,
        man.body,
        restingCapacity(man),
        0.7 * liftFactor(man, range),
      ).load;
      const one = {
        kind: 'hold',
        at: toRadians(deg),
        effort: 0.7,
        sets: 1,
        reps: 4,
        seconds: 6,
      } as const;
      const doseOf = (exercise: HoldExercise) => {
        const plan = { exercises: [exercise], progress: 0, deloads: [] };
        return train(man, { weeks: 1, sessionsPerWeek: 1, ...plan }, c).firstWeek?.muscles ?? [];
      };
      const [alone, held] = [
        doseOf({ ...one, of: { action } }),
        doseOf({ ...one, of: { range, load } }),
      ];
      for (const place of agonistPlaces(action)) {
        const other = held[place]?.all ?? 0;
        expect(Math.abs((alone[place]?.all ?? 0) - other)).toBeLessThan(0.02 * other + 1e-3);
      }
    },
  );

  it('the Nordic works the hamstrings short, hips straight, where the seated curl works them long (geometry)', () => {
    const nordic = setOf('Nordic lowering', 15, 90, { load: 0, heaviest: 0, lowerOnly: true });
    expect(lengthOf(nordic('semimembranosus'))).toBeLessThan(-0.9);
    expect(nordic('semimembranosus').drawn).toBeGreaterThan(0);
    expect(lengthOf(setOf('seated leg curl', 5, 90)('semimembranosus'))).toBeGreaterThan(-0.5);
  });

  it('lowering draws a muscle out by the range that it passes: ten of 110° are 10/12 sets at full tension', () => {
    // Holding strength throughout: the machine yields through the whole scale, from 0 to 110°.
    const exercise: IsokineticExercise = {
      ...({ kind: 'isokinetic', action: 'knee extension', ways: ['lowering'] } as const),
      ...{ from: 0, to: toRadians(110), speed: toRadians(60), effort: 1, sets: 1, reps: 10 },
    };
    const plan = { exercises: [exercise], progress: 0, deloads: [] };
    const flat = { ...c, growthTensionPower: 1e-12 };
    const done = train(man, { weeks: 1, sessionsPerWeek: 1, ...plan }, flat);
    const dose = done.firstWeek?.muscles[placeOfMuscle('vastus lateralis')];
    expect(dose?.drawn).toBeCloseTo(10 / 12, 3);
  });

  it('deeper squats draw the vasti out further; the hamstrings, which rest, do little of it', () => {
    const [quarter, deep] = [setOf('back squat', 0, 60), setOf('back squat', 0, 120)];
    expect(quarter('vastus lateralis').drawn).toBeLessThan(deep('vastus lateralis').drawn);
    expect(quarter('vastus lateralis').drawn).toBeGreaterThan(0);
    expect(deep('semimembranosus').drawn).toBeLessThan(0.1 * deep('gluteus maximus').drawn);
  });
});

describe('the scale from short to long', () => {
  it('is the knee angle itself for the vasti, whatever the hip (one-joint muscles)', () => {
    const place = placeOfMuscle('vastus medialis');
    for (const [knee, hip] of [
      [0, 0],
      [45, 85],
      [110, 20],
    ] as const)
      expect(muscleScales({ knee: toRadians(knee), hip: toRadians(hip) })[place]).toBeCloseTo(knee);
  });

  it('of the rectus femoris is longer with the hip straight, as of the hamstrings with it bent', () => {
    const at = (muscle: string, hip: number) =>
      muscleScales({ knee: toRadians(60), hip: toRadians(hip) })[placeOfMuscle(muscle)] ?? 0;
    expect(at('rectus femoris', 85)).toBeCloseTo(60, 9);
    expect(at('rectus femoris', 0)).toBeGreaterThan(80);
    expect(at('semimembranosus', 85)).toBeGreaterThan(at('semimembranosus', 0) + 30);
  });
});

describe('torque of changed muscles', () => {
  const all = (growth: number) =>
    trainedMuscles.map(() => ({ growth: [growth, growth], fibre: 0 }));

  it('is that of before where nothing has changed (identity)', () => {
    for (const action of actionNames)
      for (const grid of [24, 48, 60]) expect(sizeRatio(action, all(0), grid)).toBeCloseTo(1, 9);
  });

  it('of a tenth more area everywhere is a tenth more, but for the triceps’ arm', () => {
    for (const action of actionNames) {
      const ratio = sizeRatio(action, all(0.1), 48);
      if (action === 'elbow extension') expect(ratio).toBeGreaterThan(1.1);
      else expect(ratio).toBeCloseTo(1.1, 9);
    }
  });

  it('of one muscle counts by its part: soleus of the calf, foot square, knee straight (hand calculation from its rows)', () => {
    const grown = placeOfMuscle('soleus');
    const changes = all(0).map((change, i) =>
      i === grown ? { ...change, growth: [0.2, 0.2] } : change,
    );
    const part = (name: string) => {
      const muscle = muscleNamed(name);
      const force = livingArea(muscle) * Math.cos(toRadians(muscle.pennation.value));
      // All three pull at the same tendon: the arm cancels.
      return force * lengthTension(operatingLength(muscle, { ankle: 0, knee: 0 }, 1));
    };
    const [soleus, medial, lateral] = [
      'soleus',
      'gastrocnemius medialis',
      'gastrocnemius lateralis',
    ].map(part) as [number, number, number];
    const ratio = sizeRatio('ankle plantarflexion', changes, gridDeg.indexOf(0));
    expect(ratio).toBeCloseTo(1 + (0.2 * soleus) / (soleus + medial + lateral), 9);
  });

  it.each([0, 30, 90, 110])(
    'of longer fibres at %d° of the knee: each head shortens by what it then pulls (the equation, halved until met)',
    (deg) => {
      const [fibre, heads] = [
        0.05,
        ['vastus lateralis', 'vastus intermedius', 'vastus medialis', 'rectus femoris'],
      ];
      const posture = { knee: deg, hip: 85 };
      let [before, after] = [0, 0];
      for (const name of heads) {
        const muscle = muscleNamed(name);
        const size = livingArea(muscle) * Math.cos(toRadians(muscle.pennation.value));
        const resting = operatingLength(muscle, posture, 0);
        const length = operatingLength(muscle, posture, 1);
        const first = lengthTension(length);
        let [low, high] = [0, 1];
        for (let i = 0; i < 60; i++) {
          const force = (low + high) / 2;
          const shortened = 1 - (shorteningShare(muscle, deg) * force) / first;
          if (lengthTension((resting * shortened) / (1 + fibre)) > force) low = force;
          else high = force;
        }
        before += size * first;
        // Where a longer fibre pulls more, what that does to the tendon is left out.
        const isLong = lengthTension(length + 0.001) < first;
        after += size * (isLong ? lengthTension(length / (1 + fibre)) : low);
      }
      const longer = trainedMuscles.map(() => ({ growth: [0, 0], fibre }));
      const ratio = sizeRatio('knee extension', longer, gridDeg.indexOf(deg));
      expect(ratio).toBeCloseTo(after / before, 5);
      // Straight the muscle is too short to pull hard, deep it is too long: longer fibres move it.
      expect(Math.sign(ratio - 1)).toBe(deg < 70 ? -1 : 1);
    },
  );

  it('every trained muscle works for some action, and every action has one', () => {
    const working = new Set(actionNames.flatMap(agonistPlaces));
    expect([...working].sort((a, b) => a - b)).toEqual(trainedMuscles.map((_, place) => place));
    for (const action of actionNames) expect(agonistPlaces(action).length).toBeGreaterThan(0);
  });
});
