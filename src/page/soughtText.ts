import { cellText, threeDigits } from '../notebook/formula/cellText.ts';
import type { Refused } from '../questions/openSearch.ts';
import type { Sought } from '../questions/seek.ts';
import type { Extreme, SoughtExtreme } from '../questions/seekExtreme.ts';
import { listInWords } from './words.ts';

/** What a search found, in a few sentences. */
export function soughtText(sought: Sought | SoughtExtreme): string {
  return 'extremes' in sought ? extremeText(sought) : goalText(sought);
}

function goalText({
  place,
  formula,
  goal,
  solutions,
  jumps,
  least,
  most,
  refused,
}: Sought): string {
  const jumped = jumps
    .map(
      ([before, after]) =>
        ` It jumps over ${goal} near ${place} = ${short(after.value)}: from ${cellText(before.answer)} to ${cellText(after.answer)}.`,
    )
    .join('');
  const more = `${jumped}${refusedText(refused)}`;
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

function extremeText({ place, formula, goal, extremes, always, refused }: SoughtExtreme): string {
  const [best, ...others] = extremes;
  const missing = refusedText(refused);
  if (always)
    return `${formula} does not change in this range of ${place}: it is always ${cellText(always.answer)}.${missing}`;
  if (!best) return `${formula} has no value anywhere in this range of ${place}.${missing}`;
  const text = cellText(best.answer);
  const equal = others.filter(({ answer }) => cellText(answer) === text);
  const rest = others.filter((other) => !equal.includes(other));
  const [low, lows] = goal === 'least' ? ['low', 'lows'] : ['high', 'highs'];
  const as =
    equal.length > 0 ? ` It is as ${low} ${listInWords(equal.map((one) => whereText(one)))}.` : '';
  const more =
    rest.length > 0
      ? ` It has other ${lows}: ${listInWords(rest.map((one) => `${whereText(one)} (${cellText(one.answer)})`))}.`
      : '';
  return `${formula} is ${goal} ${whereText(best, `${place} = `)}: ${text}.${lieText(best)}${as}${more}${missing}`;
}

/** "at 70 kg", "from 60 kg to 65 kg"; `place` stands before the value. */
function whereText({ value, lies, other }: Extreme, place = ''): string {
  const shown = `${place}${short(value)}`;
  if (lies === 'level' && other) return `from ${shown} to ${short(other.value)}`;
  if (lies !== 'jump' || !other) return `at ${shown}`;
  return `just ${Number.parseFloat(other.value) > Number.parseFloat(value) ? 'below' : 'above'} ${shown}`;
}

/** What should be known of where an extreme lies; nothing where higher values lie on both sides. */
function lieText({ lies, other }: Extreme): string {
  switch (lies) {
    case 'inside':
      return '';
    case 'end':
      return ' That is at the end of the range: widen it to see whether it goes on.';
    case 'edge':
      return ' Beyond that value there is no answer.';
    case 'level':
      return ' It does not change between them.';
    case 'jump':
      return other ? ` There it jumps to ${cellText(other.answer)}.` : '';
  }
}

function refusedText({ count, says = '' }: Refused): string {
  if (count === 0) return '';
  return count === 1
    ? ` (1 value tried cannot be: ${says})`
    : ` (${count} values tried cannot be: ${says})`;
}

/** A value to three digits, as everything that rests on the model. */
export function short(value: string): string {
  const [number = '', ...unit] = value.split(' ');
  return [threeDigits(Number(number)), ...unit].join(' ');
}
