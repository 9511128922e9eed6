import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { toDegrees } from '../src/numeric/degrees.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { type Results, run } from '../src/run.ts';

/** A man of 1.80 m whose shank leans 30° at every depth: his heights can be worked by hand. */
const text = `title: Boxes and pins
angles: flexion
athlete: { code: X-1, reference: male, stature: 180 cm, mass: 80 kg, training: 3 years, limits: { knee flexion: 125 deg } }
lifts:
  our squat:
    like: back squat
    range: [40 deg, 150 deg]
    follow: [{ joint: ankle, rule: linear, from: 30 deg, per leading: 0 }, { joint: hip, rule: balance }]
tests:
  - { lift: our squat, to: thigh level, best: 130 kg }
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  p:
    weeks: 8
    sessions per week: 2
    work:
      - { lift: our squat, from: 45 deg, to: box 42 cm, load: 75 %, sets: 3, reps: 8 }
      - { lift: our squat, from: 40 deg, to: thigh level, load: 75 %, sets: 3, reps: 8 }
      - { lift: deadlift, from: pins 40 cm, to: 0 deg, load: 100 kg, sets: 3, reps: 5 }
      - { hold: our squat, at: pins 95 cm, effort: 80 %, sets: 3, reps: 3, seconds: 5 }
`;

async function resultsOf(changed: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('f.yaml', changed)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => changed));
  return results;
}

/** Each problem as: line, [what is underlined], message, | hint. */
async function told(changed: string): Promise<string[]> {
  const { problems } = { problems: [], ...(await run('f.yaml', changed)) };
  return (problems ?? []).map(({ at, message, hint }) => {
    const line = changed.split('\n')[(at?.line ?? 1) - 1] ?? '';
    const underlined = line.slice((at?.col ?? 1) - 1, (at?.endCol ?? 1) - 1);
    return `${at?.line} [${underlined}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}

const replaced = (from: string, to: string): string => {
  if (!text.includes(from)) throw new Error(`not in the scenario: ${from}`);
  return text.replace(from, to);
};

describe('a scenario with heights', () => {
  it('has angles everywhere after it is read', async () => {
    const { scenario } = await resultsOf(text);
    const work = scenario.programs[0]?.work ?? [];
    const degrees = work.map((entry) =>
      entry.kind === 'hold' ? [entry.at] : [entry.from, entry.to],
    );
    const [box = [], level = [], pull = [], hold = []] = degrees.map((angles) =>
      angles.map(toDegrees),
    );
    // By hand: rise of hip over knee 0.505 − 0.0702 − 0.4428 · cos 30° = 0.0513, of a thigh of
    // 0.441 m 6.7° of elevation, and 90 + 30 − 6.7 = 113.3; thigh level 90 + 30 = 120.
    expect(box[0]).toBeCloseTo(45, 9);
    expect(box[1]).toBeCloseTo(113.3, 1);
    expect(level[1]).toBeCloseTo(120, 1);
    // The file may begin a pull at the pins: the range still rises.
    expect(pull[0]).toBeCloseTo(0, 9);
    expect(pull[1]).toBeGreaterThan(90);
    expect(hold[0]).toBeGreaterThan(80);
  });

  it('takes a tested single over the same height for the same range', async () => {
    const { ranking } = await resultsOf(text);
    const planned = ranking[0]?.program.plan.exercises[1];
    expect(planned?.tested).toBe(true);
    expect(planned?.exercise).toMatchObject({ heaviest: 130, load: 0.75 * 130 });
  });

  it('shows each height once with its angle, and what heights rest on', async () => {
    const report = renderMarkdown(fullReport(await resultsOf(text)));
    const times = (words: string) => report.split(words).length - 1;
    expect(times('Box of 42 cm = 113° of knee flexion (hip joint 50.5 cm high).')).toBe(1);
    // Once with the work and once with the test.
    expect(times('Thigh level = 120° of knee flexion (hip joint 45.5 cm high).')).toBe(2);
    expect(report).toMatch(/Pins at 40 cm = \d+° of hip flexion \(with 100 kg\)\./);
    expect(report).toMatch(
      /Pins at 95 cm = \d+° of knee flexion \(with 80 kg, as the load is not known; \d+° with 40 kg, \d+° with 120 kg\)\./,
    );
    expect(report).toContain(
      'the hip joint is 8.5 cm above the box (8 cm to 9 cm, a working value)',
    );
  });

  it('means the same in included angles', async () => {
    const included = text
      .replace('angles: flexion', 'angles: included')
      .replace('[40 deg, 150 deg]', '[140 deg, 30 deg]')
      .replace('from: 75 deg, to: 100 deg', 'from: 105 deg, to: 80 deg')
      .replace('from: 45 deg', 'from: 135 deg')
      .replace('from: 40 deg', 'from: 140 deg')
      .replace('to: 0 deg', 'to: 180 deg');
    const [a, b] = [await resultsOf(text), await resultsOf(included)];
    expect(b.ranking[0]?.program.landing.meanGain).toBeCloseTo(
      a.ranking[0]?.program.landing.meanGain ?? 0,
      9,
    );
  });

  it('a test may say where its range begins', async () => {
    const { calibrations } = await resultsOf(
      replaced('to: thigh level, best', 'from: 60 deg, to: thigh level, best'),
    );
    expect(calibrations[0]?.single).toMatchObject({ from: expect.closeTo(Math.PI / 3, 9) });
  });
});

describe('heights that cannot be', () => {
  // The thigh of the test above at 125° points 5° below level:
  // box 0.4537 − 0.441 · sin 5° − 0.085 = 0.330 m.
  it('a box too low: from where to where it goes, the limit that ends it, the nearest box', async () => {
    const [only = '', ...more] = await told(replaced('box 42 cm', 'box 20 cm'));
    expect(more).toEqual([]);
    expect(only).toMatch(
      /^17 \[box 20 cm\] box 20 cm cannot be reached: with this body the our squat sits on a box 33 cm high at 125 deg of knee flexion, the athlete’s limit, and \d\d cm at \d\d deg of knee flexion \| write box 33 cm, or a height between the two$/,
    );
  });

  // At 110° it points 10° above level: 0.441 · sin 10° = 7.7 cm, and boxes begin at 44.5 cm.
  it('thigh level beyond the athlete’s knee', async () => {
    expect(await told(replaced('knee flexion: 125 deg', 'knee flexion: 110 deg'))).toEqual([
      '10 [thigh level] the our squat does not come to thigh level with this body: at 110 deg of knee flexion, the athlete’s limit, the hip is still 8 cm above the knee | write the angle, at most 110 deg of knee flexion',
      expect.stringMatching(
        /^17 \[box 42 cm\] box 42 cm cannot be reached: .* \| write box 45 cm, or a height between the two$/,
      ),
      '18 [thigh level] the our squat does not come to thigh level with this body: at 110 deg of knee flexion, the athlete’s limit, the hip is still 8 cm above the knee | write the angle, at most 110 deg of knee flexion',
    ]);
  });

  it.each([
    [
      'box 42 cm',
      'box 42',
      '17 [box 42] programs.p.work.1.to needs a unit of length, for example "box 42 cm"',
    ],
    [
      'box 42 cm',
      'box',
      '17 [box] to is "box"; a height is written as thigh level, box 42 cm or pins 95 cm',
    ],
    ['box 42 cm', 'box 42 m', '17 [box 42 m] to is 42 m; a height lies between 5 cm and 2.5 m'],
    [
      'to: box 42 cm',
      'to: below parallel',
      '17 [below parallel] to is "below parallel"; a depth word is not an angle | write the knee angle you see, for example 115 deg (thigh about level), or thigh level',
    ],
    [
      'from: 45 deg, to: box 42 cm',
      'from: box 42 cm, to: box 42 cm',
      '17 [box 42 cm] from and to are both box 42 cm; a range needs two different angles',
    ],
    [
      'lift: our squat, from: 45 deg, to: box 42 cm',
      'lift: leg press, from: 5 deg, to: box 42 cm',
      '17 [box 42 cm] the leg press does not stand on flat feet, so box says nothing of it | write the angle, at most 105 deg of knee flexion',
    ],
    [
      'lift: our squat, from: 45 deg',
      'lift: step-up, from: 0 deg',
      '17 [box 42 cm] the other leg of the step-up hangs down, so it cannot sit on a box | write the angle, at most 110 deg of knee flexion',
    ],
    [
      'lift: our squat, from: 45 deg, to: box 42 cm',
      'lift: belt squat, from: 0 deg, to: pins 42 cm',
      '17 [pins 42 cm] the belt squat has no bar whose height counts | write the angle, at most 125 deg of knee flexion',
    ],
    [
      'hold: our squat, at: pins 95 cm',
      'hold: knee extension, at: pins 95 cm',
      '20 [pins 95 cm] at is "pins 95 cm"; only a lift that stands on the floor is held at a height | write the angle, for example 75 deg',
    ],
    [
      'from: 75 deg',
      'from: thigh level',
      '11 [thigh level] from is "thigh level"; an angle is a number with its unit, for example "75 deg"',
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(await told(replaced(from, to))).toEqual([expected]);
  });

  it('a height where body and load cannot be balanced: down to where they can', async () => {
    const stiff = replaced(
      'knee flexion: 125 deg',
      'ankle dorsiflexion: 5 deg, knee flexion: 125 deg',
    )
      .replace('lift: our squat, from: 45 deg', 'lift: box squat, from: 0 deg')
      .replace(/ {6}- .*our squat.*\n/g, '');
    const [only = '', ...more] = await told(stiff);
    expect(more).toEqual([]);
    expect(only).toMatch(
      /^17 \[box 42 cm\] the box squat cannot be held in balance at box 42 cm with this body \| it can be down to box \d\d cm \(\d\d deg of knee flexion\): write that, or check the segment lengths and the ankle limit$/,
    );
  });
});
