import { describe, expect, it } from 'vitest';
import type { Results } from '../../src/run.ts';
import { run } from '../../src/run.ts';
import { barLifts } from '../../src/tables/barLifts.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { notModelled } from '../../src/tables/partlyModelled.ts';
import { blocksUnder, reportTexts, resultsOf, scenarioOf, textsUnder } from './askReport.ts';

const work = (lift: string, to: number, load: string, from = 0) =>
  `lift: ${lift}, from: ${from} deg, to: ${to} deg, load: ${load}, sets: 3, reps: 4, tempo: 2-0-1, rest: 120 s`;
const squat = (load: string) => work('back squat', 105, load);
const single = (lift: string, to: number, best: number) =>
  `tests: [{ lift: ${lift}, to: ${to} deg, best: ${best} kg }]\n`;

/** Lines of the first chart of a program, by name, over its angles. */
function chartOf(results: Results, heading: string) {
  const block = blocksUnder(results, heading).find(({ kind }) => kind === 'chart');
  if (block?.kind !== 'chart') throw new Error('no chart');
  const { x: xDeg, series } = block.chart;
  return { xDeg, has: series[0]?.y ?? [], asked: series[1]?.y ?? [] };
}

describe('what a lift asks against what the athlete has', () => {
  it('is scaled to the tested single, so that the heaviest single touches the curve and no more', async () => {
    for (const best of [90, 140, 200]) {
      const asked = { programs: { a: squat('100 %') }, tests: single('back squat', 105, best) };
      const { asked: line, has } = chartOf(await resultsOf(scenarioOf(asked)), '1. a');
      const most = Math.max(...line.map((y, i) => (Number.isNaN(y) ? 0 : y / (has[i] ?? 1))));
      // One joint alone may stay below 1 where muscles over two joints bind; never above.
      expect(most).toBeLessThan(1.001);
      expect(most).toBeGreaterThan(0.6);
    }
  });

  it('says so in a sentence where the factor is not near 1', async () => {
    const told = async (tests: string) =>
      (await reportTexts({ programs: { a: squat('80 %') }, tests }, '1. a')).find((text) =>
        text.startsWith('In the first week'),
      );
    // Lifting over holding strength, 0.87 (read: tables/strength.ts).
    expect(await told('')).toMatch(
      /^In the first week the back squat asks most of the knee extensors at 105° of knee flexion \(\d\d % of what they can give when fresh\)\. The line of the back squat is scaled to what can be lifted rather than held: 87 % of the curve\.$/,
    );
    expect(await told(single('back squat', 105, 200))).toMatch(
      / The line of the back squat is scaled to what the tested single shows: 1[2-6]\d % of the curve\.$/,
    );
  });

  it('has no holes where the target’s joint is not the leading one', async () => {
    const target = 'action: hip extension, from: 20 deg, to: 80 deg';
    const asked = { target, programs: { a: work('split squat', 110, '70 %') } };
    const { asked: line } = chartOf(await resultsOf(scenarioOf(asked)), '1. a');
    const drawn = line.flatMap((y, i) => (Number.isNaN(y) ? [] : [i]));
    expect(drawn.length).toBeGreaterThan(10);
    expect((drawn.at(-1) ?? 0) - (drawn[0] ?? 0) + 1).toBe(drawn.length);
  });
});

describe('the muscles that share a lift', () => {
  it('are not named where the shoulder, known as a group only, carries most', async () => {
    for (const [lift, to] of [
      ['bench press', 75],
      ['dumbbell fly', 70],
      ['lateral raise', 90],
    ] as const) {
      const texts = await reportTexts({ programs: { a: work(lift, to, '60 %', 10) } }, '1. a');
      const told = texts.filter((text) => text.includes('muscle tables'));
      expect(told).toHaveLength(1);
      expect(told[0]).toMatch(
        /: the chest and shoulder muscles that carry most of it are not in the muscle tables, so no single muscles are named\.$/,
      );
      expect(texts.join(' ')).not.toContain('brachioradialis');
    }
  });

  it('of the elbow are named in a press that the triceps leads, with what is left out', async () => {
    const programs = { a: work('overhead press', 125, '60 %') };
    const told = (await reportTexts({ programs }, '1. a')).find((text) => text.includes('carried'));
    expect(told).toMatch(
      / by triceps .* The chest and shoulder muscles work too and are not in the muscle tables\.$/,
    );
  });

  it('at their limit in a set that is not at its own are explained once', async () => {
    const programs = { a: squat('75 %') };
    const texts = await reportTexts({ programs }, '1. a');
    const explained = texts.filter((text) => text.startsWith('Muscles with the best levers'));
    expect(texts.some((text) => /carried .* 100 %/.test(text))).toBe(true);
    expect(explained).toEqual([
      'Muscles with the best levers are used first: one at 100 % is not yet the limit of the lift, because the others have more to give.',
    ]);
  });
});

describe('a lift of which the model knows only a part', () => {
  const chinUp = work('chin-up', 130, '70 %', 10);
  const tests = single('chin-up', 130, 20);

  it('is not judged by the model: the test is noted, not doubted', async () => {
    const text = scenarioOf({ programs: { a: chinUp }, tests });
    const { notes = [] } = { notes: undefined, ...(await run('words.yaml', text)) };
    expect((notes ?? []).map(({ message, hint }) => `${message} | ${hint}`)).toEqual([
      'the model cannot judge the tested chin-up of 20 kg to 130°: the muscles that pull the upper arm down are not in the tables | nothing to correct; what is said of this lift rests on the test alone',
    ]);
    const results = await resultsOf(text);
    expect(textsUnder(results, 'What was measured').join(' ')).toMatch(
      /Tested chin-up single 20 kg: the model cannot judge it, because the muscles that pull the upper arm down are not in the tables\. The muscles that are would have to give \d+ % of their curves, and the lift is scaled so\./,
    );
    expect(textsUnder(results, '1. a').join(' ')).toContain(
      ' The model cannot judge this lift, because the muscles that pull the upper arm down are not in the tables: this load rests on the tested single alone.',
    );
  });

  it('and every lift marked so or as a barbell lift is one of the catalogue', () => {
    const names = lifts.map(({ name }) => name);
    expect(names.filter((name) => notModelled(name) !== undefined)).toEqual(['chin-up']);
    for (const name of barLifts) expect(names).toContain(name);
  });
});

describe('a load below an empty bar', () => {
  const warned = async (entry: string) =>
    (await reportTexts({ programs: { a: entry } }, '1. a'))
      .join(' ')
      .match(
        /[\d.]+ kg is less than an empty bar \(20 kg\): test the lift before planning it\./,
      )?.[0];

  it('is named for every barbell lift, standing or not', async () => {
    const told = '15 kg is less than an empty bar (20 kg): test the lift before planning it.';
    for (const [lift, to] of [
      ['back squat', 100],
      ['bench press', 75],
      ['overhead press', 120],
      ['hip thrust', 80],
    ] as const)
      expect(await warned(work(lift, to, '15 kg'))).toBe(told);
    expect(await warned(work('back squat', 100, '20 kg'))).toBe(undefined);
  });

  it('is no matter where no bar is carried', async () => {
    expect(await warned(work('split squat', 100, '15 kg'))).toBe(undefined);
    expect(await warned(work('standing curl', 120, '8 kg', 15))).toBe(undefined);
    expect(await warned(`${work('back squat', 100, 'body weight')}, lower only: yes`)).toBe(
      undefined,
    );
  });
});

describe('angles of a lift', () => {
  const lineOf = async (entry: string) =>
    (await reportTexts({ programs: { a: entry } }, '1. a'))[1] ?? '';

  it('name their joint where several joints are involved', async () => {
    expect(await lineOf(squat('70 %'))).toMatch(
      /^Back squat, knee 0–105°: .* lost at \d+° of knee flexion, by the /,
    );
    expect(await lineOf(work('bench press', 75, '70 %'))).toMatch(
      /^Bench press, shoulder 0–75°: .* lost at \d+° of shoulder horizontal adduction, by the /,
    );
  });

  it('stand alone where there is one joint', async () => {
    expect(await lineOf(work('preacher curl', 120, '70 %', 15))).toMatch(
      /^Preacher curl 15–120°: .* lost at \d+°, by the elbow flexors\./,
    );
  });
});

describe('help by more than the load', () => {
  it('is called help, not a load below nothing', async () => {
    // From a bar 2.3 m high the belt hangs about a metre below: the bands pull more than 10 kg.
    const bands =
      'bands:\n  loops: { tension: { 0.5 m: 100 N, 1.0 m: 400 N, 1.6 m: 600 N }, anchor: 2.3 m }\n';
    const tests = `${single('chin-up', 130, 20)}${bands}`;
    const entry = work('chin-up', 120, '10 kg', 20).replace('sets:', 'bands: loops, sets:');
    const [, line] = await reportTexts({ programs: { a: entry }, tests }, '1. a');
    expect(line).toMatch(
      / With everything on, the load comes to \d+(\.5)? kg of help at 20° and \d+(\.5)? kg of help at 120°\./,
    );
    expect(line).not.toMatch(/-\d[\d.]* kg/);
  });
});
