import { toDegrees } from '../numeric/degrees.ts';

/**
 * Numbers and units as a report says them. Minus is the ASCII "-", never before a zero; a number
 * that is not finite is said to be undetermined, never printed as NaN.
 */

const undetermined = 'not determined';

/** Rounds to a fixed count of decimals as text, halves away from zero, without "-0". */
function fixed(value: number, digits: number): string {
  // Twelve digits first: 0.145 * 100 is 14.499999999999998, and a coach means 14.5.
  const text = Number(value.toPrecision(12)).toFixed(digits);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

function withUnit(value: number, digits: number, unit: string): string {
  return Number.isFinite(value) ? fixed(value, digits) + unit : undetermined;
}

/** Degrees from radians, "75°": whole unless `digits` asks for decimals. */
export function degrees(angle: number, digits = 0): string {
  return withUnit(toDegrees(angle), digits, '°');
}

/** Two numbers as a range, "75-100"; "-5 to 10" where a minus would be read as the dash. */
export function rangeText(from: number, to: number, dash = '-'): string {
  const [first, last] = [from, to].map((value) => String(Number(fixed(value, 1))));
  if (first === undefined || last === undefined || first === last) return first ?? '';
  return first.startsWith('-') || last.startsWith('-')
    ? `${first} to ${last}`
    : first + dash + last;
}

/** A range of angles from radians, "75–100°", in whole degrees; "75°" where both ends are equal. */
export function rangeDegrees(from: number, to: number): string {
  if (!Number.isFinite(from + to)) return undetermined;
  const [first, last] = [from, to].map((angle) => Math.round(toDegrees(angle)));
  return `${rangeText(first ?? 0, last ?? 0, '–')}°`;
}

/** A fraction as a percentage, "12 %": whole unless `digits` asks for decimals. */
export function percent(fraction: number, digits = 0): string {
  return withUnit(fraction * 100, digits, ' %');
}

/** A change as a percentage with its sign, "+12 %" or "-3 %"; what rounds to zero has none, "0 %". */
export function signedPercent(fraction: number, digits = 0): string {
  const text = percent(fraction, digits);
  return Number.parseFloat(text) > 0 ? `+${text}` : text;
}

/** A difference of two shares in points with its sign, "+1.2"; what rounds to zero is "0". */
export function signedPoints(difference: number): string {
  const text = withUnit(difference * 100, 1, '');
  if (Number(text) === 0) return '0';
  return difference > 0 && Number.isFinite(difference) ? `+${text}` : text;
}

/** A torque, "183 N·m": whole from 10 upward, one decimal below, finer than any test can tell. */
export function newtonMetres(torque: number): string {
  return withUnit(torque, Math.abs(torque) < 9.95 ? 1 : 0, ' N·m');
}

/** A mass, "85 kg" or "102.5 kg": to the nearest half kilogram at any size, as bars are loaded. */
export function kilograms(mass: number): string {
  const halves = Math.round(mass * 2) / 2;
  return withUnit(halves, Number.isInteger(halves) ? 0 : 1, ' kg');
}

/** A force, "1,450 N": to the nearest ten newtons. */
export function newtons(force: number): string {
  const digits = withUnit(Math.round(force / 10) * 10, 0, ' N');
  return digits.replace(/\B(?=(\d{3})+ )/g, ',');
}

/** A text with a capital at its start. */
export const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Items as a reader lists them, "a, b and c"; nothing for no items. */
export function listInWords(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  const others = items.slice(0, -1).join(', ');
  return others === '' ? last : `${others} and ${last}`;
}

/** A count with its noun, "1 week" or "8 weeks"; `many` for nouns that do not just take an s. */
export function plural(count: number, noun: string, many = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : many}`;
}
