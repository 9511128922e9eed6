/** Round numbers along an axis. */

/** A vertical scale: labels at `low`, `low + step`, … `high`, and `rowsPerStep` text rows apart. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly rowsPerStep: number;
}

// Rows to one step, each with the steps that it cuts into round numbers. The cost weighs detail
// against labels too far apart to count rows between, or so close that they fill the side.
const steppings = [
  { rowsPerStep: 2, sizes: [1, 2, 5], cost: 1 },
  { rowsPerStep: 1, sizes: [1, 2, 5], cost: 1.3 },
  { rowsPerStep: 4, sizes: [1, 2, 5], cost: 1.3 },
  { rowsPerStep: 5, sizes: [1, 5], cost: 1.4 },
];

// Slack for sums such as 0.1 + 0.2 that land just beside a round number.
const slack = 1e-9;

/**
 * The range to show for values from `low` to `high`: zero belongs to it, unless the values all lie
 * in the far half from zero, where an axis from zero would flatten what differs between them.
 */
function shownRange(low: number, high: number): [low: number, high: number] {
  const size = Math.max(Math.abs(low), Math.abs(high));
  if (size < slack) return [0, 1];
  const flat = high - low < slack * size;
  if (!flat && low > high / 2) return [low, high];
  if (!flat && high < low / 2) return [low, high];
  return [Math.min(0, low), Math.max(0, high)];
}

/**
 * The scale in round numbers that shows values from `low` to `high` in good detail within
 * `mostRows` rows (at least 4). Values beyond 1e12 in size are left out of account: their labels
 * would be wider than a chart.
 */
export function roundScale(low: number, high: number, mostRows: number): Scale {
  const [from, to] = shownRange(low, high);
  const power = Math.floor(Math.log10(to - from));
  let best: (Scale & { cost: number }) | undefined;
  for (const { rowsPerStep, sizes, cost: weight } of steppings)
    for (const exponent of [power - 2, power - 1, power, power + 1])
      for (const size of sizes) {
        const step = Number(`${size}e${exponent}`);
        const first = Math.floor(from / step + slack);
        const last = Math.ceil(to / step - slack);
        const cost = (step / rowsPerStep) * weight;
        if ((last - first) * rowsPerStep > mostRows || (best && best.cost <= cost)) continue;
        best = { low: first * step, high: last * step, step, rowsPerStep, cost };
      }
  if (!best) throw new Error(`No scale for ${low} to ${high} within ${mostRows} rows.`);
  const { cost: _, ...scale } = best;
  return scale;
}

/** How many rows lie between the lowest and the highest label of a scale. */
export function rowCount(scale: Scale): number {
  return Math.round((scale.high - scale.low) / scale.step) * scale.rowsPerStep;
}

/** A value of a scale as its label, with the decimals that its step needs. */
export function tickText(value: number, step: number): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + slack));
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** The multiples of `step` from `low` to `high`, both included. */
export function multiples(low: number, high: number, step: number): number[] {
  const first = Math.ceil(low / step - slack);
  const last = Math.floor(high / step + slack);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => (first + index) * step,
  );
}
