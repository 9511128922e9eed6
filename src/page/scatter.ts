/** One point of a scatter: what was predicted and what was observed. */
export interface ScatterPoint {
  readonly x: number;
  readonly y: number;
}

const columns = 61;
const rows = 25;

/**
 * Predicted (across) against observed (up) as text: a digit counts the points of a cell (9: nine or
 * more), a dot marks where both are equal.
 *
 * @param least start of both axes, `most` their end; points beyond lie on the edge
 */
export function scatterText(
  points: readonly ScatterPoint[],
  { least, most }: { readonly least: number; readonly most: number },
): string {
  const place = (value: number, cells: number) =>
    Math.round(Math.min(Math.max((value - least) / (most - least), 0), 1) * (cells - 1));
  const counts = Array.from({ length: rows }, () => new Array<number>(columns).fill(0));
  for (const { x, y } of points) {
    const row = counts[place(y, rows)];
    const column = place(x, columns);
    if (row) row[column] = (row[column] ?? 0) + 1;
  }
  const lines = counts.map((row, r) => {
    const value = least + ((most - least) * r) / (rows - 1);
    const label = r % 4 === 0 ? value.toFixed(0) : '';
    const equal = place(value, columns);
    const cells = row.map((count, c) => symbol(count, c === equal));
    return `${label.padStart(5)} |${cells.join('')}`.trimEnd();
  });
  return [...lines.reverse(), axis(least, most)].join('\n');
}

const symbol = (count: number, isEqual: boolean) => {
  if (count > 0) return String(Math.min(count, 9));
  return isEqual ? '.' : ' ';
};

function axis(least: number, most: number): string {
  const marks = [0, 1, 2, 3, 4].map((i) => (least + ((most - least) * i) / 4).toFixed(0));
  const step = (columns - 1) / 4;
  const labels = marks.reduce((text, mark, i) => text.padEnd(7 + i * step) + mark, '');
  return `${' '.repeat(6)}+${'-'.repeat(columns)}\n${labels}`;
}
