import { describe, expect, it } from 'vitest';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { resultsJson } from '../src/page/resultsJson.ts';
import { fibreChange, unchangedMuscle } from '../src/physiology/muscleChange.ts';
import { run } from '../src/run.ts';
import { placeOfMuscle } from '../src/tables/trainedMuscles.ts';

const squat =
  '{ lift: back squat, from: 0 deg, to: 100 deg, load: 75 %, sets: 4, reps: 6, tempo: 2-0-1, rest: 120 s }';
const hold =
  '{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 3, reps: 4, seconds: 5, rest: 60 s }';

const file = (programs: string, more = '') => `title: Invented
angles: flexion
group: { name: men, reference: male, stature: 180 cm, mass: 80 kg, training: 3 years }
target: { action: knee extension, from: 75 deg, to: 100 deg${more} }
programs:
${programs}`;

const season = `  season:
    phases:
      - { name: off-season, weeks: 4, sessions per week: 3, work: [${squat}], progress: 1 % per week, deload: { week: 3, sets: half } }
      - { weeks: 2, off: yes }
      - { weeks: 3, sessions per week: 2, work: [${hold}, ${squat}] }
`;

async function resultsOf(text: string) {
  const { results, problems } = await run('f.yaml', text);
  if (!results) throw new Error(problems.map(({ message }) => message).join('\n'));
  return results;
}

async function programsOf(text: string) {
  const { ranking } = await resultsOf(text);
  return new Map(ranking.map(({ program }) => [program.name, program]));
}

async function problemsOf(programs: string) {
  const { problems = [] } = await run('f.yaml', file(programs));
  return problems.map(
    ({ message, hint, at }) => `${at?.line} ${message}${hint === undefined ? '' : ` | ${hint}`}`,
  );
}

describe('a program in phases', () => {
  it('that is one phase gives what it gives without phases', async () => {
    const rhythm = `weeks: 6, sessions per week: 2, work: [${squat}, ${hold}], progress: 1 % per week, deload: { week: 3, sets: half }`;
    const programs = await programsOf(
      file(`  plain: { ${rhythm} }\n  one: { phases: [{ ${rhythm} }] }\n`),
    );
    const [plain, one] = [programs.get('plain'), programs.get('one')];
    expect(one?.ratio).toEqual(plain?.ratio);
    expect(one?.landing).toEqual(plain?.landing);
    expect(one?.weekly).toEqual(plain?.weekly);
    expect(one?.minutesPerWeek).toBe(plain?.minutesPerWeek);
    expect(one?.singlesAfter.map(({ load }) => load)).toEqual(
      plain?.singlesAfter.map(({ load }) => load),
    );
  });

  it('has the weeks of all phases, and the minutes and sessions of the busiest (hand calculation)', async () => {
    const program = (await programsOf(file(season))).get('season');
    expect(program?.program).toMatchObject({ weeks: 9, sessionsPerWeek: 3 });
    expect(program?.phases.map(({ from, to }) => [from, to])).toEqual([
      [1, 4],
      [5, 6],
      [7, 9],
    ]);
    // Squat: 4 · 6 · 3 s + 3 · 120 s = 432 s. Holds: 3 · (4 · 5 s + 3 · 10 s) + 2 · 60 s = 270 s.
    const minutes = program?.phases.map(({ minutesPerWeek }) => minutesPerWeek) ?? [];
    expect(minutes[0]).toBeCloseTo((3 * 432) / 60, 9);
    expect(minutes[1]).toBe(0);
    expect(minutes[2]).toBeCloseTo((2 * (270 + 432 + 90)) / 60, 9);
    expect(program?.minutesPerWeek).toBe(minutes[2]);
  });

  it('works what each phase says, week by week', async () => {
    const weekly = (await programsOf(file(season))).get('season')?.weekly ?? [];
    const sets = weekly.map(({ hardSets }) => hardSets['hip extension'] ?? 0);
    const [first = 0, , lighter = 0, , off = 0, alsoOff = 0] = sets;
    expect(first).toBeGreaterThan(0);
    // Week 3 has half the sets of a load that is 1.01² times the first: between a half and 1.1 halves.
    expect(lighter / first).toBeGreaterThan(0.5);
    expect(lighter / first).toBeLessThan(0.55);
    expect([off, alsoOff]).toEqual([0, 0]);
    const gains = weekly.map(({ gain }) => gain);
    expect(gains[5]).toBeLessThan(gains[3] ?? 0);
    expect(gains[8]).toBeGreaterThan(gains[5] ?? 0);
  });

  it('is judged within the target’s weeks', async () => {
    const cut = (await programsOf(file(season, ', within: 6 weeks'))).get('season');
    const whole = (await programsOf(file(season))).get('season');
    expect(cut?.weeks).toBe(6);
    expect(cut?.landing.meanGain).toBeCloseTo(whole?.weekly[5]?.gain ?? 0, 12);
    expect(whole?.landing.meanGain).toBeCloseTo(whole?.weekly[8]?.gain ?? 0, 12);
  });

  it('without any work gains nothing', async () => {
    const idle = (
      await programsOf(
        file('  idle: { phases: [{ weeks: 4, off: yes }, { weeks: 2, work: [] }] }\n'),
      )
    ).get('idle');
    expect(idle?.ratio.every((ratio) => ratio === 1)).toBe(true);
    expect(idle?.landing).toMatchObject({ meanGain: 0, hitShare: 0 });
    expect(idle?.minutesPerWeek).toBe(0);
  });

  it('gives the same with included angles', async () => {
    const included = file(season)
      .replace('angles: flexion', 'angles: included')
      .replace('from: 75 deg, to: 100 deg', 'from: 105 deg, to: 80 deg')
      .replaceAll('from: 0 deg, to: 100 deg', 'from: 180 deg, to: 80 deg');
    const [one, other] = [await programsOf(file(season)), await programsOf(included)].map(
      (programs) => programs.get('season')?.weekly ?? [],
    );
    expect(one).toHaveLength(9);
    one?.forEach(({ gain }, week) => {
      expect(other?.[week]?.gain).toBeCloseTo(gain, 10);
    });
  });

  it('can be like another, change a phase and put phases in place of work', async () => {
    const programs = await programsOf(
      file(`${season}  longer:
    like: season
    change: { phases.2.weeks: 3, phases.3.work.1.effort: 80 %, phases.3.work.2: }
  plain: { weeks: 3, sessions per week: 2, work: [${hold}] }
  paused: { like: plain, phases: [{ weeks: 1, off: yes }, { weeks: 2, sessions per week: 2, work: [${hold}] }] }
`),
    );
    const longer = programs.get('longer')?.program;
    expect(longer?.phases?.map(({ weeks, places }) => [weeks, places])).toEqual([
      [4, [0]],
      [3, []],
      [3, [1]],
    ]);
    expect(longer?.work[1]).toMatchObject({ kind: 'hold', effort: 0.8 });
    expect(programs.get('paused')?.program).toMatchObject({ weeks: 3, sessionsPerWeek: 2 });
  });

  it('has its calendar in the report and in the JSON', async () => {
    const results = await resultsOf(file(season));
    const report = renderMarkdown(fullReport(results)).replace(/\s+/g, ' ');
    expect(report).toContain('9 weeks in 3 phases.');
    expect(report).toContain(
      'Off-season, weeks 1-4: 3 sessions a week; load +1.0 % a week; week 3 with 50 % of the sets; 22 minutes a week.',
    );
    expect(report).toContain('Weeks 5-6: off.');
    expect(report).toContain('## Week by week');
    expect(report).toMatch(/\| season: off-season \| +1–4 \|/);
    expect(JSON.parse(JSON.stringify(resultsJson(results)))).toMatchObject({
      ranking: [
        {
          phases: [
            { name: 'off-season', from: 1, to: 4, sessionsPerWeek: 3, minutesPerWeek: 21.6 },
            { from: 5, to: 6, sessionsPerWeek: 0, minutesPerWeek: 0 },
            { from: 7, to: 9 },
          ],
          weeks: Array.from({ length: 9 }, (_, i) => ({ week: i + 1 })),
          muscles: [{ muscle: 'vastus lateralis' }, {}, {}, {}],
        },
      ],
    });
  });
});

describe('the calendar of a report', () => {
  const plain = `  plain: { weeks: 4, sessions per week: 2, work: [${squat}], deload: { week: 2, sets: half } }\n`;

  it('stands where a program has phases, and for other programs where a notebook asks', async () => {
    const without = renderMarkdown(fullReport(await resultsOf(file(plain))));
    expect(without).not.toContain('Week by week');
    const asked = `${file(plain)}notebook:\n  - section: calendar\n`;
    const report = renderMarkdown(fullReport(await resultsOf(asked)));
    expect(report).toContain('## Week by week');
    expect(report.match(/\| plain +\| +1–4 \|/g)).toHaveLength(1);
  });

  it('ends where the program is judged', async () => {
    const report = renderMarkdown(fullReport(await resultsOf(file(season, ', within: 5 weeks'))));
    expect(report).toMatch(/\| phase 2 +\| +5 \|/);
    expect(report).not.toContain('phase 3');
  });

  it.each([
    // Two weeks without training and longer are to be eased into (CSCCa/NSCA 2019).
    ['weeks: 2, off: yes', true],
    ['weeks: 1, off: yes', false],
  ])('takes care of a lay-off: { %s } %s', async (off, told) => {
    const text = file(season.replace('weeks: 2, off: yes', off));
    const report = renderMarkdown(fullReport(await resultsOf(text)));
    expect(report.includes('Care (4): it starts again after two weeks off or more.')).toBe(told);
  });
});

describe('muscles under Why', () => {
  it('show sets, growth by region and fibre length of the state trained', async () => {
    const { ranking, ...results } = await resultsOf(file(season));
    const vastus = placeOfMuscle('vastus lateralis');
    const change = ranking[0]?.program.state.changes.muscles[vastus] ?? unchangedMuscle;
    const { growth } = change;
    const percent = (share: number) => `${share >= 0 ? '+' : ''}${(100 * share).toFixed(1)} %`;
    const row = [...growth, fibreChange(change)].map(percent).join(' | ');
    expect(Math.min(...growth)).toBeGreaterThan(0.01);
    const report = renderMarkdown(fullReport({ ranking, ...results })).replace(/ +/g, ' ');
    const start = report.indexOf('| vastus lateralis |');
    expect(report.slice(start, report.indexOf('\n', start))).toContain(`| ${row} |`);
  });

  it('are told of every action whose muscles the tables have', async () => {
    const text = file(season).replace(
      'action: knee extension, from: 75',
      'action: hip extension, from: 60',
    );
    const report = renderMarkdown(fullReport(await resultsOf(text)));
    expect(report).toContain('| gluteus maximus');
  });

  it('are said to be unknown at the shoulder', async () => {
    const text = file(season).replace(
      'action: knee extension, from: 75',
      'action: shoulder flexion, from: 60',
    );
    const report = renderMarkdown(fullReport(await resultsOf(text)));
    expect(report).toContain('The tables do not have the shoulder flexors');
    expect(report).not.toContain('| fibres |');
  });
});

describe('what is wrong with phases', () => {
  const cases: readonly [string, string, string][] = [
    ['no phase', '[]', '6 phases is an empty list; a program has at least one phase'],
    [
      'no sessions',
      `[{ weeks: 2, work: [${hold}] }]`,
      '6 sessions per week is missing in a phase with work | add for example "sessions per week: 2"; weeks without training are off: yes',
    ],
    [
      'a lighter week outside',
      `[{ weeks: 2, sessions per week: 2, work: [${hold}], deload: { week: 3, sets: half } }]`,
      '6 week is 3, but the phase lasts 2 weeks',
    ],
    [
      'too many weeks',
      '[{ weeks: 100, off: yes }, { weeks: 5, off: yes }]',
      '6 the phases come to 105 weeks; at most 104 can be read',
    ],
    [
      'no weeks off',
      '[{ off: yes }]',
      '6 programs.p.phases.1.weeks is missing | add for example "weeks: 4"',
    ],
  ];
  it.each(cases)('%s', async (_, phases, told) => {
    expect(await problemsOf(`  p: { phases: ${phases} }\n`)).toEqual([told]);
  });

  it('names of a plain program beside phases', async () => {
    const [told = ''] = await problemsOf('  p: { weeks: 8, phases: [{ weeks: 8, off: yes }] }\n');
    expect(told).toContain('unknown name "weeks" in programs.p');
  });

  it('more lifts times weeks than are computed: 100 weeks × 6 lifts', async () => {
    const six = Array.from({ length: 6 }, () => squat).join(', ');
    const [told = ''] = await problemsOf(
      `  p: { phases: [{ weeks: 4, off: yes }, { weeks: 100, sessions per week: 2, work: [${six}] }] }\n`,
    );
    expect(told).toContain('the programs come to 600 lifts times weeks');
  });
});
