import { cellText, threeDigits } from '../notebook/formula/cellText.ts';
import type { Sought } from '../questions/seek.ts';

/** What a search found, in one or two sentences. */
export function soughtText(sought: Sought): string {
  const { place, formula, goal, solutions, jumps, least, most, refused } = sought;
  const missing =
    refused.count > 0 ? ` (${refused.count} values tried cannot be: ${refused.says ?? ''})` : '';
  const jumped = jumps
    .map(
      ([before, after]) =>
        ` It jumps over ${goal} near ${place} = ${short(after.value)}: from ${cellText(before.answer)} to ${cellText(after.answer)}.`,
    )
    .join('');
  const more = `${jumped}${missing}`;
  const [only] = solutions;
  if (only && solutions.length === 1)
    return `${formula} is ${goal} at ${place} = ${short(only.value)}.${more}`;
  if (only)
    return `${formula} is ${goal} at more than one value of ${place}: ${solutions.map(({ value }) => short(value)).join(', ')}.${more}`;
  const reached =
    least && most
      ? `: it goes from ${cellText(least.answer)} (at ${short(least.value)}) to ${cellText(most.answer)} (at ${short(most.value)})`
      : '';
  return `${formula} is never ${goal} in this range of ${place}${reached}.${more}`;
}

/** A value to three digits, as everything that rests on the model. */
export function short(value: string): string {
  const [number = '', ...unit] = value.split(' ');
  return [threeDigits(Number(number)), ...unit].join(' ');
}
