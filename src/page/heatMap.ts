/** Numbers over two inputs as text: each with a shade by its size. */

import { threeDigits } from '../notebook/formula/cellText.ts';
import type { HeatMap } from './report.ts';
import { displayWidth, oneLine, pieces, wrapWords } from './wrap.ts';

// Each darker than the one before: they cover 3, 6, 13, 23 and 32 hundredths of their cell in
// DejaVu Sans Mono, as measured on its outlines.
const shades = ['..', '::', '++', 'XX', '@@'];

const noAnswer = '-';

/** Equal parts of the way from the smallest value to the largest, a shade each. */
interface Shading {
  readonly least: number;
  readonly most: number;
  /** Decimals that show the largest to three digits. */
  readonly decimals: number;
}

/**
 * Draws a map in at most `width` columns (38 to 100 are meant): a line for each row, in it a number
 * and its shade for each column, the largest in brackets; as many columns side by side as fit, the
 * others below; then what the shades mean. Left out: labels beyond a third of the width.
 */
export function drawHeatMap({ rows, columns, values }: HeatMap, width: number): string[] {
  const all = values.flat();
  const known = all.filter((value) => value !== undefined);
  if (known.length === 0) return wrapWords('(no values to draw)', width);
  const shading = shadingOf(known);
  const longest = Math.floor(width / 3);
  const short = (label: string) => pieces(oneLine(label), longest)[0] ?? '';
  const lines = blocks(
    rows.map(short),
    columns.map((label) => `  ${short(label)}`),
    values.map((row) => row.map((value) => cellOf(value, shading))),
    width,
  );
  return [...lines, '', ...legend(shading, known.length < all.length, width)];
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

function shadingOf(known: readonly number[]): Shading {
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const size = Math.max(Math.abs(least), Math.abs(most));
  const digits = size === 0 ? 0 : 2 - Math.floor(Math.log10(Number(threeDigits(size))));
  return { least, most, decimals: Math.min(Math.max(digits, 0), 12) };
}

/** " 0.0243 ++ ", "[0.0283 @@]", " - ". */
function cellOf(value: number | undefined, shading: Shading): string {
  if (value === undefined) return ` ${noAnswer}`;
  const { least, most, decimals } = shading;
  const part = most > least ? (value - least) / (most - least) : 0;
  const shade = shades[Math.min(Math.floor(part * shades.length), shades.length - 1)] ?? '';
  const [text, largest, smallest] = [value, most, least].map((one) => one.toFixed(decimals));
  const longest = Math.max(largest?.length ?? 0, smallest?.length ?? 0);
  // What prints alike cannot be told apart: all of them are the largest.
  const [open, close] = text === largest && largest !== smallest ? '[]' : '  ';
  return `${open}${text?.padStart(longest)} ${shade}${close}`;
}

/** What the shades and signs mean, as many on a line as fit. */
function legend({ least, most, decimals }: Shading, isRefused: boolean, width: number): string[] {
  const bound = (i: number) => (least + ((most - least) * i) / shades.length).toFixed(decimals);
  const isFlat = bound(0) === bound(shades.length);
  const entries = isFlat
    ? [`all are ${bound(0)}`]
    : [...shades.map((shade, i) => `${shade} ${bound(i)} to ${bound(i + 1)}`), '[ ] largest'];
  if (isRefused) entries.push(`${noAnswer} no answer`);
  const lines: string[] = [];
  for (const entry of entries) {
    const longer = `${lines.at(-1) ?? ''}   ${entry}`;
    if (lines.length > 0 && longer.length <= width) lines[lines.length - 1] = longer;
    else lines.push(entry);
  }
  return lines;
}
