import { describe, expect, it } from 'vitest';
import { fullReport } from '../src/page/fullReport.ts';
import { resultsJson } from '../src/page/resultsJson.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import type { Results } from '../src/run.ts';
import { blocksUnder, resultsOf, tableUnder, textsUnder } from './page/askReport.ts';

/** What a program does by angle: hard sets week by week, and torque after it. Invented programs. */

const squat =
  '{ lift: back squat, from: 0 deg, to: 120 deg, load: 75 %, sets: 4, reps: 6, tempo: 2-0-1, rest: 120 s }';
const hold = (deg: number) =>
  `{ hold: knee extension, at: ${deg} deg, effort: 90 %, sets: 3, reps: 4, seconds: 5, rest: 60 s }`;
const press =
  '{ lift: bench press, from: -15 deg, to: 75 deg, load: 75 %, sets: 4, reps: 6, tempo: 2-0-1, rest: 120 s }';

const tests = `tests:
  - { action: knee extension, contraction: isometric, trials: { 40 deg: [150], 70 deg: [240], 100 deg: [190] }, unit: N m }
`;

const file = (
  programs: string,
  { target = 'action: knee extension, from: 75 deg, to: 100 deg' } = {},
) => `title: By angle
angles: flexion
athlete: { code: X-1, reference: male, stature: 180 cm, mass: 80 kg, training: 3 years, limits: { knee flexion: 120 deg } }
${tests}target: { ${target} }
programs:
${programs}`;

const season = `  season:
    phases:
      - { weeks: 4, sessions per week: 3, work: [${squat}], progress: 2 % per week, deload: { week: 3, sets: half } }
      - { weeks: 2, off: yes }
      - { weeks: 3, sessions per week: 2, work: [${hold(90)}, ${hold(120)}] }
`;

const programOf = ({ ranking }: Results) => {
  const [placed] = ranking;
  if (!placed) throw new Error('no program');
  return placed.program;
};

const total = (sets: readonly number[]) => sets.reduce((sum, more) => sum + more, 0);

describe('hard sets by angle, week by week', () => {
  it('sum to those of the action, also where work ends at the limit of the joint', async () => {
    const { weekly } = programOf(await resultsOf(file(season)));
    expect(weekly).toHaveLength(9);
    for (const { hardSets, hardSetsByBand } of weekly)
      expect(total(hardSetsByBand)).toBeCloseTo(hardSets['knee extension'] ?? 0, 12);
    expect(total(weekly[0]?.hardSetsByBand ?? [])).toBeGreaterThan(0.5);
    expect(weekly[4]?.hardSetsByBand).toEqual([0, 0, 0, 0, 0]);
  });

  // A hold has one angle: 90° lies in the band from 75 to 100°, 120° is the end of the last.
  it('of a hold lie at its angle alone', async () => {
    const held = async (deg: number) =>
      programOf(
        await resultsOf(file(`  p: { weeks: 2, sessions per week: 2, work: [${hold(deg)}] }\n`)),
      ).weekly.map(({ hardSetsByBand }) => hardSetsByBand.map((sets) => sets > 0));
    const [no, yes] = [false, true];
    expect(await held(90)).toEqual([
      [no, no, no, yes, no],
      [no, no, no, yes, no],
    ]);
    expect((await held(120))[0]).toEqual([no, no, no, no, yes]);
  });

  it('fall by the share of a lighter week at every angle', async () => {
    const plain = `  p: { weeks: 3, sessions per week: 2, work: [${hold(90)}, ${hold(20)}], deload: { week: 2, sets: 40 % } }\n`;
    const { weekly } = programOf(await resultsOf(file(plain)));
    const [first = [], lighter = [], third] = weekly.map(({ hardSetsByBand }) => hardSetsByBand);
    expect(lighter).toHaveLength(5);
    for (const [i, sets] of lighter.entries()) expect(sets).toBeCloseTo(0.4 * (first[i] ?? 0), 12);
    expect(third).toEqual(first);
  });

  // The table of the chest and front shoulder begins at -10°: a deep press goes beyond.
  it('leave out work beyond the angles looked at, and the report says how much', async () => {
    const target = 'action: shoulder horizontal adduction, from: 0 deg, to: 50 deg';
    const asked = file(
      `  p: { phases: [{ weeks: 2, sessions per week: 2, work: [${press}] }, { weeks: 1, off: yes }] }\n`,
      { target },
    );
    const results = await resultsOf(asked);
    const [week] = programOf(results).weekly;
    const beyond =
      (week?.hardSets['shoulder horizontal adduction'] ?? 0) - total(week?.hardSetsByBand ?? []);
    expect(beyond).toBeGreaterThan(0.05);
    expect(textsUnder(results, 'Week by week').join(' ')).toContain(
      `Work beyond these angles is not shown (up to ${beyond.toFixed(1)} sets a week).`,
    );
  });

  it('stand in the report as a map of weeks, and in the JSON', async () => {
    const results = await resultsOf(file(season));
    const map = blocksUnder(results, 'Week by week').find(({ kind }) => kind === 'map');
    const columns = map?.kind === 'map' ? map.map.columns : [];
    expect(columns).toEqual(['1–4', '5–6', '7–9']);
    expect(textsUnder(results, 'Week by week')).toContain(
      '"season" (week 3 apart, with 50 % of the sets):',
    );
    const { weekly } = programOf(results);
    expect(JSON.parse(JSON.stringify(resultsJson(results)))).toMatchObject({
      target: {
        bandsDeg: [
          [0, 25],
          [25, 50],
          [50, 75],
          [75, 100],
          [100, 120],
        ],
      },
      ranking: [
        {
          weeks: weekly.map(({ week, hardSetsByBand }) => ({
            week,
            hardSetsByBand: hardSetsByBand.map((sets) => Number(sets.toFixed(2))),
          })),
        },
      ],
    });
  });

  it('are said of the last week where it is another than the first, which the table shows', async () => {
    const climbing = `  p: { weeks: 6, sessions per week: 2, work: [${squat.replace('75 %', '50 %')}], progress: 8 % per week }\n`;
    const results = await resultsOf(file(climbing));
    const [first, last] = [0, 5].map((i) =>
      total(programOf(results).weekly[i]?.hardSetsByBand ?? []),
    );
    expect((last ?? 0) / (first ?? 1)).toBeGreaterThan(1.2);
    expect(textsUnder(results, '1. p').join(' ')).toContain(
      ` (sets are those of the first week, together ${first?.toFixed(1)}; week 6 has ${last?.toFixed(1)}).`,
    );
    const still = await resultsOf(file(climbing.replace('8 % per week', '0 % per week')));
    expect(textsUnder(still, '1. p').join(' ')).not.toContain('of the first week, together');
  });
});

describe('torque before and after', () => {
  it('is the torque before with its gain, angle by angle', async () => {
    const results = await resultsOf(file(season));
    const { torque } = results.athlete.groups['knee extension'];
    const { ratio, torqueAfter } = programOf(results);
    expect(torqueAfter).toHaveLength(torque.length);
    torqueAfter.forEach((after, i) => {
      expect(after).toBeCloseTo((torque[i] ?? 0) * (ratio[i] ?? 0), 9);
    });
    const { athlete, ranking } = JSON.parse(JSON.stringify(resultsJson(results)));
    athlete.torque.forEach((before: number, i: number) => {
      // Rounding: 0.05 N·m before and after, half of 0.0001 of gain on less than 400 N·m.
      const expected = before * (1 + ranking[0].gainByAngle[i]);
      expect(Math.abs(ranking[0].torqueAfter[i] - expected)).toBeLessThan(0.05 + 0.07 + 0.02);
    });
  });

  it('stands in the report at the tested angles and the ends of the target', async () => {
    const results = await resultsOf(file(season));
    const [head, ...rows] = tableUnder(results, 'Torque before and after');
    expect(head).toEqual(['knee angle', 'before', 'after', 'difference']);
    // By hand: 75 is an end of the target, 100 an end and tested; 25 and 50 are 15 and 10 from 40.
    expect(rows.map(([angle]) => angle)).toEqual([
      '0°',
      '25°',
      '40° (tested)',
      '70° (tested)',
      '75°',
      '100° (tested)',
    ]);
    for (const [, before = '', after = '', difference = ''] of rows) {
      const numbers = [before, after, difference].map((cell) => Number.parseFloat(cell));
      const [was = 0, is = 0, more = 0] = numbers;
      expect(is - was).toBe(more);
      expect(difference.startsWith('+')).toBe(more > 0);
    }
  });

  it('names the strongest angles and the best program, and draws both curves to its limit', async () => {
    const results = await resultsOf(
      file(`${season}  light: { weeks: 2, sessions per week: 1, work: [${hold(30)}] }\n`),
    );
    const { landing } = programOf(results);
    const deg = (angle: number) => `${((angle * 180) / Math.PI).toFixed(0)}°`;
    expect(textsUnder(results, 'Torque before and after')[0]).toMatch(
      new RegExp(
        `^Before training the athlete is strongest at ${deg(landing.peakBefore)} \\(\\d+ N·m\\), and after "season" strongest at ${deg(landing.peakAfter)} \\(\\d+ N·m\\)\\.$`,
      ),
    );
    const block = blocksUnder(results, 'Torque before and after').find(
      ({ kind }) => kind === 'chart',
    );
    if (block?.kind !== 'chart') throw new Error('no chart');
    expect(block.chart.series.map(({ name }) => name)).toEqual([
      'before training',
      'after "season"',
    ]);
    expect([block.chart.x[0], block.chart.x.at(-1)]).toEqual([0, 120]);
  });

  it('is one sentence where nothing changes', async () => {
    const idle = await resultsOf(file('  idle: { phases: [{ weeks: 2, off: yes }] }\n'));
    expect(blocksUnder(idle, 'Torque before and after')).toEqual([
      { kind: 'text', text: '"idle" leaves the torque at every angle as it is.' },
    ]);
  });

  it('can be asked for by a notebook, and fits 40 columns', async () => {
    const asked = `${file(season)}notebook:\n  - section: torque before and after\n`;
    const { title, sections } = fullReport(await resultsOf(asked));
    const own = sections.filter(({ heading }) => heading === 'Torque before and after');
    expect(own).toHaveLength(1);
    const lines = renderTerminal({ title, sections: own }, 40).split('\n');
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(40);
  });
});
