import { describe, expect, it } from 'vitest';
import { drawChart } from '../../src/page/chart.ts';
import { renderTerminal } from '../../src/page/terminal.ts';
import { meanTorque } from '../../src/physiology/strengthCurve.ts';
import { run } from '../../src/run.ts';
import { blocksUnder, resultsOf, scenarioOf, tableUnder, textsUnder } from './askReport.ts';

const heading = 'What was measured';
const programs = {
  a: 'hold: knee extension, at: 80 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5',
};
const mean = (deg: number) => meanTorque('knee extension', 'male', 78, deg);
const tested = (points: readonly (readonly [deg: number, torque: number])[]) =>
  scenarioOf({
    programs,
    tests: `tests: [{ action: knee extension, contraction: isometric, trials: { ${points
      .map(([deg, torque]) => `${deg} deg: [${torque.toFixed(2)}]`)
      .join(', ')} }, unit: N m }]\n`,
  });

const good = [30, 50, 70, 90].map((deg) => [deg, mean(deg)] as const);

describe('the fitted curve in the report', () => {
  it('is one chart of tests, curve and band, each edge named once, at 80 and at 40 columns', async () => {
    const blocks = blocksUnder(await resultsOf(tested(good)), heading);
    const block = blocks.find(({ kind }) => kind === 'chart');
    if (block?.kind !== 'chart') throw new Error('no chart');
    for (const width of [78, 40]) {
      const lines = drawChart(block.chart, width);
      expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
      const text = lines.join('\n');
      // Four tests and their entry in the legend, apart from the words.
      const drawn = lines.slice(
        1,
        lines.findIndex((line) => line.includes('└')),
      );
      expect(drawn.join('').match(/o/g)).toHaveLength(4);
      expect(text.match(/90 % band/g)).toHaveLength(1);
      expect(text).not.toContain('hidden');
    }
    const section = { heading: 'Measured', blocks };
    const wide = renderTerminal({ title: 'T', sections: [section] }, 40).split('\n');
    expect(Math.max(...wide.map((line) => line.length))).toBeLessThanOrEqual(40);
  });

  it('says before the chart what it shows, and after it where no test lies', async () => {
    const texts = textsUnder(await resultsOf(tested(good)), heading);
    expect(texts[0]).toMatch(
      /^The curve fitted to the tests of knee extension: 100 % of the mean person of this size, strongest at 7\d°\. The chart shows it with the tests and a band that at each angle holds the true torque of 9 in 10 such athletes; the error of a test is taken as 4 %, borrowed/,
    );
    expect(texts.find((text) => text.startsWith('Not tested'))).toMatch(
      /^Not tested, so the curve leans on tables: below 30° \(-\d\d to \+\d\d % at 0°\) and above 90° \(-\d\d to \+\d\d % at 140°\)\.$/,
    );
    expect(texts.join(' ')).not.toContain('Worth checking');
  });

  it('says of two angles that the shape is not told, and of a wide gap where it is', async () => {
    const results = await resultsOf(tested([good[0] ?? [0, 0], good[3] ?? [0, 0]]));
    const texts = textsUnder(results, heading);
    expect(texts[0]).toContain('its shape that of the mean person (fewer than three angles');
    expect(texts.join(' ')).toContain('between 30° and 90° (');
  });

  it('names a test that the others do not expect, and the note stands at its number', async () => {
    const file = tested(good.map(([deg, torque]) => [deg, deg === 70 ? torque / 2.2046 : torque]));
    const texts = textsUnder(await resultsOf(file), heading);
    expect(texts.find((text) => text.includes('Worth checking'))).toMatch(
      /^Knee extension of \d+ N·m at 70° does not fit the other tests, which give about \d+ N·m there\. Worth checking: a pull in kilograms may have been taken as pounds/,
    );
    const told = await run('words.yaml', file);
    const notes = told.results ? told.notes : [];
    const [, ...odd] = notes;
    // The first note is that each angle has one trial.
    expect(notes.map(({ code }) => code)).toEqual(['one-trial', 'odd-torque']);
    const line = file.split('\n')[(odd[0]?.at?.line ?? 0) - 1] ?? '';
    expect(line.slice((odd[0]?.at?.col ?? 1) - 1)).toMatch(/^(70 deg|\[)/);
  });

  it('says that all tests may be in another unit', async () => {
    const file = tested(good.map(([deg, torque]) => [deg, torque / 9.80665]));
    const texts = textsUnder(await resultsOf(file), heading);
    expect(texts.join(' ')).toContain('All tests of knee extension would fit people far better');
    expect(texts.join(' ')).toContain('taken as newtons');
    const told = await run('words.yaml', file);
    // What is implausible by body mass is asked once, there.
    expect(told.results ? told.notes.map(({ code }) => code) : []).toEqual([
      'one-trial',
      'odd-torque',
    ]);
  });

  it('keeps the numbers in a table', async () => {
    const rows = tableUnder(await resultsOf(tested(good)), heading);
    expect(rows[1]?.slice(0, 2)).toEqual(['knee extension', '30°']);
    expect(rows.map((row) => row.at(-1))).toEqual(['difference', '0 %', '0 %', '0 %', '0 %']);
  });
});
