import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/numeric/degrees.ts';
import { piecewiseLinear } from '../../src/numeric/interpolation.ts';
import { lengthTension } from '../../src/physiology/lengthTension.ts';
import {
  livingArea,
  muscleNamed,
  operatingLength,
  regionLevers,
  tendonArmAt,
} from '../../src/physiology/muscleGeometry.ts';
import type { Muscle, MuscleJoint, MusclePosture } from '../../src/tables/muscleRow.ts';
import { cadaverKneeExtensorArea } from '../../src/tables/muscleRow.ts';
import { muscles } from '../../src/tables/muscles.ts';
import { kneeExtensorHeads, kneeExtensorTendonArm } from '../../src/tables/quadriceps.ts';
import { armMm, degreesOf } from './askMuscle.ts';

const cadaverArea = (muscle: Muscle) => cadaverKneeExtensorArea[muscle.name] ?? muscle.area.value;
/** Largest force at full effort per unit of specific tension, along the tendon, cm². */
const strength = (muscle: Muscle, posture: MusclePosture) =>
  livingArea(muscle) *
  lengthTension(operatingLength(muscle, posture, 1)) *
  Math.cos(toRadians(muscle.pennation.value));
const torque = (names: readonly string[], joint: MuscleJoint, posture: MusclePosture) =>
  names.map(muscleNamed).reduce((sum, muscle) => {
    const arm = tendonArmAt(muscle, joint, posture[joint] ?? 0);
    return sum + Math.abs(arm) * strength(muscle, posture);
  }, 0);

const { anglesDeg, arm } = kneeExtensorTendonArm;
const lever = piecewiseLinear(anglesDeg, arm);

describe('muscle tables', () => {
  it('the four knee extensors are those of quadriceps.ts (the same numbers, not a copy)', () => {
    for (const head of kneeExtensorHeads) {
      const muscle = muscleNamed(head.name);
      expect(muscle.area.value).toBe(head.area);
      expect(muscle.area.spread).toBe(head.areaSpread);
      expect(muscle.fibreLength.value).toBe(head.fibreLength);
      expect(muscle.pennation.value).toBe(head.pennationDeg);
      expect(muscle.restingSarcomere.value).toBe(head.restingSarcomere);
      for (const deg of [-10, 0, 22, 48, 85, 130])
        expect(tendonArmAt(muscle, 'knee', deg)).toBe(-lever(deg));
    }
  });

  it('cadaver areas: soleus, then vastus lateralis before all others; of fibres semitendinosus longest in the leg (Ward 2009, abstract)', () => {
    const leg = muscles.filter((muscle) => muscle.arms.elbow === undefined);
    const sorted = [...leg].sort((a, b) => cadaverArea(b) - cadaverArea(a));
    expect(sorted.slice(0, 2).map((m) => m.name)).toEqual(['soleus', 'vastus lateralis']);
    const longest = leg.reduce((a, b) => (b.fibreLength.value > a.fibreLength.value ? b : a));
    expect(longest.name).toBe('semitendinosus');
  });

  it('elbow: triceps areas sum to 14.9 cm² within 5 %, brachioradialis has the longest fibres (Murray 2000)', () => {
    const arm = muscles.filter((muscle) => muscle.arms.elbow !== undefined);
    const triceps = arm.filter((muscle) => muscle.name.startsWith('triceps'));
    const area = triceps.reduce((sum, muscle) => sum + muscle.area.value, 0);
    expect(Math.abs(area / 14.9 - 1)).toBeLessThan(0.05);
    const longest = arm.reduce((a, b) => (b.fibreLength.value > a.fibreLength.value ? b : a));
    expect(longest.name).toBe('brachioradialis');
  });

  it('every row has a unit, a spread above zero and a source; every arm a spread and a range', () => {
    for (const muscle of muscles) {
      const { area, fibreLength, pennation, restingSarcomere, gear } = muscle;
      for (const entry of [area, fibreLength, pennation, restingSarcomere, gear]) {
        expect(entry.unit).not.toBe('');
        expect(entry.spread).toBeGreaterThan(0);
        expect(entry.source.length).toBeGreaterThan(10);
      }
      for (const curve of Object.values(muscle.arms)) {
        expect(curve.spread).toBeGreaterThan(0);
        expect(curve.toDeg).toBeGreaterThan(curve.fromDeg);
      }
    }
  });

  it('regions share the whole area, and their levers average that of the muscle at any angle (identity)', () => {
    for (const muscle of muscles)
      for (const deg of [-20, 0, 45, 110]) {
        const { parts } = muscle.regions;
        const levers = regionLevers(muscle, deg);
        expect(parts.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 12);
        const mean = parts.reduce((sum, part, i) => sum + part.share * (levers[i] ?? 0), 0);
        expect(mean).toBeCloseTo(1, 12);
      }
  });
});

describe('operating length', () => {
  const calf = ['gastrocnemius medialis', 'gastrocnemius lateralis', 'soleus'];

  it('vastus lateralis rests at 2.84 µm at 50° and 3.17 µm at 110° (Chen 2016, its source: consistency)', () => {
    const at = (knee: number) =>
      2.7 * operatingLength(muscleNamed('vastus lateralis'), { knee }, 0);
    expect(at(50)).toBeCloseTo(2.84, 9);
    expect(at(110)).toBeCloseTo(3.17, 3);
  });

  it('knee extensors stay within 0.04 optimum lengths of a straight line through 50 and 110° over 10–120° (size of the difference, no source: the lever is larger near extension)', () => {
    for (const { name } of kneeExtensorHeads) {
      const at = (knee: number) => operatingLength(muscleNamed(name), { knee }, 0);
      const straight = (deg: number) => at(50) + ((deg - 50) * (at(110) - at(50))) / 60;
      for (const knee of degreesOf(10, 120))
        expect(Math.abs(at(knee) - straight(knee))).toBeLessThan(0.04);
    }
  });

  it('vastus lateralis at rest shortens by 18 % from 100° to straight (Fukunaga 1997: outside check), within 5 points', () => {
    const at = (knee: number) => operatingLength(muscleNamed('vastus lateralis'), { knee }, 0);
    const percent = 100 * (1 - at(0) / at(100));
    console.log(`vastus lateralis, 100° to 0° at rest: model ${percent.toFixed(0)} % | 18 %`);
    expect(Math.abs(percent - 18)).toBeLessThan(5);
  });

  it('calf fibres shorten 32–34 % at rest from 15° dorsiflexion to 30° plantarflexion, within 5 points on the mean (Maganaris 1998: outside check of the gear)', () => {
    const shortening = calf.map((name) => {
      const at = (ankle: number) => operatingLength(muscleNamed(name), { ankle }, 0);
      return 100 * (1 - at(-30) / at(15));
    });
    console.log(
      `calf shortening at rest: ${shortening.map((s) => s.toFixed(0)).join(', ')} | 32–34 %`,
    );
    expect(Math.abs(shortening.reduce((a, b) => a + b, 0) / 3 - 33)).toBeLessThan(5);
  });

  it('shortens with effort, never with none', () => {
    for (const muscle of muscles) {
      expect(operatingLength(muscle, {}, 1)).toBeLessThan(operatingLength(muscle, {}, 0));
      const resting = 2.7 * operatingLength(muscle, {}, 0);
      expect(resting).toBeCloseTo(muscle.restingSarcomere.value, 12);
    }
  });

  it('the gastrocnemius share of plantarflexion falls as the knee bends; total 0.60–0.94 of straight (PubMed 39577118, Fugl-Meyer 1980, a third study)', () => {
    const share = (knee: number) =>
      torque(calf.slice(0, 2), 'ankle', { knee }) / torque(calf, 'ankle', { knee });
    const shares = [0, 30, 60, 90].map(share);
    for (const [i, value] of shares.entries())
      if (i > 0) expect(value).toBeLessThan(shares[i - 1] ?? 0);
    const bent = torque(calf, 'ankle', { knee: 90 }) / torque(calf, 'ankle', { knee: 0 });
    console.log(`plantarflexion knee bent over straight: ${bent.toFixed(2)} | 0.60–0.94`);
    expect(bent).toBeLessThan(0.94);
    expect(bent).toBeGreaterThan(0.6);
  });

  it('knee flexion at 45° is weaker with the hip straight than flexed (Guex 2012, direction)', () => {
    const flexors = ['biceps femoris long head', 'semitendinosus', 'semimembranosus'];
    const at = (hip: number) => torque(flexors, 'knee', { hip, knee: 45 });
    expect(at(0)).toBeLessThan(at(30));
    expect(at(0)).toBeLessThan(at(90));
  });

  it('rectus femoris gives about two thirds of hip flexion torque up to 50° by cadaver areas (Kumazaki 2022)', () => {
    for (const hip of [0, 20, 40]) {
      const part = (name: string) => cadaverArea(muscleNamed(name)) * armMm(name, 'hip', hip);
      const rectus = part('rectus femoris');
      const share = rectus / (rectus + part('psoas major') + part('iliacus'));
      expect(Math.abs(share - 2 / 3)).toBeLessThan(0.08);
    }
  });

  it('knee extension hardly changes from hip 0° to 60° at 20–110° of the knee (Front Physiol 2021, Guex 2012: no difference found; no tolerance published, the largest departure is 11 % at 110°)', () => {
    const heads = kneeExtensorHeads.map((head) => head.name);
    const ratios = [20, 50, 80, 110].map(
      (knee) => torque(heads, 'knee', { knee, hip: 60 }) / torque(heads, 'knee', { knee, hip: 0 }),
    );
    console.log(
      `knee extension, hip 60° over 0° at 20, 50, 80, 110°: ${ratios.map((r) => r.toFixed(2)).join(', ')} | 1`,
    );
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(0.12);
  });

  it('elbow flexion is strongest near 90° among 45, 90 and 135° (Kamon 1981, order)', () => {
    const flexors = ['biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'];
    const [low, middle, high] = [45, 90, 135].map((deg) =>
      torque(flexors, 'elbow', { elbow: deg }),
    );
    expect(middle).toBeGreaterThan(low ?? 0);
    expect(middle).toBeGreaterThan(high ?? 0);
  });
});
