import { cellText, threeDigits } from '../notebook/formula/cellText.ts';
import type { Sought } from '../seek.ts';

/** What a search found, in one or two sentences. */
export function soughtText(sought: Sought): string {
  const { place, formula, goal, solutions, least, most, refused } = sought;
  const missing =
    refused.count > 0 ? ` (${refused.count} values tried cannot be: ${refused.says ?? ''})` : '';
  const [only] = solutions;
  if (only && solutions.length === 1)
    return `${formula} is ${goal} at ${place} = ${short(only.value)}.${missing}`;
  if (only)
    return `${formula} is ${goal} at more than one value of ${place}: ${solutions.map(({ value }) => short(value)).join(', ')}.${missing}`;
  const reached =
    least && most
      ? `: it goes from ${cellText(least.answer)} (at ${short(least.value)}) to ${cellText(most.answer)} (at ${short(most.value)})`
      : '';
  return `${formula} is never ${goal} in this range of ${place}${reached}.${missing}`;
}

/** A value to three digits, as everything that rests on the model. */
function short(value: string): string {
  const [number = '', ...unit] = value.split(' ');
  return [threeDigits(Number(number)), ...unit].join(' ');
}
