import { describe, expect, it } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';

const file = (programs: string) => `title: Ranges compared
angles: flexion
group: { name: g, reference: male, stature: 180 cm, mass: 80 kg, training: 2 years }
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  deep:
    weeks: 8
    sessions per week: 2
    work:
      - { lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6 }
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 3, reps: 4, seconds: 5 }
    progress: 1 % per week
    deload: { week: 4, sets: half }
${programs}`;

async function programsOf(text: string) {
  const { scenario, problems } = await readScenario('f.yaml', file(text));
  expect(problems).toBeUndefined();
  return scenario?.programs ?? [];
}

async function told(text: string): Promise<string[]> {
  const { problems } = await readScenario('f.yaml', file(text));
  return (problems ?? []).map(
    ({ message, at, hint }) =>
      `${at?.line}:${at?.col} ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );
}

describe('a program like another', () => {
  it('is that one with its changes, list places from 1', async () => {
    const [deep, half] = await programsOf(`  half:
    like: deep
    change: { work.1.to: 90 deg, work.1.load: 8 RM, deload.week: 5 }
`);
    const [squat, hold] = half?.work ?? [];
    expect(squat).toMatchObject({ to: Math.PI / 2, load: { kind: 'repetition maximum', reps: 8 } });
    expect(half?.deloads).toEqual([{ week: 5, sets: 0.5 }]);
    expect({ ...hold, path: [] }).toEqual({ ...deep?.work[1], path: [] });
    expect(half?.progress).toBe(deep?.progress);
  });

  it('may take entries out, replace whole names, and be like one that is like another, in any order', async () => {
    const [, , third, plain] =
      await programsOf(`  second: { like: third, change: { work.1.sets: 5 } }
  third: { like: deep, weeks: 6, change: { work.1.sets: 3 } }
  plain:
    like: deep
    change: { work.2: , deload: , progress: 2 % per week }
`);
    expect(third?.weeks).toBe(6);
    expect(plain?.work).toHaveLength(1);
    expect(plain?.deloads).toEqual([]);
    expect(plain?.progress).toBe(0.02);
    const [, second] = await programsOf(`  second: { like: third, change: { work.1.sets: 5 } }
  third: { like: deep, weeks: 6, change: { work.1.sets: 3 } }
`);
    expect(second).toMatchObject({ weeks: 6, work: [{ sets: 5 }, { sets: 3 }] });
  });

  it('shows a problem where the file says it: in the change, or in the program copied', async () => {
    expect(
      await told(`  half:
    like: deep
    change: { work.1.to: 90 kg }
`),
    ).toEqual([
      '16:26 to is an angle; "kg" is a mass — write it in deg or rad, for example "75 deg"',
    ]);
    expect(
      await told(`  half:
    like: deep
    work:
      - { lift: back squat, from: 0 deg, to: 115 kg, load: 80 %, sets: 4, reps: 6 }
`),
    ).toEqual([
      '17:46 to is an angle; "kg" is a mass — write it in deg or rad, for example "75 deg"',
    ]);
  });

  it('says what is wrong with like and change (whole messages)', async () => {
    expect(await told('  a: { like: deap }\n')).toEqual([
      '14:14 there is no program "deap" in this file | did you mean "deep"?',
    ]);
    expect(await told('  a: { like: b }\n  b: { like: a }\n')).toEqual([
      '15:14 programs are like each other in a circle: a → b → a | write one of them out in full',
    ]);
    expect(
      await told(
        '  a: { like: deep, change: { work.3.to: 90 deg, work.1.tempo.x: 1, wrk.1.to: 9 deg } }\n',
      ),
    ).toEqual([
      '14:30 "work.3.to" is no place in "deep": work has 2 entries, not one numbered 3 | places in lists count from 1: work.1',
      '14:49 "work.1.tempo.x" is no place in "deep": there is no tempo in work.1 | there is: lift, from, to, load, sets, reps',
      '14:68 "wrk.1.to" is no place in "deep": there is no wrk in the program | did you mean work?',
    ]);
    expect(await told('  a: { like: deep, change: 3 }\n')).toEqual([
      '14:28 change must be a group such as { work.1.to: 90 deg }',
    ]);
    expect(await told('  a: { like: deep, change: { work.1.too: 90 deg } }\n')).toEqual([
      expect.stringContaining('14:30 '),
    ]);
  });
});
