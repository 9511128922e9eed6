/** One curve on a grid of characters: runs without gaps, resampled to columns, drawn by asciichart. */

import { plot } from 'asciichart';
import { rowCount, type Scale } from './scale.ts';

/** The grid of a chart: `columns` wide, the middle of the first at `from`, of the last at `to`. */
export interface Frame {
  readonly columns: number;
  readonly from: number;
  readonly to: number;
  readonly scale: Scale;
  /** Whether the axis is one of degrees, which has round values of its own. */
  readonly isAngle: boolean;
  /** Whether only whole values were looked at: no ticks between them. */
  readonly isWhole: boolean;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

type Run = readonly Point[];

/** The column of a value of the axis, counted from 0; a fraction between the middles of two columns. */
export function columnOf(frame: Frame, x: number): number {
  return ((x - frame.from) / (frame.to - frame.from)) * (frame.columns - 1);
}

function valueIn(frame: Frame, column: number): number {
  return frame.from + (column / (frame.columns - 1)) * (frame.to - frame.from);
}

/** The stretches of a curve in order of the axis that have no missing or infinite value inside. */
function finiteRuns(x: readonly number[], y: readonly number[]): Run[] {
  const points = x
    .map((x, index) => ({ x: x, y: y[index] ?? Number.NaN }))
    .filter((point) => Number.isFinite(point.x))
    .sort((a, b) => a.x - b.x);
  const runs: Point[][] = [[]];
  for (const point of points)
    if (Number.isFinite(point.y)) runs.at(-1)?.push(point);
    else runs.push([]);
  return runs.filter((run) => run.length > 0);
}

/** The run's value at a place of the axis by straight lines between its points, level beyond its ends. */
function valueAt(run: Run, x: number): number {
  const next = run.findIndex((point) => point.x >= x);
  const after = run[next] ?? run.at(-1);
  const before = run[Math.max(0, next - 1)];
  if (!after || !before) return Number.NaN;
  const span = after.x - before.x;
  if (next <= 0 || span <= 0) return after.y;
  return before.y + ((x - before.x) / span) * (after.y - before.y);
}

/**
 * The first and last column of a run that follows one ending at column `drawn`. A gap too narrow to
 * hold the middle of a column still gets one empty column, as long as the run keeps one to be seen.
 */
function columnsOf(run: Run, frame: Frame, drawn: number): [first: number, last: number] {
  const start = columnOf(frame, run[0]?.x ?? 0);
  const end = columnOf(frame, run.at(-1)?.x ?? 0);
  let first = Math.ceil(start - 1e-9);
  let last = Math.floor(end + 1e-9);
  if (last < first) first = last = Math.round((start + end) / 2);
  if (first <= drawn + 1) first = Math.min(drawn + 2, Math.max(last, drawn + 1));
  return [first, Math.max(first, last)];
}

/**
 * asciichart fills column k from samples k and k + 1. A line of box characters therefore takes its
 * samples at the edges of columns, and a line of marks, whose column shows sample k + 1 alone,
 * at the middles: either way a peak stands in the column of its place.
 */
function samples(run: Run, frame: Frame, first: number, last: number, mark?: string): number[] {
  const { low, high } = frame.scale;
  return Array.from({ length: last - first + 2 }, (_, index) => {
    const column = mark === undefined ? first + index - 0.5 : Math.max(first, first + index - 1);
    return Math.min(high, Math.max(low, valueAt(run, valueIn(frame, column))));
  });
}

/**
 * A curve as rows of characters, top row first, blank where it does not pass: in box characters, or
 * in one mark so that several curves can be told apart without colour. Places may be in any order;
 * a missing or infinite value leaves a gap. Left out: a bend narrower than a column.
 */
export function drawCurve(
  x: readonly number[],
  y: readonly number[],
  frame: Frame,
  mark?: string,
): string[] {
  const rows = rowCount(frame.scale);
  const canvas: string[] = Array.from({ length: rows + 1 }, () => ' '.repeat(frame.columns));
  let drawn = -2;
  for (const run of finiteRuns(x, y)) {
    const [first, last] = columnsOf(run, frame, drawn);
    if (last >= frame.columns) break;
    const lines = plot(samples(run, frame, first, last, mark), {
      min: frame.scale.low,
      max: frame.scale.high,
      height: rows,
      offset: 1,
      format: () => ' ',
      // The corner a line of marks leaves from stays blank: one mark a column reads as a thin line.
      ...(mark !== undefined && {
        symbols: [' ', ' ', mark, mark, mark, mark, mark, ' ', ' ', mark],
      }),
    }).split('\n');
    canvas.forEach((row, index) => {
      // The first character is the one asciichart keeps for an axis of its own.
      const line = lines[index]?.slice(1) ?? '';
      canvas[index] = row.slice(0, first) + line + row.slice(first + line.length);
    });
    drawn = last;
  }
  return canvas;
}
