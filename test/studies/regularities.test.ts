import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { gridDeg } from '../../src/mechanics/angleGrid.ts';
import type { StudyGroup } from '../../src/notebook/study/study.ts';
import { toDegrees, toRadians } from '../../src/numeric/degrees.ts';
import { coefficientsFor, torqueRatio, unchangedDrive } from '../../src/physiology/adaptation.ts';
import { armGrowth } from '../../src/physiology/armGrowth.ts';
import type { Exercise } from '../../src/physiology/exercise.ts';
import { meanGrowth, unchangedMuscle } from '../../src/physiology/muscleChange.ts';
import { train } from '../../src/physiology/training.ts';
import { outcomeWords } from '../../src/stages/study/outcomeWords.ts';
import { predictStudy } from '../../src/stages/study/predictGroup.ts';
import { studyCase } from '../../src/stages/study/studyCase.ts';
import { byAction } from '../../src/tables/actions.ts';
import { coefficients as c } from '../../src/tables/adaptation.ts';
import { placeOfMuscle, trainedMuscles } from '../../src/tables/trainedMuscles.ts';
import { meanPerson } from './meanPerson.ts';

/**
 * Regularities of published training studies that the model must show. Its coefficients were fitted
 * to these studies among others, so this is consistency; reports/evidence.md has the predictions of
 * studies left out.
 */

interface Seen {
  readonly observed: number | undefined;
  readonly predicted: number | undefined;
}

const seen = new Map<string, Seen>();
const files = [
  'rhea-2016',
  'kubo-2019',
  'bloomquist-2013',
  'hartmann-2012',
  'pallares-2020',
  'alegre-2014',
  'brughelli-2010',
  'narici-1996',
];

function sizeOf({ found }: StudyGroup['observed'][number]): number | undefined {
  return found.kind === 'size' ? found.change : undefined;
}

async function look(name: string): Promise<void> {
  const text = readFileSync(`scenarios/studies/${name}.yaml`, 'utf8');
  const study = await studyCase(name, text);
  const predicted = predictStudy(study, c);
  study.groups.forEach(({ group }, g) => {
    group.observed.forEach((observed, i) => {
      const key = `${name}: ${group.program}: ${outcomeWords(observed.outcome)}`;
      const change = predicted[g]?.[i]?.change;
      seen.set(key, { observed: sizeOf(observed), predicted: change });
    });
  });
}

beforeAll(async () => {
  for (const name of files) await look(name);
}, 120_000);

function both(study: string, program: string, what: string) {
  const { observed, predicted } = seen.get(`${study}: ${program}: ${what}`) ?? {};
  if (observed === undefined || predicted === undefined)
    throw new Error(`${study}, ${program}, ${what}`);
  return { observed, predicted };
}

const single = (to: number) => `single, back squat 0–${to}°`;

/** Partial and full squatters of one study: the partial group's own depth and the full one's. */
const pairs = [
  { study: 'rhea-2016', full: 'full squat', partial: 'quarter squat', own: 60, whole: 110 },
  { study: 'rhea-2016', full: 'full squat', partial: 'half squat', own: 90, whole: 110 },
  { study: 'kubo-2019', full: 'full squat', partial: 'half squat', own: 90, whole: 140 },
  { study: 'bloomquist-2013', full: 'deep squat', partial: 'shallow squat', own: 60, whole: 120 },
  { study: 'hartmann-2012', full: 'deep squat', partial: 'quarter squat', own: 60, whole: 110 },
] as const;

describe.each(pairs)('$study: $partial against $full', ({ study, full, partial, own, whole }) => {
  it('partial trainees gain more in their own range, as observed; in Rhea’s half squats the model is undecided', () => {
    const [a, b] = [both(study, partial, single(own)), both(study, full, single(own))];
    expect(a.observed).toBeGreaterThan(b.observed);
    // Rhea 2016 found 8.2 points more at 90°; the model, held to Pallarés 2020 and Martínez-Cava 2019
    // who found less, is within one point of none there.
    const atLeast = study === 'rhea-2016' && own === 90 ? -0.01 : 0;
    expect(a.predicted - b.predicted).toBeGreaterThan(atLeast);
  });

  it('full trainees gain more in the full range, as observed', () => {
    const [a, b] = [both(study, full, single(whole)), both(study, partial, single(whole))];
    expect(a.observed).toBeGreaterThan(b.observed);
    expect(a.predicted).toBeGreaterThan(b.predicted);
  });
});

const middle = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

describe('transfer between depths: gain in the other range over gain in the own', () => {
  const short = pairs.filter(({ own }) => own === 60);
  const transfer = (which: 'observed' | 'predicted') => ({
    upward: middle(
      short.map(
        ({ study, partial, own, whole }) =>
          both(study, partial, single(whole))[which] / both(study, partial, single(own))[which],
      ),
    ),
    downward: middle(
      pairs.map(
        ({ study, full, own, whole }) =>
          both(study, full, single(own))[which] / both(study, full, single(whole))[which],
      ),
    ),
  });

  it('short squats barely move the deep squat: published median 0.12 (Rhea 0.12, Bloomquist 0.25, Hartmann −0.14)', () => {
    expect(transfer('observed').upward).toBeCloseTo(1.4 / 11.8, 2);
    // Below a third: the deep squat gets little of it.
    expect(transfer('predicted').upward).toBeLessThan(1 / 3);
  });

  it('deep squats move the short one: published median 0.76 (Rhea 0.41 and 0.38, Kubo 0.76, Bloomquist 1.00, Hartmann 0.95)', () => {
    expect(transfer('observed').downward).toBeCloseTo(24.2 / 31.8, 2);
    expect(transfer('predicted').downward).toBeGreaterThan(0.5);
  });
});

const knee = 'knee extension';
const men = meanPerson('male', false);
const holdAt = (deg: number): Exercise => ({
  kind: 'hold',
  of: { action: knee },
  at: toRadians(deg),
  effort: 1,
  sets: 3,
  reps: 5,
  seconds: 5,
});

function trainedBy(exercise: Exercise, weeks: number, athlete = men) {
  const block = { weeks, sessionsPerWeek: 3, exercises: [exercise], progress: 0, deloads: [] };
  return train(athlete, block, c).changes;
}

describe('holds of the knee extensors', () => {
  it('spread little when trained short and far when trained long (Weir 1995: 45° gave nothing clear at 90°; Bandy and Hanten 1993: 90° gave at all of 15–105°)', () => {
    const gainAt = (trainedDeg: number, testedDeg: number) => {
      const change = trainedBy(holdAt(trainedDeg), 8);
      const ratio = torqueRatio(knee, change, 'isometric', c);
      return (ratio[gridDeg.indexOf(testedDeg)] ?? 1) - 1;
    };
    const fromShort = gainAt(45, 90) / gainAt(45, 45);
    const fromLong = gainAt(90, 45) / gainAt(90, 90);
    expect(fromShort).toBeLessThan(0.5);
    expect(fromLong).toBeGreaterThan(0.5);
  });

  it('grow more when long: 1.4 to 2.7 times in untrained people (Alegre 2014, McMahon 2014, Noorkõiv 2014), little in trained ones', () => {
    const grown = (deg: number, athlete = men) => {
      const vastus = trainedBy(holdAt(deg), 8, athlete).muscles[placeOfMuscle('vastus lateralis')];
      return meanGrowth(vastus ?? unchangedMuscle);
    };
    const ratio = grown(90) / grown(50);
    expect(ratio).toBeGreaterThan(1.4);
    expect(ratio).toBeLessThan(2.7);
    const trained = meanPerson('male', true);
    // Large trials of trained people find differences of about a point (read in a meta-analysis).
    expect(grown(90, trained) - grown(50, trained)).toBeLessThan(0.03);
    expect(grown(90, trained) - grown(50, trained)).toBeLessThan(0.7 * (grown(90) - grown(50)));
  });

  it('grow most distally when long (direction: Noorkõiv 2014, McMahon 2014), not when short', () => {
    const tilt = (deg: number) => {
      const vastus = trainedBy(holdAt(deg), 8).muscles[placeOfMuscle('vastus lateralis')];
      const [proximal = 0, distal = 0] = vastus?.growth ?? [];
      return distal - proximal;
    };
    expect(tilt(90)).toBeGreaterThan(0);
    expect(tilt(40)).toBeLessThanOrEqual(0);
  });
});

describe('the strongest angle, published +4 to +10° after weeks of long or lowering work, negative after short, none after full range', () => {
  const shift = (study: string, program: string) =>
    toDegrees(both(study, program, 'strongest angle, knee extension').predicted);

  it('moves toward longer muscle after long holds (Alegre 2014: +10.2°) and toward shorter after short ones (−5.1°)', () => {
    expect(shift('alegre-2014', 'holds at 90 degrees')).toBeGreaterThan(1);
    expect(shift('alegre-2014', 'holds at 50 degrees')).toBeLessThan(0);
  });

  it('moves toward longer muscle after lowering (Brughelli 2010: +6.5°)', () => {
    expect(shift('brughelli-2010', 'lowering')).toBeGreaterThan(0);
  });

  it('hardly moves after the full range (Narici 1996: 0°)', () => {
    expect(Math.abs(shift('narici-1996', 'leg extensions'))).toBeLessThan(4);
  });
});

describe('the arm of a tendon', () => {
  it('grows with the triceps: area +33.6 %, arm +5.5 % (Sugisaki 2015, abstract)', () => {
    expect(armGrowth('elbow extension', 0.336)).toBeCloseTo(0.055, 3);
  });

  it('is not taken to grow at the kneecap, where nothing is published', () => {
    expect(armGrowth(knee, 0.3)).toBe(0);
  });

  it('adds to the torque of the triceps: hand calculation 1.1 · 1.1^0.185 = 1.1196', () => {
    const grown = { ...unchangedMuscle, growth: [0.1, 0.1] };
    const muscles = trainedMuscles.map(({ home }) =>
      home === 'elbow extension' ? grown : unchangedMuscle,
    );
    const changes = { drive: byAction(() => unchangedDrive), muscles };
    const own = coefficientsFor(men, c);
    const only = new Set(['regional growth'] as const);
    const ratio = torqueRatio('elbow extension', changes, 'isometric', own, only);
    expect(ratio[gridDeg.indexOf(90)]).toBeCloseTo(1.1196, 4);
  });
});
