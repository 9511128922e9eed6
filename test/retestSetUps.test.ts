import { describe, expect, it } from 'vitest';
import { renderMarkdown } from '../src/page/markdown.ts';
import { retestChat } from '../src/page/retestChat.ts';
import { retestPage } from '../src/page/retestPage.ts';
import { judgeRepeats } from '../src/questions/retest/judgeRepeats.ts';
import { judgeRetests } from '../src/questions/retest/judgeRetests.ts';
import { run } from '../src/run.ts';
import { testErrors } from '../src/tables/testError.ts';

async function resultsOf(text: string) {
  const found = await run('f.yaml', text);
  if (found.problems) throw new Error(found.problems.map(({ message }) => message).join('; '));
  return found.results;
}

const messagesOf = async (text: string) =>
  ((await run('f.yaml', text)).problems ?? []).map(({ message }) => message);

/** One knee extension test of the invented athlete; trials by angle, more as given. */
const knee = (date: string, trials: Readonly<Record<number, number>>, more = '') =>
  `{ action: knee extension, contraction: isometric, date: ${date}, gravity: corrected, familiarised: yes, unit: N m, ${more} trials: { ${Object.entries(
    trials,
  )
    .map(([angle, torque]) => `${angle} deg: [${torque}, ${torque}]`)
    .join(', ')} } }`;

const hip = (degrees: number) => `with: { hip: ${degrees} deg },`;
const single = (date: string, lift: string, to: number, best: number, more = '') =>
  `{ lift: ${lift}, ${more} to: ${to} deg, best: ${best} kg, date: ${date} }`;

interface Tested {
  readonly after?: string;
  readonly tests: readonly string[];
}

function file(tests: readonly string[], retests: readonly Tested[], more = ''): string {
  const list = (entries: readonly string[], indent: string) =>
    entries.map((entry) => `${indent}- ${entry}\n`).join('');
  return `title: T
angles: flexion
athlete: { code: T-1, reference: male, stature: 180 cm, mass: 80 kg, training: 3 years }
tests:
${list(tests, '  ')}target: { action: knee extension, from: 75 deg, to: 105 deg }
programs:
  holds: { weeks: 8, sessions per week: 3, work: [{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }] }
  more: { weeks: 8, sessions per week: 3, work: [{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }] }
retests:
${retests.map(({ after, tests: own }) => `  - tests:\n${list(own, '      ')}${after === undefined ? '' : `    after: ${after}\n`}`).join('')}${more}`;
}

const left = { 60: 150, 80: 150, 100: 120 };
const right = { 60: 200, 80: 200, 100: 160 };
const [side, otherSide] = ['side: left,', 'side: right,'];
const [day, after, later] = ['2026-03-02', '2026-04-27', '2026-06-22'];

/** Target gain of each action of each retest. */
const gainsOf = async (text: string) =>
  judgeRetests(await resultsOf(text)).retests.map(({ actions }) =>
    actions.map(({ retest: { target } }) =>
      'refused' in target ? target.reason : Number(target.gain.value.toFixed(6)),
    ),
  );

describe('set-ups of a test are judged apart', () => {
  // All hand calculations: what was not changed has gained 0 %.
  it('left and right', async () => {
    const tests = [knee(day, left, side), knee(day, right, otherSide)];
    expect(await gainsOf(file(tests, [{ tests: [knee(after, right, otherSide)] }]))).toEqual([[0]]);
    const both = file(tests, [
      { tests: [knee(after, left, side), knee(after, { 60: 220, 80: 220, 100: 176 }, otherSide)] },
    ]);
    expect(await gainsOf(both)).toEqual([[0, 0.1]]);
    const results = await resultsOf(both);
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).toContain('Left side:');
    expect(page).toContain('knee extension, right side');
    expect(retestChat(results, judgeRetests(results)).join('\n')).toContain('RIGHT SIDE');
  });

  it('hip straight and hip bent', async () => {
    const tests = [knee(day, left, hip(0)), knee(day, right, hip(85))];
    expect(await gainsOf(file(tests, [{ tests: [knee(after, left, hip(0))] }]))).toEqual([[0]]);
  });

  it('left on one day and right on another are no repeated days', async () => {
    const tests = [knee(day, left, side), knee('2026-03-04', right, otherSide)];
    const text = file(tests, [{ tests: [knee(after, right, otherSide)] }]);
    const [judged] = judgeRetests(await resultsOf(text)).retests;
    expect(judged?.actions[0]?.error).toMatchObject({
      known: 'borrowed',
      amount: testErrors['single-joint dynamometer'].value,
    });
    expect(judged?.actions[0]?.retest.angles[0]?.days).toEqual({ before: 1, after: 1 });
  });

  it('two entries of one date are one day', async () => {
    const split = (date: string) => [
      knee(date, { 40: 140, 60: 200 }),
      knee(date, { 80: 200, 100: 160 }),
    ];
    const text = file(split(day), [{ tests: split(after) }]);
    expect(await gainsOf(text)).toEqual([[0]]);
    const [judged] = judgeRetests(await resultsOf(text)).retests;
    expect(judged?.actions[0]?.retest.angles.map(({ days }) => days)).toEqual(
      Array.from({ length: 4 }, () => ({ before: 1, after: 1 })),
    );
  });

  it.each([
    ['score: mean,', 'are scored differently'],
    ['', 'both have trials at 60 deg'],
  ])('one date with two answers is refused: %s', async (more, said) => {
    const text = file(
      [knee(day, left), knee(day, { 60: 155, 90: 140 }, more)],
      [{ tests: [knee(after, left)] }],
    );
    expect((await messagesOf(text)).join()).toContain(said);
  });
});

describe('a retest is held against the latest test that has it', () => {
  it('the other side tested by the retest between', async () => {
    const text = file(
      [knee(day, left, side), knee(day, right, otherSide)],
      [
        { after: 'holds', tests: [knee(after, left, side)] },
        { after: 'more', tests: [knee(later, right, otherSide)] },
      ],
    );
    expect(await gainsOf(text)).toEqual([[0], [0]]);
    const results = await resultsOf(text);
    const { retests } = judgeRetests(results);
    expect(retests[0]?.actions[0]?.predicted?.inTarget).toBeGreaterThan(0);
    // The change spans both programs; the forecast of the second alone must not stand beside it.
    expect(retests[1]).toMatchObject({ from: { first: day }, done: ['holds', 'more'] });
    expect(retests[1]?.actions[0]).toMatchObject({ isDirect: false, against: 0 });
    expect(retests[1]?.actions[0]?.predicted).toBeUndefined();
    expect(retests[1]?.actions[0]?.amplitude).toBeUndefined();
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).toContain(`Tested ${day}, retested ${later}, with "holds", then "more" between`);
    expect(page).toContain(`Knee extension, right side is held against ${day}, for the tests in`);
  });

  it('the weight of the limb not spoken of, then added', async () => {
    const silent = knee(day, left).replace('gravity: corrected', 'posture: seated');
    const added = knee(after, left).replace('corrected', 'estimated, posture: seated');
    expect((await messagesOf(file([silent], [{ tests: [added] }]))).join()).toContain(
      'the weight of the limb is added in the retest, and the test does not say',
    );
    expect(await messagesOf(file([silent], [{ tests: [knee(after, left)] }]))).toEqual([]);
  });

  it('an angle a degree off is another angle, in the check as in the verdict', async () => {
    const text = file([knee(day, { 60: 150 })], [{ tests: [knee(after, { 61: 150 })] }]);
    expect((await messagesOf(text)).join()).toContain('they share no angle');
  });

  it('weeks between are rounded: Monday 1 June to Friday 24 July are 8', async () => {
    const text = file(
      [knee('2026-06-01', right)],
      [{ after: 'holds', tests: [knee('2026-07-24', right)] }],
    );
    expect(judgeRetests(await resultsOf(text)).retests[0]?.forecast?.weeks).toBe(8);
  });
});

describe('singles', () => {
  const liftsOf = async (text: string) =>
    judgeRetests(await resultsOf(text)).retests.map(({ lifts }) =>
      lifts.map(({ lift, before, after: now }) => [lift, before, now]),
    );

  it('a lift that a retest skipped keeps its first test', async () => {
    const text = file(
      [single(day, 'back squat', 110, 92.5), single(day, 'bench press', 70, 60)],
      [
        { tests: [single(after, 'bench press', 70, 62)] },
        { after: 'holds', tests: [single(later, 'back squat', 110, 100)] },
      ],
    );
    expect(await liftsOf(text)).toEqual([[['bench press', 60, 62]], [['back squat', 92.5, 100]]]);
    const results = await resultsOf(text);
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).toContain(`Back squat to 110° is held against ${day}, for the tests in between`);
  });

  it('the start of the range tells singles apart', async () => {
    const tests = [
      single(day, 'back squat', 110, 100),
      single(day, 'back squat', 110, 120, 'from: 90 deg,'),
    ];
    const text = file(tests, [{ tests: [single(after, 'back squat', 110, 121, 'from: 90 deg,')] }]);
    expect(await liftsOf(text)).toEqual([[['back squat', 120, 121]]]);
  });

  it('two bests of one range in a retest are refused', async () => {
    const text = file(
      [single(day, 'back squat', 110, 100)],
      [{ tests: [single(after, 'back squat', 110, 102), single(after, 'back squat', 110, 104)] }],
    );
    expect((await messagesOf(text)).join()).toContain('has two bests, 102 kg and 104 kg');
  });

  it('a single estimated before counts as one estimated after does', async () => {
    const estimated = (date: string) =>
      `{ lift: back squat, to: 110 deg, reps: 5, load: 85 kg, date: ${date} }`;
    const judged = async (first: string, second: string, more = '') =>
      judgeRetests(await resultsOf(file([first], [{ tests: [second] }], more))).retests[0]
        ?.lifts[0];
    const lifted = (date: string) => single(date, 'back squat', 110, 98);
    const [first, second] = [
      await judged(estimated(day), lifted(after)),
      await judged(lifted(day), estimated(after)),
    ];
    const known =
      'repeatability: [{ lift: back squat, to: 110 deg, typical error: 3 %, from: 1000 people × 2 days }]\n';
    const plain = await judged(lifted(day), lifted(after), known);
    const both = await judged(estimated(day), estimated(after), known);
    expect(first?.error.formulas).toBeGreaterThan(0);
    expect(first?.error.formulas).toBeCloseTo(second?.error.formulas ?? 0, 12);
    // MDC of the logarithm is t·√(2·TE² + f₁² + f₂²) with TE 3 %, t(999, 0.975) 1.96234, and f₁ = f₂.
    const f = first?.error.formulas ?? 0;
    const mdc = (more: number) => 1.96234 * Math.sqrt(2 * 0.03 ** 2 + more);
    expect(Math.log1p(plain?.detectable ?? 0)).toBeCloseTo(mdc(0), 5);
    expect(Math.log1p(both?.detectable ?? 0)).toBeCloseTo(mdc(2 * f ** 2), 5);
  });

  it('a lift that only a retest has is held to the body', async () => {
    const stiff = file(
      [knee(day, left)],
      [{ tests: [knee(after, left), single(after, 'back squat', 110, 100)] }],
    ).replace(
      'training: 3 years',
      'training: 3 years, limits: { ankle dorsiflexion: 1 deg }, lengths: { thigh: 55 cm, shank: 35 cm }',
    );
    expect((await messagesOf(stiff)).join()).toContain('cannot be held in balance');
  });
});

describe('numbers of both limbs together', () => {
  const both = (date: string) => knee(date, { 60: 400, 80: 400, 100: 320 }, 'side: both,');

  it('a stated error in N·m is halved as the trials are: 16 of 400 N·m is 4 %', async () => {
    const known =
      'repeatability: [{ action: knee extension, side: both, typical error: 16 N m, from: 1000 people × 2 days }]\n';
    const text = file([both(day)], [{ tests: [both(after)] }], known);
    const [action] = judgeRetests(await resultsOf(text)).retests[0]?.actions ?? [];
    expect(action?.error).toMatchObject({ amount: 8, unit: 'newtonMetre' });
    // 1.96234·√2·8 N·m at 200 N·m of one side.
    expect(action?.retest.angles[0]?.minimalDetectableChange).toBeCloseTo(
      1.96234 * Math.SQRT2 * 8,
      3,
    );
  });

  it('repeated days are shown for one side', async () => {
    const days =
      'repeatability: [{ action: knee extension, side: both, unit: N m, days: [{ 60 deg: [400] }, { 60 deg: [416] }] }]\n';
    const text = file([both(day)], [{ tests: [both(after)] }], days);
    const [score] = judgeRepeats(await resultsOf(text))[0]?.scores ?? [];
    expect(score?.mean).toBeCloseTo(204, 9);
    // Two days of one person: |d|/√2 of halves, 8/√2.
    expect(score?.error.amount.value).toBeCloseTo(8 / Math.SQRT2, 9);
  });
});

describe('what is shown', () => {
  it('a response is one that the file accepts', async () => {
    for (const factor of [0.3, 3]) {
      const now = { 60: 200, 80: 200 * factor, 100: 160 * factor };
      const text = file(
        [knee(day, right)],
        [{ after: 'holds', tests: [knee(after, now)] }],
        'repeatability: [{ action: knee extension, typical error: 1 %, from: 1000 people × 2 days }]\n',
      );
      const results = await resultsOf(text);
      const page = renderMarkdown(retestPage(results, judgeRetests(results)));
      const [, advised] = /write response: (-?\d+) %/.exec(page) ?? [];
      expect(Number(advised)).toBe(factor < 1 ? 20 : 250);
      expect(page).toContain(`${factor < 1 ? 'least' : 'most'} that a file takes`);
    }
  });

  it('the band over time is a share up and down and never below 0', async () => {
    const known =
      'repeatability: [{ action: knee extension, typical error: 50 %, from: 1 person × 2 days }]\n';
    const text = file(
      [single('2026-02-01', 'back squat', 110, 90), knee(day, right)],
      [
        { tests: [knee(after, right)] },
        { tests: [knee(later, right), single('2026-06-20', 'back squat', 110, 95)] },
      ],
      known,
    );
    const [history] = judgeRetests(await resultsOf(text)).histories;
    // t(1, 0.975) = 12.7062 and s = 0.5: e^6.3531 up and down; days are those of the knee's own tests.
    expect(history?.points.map((point) => point.day)).toEqual([day, after, later]);
    for (const { torque, low, high } of history?.points ?? []) {
      expect(Math.log(high / torque)).toBeCloseTo(6.3531, 3);
      expect(low).toBeCloseTo(torque ** 2 / high, 9);
      expect(low).toBeGreaterThan(0);
    }
  });

  it('another action has no target, and a chat says so', async () => {
    const flexion = (date: string) => knee(date, left).replace('knee extension', 'knee flexion');
    const text = file([flexion(day)], [{ tests: [flexion(after)] }]);
    const results = await resultsOf(text);
    const page = renderMarkdown(retestPage(results, judgeRetests(results)));
    expect(page).not.toMatch(/° target/);
    const chat = retestChat(results, judgeRetests(results)).join('\n').replace(/\s+/g, ' ');
    expect(chat).toContain("The target's own action, knee extension, was not tested both times");
    expect(chat).not.toContain('*');
  });
});
