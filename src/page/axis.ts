/** The frame of a chart: axis of degrees or another unit, target band, and the guides behind the curves. */

import { columnOf, type Frame } from './curve.ts';
import type { Chart } from './report.ts';
import { multiples, rowCount, tickText } from './scale.ts';
import { rangeText } from './words.ts';
import { displayWidth, oneLine, wrapWords } from './wrap.ts';

/** Characters of the frame; the curves' marks are the same in both sets. */
export interface Strokes {
  readonly side: string;
  readonly sideTick: string;
  readonly corner: string;
  readonly base: string;
  readonly baseTick: string;
  readonly baseBare: string;
  readonly dot: string;
}

/** The frame in box characters. */
export const boxStrokes: Strokes = {
  side: '│',
  sideTick: '┤',
  corner: '└',
  base: '─',
  baseTick: '┼',
  baseBare: '┴',
  dot: '·',
};

/** The frame in ASCII, for chat messages and old printers. */
export const asciiStrokes: Strokes = {
  side: '|',
  // Not a plus: beside the mark of a curve it would look like one.
  sideTick: '|',
  corner: '+',
  base: '-',
  baseTick: '+',
  baseBare: "'",
  dot: '.',
};

/** The unit of the axis, as printed beside it. */
export const angleName = 'deg';

// The least columns from tick to tick: "120" and room around it; a bare tick needs less.
const labelledApart = 6;
const bareApart = 3;

type Band = NonNullable<Chart['band']>;

/** The smallest round step of which the multiples stand at least some columns apart. */
function roundStep(frame: Frame, columnsApart: number): number {
  const apart = (columnsApart * (frame.to - frame.from)) / (frame.columns - 1);
  const least = frame.isWhole ? Math.max(apart, 1) : apart;
  if (!frame.isAngle) {
    const power = 10 ** Math.floor(Math.log10(least));
    return power * ([1, 2, 5].find((size) => size * power >= least) ?? 10);
  }
  const steps = [1, 2, 5, 10, 20, 30, 60, 90, 180];
  return steps.find((step) => step >= least) ?? 360 * Math.ceil(least / 360);
}

/** The step from one labelled tick to the next: two blanks at least between their labels. */
function labelledStep(frame: Frame): number {
  const step = roundStep(frame, labelledApart);
  const longest = Math.max(...[frame.from, frame.to].map((end) => tickText(end, step).length));
  return roundStep(frame, Math.max(labelledApart, longest + 2));
}

/** The columns of the multiples of a step; columns that two of them share count once. */
function tickColumns(frame: Frame, step: number): Map<number, number> {
  const values = multiples(frame.from, frame.to, step);
  return new Map(values.map((value) => [Math.round(columnOf(frame, value)), value]));
}

/**
 * What lies behind the curves to read them by: dots where labelled rows and columns cross and along
 * zero, and the edges of the target range.
 */
export function guides(frame: Frame, band: Band | undefined, dot: string): string[] {
  const { scale, columns } = frame;
  const ticks = tickColumns(frame, labelledStep(frame));
  const edges = band ? [band.fromDeg, band.toDeg].map((x) => Math.round(columnOf(frame, x))) : [];
  const zeroRow =
    scale.low < 0 && scale.high > 0
      ? Math.round(scale.high / scale.step) * scale.rowsPerStep
      : undefined;
  return Array.from({ length: rowCount(scale) + 1 }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      if (edges.includes(column)) return ':';
      if (row === zeroRow) return column % 2 === 0 ? dot : ' ';
      return row % scale.rowsPerStep === 0 && ticks.has(column) ? dot : ' ';
    }).join(''),
  );
}

/** The axis line and, under it, its values, each centred under its tick as far as the edges allow. */
export function labelledAxis(frame: Frame, strokes: Strokes): [line: string, labels: string] {
  const step = labelledStep(frame);
  const bareStep = roundStep(frame, bareApart);
  const ticks = tickColumns(frame, step);
  // Bare ticks only where they divide the labelled step evenly: 10 within 20, not 20 within 30.
  const bare = tickColumns(
    frame,
    Number.isInteger(Number((step / bareStep).toFixed(6))) ? bareStep : step,
  );
  let line = '';
  for (let column = 0; column < frame.columns; column += 1)
    if (ticks.has(column)) line += strokes.baseTick;
    else line += bare.has(column) ? strokes.baseBare : strokes.base;
  let labels = '';
  for (const [column, value] of ticks) {
    const text = tickText(value, step);
    const start = Math.round(column - (text.length - 1) / 2);
    labels = labels.padEnd(Math.min(start, frame.columns - text.length)) + text;
  }
  return [line, labels];
}

/** The target range as a bar of the frame's columns, an arrow where it goes on beyond them. */
function bandBar(first: number, last: number, frame: Frame, text: string): string {
  const start = Math.max(0, first);
  const inside = Math.min(frame.columns - 1, last) - start - 1;
  if (inside < 0) return '^';
  const spare = inside - displayWidth(text);
  const before = Math.max(0, Math.floor(spare / 2));
  // The name stands in the bar where at least one stroke on either side still shows it as a bar.
  const filling =
    spare < 2 ? '='.repeat(inside) : '='.repeat(before) + text + '='.repeat(spare - before);
  return (first < 0 ? '<' : '[') + filling + (last >= frame.columns ? '>' : ']');
}

/** The bar of the target range under the axis, named inside it, beside it or in lines below. */
export function bandLines(band: Band, frame: Frame, margin: number, width: number): string[] {
  const text = oneLine(`${band.name} ${rangeText(band.fromDeg, band.toDeg)} ${angleName}`);
  const first = Math.round(columnOf(frame, Math.min(band.fromDeg, band.toDeg)));
  const last = Math.round(columnOf(frame, Math.max(band.fromDeg, band.toDeg)));
  if (last < 0 || first >= frame.columns) return wrapWords(`${text} (outside the chart)`, width);
  const bar = bandBar(first, last, frame, text);
  const start = margin + Math.max(0, first);
  const wide = displayWidth(text);
  if (bar.includes(text)) return [' '.repeat(start) + bar];
  if (start + bar.length + 1 + wide <= width) return [`${' '.repeat(start)}${bar} ${text}`];
  if (wide < start) return [`${' '.repeat(start - wide - 1)}${text} ${bar}`];
  return [' '.repeat(start) + bar, ...wrapWords(text, width)];
}
