/** A line chart in text: curves over an axis, with the target range marked under one of degrees. */

import {
  angleName,
  asciiStrokes,
  bandLines,
  boxStrokes,
  guides,
  labelledAxis,
  type Strokes,
} from './axis.ts';
import { drawCurve, type Frame } from './curve.ts';
import type { Chart } from './report.ts';
import { roundScale, rowCount, type Scale, tickText } from './scale.ts';
import { displayWidth, oneLine, wrapWords } from './wrap.ts';

// Signs that differ in shape and in how dark they print, the most different first.
const marks = [...'o*x+#@%&', ...'ABCDEFGHIJKLMNPQRSTUVWYZ'];

// As many rows as a chart can have and still be seen whole, with its legend, in a window of 24.
const mostRows = 16;

function shownValues({ x, axis }: Chart): [from: number, to: number] {
  const finite = x.filter(Number.isFinite);
  const from = Math.min(...finite);
  const to = Math.max(...finite);
  // A single value still needs an axis around it.
  const isNarrow = axis === undefined ? to - from < 2 : to === from;
  return isNarrow ? [from - 5, to + 5] : [from, to];
}

/** The layers as one, top row first; in each cell the first layer that has something there wins. */
function overlaid(layers: readonly (readonly string[])[], frame: Frame): string[] {
  return Array.from({ length: rowCount(frame.scale) + 1 }, (_, row) =>
    Array.from({ length: frame.columns }, (_, column) => {
      const cells = layers.map((layer) => layer[row]?.[column] ?? ' ');
      return cells.find((cell) => cell !== ' ') ?? ' ';
    }).join(''),
  );
}

/** A label for each row of a scale, top row first; empty between the round values. */
function rowLabels(scale: Scale, least: number): string[] {
  const { high, step, rowsPerStep } = scale;
  const labels = Array.from({ length: rowCount(scale) + 1 }, (_, row) =>
    row % rowsPerStep === 0 ? tickText(high - (row / rowsPerStep) * step, step) : '',
  );
  // At least as wide as the unit of the axis, which stands under them.
  return labels.map((label) => (label === '' ? '' : label.padStart(least)));
}

/** The marks and names of the curves, as many on a line as fit. */
function legendLines(entries: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const entry of entries) {
    const longer = `${lines.at(-1) ?? ''}   ${entry}`;
    if (lines.length > 0 && displayWidth(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(...wrapWords(entry, width, '', '  '));
  }
  return lines;
}

function markOf(index: number): string {
  return marks[index % marks.length] ?? 'o';
}

/** Names with their marks; a curve that cannot be seen is said to be so. */
function legend(
  chart: Chart,
  curves: readonly (readonly string[])[],
  cells: readonly string[],
  line?: string,
): string[] {
  return chart.series.flatMap(({ name, mark: own }, index) => {
    const mark = line ?? own ?? markOf(index);
    const before = chart.series[index - 1];
    if (own !== undefined && before?.mark === own && before.name === name) return [];
    const empty = curves[index]?.every((row) => row.trim() === '') ?? true;
    const seen = line !== undefined || cells.some((row) => row.includes(mark));
    const note = empty ? ' (no values)' : seen ? '' : ' (hidden under the others)';
    return `${mark} ${oneLine(name)}${note}`;
  });
}

/** The labels, side and cells of a chart, top row first. */
function sideBySide(
  labels: readonly string[],
  cells: readonly string[],
  strokes: Strokes,
): string[] {
  const widest = Math.max(...labels.map((label) => label.length));
  return labels.map((label, row) => {
    const side = label === '' ? strokes.side : strokes.sideTick;
    return `${label.padStart(widest)} ${side}${cells[row] ?? ''}`;
  });
}

/** What the axis is, in the middle under its values; nothing for degrees, which say so beside them. */
function axisName(name: string, margin: number, width: number): string[] {
  if (name === '') return [];
  const spare = width - margin - displayWidth(oneLine(name));
  return wrapWords(name, width, ' '.repeat(spare < 0 ? 0 : margin + Math.floor(spare / 2)), '');
}

/**
 * Draws a chart in at most `width` columns (38 to 100 are meant): title, curves, axis with what it
 * is, target band, legend. One curve is drawn in box characters, several in a mark each; in a cell that
 * two share, the first in the list is seen, and the legend says so of a curve that is hidden whole.
 * `ascii` draws the frame and a lone curve in ASCII too; titles and names are printed as they are.
 */
export function drawChart(chart: Chart, width: number, { ascii = false } = {}): string[] {
  const title = wrapWords(chart.title, width);
  const finite = chart.series
    .flatMap(({ y }) => y.slice(0, chart.x.length))
    .filter(Number.isFinite);
  const [from, to] = shownValues(chart);
  if (finite.length === 0 || !Number.isFinite(to - from))
    return [...title, ...wrapWords('(no values to draw)', width)];

  const strokes = ascii ? asciiStrokes : boxStrokes;
  const line = chart.series.length === 1 && !ascii ? strokes.base.repeat(2) : undefined;
  const scale = roundScale(Math.min(...finite), Math.max(...finite), mostRows);
  const unit = chart.axis === undefined ? angleName : '';
  const labels = rowLabels(scale, unit.length);
  const margin = Math.max(...labels.map((label) => label.length)) + 2;
  const columns = Math.max(8, width - margin);
  const frame: Frame = {
    columns,
    from,
    to,
    scale,
    isAngle: chart.axis === undefined,
    isWhole: chart.x.every(Number.isInteger),
  };
  const curves = chart.series.map(({ y, mark }, index) =>
    drawCurve(chart.x, y, frame, line ? undefined : (mark ?? markOf(index))),
  );
  const cells = overlaid([...curves, guides(frame, chart.band, strokes.dot)], frame);
  const [axis, values] = labelledAxis(frame, strokes);
  return [
    ...title,
    ...sideBySide(labels, cells, strokes),
    strokes.corner.padStart(margin) + axis,
    unit.padStart(margin - 2).padEnd(margin) + values,
    ...axisName(chart.axis ?? '', margin, width),
    ...(chart.band ? bandLines(chart.band, frame, margin, width) : []),
    ...legendLines(legend(chart, curves, cells, line), width),
  ].map((row) => row.trimEnd());
}
