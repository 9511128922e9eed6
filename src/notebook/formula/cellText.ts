import { usualUnit } from './dimensions.ts';
import type { CellResult } from './evaluateCells.ts';

/** Digits of a cell's value: forecasts and tests are good for no more. */
const digits = 3;

/** A number to three digits without an exponent, "0.0726", "164", "1230". */
export function threeDigits(value: number): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(digits));
  const decimals = Math.max(digits - 1 - Math.floor(Math.log10(Math.abs(rounded))), 0);
  return String(Number(rounded.toFixed(Math.min(decimals, 12))));
}

/** The unit a cell is shown in: its own, else the usual one of its dimension. */
export function cellUnit({ cell, type, unitSize }: CellResult): {
  readonly text: string;
  readonly size: number;
} {
  if (cell.unit !== undefined && unitSize !== undefined) return { text: cell.unit, size: unitSize };
  return type.kind === 'number' ? usualUnit(type.exponents) : { text: '', size: 1 };
}

/** A cell's value as a coach reads it: "1.34", "164 N m", "a list of 51 from 3 to 16 %", "yes". */
export function cellText(result: CellResult): string {
  const { value } = result;
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return inUnit(value, result);
  const [least, most] = [Math.min(...value), Math.max(...value)];
  return `a list of ${value.length}, from ${inUnit(least, result)} to ${inUnit(most, result)}`;
}

/** Where a cell is expected to lie, "0.8 to 1.2", "at least 80 kg"; empty if nowhere. */
export function expectationText(result: CellResult): string {
  const { least, most } = result.expected ?? {};
  const [low, high] = [least, most].map((bound) =>
    bound === undefined ? undefined : inUnit(bound, result),
  );
  if (low !== undefined && high !== undefined) return `${low} to ${high}`;
  if (low !== undefined) return `at least ${low}`;
  return high === undefined ? '' : `at most ${high}`;
}

function inUnit(value: number, result: CellResult): string {
  const { text, size } = cellUnit(result);
  return `${threeDigits(value / size)}${text === '' ? '' : ` ${text}`}`;
}
