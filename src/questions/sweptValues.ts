/** A number and its unit as values are written. */
export const numberThenUnit = /^\s*(-?\d+(?:\.\d+)?)\s*(.*?)\s*$/;

/** Most values a sweep takes: each is a whole evaluation of the file. */
const mostValues = 60;

/**
 * The values of a range or a list as they would be written in the file.
 *
 * @param text "60 kg : 5 kg : 80 kg" (from : step : to), or values with commas between
 * @returns the values, or what is wrong with the text in a sentence
 */
export function sweptValues(text: string): readonly string[] | string {
  if (!text.includes(':')) return text.split(',').map((value) => value.trim());
  const parts = text.split(':').map((part) => numberThenUnit.exec(part));
  const [from, step, to] = parts;
  if (parts.length !== 3 || !from || !step || !to)
    return `values are "${text}"; write from : step : to, such as 60 kg : 5 kg : 80 kg, or a list with commas`;
  const unit = from[2] ?? '';
  if (step[2] !== unit || to[2] !== unit)
    return `values are "${text}"; write all three in one unit, such as 60 kg : 5 kg : 80 kg`;
  const [first, by, last] = [Number(from[1]), Number(step[1]), Number(to[1])];
  const count = Math.floor((last - first) / by + 1e-9) + 1;
  if (!(by > 0) || !(count >= 2) || count > mostValues)
    return `values are "${text}"; that is ${Number.isFinite(count) ? Math.max(count, 0) : 'no number of'} values, from 2 to ${mostValues} are taken`;
  return Array.from({ length: count }, (_, i) =>
    `${Number((first + i * by).toFixed(9))} ${unit}`.trim(),
  );
}
