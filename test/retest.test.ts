import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { atAngle } from '../src/mechanics/angleGrid.ts';
import { toRadians } from '../src/numeric/degrees.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { repeatsPage } from '../src/page/repeatsPage.ts';
import { retestChat } from '../src/page/retestChat.ts';
import { retestPage } from '../src/page/retestPage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { judgeRepeats } from '../src/questions/retest/judgeRepeats.ts';
import { judgeRetests } from '../src/questions/retest/judgeRetests.ts';
import { run } from '../src/run.ts';

const demo = readFileSync('scenarios/knee-after-block.yaml', 'utf8');

async function resultsOf(text: string) {
  const { results, problems } = {
    results: undefined,
    problems: [],
    ...(await run('f.yaml', text)),
  };
  if (!results) throw new Error(problems.map(({ message }) => message).join('; '));
  return results;
}

/** A file with one test and one retest of knee extension; error and more lines as given. */
const file = (
  before: string,
  after: string,
  more = '',
  target = 'from: 85 deg, to: 95 deg',
) => `title: T
angles: flexion
athlete: { code: T-1, reference: male, stature: 180 cm, mass: 80 kg, training: 3 years }
tests:
  - { action: knee extension, contraction: isometric, date: 2026-03-02, with: { hip: 85 deg }, gravity: corrected, familiarised: yes, unit: N m, trials: { ${before} } }
target: { action: knee extension, ${target} }
programs:
  holds: { weeks: 6, sessions per week: 3, work: [{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }] }
retests:
  - after: holds
    tests:
      - { action: knee extension, contraction: isometric, date: 2026-04-20, with: { hip: 85 deg }, gravity: corrected, familiarised: yes, unit: N m, trials: { ${after} } }
${more}`;

const known = `repeatability:
  - { action: knee extension, typical error: 4 %, from: 1000 people × 2 days }
`;

describe('a retest of a scenario', () => {
  it('judges angles, target and contrast with the error of the file (hand calculation)', async () => {
    const text = file(
      '60 deg: [200, 198], 90 deg: [180, 175]',
      '60 deg: [210, 205], 90 deg: [220, 214]',
      known,
    );
    const [judged] = judgeRetests(await resultsOf(text)).retests;
    const [action] = judged?.actions ?? [];
    const { angles, target, contrast } = action?.retest ?? {};
    // MDC = t(999, 0.975)·√2·4 % of the logarithmic mean; t = 1.96234.
    const mdc = (a: number, b: number) => (1.96234 * Math.SQRT2 * 0.04 * (b - a)) / Math.log(b / a);
    expect(angles?.map((one) => [one.change, one.says])).toEqual([
      [10, 'cannot say'],
      [40, 'gain beyond noise'],
    ]);
    expect(angles?.[0]?.minimalDetectableChange).toBeCloseTo(mdc(200, 210), 3);
    expect(angles?.[1]?.minimalDetectableChange).toBeCloseTo(mdc(180, 220), 3);
    expect(target).toMatchObject({ says: 'yes' });
    // ln(220/180) − ln(210/200) = 0.1519 against 1.96234·0.04·√4 = 0.1570.
    expect(contrast).toMatchObject({ says: 'cannot say' });
    expect(contrast && 'gain' in contrast ? Math.log1p(contrast.gain.value) : 0).toBeCloseTo(
      0.15188,
      4,
    );
  });

  it('sets the forecast of the program from the tests before beside it', async () => {
    const results = await resultsOf(demo);
    const [first, second] = judgeRetests(results).retests;
    const program = results.ranking.find((placed) => placed.program.name === 'long holds')?.program;
    const [action] = first?.actions ?? [];
    // 2026-06-05 to 2026-08-03 are 59 days: the program’s own eight weeks.
    expect(first?.forecast).toMatchObject({ program: 'long holds', weeks: 8 });
    expect(action?.predicted?.byAngle[2]).toBeCloseTo(
      atAngle(program?.ratio ?? [], toRadians(80)) - 1,
      9,
    );
    // What the first retest believed is where the second begins: 0.86 of its spread, say, not 0.5.
    const [one, two] = [first, second].map((judged) => judged?.actions[0]?.amplitude);
    expect(one?.spread).toBeLessThan(0.5);
    expect(two?.spread).toBeLessThan(one?.spread ?? 0);
  });

  it('believes a retest by its own error: the same gain counts for less on one day than on two', async () => {
    const oneDay = demo.replace(
      / {6}- action: knee extension\n {8}contraction: isometric\n {8}date: 2026-08-06[\s\S]*?unit: N m\n/,
      '',
    );
    expect(oneDay).not.toBe(demo);
    const weight = async (text: string) =>
      judgeRetests(await resultsOf(text)).retests[0]?.actions[0]?.amplitude?.weight ?? 0;
    expect(await weight(oneDay)).toBeLessThan(await weight(demo));
  });

  it.each([
    ['60 deg: [200], 90 deg: [180]', '90 deg: [220]', 'only one angle was tested both times'],
    ['60 deg: [200], 70 deg: [205]', '60 deg: [220], 70 deg: [225]', 'no angle inside the target'],
  ])('says why it cannot: %s → %s', async (before, after, why) => {
    const results = await resultsOf(file(before, after, known));
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).toContain('cannot say: ');
    expect(page).toContain(why);
  });

  it('notes single trials, a first test and a target picked as the weakest', async () => {
    const text = file(
      '40 deg: [140], 60 deg: [220], 90 deg: [150]',
      '40 deg: [150], 60 deg: [224], 90 deg: [170]',
      '',
    ).replace('familiarised: yes', 'familiarised: no');
    const results = await resultsOf(text);
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).toContain('One trial only before the training at 40°, 60° and 90°');
    expect(page).toContain('first ever of its kind');
    expect(page).toMatch(/rises by itself at the next test, here by about [1-9]/);
    expect(page).toContain('borrowed from published tests (single-joint dynamometer)');
  });

  it('expects of a target picked as the weakest only angles that the retest has too', async () => {
    const before = '40 deg: [160, 158], 60 deg: [200, 198], 80 deg: [170, 168]';
    const after = '40 deg: [160, 158], 60 deg: [200, 198], 80 deg: [170, 168]';
    const bySelf = async (text: string) =>
      judgeRetests(await resultsOf(text)).retests[0]?.actions[0]?.retest.notes.flatMap((note) =>
        note.about === 'picked as weakest' ? [note.changeByItself] : [],
      )[0];
    const target = 'from: 75 deg, to: 115 deg';
    const without = await bySelf(file(before, after, known, target));
    const withOne = await bySelf(file(`${before}, 110 deg: [105, 104]`, after, known, target));
    expect(without).toBeGreaterThan(0.005);
    expect(withOne).toBeCloseTo(without ?? 0, 9);
  });

  it('is told for a chat in blocks of ASCII, 38 columns and 1,500 characters', async () => {
    const many = Array.from(
      { length: 13 },
      (_, i) => `${10 + 9 * i} deg: [${150 + i}, ${149 + i}]`,
    ).join(', ');
    const others = ['knee flexion', 'elbow flexion'].map(
      (action) =>
        `{ action: ${action}, contraction: isometric, posture: seated, gravity: corrected, unit: N m, trials: { 30 deg: [90], 60 deg: [95], 90 deg: [85] }`,
    );
    const wide = file(many, many, known)
      .replace(
        'target:',
        `${others.map((test) => `  - ${test}, date: 2026-03-02 }\n`).join('')}target:`,
      )
      .concat('')
      .replace(
        known,
        `${others.map((test) => `      - ${test}, date: 2026-04-20 }\n`).join('')}${known}`,
      );
    for (const text of [demo, wide]) {
      const results = await resultsOf(text);
      const messages = retestChat(results, judgeRetests(results));
      for (const message of messages) {
        expect(message.length).toBeLessThanOrEqual(1500);
        expect(message).toMatch(/^[\n\x20-\x7e]+$/);
        for (const line of message.split('\n')) expect(line.length).toBeLessThanOrEqual(38);
      }
      expect(messages.join('\n')).toContain('GAINED IN TARGET: ');
      expect(messages.join('\n')).toContain('Not medical advice');
    }
  });

  it.each([40, 80])('is shown whole within %i columns', async (width) => {
    const results = await resultsOf(demo);
    for (const page of [
      retestPage(results, judgeRetests(results)),
      repeatsPage(results, judgeRepeats(results)),
    ]) {
      const text = renderTerminal(page, width);
      expect(Math.max(...text.split('\n').map(displayWidth))).toBeLessThanOrEqual(width);
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('repeated test days', () => {
  it('are also the days of the tests and of a retest', async () => {
    const judged = judgeRepeats(await resultsOf(demo));
    expect(judged.map(({ of, people, days }) => [of, people, days])).toEqual([
      ['stated', 6, 2],
      ['tests', 1, 2],
      ['retest', 1, 2],
    ]);
  });

  it('of people with unlike numbers of days count those that all have', async () => {
    const people =
      'A: [{ 60 deg: [200] }, { 60 deg: [206] }, { 60 deg: [202] }], B: [{ 60 deg: [180] }, { 60 deg: [178] }]';
    const text = file(
      '60 deg: [200], 90 deg: [180]',
      '60 deg: [210], 90 deg: [190]',
      `repeatability: [{ action: knee extension, unit: N m, people: { ${people} } }]\n`,
    );
    const [judged] = judgeRepeats(await resultsOf(text));
    expect(judged).toMatchObject({ people: 2, days: 2 });
    // Differences +6 and −2: SD 5.657, over √2 4.0 N·m (hand calculation).
    expect(judged?.scores[0]?.error.amount.value).toBeCloseTo(4, 9);
  });

  it('give the typical error, its interval and the correlations of the six made-up athletes', async () => {
    // Numbers recomputed with a general statistics package from these data; the method is that of
    // Hopkins 2000 and Shrout and Fleiss 1979.
    const [pre, post] = [
      [200, 250, 180, 300, 220, 260],
      [208, 243, 186, 309, 214, 272],
    ];
    const people = pre
      ?.map((x, i) => `P${i}: [{ 60 deg: [${x}] }, { 60 deg: [${post?.[i]}] }]`)
      .join(', ');
    const text = file(
      '60 deg: [200], 90 deg: [180]',
      '60 deg: [210], 90 deg: [190]',
      `repeatability: [{ action: knee extension, unit: N m, people: { ${people} } }]\n`,
    );
    const [judged] = judgeRepeats(await resultsOf(text));
    const [score] = judged?.scores ?? [];
    expect(score?.error.amount.value).toBeCloseTo(5.738757124, 6);
    expect(score?.error.amount.low).toBeCloseTo(3.58217812, 6);
    expect(score?.error.amount.high).toBeCloseTo(14.074956, 5);
    expect(score?.people?.correlations?.consistency.single.value).toBeCloseTo(0.98349151183, 9);
    expect(score?.people?.correlations?.agreement.single.value).toBeCloseTo(0.98288386073, 9);
    expect(score?.limits?.bias.value).toBeCloseTo(3.66666666, 6);
    // t(5, 0.975)·√2·TE = 2.570582·1.414214·5.738757.
    expect(score?.detectable).toBeCloseTo(2.570581836 * Math.SQRT2 * 5.738757124, 5);
  });
});
