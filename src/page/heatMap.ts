/** Numbers over two inputs as text: each with a shade by its size. */

import { threeDigits } from '../notebook/formula/cellText.ts';
import type { HeatMap } from './report.ts';
import { displayWidth, oneLine, pieces, wrapWords } from './wrap.ts';

// Each darker than the one before: they cover 3, 6, 13, 23 and 32 hundredths of their cell in
// DejaVu Sans Mono, as measured on its outlines.
const shades = ['..', '::', '++', 'XX', '@@'];

const noValue = '-';

/** Equal parts of the way from the smallest value to the largest, a shade each. */
interface Shading {
  readonly least: number;
  readonly most: number;
  readonly decimals: number;
  /** Amounts have their largest in another map, perhaps: none is marked. */
  readonly isMarked: boolean;
}

/**
 * Draws a map in at most `width` columns (38 to 100 are meant): a line for each row, in it a number
 * and its shade for each column, the largest in brackets unless they are amounts; as many columns
 * side by side as fit, the others below; then what the shades mean. Left out: labels beyond a third of the width.
 */
export function drawHeatMap(map: HeatMap, width: number): string[] {
  const { rows, columns, amounts } = map;
  const values = amounts ? withoutNothing(map.values, amounts.decimals) : map.values;
  const all = values.flat();
  const known = all.filter((value) => value !== undefined);
  if (known.length === 0) return wrapWords('(no values to draw)', width);
  const shading = amounts ? { least: 0, ...amounts, isMarked: false } : shadingOf(known);
  const missing = known.length < all.length ? (amounts?.none ?? 'no answer') : '';
  const longest = Math.floor(width / 3);
  const short = (label: string) => pieces(oneLine(label), longest)[0] ?? '';
  const lines = blocks(
    rows.map(short),
    columns.map((label) => `  ${short(label)}`),
    values.map((row) => row.map((value) => cellOf(value, shading))),
    width,
  );
  return [...lines, '', ...legend(shading, missing, width)];
}

/** What rounds to zero left out. */
function withoutNothing(values: HeatMap['values'], decimals: number): HeatMap['values'] {
  const isNothing = (value = 0) => Number(value.toFixed(decimals)) === 0;
  return values.map((row) => row.map((value) => (isNothing(value) ? undefined : value)));
}

/** The cells under their heads, in blocks of columns one below the other. */
function blocks(
  sides: readonly string[],
  heads: readonly string[],
  cells: readonly (readonly string[])[],
  width: number,
): string[] {
  const side = Math.max(...sides.map(displayWidth));
  const wide = Math.max(...[...cells.flat(), ...heads].map(displayWidth));
  const mostBeside = Math.max(1, Math.floor((width - side) / (wide + 1)));
  // As even as can be: 4 and 3 rather than 6 and 1.
  const count = Math.ceil(heads.length / mostBeside);
  const beside = Math.ceil(heads.length / count);
  const line = (label: string, texts: readonly string[]) =>
    [padded(label, side), ...texts.map((text) => padded(text, wide))].join(' ').trimEnd();
  return Array.from({ length: count }, (_, block) => {
    const part = (texts: readonly string[]) => texts.slice(block * beside, (block + 1) * beside);
    const body = sides.map((label, i) => line(label, part(cells[i] ?? [])));
    return [...(block > 0 ? [''] : []), line('', part(heads)), ...body];
  }).flat();
}

const padded = (text: string, wide: number) => text + ' '.repeat(wide - displayWidth(text));

/** Decimals show the largest to three digits. */
function shadingOf(known: readonly number[]): Shading {
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const size = Math.max(Math.abs(least), Math.abs(most));
  const digits = size === 0 ? 0 : 2 - Math.floor(Math.log10(Number(threeDigits(size))));
  return { least, most, decimals: Math.min(Math.max(digits, 0), 12), isMarked: true };
}

/** " 0.0243 ++ ", "[0.0283 @@]", " - ". */
function cellOf(value: number | undefined, shading: Shading): string {
  const { least, most, decimals, isMarked } = shading;
  // A sign for no value stands where the last digits of the others do.
  if (value === undefined)
    return ` ${isMarked ? noValue : noValue.padStart(most.toFixed(decimals).length)}`;
  const part = most > least ? (value - least) / (most - least) : 0;
  const shade = shades[Math.min(Math.floor(part * shades.length), shades.length - 1)] ?? '';
  const [text, largest, smallest] = [value, most, least].map((one) => one.toFixed(decimals));
  const longest = Math.max(largest?.length ?? 0, smallest?.length ?? 0);
  // What prints alike cannot be told apart: all of them are the largest.
  const [open, close] = isMarked && text === largest && largest !== smallest ? '[]' : '  ';
  return `${open}${text?.padStart(longest)} ${shade}${close}`;
}

/** What the shades and signs mean, as many on a line as fit. */
function legend(
  { least, most, decimals, isMarked }: Shading,
  missing: string,
  width: number,
): string[] {
  const bound = (i: number) => (least + ((most - least) * i) / shades.length).toFixed(decimals);
  const isFlat = bound(0) === bound(shades.length);
  const entries = isFlat
    ? [`all are ${bound(0)}`]
    : shades.map((shade, i) => `${shade} ${bound(i)} to ${bound(i + 1)}`);
  if (!isFlat && isMarked) entries.push('[ ] largest');
  if (missing !== '') entries.push(`${noValue} ${missing}`);
  const lines: string[] = [];
  for (const entry of entries) {
    const longer = `${lines.at(-1) ?? ''}   ${entry}`;
    if (lines.length > 0 && longer.length <= width) lines[lines.length - 1] = longer;
    else lines.push(entry);
  }
  return lines;
}
