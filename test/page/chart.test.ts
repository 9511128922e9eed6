import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawChart } from '../../src/page/chart.ts';
import type { Chart } from '../../src/page/report.ts';
import { displayWidth } from '../../src/page/wrap.ts';

const wholeDegrees = Array.from({ length: 141 }, (_, angle) => angle);
const widths = [38, 40, 57, 78, 100];

/** A tent of height 10 with its top at one angle. */
function tent(peakDeg: number): number[] {
  return wholeDegrees.map((angle) => 10 - Math.abs(angle - peakDeg) / 10);
}

function chartOf(...curves: readonly (readonly number[])[]): Chart {
  const series = curves.map((y, index) => ({ name: `program ${index + 1}`, y }));
  return { title: 'gain (%)', x: wholeDegrees, series };
}

function lineWith(lines: readonly string[], sign: string): string {
  return lines.find((line) => line.includes(sign)) ?? '';
}

/** The column of the labelled tick above the text of an angle. */
function tickColumn(lines: readonly string[], angle: number): number {
  const at = lineWith(lines, 'deg ').search(new RegExp(`\\b${angle}\\b`, 'u'));
  const axis = lineWith(lines, '└');
  const ticks = [...axis].flatMap((sign, column) => (sign === '┼' ? [column] : []));
  return ticks.find((column) => column >= at && column < at + String(angle).length) ?? -1;
}

/** The middle of the columns a mark takes in the highest row it reaches. */
function topColumn(lines: readonly string[], marks: RegExp): number {
  const row = lines.slice(1).find((line) => marks.test(line.slice(4))) ?? '';
  const columns = [...row].flatMap((sign, column) =>
    column > 4 && marks.test(sign) ? [column] : [],
  );
  return ((columns[0] ?? -1) + (columns.at(-1) ?? -1)) / 2;
}

describe('the angle axis', () => {
  it.each(widths)('has a peak at 60 degrees above the tick of 60, %i columns wide', (width) => {
    const alone = drawChart(chartOf(tent(60)), width);
    expect(tickColumn(alone, 60)).toBeGreaterThan(0);
    expect(Math.abs(topColumn(alone, /[─╭╮]/u) - tickColumn(alone, 60))).toBeLessThanOrEqual(0.5);
    const among = drawChart(chartOf(tent(60), tent(120)), width);
    expect(Math.abs(topColumn(among, /o/u) - tickColumn(among, 60))).toBeLessThanOrEqual(0.5);
  });

  it('puts a curve of few measured angles where they are', () => {
    const series = [{ name: 'test', y: [0, 10, 2, 0] }];
    const lines = drawChart({ title: 'torque', x: [0, 60, 70, 140], series }, 78);
    expect(lines[1]?.[tickColumn(lines, 60)]).toMatch(/[─╭╮]/u);
  });

  it('does not depend on the order of the angles', () => {
    const chart = chartOf(tent(30), tent(90));
    const turned = {
      ...chart,
      x: chart.x.toReversed(),
      series: chart.series.map(({ name, y }) => ({ name, y: y.toReversed() })),
    };
    expect(drawChart(turned, 60)).toEqual(drawChart(chart, 60));
  });

  it('has fewer labels when narrow', () => {
    expect(lineWith(drawChart(chartOf(tent(60)), 78), 'deg ').split(/ +/u)).toEqual(
      'deg 0 20 40 60 80 100 120 140'.split(' '),
    );
    expect(lineWith(drawChart(chartOf(tent(60)), 40), 'deg ').split(/ +/u)).toEqual(
      'deg 0 30 60 90 120'.split(' '),
    );
  });
});

describe('an axis of another unit', () => {
  const over = (x: readonly number[], axis: string) => ({
    title: 'load (kg)',
    x,
    axis,
    series: [{ name: 'load', y: x.map((value) => (value === 60.25 ? 10 : 0)) }],
  });

  it.each(widths)('names itself in the middle, no degrees, %i columns wide', (width) => {
    const lines = drawChart(over([60, 65, 70], 'mass (kg)'), width);
    expect(lines.at(-2)?.trim()).toBe('mass (kg)');
    expect(lines.join('')).not.toContain('deg');
  });

  // By hand: over 1 kg in 73 columns 6 columns are 0.083, so ticks stand every 0.1 kg; 38 columns
  // less the margin of 6 leave 32, 6 of them 0.19, so every 0.2.
  it('has round values with the decimals they need', () => {
    const labels = (width: number) =>
      drawChart(over([60, 60.25, 61], 'mass (kg)'), width)
        .at(-3)
        ?.trim()
        .split(/ +/u);
    expect(labels(79)).toEqual('60.0 60.1 60.2 60.3 60.4 60.5 60.6 60.7 60.8 60.9 61.0'.split(' '));
    expect(labels(38)).toEqual('60.0 60.2 60.4 60.6 60.8 61.0'.split(' '));
  });

  it('has no ticks between whole values, and none that touch', () => {
    const labels = (x: readonly number[], width: number) =>
      drawChart(over(x, 'sets'), width).at(-3)?.trim().split(/ +/u);
    expect(labels([2, 3, 4], 100)).toEqual(['2', '3', '4']);
    expect(labels([1_000_000, 1_000_020], 38)).toEqual(['1000000', '1000010', '1000020']);
  });
});

describe('gaps', () => {
  // 0 on both sides of the gap, so the whole curve lies in the lowest row; 7 degrees are some
  // two columns of 33, three of 71.
  it.each(widths)('stay empty, %i columns wide', (width) => {
    for (const narrow of [0, 4]) {
      const y = wholeDegrees.map((angle) => (angle >= 63 && angle <= 63 + narrow ? Number.NaN : 0));
      const lowest = lineWith(drawChart(chartOf(y), width), '0.0 ┤');
      expect(lowest.slice(5)).toMatch(/^─+[ ·]{1,4}─+$/u);
      expect(lowest.length).toBe(width);
    }
  });

  it('come from infinite values and from a series that ends early, too', () => {
    const y = wholeDegrees
      .slice(0, 101)
      .map((angle) => (angle < 40 ? Number.POSITIVE_INFINITY : 0));
    const lowest = lineWith(drawChart(chartOf(y), 78), '0.0 ┤').slice(5);
    expect(lowest).toMatch(/^[ ·]{21}─{31}[ ·]+$/u);
  });

  it('still show a single measured angle', () => {
    const y = wholeDegrees.map((angle) => (angle === 60 ? 5 : Number.NaN));
    const lines = drawChart(chartOf(y, tent(100)), 78);
    const mark = lines.slice(1, -1).filter((line) => line.includes('o'));
    expect(mark).toHaveLength(1);
    expect(mark[0]?.indexOf('o')).toBe(tickColumn(lines, 60));
  });
});

describe('several curves', () => {
  it('have a mark each, named in the legend', () => {
    const curves = Array.from({ length: 8 }, (_, index) => wholeDegrees.map(() => index));
    const lines = drawChart(chartOf(...curves), 78);
    const legend = lines.slice(-2).join(' ');
    const marks = [...legend.matchAll(/(\S) program (\d)/gu)];
    expect(new Set(marks.map(([, mark]) => mark)).size).toBe(8);
    for (const [, mark = '', number] of marks)
      expect(lineWith(lines, `${Number(number) - 1} ┤`).slice(5)).toBe(mark.repeat(73));
  });

  it('show the first where two meet, and say so of one that is hidden whole', () => {
    const lines = drawChart(chartOf(tent(60), tent(60), []), 78);
    expect(lines.slice(1, -3).join('')).not.toContain('*');
    expect(lines.at(-1)).toBe(
      'o program 1   * program 2 (hidden under the others)   x program 3 (no values)',
    );
  });
});

describe('the target band', () => {
  const named = (fromDeg: number, toDeg: number, width: number) => {
    const chart = { ...chartOf(tent(60)), band: { fromDeg, toDeg, name: 'target' } };
    return drawChart(chart, width).at(-2) ?? '';
  };

  it('is named inside, beside or away from its bar', () => {
    // Columns by hand: 73 for 140 degrees at width 78, so 20 is column 10.3 and 100 is 51.4.
    expect(named(20, 100, 78)).toBe(
      `     ${' '.repeat(10)}[===========target 20-100 deg============]`,
    );
    expect(named(75, 100, 78).trim()).toBe('[===========] target 75-100 deg');
    expect(named(75, 100, 40).trim()).toBe('target 75-100 deg [=====]');
    // 110 is column 56.6, the last is 72: between 57 and 72 lie 14.
    expect(named(110, 170, 78).trim()).toBe('target 110-170 deg [==============>');
    expect(named(150, 170, 78)).toBe('target 150-170 deg (outside the chart)');
    expect(named(60, 60, 78).trim()).toBe('^ target 60 deg');
  });
});

describe('any chart', () => {
  const value = fc.oneof(
    { weight: 8, arbitrary: fc.double({ min: -1e9, max: 1e9, noNaN: true }) },
    { weight: 4, arbitrary: fc.double({ min: -20, max: 20, noNaN: true }) },
    { weight: 2, arbitrary: fc.constantFrom(0, Number.NaN, Number.NEGATIVE_INFINITY) },
  );
  const angle = fc.integer({ min: -200, max: 400 });
  const name = fc.string({ unit: 'grapheme', maxLength: 60 });
  const charts = fc.record({
    title: name,
    x: fc.uniqueArray(angle, { maxLength: 60 }),
    series: fc.array(fc.record({ name, y: fc.array(value, { maxLength: 60 }) }), { maxLength: 8 }),
    band: fc.record({ fromDeg: angle, toDeg: angle, name }),
    axis: name,
  });

  it('stays within its width, without trailing spaces or line breaks', () => {
    fc.assert(
      fc.property(
        charts,
        fc.integer({ min: 38, max: 100 }),
        fc.boolean(),
        fc.boolean(),
        ({ band, axis, ...rest }, width, ascii, isAngle) => {
          const chart = { ...rest, ...(isAngle ? { band } : { axis }) };
          for (const line of drawChart(chart, width, { ascii })) {
            expect(displayWidth(line)).toBeLessThanOrEqual(width);
            expect(line).toBe(line.trimEnd());
            expect(line).not.toContain('\n');
          }
        },
      ),
    );
  });

  it('is ASCII throughout when asked for and its names are', () => {
    for (const curves of [[tent(60)], [tent(60), tent(-300)]])
      expect(drawChart(chartOf(...curves), 38, { ascii: true }).join('')).toMatch(/^[ -~]+$/u);
  });

  it('says so when there is nothing to draw', () => {
    expect(drawChart({ title: 'gain', x: [], series: [] }, 40)).toEqual([
      'gain',
      '(no values to draw)',
    ]);
  });
});
