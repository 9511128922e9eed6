import type { Dimension } from './unitTable.ts';

interface Slip {
  /** Follows the name of the value. */
  readonly message: string;
  readonly hint: string;
}

const range = /^(\d+(?:\.\d+)?)\s*(?:-|–|—|to)\s*(\d+(?:\.\d+)?)\s*(.*)$/;
const feetAndInches = /^(\d+)\s*(?:['′’]|ft|feet)\s*(\d+(?:\.\d+)?)\s*(?:["″”]|''|in|inches)?$/;
const clock = /^(\d+)\s*(?::|min|['′’])\s*(\d{1,2})\s*(?:s|sec|["″”])?$/;
const hourCount = /^(\d+(?:\.\d+)?)\s*(?:h|hr|hours?)$/i;
const monthCount = /^(\d+(?:\.\d+)?)\s*months?$/i;
const weeksPerMonth = 365.25 / 12 / 7;

/**
 * Finds what coaches commonly write for a quantity and what is not read: ranges, feet and inches,
 * minutes and seconds, months.
 *
 * @param text without stray spaces
 * @param noun the kind of quantity, as in "a length"
 * @returns what is wrong and what to type instead, or undefined; never throws
 */
export function quantitySlip(text: string, dimension: Dimension, noun: string): Slip | undefined {
  const feet = dimension === 'length' ? feetAndInches.exec(text) : null;
  if (feet) {
    const inches = Number(feet[1]) * 12 + Number(feet[2]);
    const message = `is "${text}"; a length is one number with its unit`;
    return { message, hint: `write ${inches} in or ${Math.round(inches * 2.54)} cm` };
  }
  const time = dimension === 'time' ? clock.exec(text) : null;
  if (time) {
    const seconds = Number(time[1]) * 60 + Number(time[2]);
    const message = `is "${text}"; a time is one number with its unit`;
    return { message, hint: `write ${seconds} s` };
  }
  const hours = dimension === 'time' ? Number(hourCount.exec(text)?.[1] ?? Number.NaN) : Number.NaN;
  if (!Number.isNaN(hours)) {
    const message = `is "${text}"; a time is written in s or min`;
    return { message, hint: `write ${Number((60 * hours).toFixed(1))} min` };
  }
  const months = Number(monthCount.exec(text)?.[1] ?? Number.NaN);
  if (dimension === 'weeks' && !Number.isNaN(months)) return inWeeks(text, months);
  if (dimension === 'years' && !Number.isNaN(months)) {
    const years = Number((months / 12).toFixed(2));
    return { message: `is "${text}"; it is counted in years`, hint: `write "${years} years"` };
  }
  const one = oneOfRange(text);
  if (one === undefined) return undefined;
  const message = `is "${text}"; ${noun} is one number with its unit`;
  return { message, hint: `write one number, for example "${one}"` };
}

function inWeeks(text: string, months: number): Slip {
  const message = `is "${text}"; months differ in length, so it is counted in weeks`;
  return { message, hint: `write weeks, for example "${weeksOf(months)} weeks"` };
}

const weeksOf = (months: number): number => Math.max(1, Math.round(months * weeksPerMonth));

/**
 * Gives the middle of a range such as "6-8" or "75-80 %", whole if its ends are whole.
 *
 * @returns the number with the range's unit, or undefined for anything else; never throws
 */
export function oneOfRange(text: string): string | undefined {
  const [, low = '', high = '', unit = ''] = range.exec(text.trim()) ?? [];
  if (low === '') return undefined;
  const middle = (Number(low) + Number(high)) / 2;
  const isWhole = !low.includes('.') && !high.includes('.');
  return `${isWhole ? Math.round(middle) : Number(middle.toFixed(2))} ${unit}`.trim();
}

/**
 * Hints at the bare number that a text stands for: the middle of a range, months in weeks.
 *
 * @param name of the value, as in "reps"
 * @returns a hint, or undefined if the text is neither; never throws
 */
export function bareNumberHint(text: string, name: string): string | undefined {
  const months = monthCount.exec(text.trim())?.[1];
  if (name === 'weeks' && months !== undefined) {
    return `write weeks, for example ${weeksOf(Number(months))}`;
  }
  const times = /^\s*(\d+)\s*[x×*]\s*(\d+)\s*$/i.exec(text);
  if (times && name === 'sets') return `write sets: ${times[1]}, reps: ${times[2]}`;
  const one = oneOfRange(text);
  return one === undefined ? undefined : `write one number, for example ${Number.parseFloat(one)}`;
}

const leftOf: readonly (readonly [RegExp, (said: number) => number])[] = [
  [/^\s*(?:rpe|@)\s*@?\s*(\d+(?:\.\d+)?)/i, (rating) => 10 - rating],
  [/^\s*(\d+(?:\.\d+)?)\s*rpe\b/i, (rating) => 10 - rating],
  [/^\s*rir\s*(\d+)/i, (left) => left],
  [/^\s*(\d+)\s*rir\b/i, (left) => left],
  [/^\s*reserve\s*:?\s*(\d+)/i, (left) => left],
  [/^\s*(\d+)\s*(?:reps?\s*)?in reserve\b/i, (left) => left],
];

/**
 * Hints at `reserve:` for a load given as a rating of effort: RPE 8, @8, RIR 2.
 *
 * @returns a hint, or undefined if the text is no such rating; never throws
 */
export function reserveHint(text: string): string | undefined {
  for (const [pattern, left] of leftOf) {
    const said = pattern.exec(text)?.[1];
    if (said === undefined) continue;
    const reps = Math.min(20, Math.max(0, Math.round(left(Number(said)))));
    return `leave out load and write reserve: ${reps} (repetitions left)`;
  }
  return undefined;
}

/**
 * Hints at the three times that a tempo of other notations stands for: 3010, 3-0-1-0, 3-0-X.
 *
 * @returns a hint, or undefined for anything else; never throws
 */
export function tempoHint(text: string): string | undefined {
  const parts = /^\s*(\d)[-/. ]?(\d)[-/. ]?([\dx])(?:[-/. ]?(\d))?\s*$/i.exec(text);
  if (!parts) return undefined;
  const [, lowering, bottom, lifting = '', top] = parts;
  const fast = /x/i.test(lifting);
  const more = [
    ...(fast ? ['1 for a lift as fast as possible'] : []),
    ...(top === undefined ? [] : ['a pause at the top is not read']),
  ];
  const three = `${lowering}-${bottom}-${fast ? 1 : lifting}`;
  return `write ${three}${more.length > 0 ? ` (${more.join('; ')})` : ''}`;
}
