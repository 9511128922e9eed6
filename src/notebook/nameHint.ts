import { didYouMean } from './didYouMean.ts';

/** Other words for names of the file; the first that is known where the word stands is meant. */
const synonyms: ReadonlyMap<string, readonly string[]> = new Map([
  ['height', ['stature']],
  ['weight', ['mass', 'load']],
  ['bodyweight', ['mass']],
  ['body mass', ['mass']],
  ['sex', ['reference']],
  ['gender', ['reference']],
  ['name', ['code']],
  ['experience', ['training']],
  ['exercise', ['lift']],
  ['intensity', ['effort', 'load']],
  ['duration', ['seconds', 'within', 'weeks']],
  ['repetitions', ['reps']],
  ['rir', ['reserve']],
  ['1rm', ['best']],
  ['goal', ['target']],
  ['per metre', ['weighs']],
  ['per meter', ['weighs']],
]);

/**
 * Finds the name that the coach meant: a synonym, or the nearest spelling.
 *
 * @param known the names that would have been right
 * @returns one of them, or undefined; never throws
 */
export function meantName(word: string, known: readonly string[]): string | undefined {
  const others = synonyms.get(word.toLowerCase()) ?? [];
  return others.find((name) => known.includes(name)) ?? didYouMean(word, known);
}

/**
 * Says what to type instead of a name that is not known.
 *
 * @param known the names that would have been right
 * @returns a hint; never throws
 */
export function unknownNameHint(key: string, known: readonly string[]): string {
  const slip = slipHint(key, known);
  if (slip !== undefined) return slip;
  const meant = meantName(key, known);
  return meant === undefined ? `known: ${known.join(', ')}` : `did you mean "${meant}"?`;
}

/** Whether a value is a formula that a comma inside braces or brackets cut off. */
export function isCutFormula(value: unknown): boolean {
  if (typeof value !== 'string' || !value.startsWith('=')) return false;
  const count = (sign: string) => value.split(sign).length;
  return count('(') > count(')') || count('[') > count(']');
}

/** What to do with one. */
export const quoteFormula =
  'a bracket is not closed; inside { } or [ ] a comma ends a value: put the whole formula in quotes';

function slipHint(key: string, known: readonly string[]): string | undefined {
  if (/^-\S/.test(key)) return 'write a space after the dash';
  // Read as reserve, RPE 8 would mean 8 repetitions left.
  if (/^rpe$/i.test(key) && known.includes('reserve')) {
    return 'write reserve: and the repetitions left, 10 minus RPE';
  }
  // `{ thigh: 41,5 cm }`: the comma ends the entry and the rest becomes a name.
  if (/^\d+(?!rm$)/i.test(key)) {
    return 'if a decimal comma stands before it, write a point, such as 41.5 cm';
  }
  return colonHint(key);
}

/**
 * Hints at the space in `code:SN-04`, which is one text to YAML, not a name and a value.
 *
 * @returns a hint, or undefined for a text without such a colon; never throws
 */
export function colonHint(written: string): string | undefined {
  const parts = /^([A-Za-z][^:]*):(\S.*)$/s.exec(written);
  return parts ? `write a space after the colon: "${parts[1]}: ${parts[2]}"` : undefined;
}
