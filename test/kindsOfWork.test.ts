import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { tripped } from '../src/page/cautions.ts';
import { exerciseLine } from '../src/page/exerciseLine.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { resultsJson } from '../src/page/resultsJson.ts';
import { type Results, run } from '../src/run.ts';

/** From file to report for the kinds of work beside lifts and holds; invented person and programs. */

function scenarioOf(work: string, tests = '', others: readonly string[] = []): string {
  const program = (name: string, entry: string) =>
    `  ${name}:\n    weeks: 8\n    sessions per week: 2\n    work:\n      - { ${entry} }\n`;
  const programs = [work, ...others].map((entry, i) => program(`p${i + 1}`, entry));
  return `title: Kinds of work
angles: flexion
group: { name: mean man, reference: male, stature: 178 cm, mass: 78 kg, training: 4 years }
${tests}target: { action: knee extension, from: 60 deg, to: 100 deg }
programs:
${programs.join('')}`;
}

const doses = 'sets: 4, reps: 6, tempo: 4-0-2, rest: 150 s';
const lowered = (load: string) =>
  `lift: back squat, from: 0 deg, to: 105 deg, load: ${load}, lower only: yes, ${doses}`;
const nordic = (load: string, from = 15) =>
  `lift: Nordic lowering, from: ${from} deg, to: 90 deg, load: ${load}, lower only: yes, ${doses}`;
const pinned = (at: number) =>
  `hold: back squat, at: ${at} deg, against: pins, effort: 100 %, sets: 4, reps: 4, seconds: 4`;
const tested = 'tests: [{ lift: back squat, to: 105 deg, best: 150 kg }]\n';

async function resultsOf(text: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('kinds.yaml', text)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => text));
  return results;
}

/** Line, what the carets underline, message | hint. */
async function problemsOf(text: string): Promise<string[]> {
  const { problems = [] } = { problems: undefined, ...(await run('kinds.yaml', text)) };
  return (problems ?? []).map(({ at, message, hint }) => {
    const { line = 0, col = 0, endCol = 0 } = at ?? {};
    const underlined = text.split('\n')[line - 1]?.slice(col - 1, endCol - 1);
    return `${line} [${underlined}] ${message} | ${hint}`;
  });
}

async function lineOf(text: string, program = 'p1'): Promise<string> {
  const results = await resultsOf(text);
  const found = results.ranking.find((placed) => placed.program.name === program)?.program;
  const [work, planned] = [found?.program.work[0], found?.plan.exercises[0]];
  if (!work || !planned) throw new Error('no work');
  return exerciseLine(work, planned, results);
}

async function careOf(text: string, program = 'p1'): Promise<[number, string][]> {
  const results = await resultsOf(text);
  const found = results.ranking.find((placed) => placed.program.name === program)?.program;
  if (!found) throw new Error('no program');
  return tripped(found, results).map(({ number, because }) => [number, because]);
}

describe('lowering that cannot be done, in whole messages', () => {
  it('more than can be lowered under control; 121 % of the single’s torque, body included', async () => {
    expect(await problemsOf(scenarioOf(lowered('140 %'), tested))).toEqual([
      '11 [140 %] 210 kg is more than can be lowered under control: the most in the back squat from 0° to 105° is about 192 kg | write at most 192 kg for one repetition and less for more, or shorten the range',
    ]);
  });

  it('a heavier way down than can be controlled, and one that is not heavier', async () => {
    const full = (load: string) =>
      `lift: back squat, from: 0 deg, to: 105 deg, load: 80 %, lowering load: ${load}, ${doses}`;
    expect(await problemsOf(scenarioOf(full('+80 %'), tested))).toEqual([
      '11 [+80 %] 216 kg is more than can be lowered under control: the most in the back squat from 0° to 105° is about 192 kg | write at most 192 kg, or shorten the range',
    ]);
    expect(await problemsOf(scenarioOf(full('100 kg'), tested))).toEqual([
      '11 [100 kg] the lowering load of 100 kg is not more than the 120 kg that are lifted | write more than 120 kg, or leave lowering load out',
    ]);
  });

  it('hardly more than the body', async () => {
    expect(await problemsOf(scenarioOf(nordic('5 kg', 58.5)))).toEqual([
      '10 [5 kg] 5 kg is more than can be lowered under control: the most in the Nordic lowering from 59° to 90° is the body alone | write load: body weight, or shorten the range',
    ]);
  });

  it('a share of a single that cannot be lifted', async () => {
    expect(await problemsOf(scenarioOf(nordic('80 %')))).toEqual([
      '10 [80 %] no single of the Nordic lowering from 15° to 90° can be lifted, so a share of it is no load | write load: body weight, or a mass such as load: 5 kg',
    ]);
  });

  it('more than the body where the body alone is not controlled', async () => {
    expect(await problemsOf(scenarioOf(nordic('5 kg')))).toEqual([
      '10 [5 kg] the Nordic lowering from 15° to 90° cannot be lowered under control with the body alone, so not with 5 kg more | write load: body weight (it counts as far as control goes), or shorten the range',
    ]);
  });

  it('a start that is out of control at once, and where it would begin well', async () => {
    const chinUp = (to: number) =>
      `lift: chin-up, from: 10 deg, to: ${to} deg, load: body weight, lower only: yes, ${doses}`;
    const [message = ''] = await problemsOf(scenarioOf(chinUp(130)));
    const begin = Number(/begin at (\d+)°/.exec(message)?.[1]);
    expect(message).toBe(
      `10 [130 deg] the chin-up cannot be lowered under control from 130°: the body alone asks too much there | begin at ${begin}°, or check the tests (unit, angle)`,
    );
    expect(await problemsOf(scenarioOf(chinUp(begin)))).toEqual([]);
  });

  it('a squat that cannot be balanced', async () => {
    const stiff = scenarioOf(lowered('body weight')).replace(
      'training: 4 years }',
      'training: 4 years, limits: { ankle dorsiflexion: 5 deg } }',
    );
    expect(await problemsOf(stiff)).toEqual([
      '10 [105 deg] the back squat to 105° cannot be held in balance over the foot with this body; it can be from 0° to 66° | check the segment lengths and the ankle limit, or end the range earlier',
    ]);
  });
});

describe('what the report says of each kind of work', () => {
  it('the Nordic lowering is no longer refused as too weak, and told how far it goes', async () => {
    expect(await lineOf(scenarioOf(nordic('body weight')))).toMatch(
      /^Nordic lowering, knee 15–90°, lowered only: 4 × 6, 4 s down, 2 s to be brought up, rest 150 s, with the body alone\. It is lowered under control to about 5\d° of knee flexion \(6\d° or 5\d° if strength while lowering is 0\.9 or 1\.2 of that in a hold\); beyond that it drops, and only the way before counts\.$/,
    );
    const raised = nordic('reserve: 2').replace('load: reserve', 'reserve');
    const [refused] = await problemsOf(scenarioOf(raised.replace('lower only: yes, ', '')));
    expect(refused).toContain('the Nordic lowering cannot be held at');
  });

  it('where all of it is under control, it says so', async () => {
    expect(await lineOf(scenarioOf(nordic('body weight', 70)))).toBe(
      'Nordic lowering, knee 70–90°, lowered only: 4 × 6, 4 s down, 2 s to be brought up, rest 150 s, with the body alone. It stays under control over the whole range.',
    );
  });

  it('a squat lowered with more than the single', async () => {
    expect(await lineOf(scenarioOf(lowered('110 %'), tested))).toBe(
      'Back squat, knee 0–105°, lowered only: 4 × 6, 4 s down, 2 s to be brought up, rest 150 s, with 165 kg (the heaviest single over this range is 150 kg, tested). The most under control is about 192 kg.',
    );
  });

  it('a squat lowered with more than is lifted: 1.3 × 120 kg', async () => {
    const work = `lift: back squat, from: 0 deg, to: 105 deg, load: 80 %, lowering load: +30 %, ${doses}`;
    expect(await lineOf(scenarioOf(work, tested))).toMatch(
      /^Back squat, knee 0–105°: 4 × 6, tempo 4-0-2, rest 150 s with 120 kg, 80 % of the heaviest single over this range \(150 kg, tested\)\. The heaviest single would be lost at 105° of knee flexion, by the knee extensors\. Lowered with 156 kg; the most under control is about 192 kg\.$/,
    );
  });

  it('isokinetic work, with the best torque each way: 17/22 and 1.05 of the strongest hold', async () => {
    const work =
      'isokinetic: knee extension, from: 10 deg, to: 100 deg, speed: 60 deg/s, way: both, effort: 100 %, sets: 4, reps: 8, rest: 60 s';
    const text = scenarioOf(work);
    const { athlete } = await resultsOf(text);
    const strongest = Math.max(...athlete.groups['knee extension'].torque);
    const [up, down] = [17 / 22, 1.05].map((ratio) => (ratio * strongest).toFixed(0));
    expect(await lineOf(text)).toBe(
      `Isokinetic knee extension 10–100° at 60°/s, lifting and lowering, 100 % effort (best there about ${up} N·m lifting and ${down} N·m lowering): 4 sets of 8.`,
    );
    const report = renderMarkdown(fullReport(await resultsOf(text)));
    expect(report).toContain('Isokinetic work: while lifting, torque falls with speed');
    expect(report).toMatch(/torque by speed: no torque left +\| derived/);
    const json = JSON.stringify(resultsJson(await resultsOf(text)));
    expect(json).toContain('{"isokinetic":"knee extension","speedDegPerSecond":60,"effort":1}');
  });

  it('a push against pins: the same load as the hold, said as a force (9.80665 N/kg, to 10 N)', async () => {
    const line = await lineOf(scenarioOf(pinned(90)));
    const [, newtons = '', kilograms = ''] =
      /^Push the back squat against pins at 90°, 100 % effort \(push up with about (\d,\d\d0) N, (\d+) kg\): 4 sets of 4 × 4 s \(rest not written: usual values taken\)\.$/.exec(
        line,
      ) ?? [];
    expect(Math.abs(Number(newtons.replace(',', '')) - 9.80665 * Number(kilograms))).toBeLessThan(
      10,
    );
    const held = await lineOf(scenarioOf(pinned(90).replace('against: pins, ', '')));
    const load = Number(/with about ([\d.]+) kg/.exec(held)?.[1]);
    expect(Math.abs(load - Number(kilograms))).toBeLessThanOrEqual(0.75);
  });

  it('loads without a number nowhere', async () => {
    const text = scenarioOf(nordic('body weight'), tested, [lowered('body weight')]);
    expect(renderMarkdown(fullReport(await resultsOf(text)))).not.toMatch(/NaN|not determined/);
  });

  it('the singles table leaves out ranges that are only lowered', async () => {
    const { singlesBefore } = await resultsOf(scenarioOf(lowered('110 %')));
    expect(singlesBefore).toEqual([]);
  });
});

describe('cautions', () => {
  it('lowering work: only lowered, lowered heavier, or drawn out by a machine', async () => {
    const heavier = lowered('80 %').replace('lower only: yes', 'lowering load: +20 %');
    const drawn = (way: string, effort = 100) =>
      `isokinetic: knee flexion, from: 20 deg, to: 100 deg, speed: 60 deg/s, way: ${way}, effort: ${effort} %, sets: 4, reps: 8`;
    expect(await careOf(scenarioOf(lowered('110 %'), tested))).toContainEqual([
      4,
      'it lowers more than it lifts',
    ]);
    expect(await careOf(scenarioOf(heavier, tested))).toContainEqual([
      4,
      'it lowers more than it lifts',
    ]);
    const machine = [4, 'its machine forces muscles to lengthen while they resist hard'];
    expect(await careOf(scenarioOf(drawn('lowering')))).toEqual([machine]);
    expect(await careOf(scenarioOf(drawn('both')))).toEqual([machine]);
    expect(await careOf(scenarioOf(drawn('lifting')))).toEqual([]);
    expect(await careOf(scenarioOf(drawn('lowering', 40)))).toEqual([]);
  });

  const heavy = [7, 'its load is above the heaviest full lift here'];
  const full = `lift: back squat, from: 0 deg, to: 105 deg, load: 80 %, ${doses}`;

  it('a hold above the heaviest full lift: against a lift of the file, a test, or the whole lift', async () => {
    const held = pinned(40).replace('against: pins, ', '');
    for (const work of [held, pinned(40)]) {
      expect(await careOf(scenarioOf(work, '', [full]))).toContainEqual(heavy);
      expect(await careOf(scenarioOf(work, tested))).toContainEqual(heavy);
      expect(await careOf(scenarioOf(work))).toContainEqual(heavy);
    }
    expect(await careOf(scenarioOf(full, '', [held]))).not.toContainEqual(heavy);
  });

  it('not a hold lighter than the full lift, nor one of a joint action', async () => {
    const light = pinned(90).replace('against: pins, effort: 100 %', 'effort: 40 %');
    expect(await careOf(scenarioOf(light, tested))).not.toContainEqual(heavy);
    const knee = 'hold: knee extension, at: 40 deg, effort: 100 %, sets: 4, reps: 4, seconds: 4';
    expect(await careOf(scenarioOf(knee, tested))).toEqual([[5, 'it holds still at high effort']]);
  });

  it('pins and bars: named once, in the order of the list; no bar where the body alone is lowered', async () => {
    expect(await careOf(scenarioOf(pinned(70)))).toEqual([
      [3, 'it bends the knee deep under load'],
      [5, 'it holds still at high effort'],
      [6, 'it pushes a bar against pins'],
      heavy,
    ]);
    const numbers = (await careOf(scenarioOf(lowered('body weight')))).map(([number]) => number);
    expect(numbers).not.toContain(6);
  });
});
