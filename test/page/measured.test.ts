import { describe, expect, it } from 'vitest';
import { landing } from '../../src/inference/ranking.ts';
import { gridAngles } from '../../src/mechanics/angleGrid.ts';
import { strongest, strongestCell } from '../../src/page/strongestAngle.ts';
import { meanTorque } from '../../src/physiology/strengthCurve.ts';
import { blocksUnder, reportTexts, resultsOf, scenarioOf, tableUnder } from './askReport.ts';

const hold = 'hold: hip extension, at: 40 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5';
const target = 'action: hip extension, from: 20 deg, to: 60 deg';
const heading = 'What was measured';

describe('isometric tests of joints other than the knee', () => {
  const mean = (deg: number) => meanTorque('hip extension', 'male', 78, deg);
  const tests = (near: number, far: number) =>
    `tests: [{ action: hip extension, contraction: isometric, trials: { 30 deg: [${near.toFixed(6)}], 60 deg: [${far.toFixed(6)}] }, unit: N m }]\n`;

  it('stand beside the curve, each with its difference', async () => {
    const asked = { target, programs: { a: hold }, tests: tests(mean(30), mean(60)) };
    const results = await resultsOf(scenarioOf(asked));
    // As strong as the mean person at both angles: the scale is 1 and nothing differs.
    const newtons = [30, 60].map((deg) => `${mean(deg).toFixed(0)} N·m`);
    expect(tableUnder(results, heading)).toEqual([
      ['tested', 'angle', 'measured', 'fitted curve', 'difference'],
      ['hip extension', '30°', newtons[0], newtons[0], '0 %'],
      ['hip extension', '60°', newtons[1], newtons[1], '0 %'],
    ]);
    expect(JSON.stringify(blocksUnder(results, heading))).not.toContain('check unit');
  });

  it('that contradict each other are pointed at, with what would explain it', async () => {
    // Written in pounds that were kilograms: 0.4536 of the torque.
    const asked = { target, programs: { a: hold }, tests: tests(mean(30), 0.4536 * mean(60)) };
    const texts = await reportTexts(asked, heading);
    const warned = texts.filter((text) => text.includes('Worth checking'));
    expect(warned).toHaveLength(1);
    expect(warned[0]).toMatch(
      /^Hip extension of \d+ N·m at \d+° does not fit the other tests, which give about \d+ N·m there\. Worth checking: a pull in/,
    );
  });
});

describe('the strongest angle', () => {
  const degree = Math.PI / 180;
  const whole = { from: 0, to: 120 * degree };
  /** Falls by a share a degree on both sides of a level top. */
  const curve = (from: number, to: number, slope: number) =>
    gridAngles.map((angle) => {
      const deg = angle / degree;
      return 100 * (1 - slope * Math.max(from - deg, deg - to, 0));
    });
  const told = (torque: readonly number[]) => {
    const { peakBefore, levelBefore } = landing(
      torque,
      torque.map(() => 1),
      whole,
      whole,
    );
    return [strongest([peakBefore, levelBefore]), strongestCell([peakBefore, levelBefore])];
  };

  it('is named where the curve has a peak', () => {
    // 1 % a degree: within 3 % from 67 to 73°, far from 40° wide.
    expect(told(curve(70, 70, 0.01))).toEqual(['strongest at 70°', '70°']);
    // Level over 30°, within 3 % over 36° (on the grid 35°).
    expect(told(curve(50, 80, 0.01))[0]).toMatch(/^strongest at /);
  });

  it('is a stretch where the curve is level within 3 % over more than 40°', () => {
    // Level over 50°, and already 5 % lower at the next angles of the grid, 2.5° further out.
    expect(told(curve(30, 80, 0.02))).toEqual(['about equally strong from 30° to 80°', '30–80°']);
    // 40° and no more is still a peak.
    expect(told(curve(40, 80, 0.02))[0]).toMatch(/^strongest at /);
  });
});

describe('the table of heaviest singles', () => {
  const work = (lift: string, from: number, to: number) =>
    `lift: ${lift}, from: ${from} deg, to: ${to} deg, load: 70 %, sets: 3, reps: 4, tempo: 2-0-1, rest: 120 s`;
  const single = 'Heaviest singles';
  const tests =
    'tests: [{ lift: back squat, from: 20 deg, to: 95 deg, best: 140 kg }, { lift: leg press, to: 90 deg, best: 300 kg }]\n';
  const kneeOnly = 'Work that strengthens only the knee moves a single only where';

  it('shows both ends of a range, the joint of the weakest angle, and what it leaves out', async () => {
    const asked = { tests, programs: { a: work('back squat', 0, 105) } };
    const results = await resultsOf(scenarioOf(asked));
    const rows = tableUnder(results, single);
    expect(rows[0]?.slice(0, 3)).toEqual(['lift', 'before', 'lost at']);
    expect(rows.slice(1).map(([lift]) => lift)).toEqual([
      'back squat 20–95° (tested)',
      'back squat 0–105°',
    ]);
    expect(rows[1]?.[2]).toMatch(/^\d+° of knee flexion by the (knee|hip) extensors$/);
    const [text] = await reportTexts(asked, single);
    expect(text).toContain(kneeOnly);
    expect(text).toMatch(
      / Not listed, because they are lowered only or not done on flat feet: leg press\.$/,
    );
  });

  it('speaks of the knee only where the knee is the target', async () => {
    const [text] = await reportTexts(
      { target, programs: { a: work('back squat', 0, 105) } },
      single,
    );
    expect(text).not.toContain('knee');
    expect(text).not.toContain('Not listed');
  });
});

describe('training years', () => {
  it.each([
    [0, 'Untrained (no training yet): given the whole gains of untrained people; trained ones get'],
    [1, '(1 year of training): given'],
    [4, 'Trained (4 years of training): given'],
  ])('%d', async (years, expected) => {
    const texts = await reportTexts({ years, programs: { a: hold }, target }, heading);
    expect(texts.join(' ')).toContain(expected);
  });
});
