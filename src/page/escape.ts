/** Plain text inside markdown. */

import { oneLine } from './wrap.ts';

// A part in single backticks is left as code, so that formulas can be shown as such.
const code = /(?<!`)(`[^`]+`)(?!`)/u;

function escapePart(part: string): string {
  return part
    .replace(/\\(?=[!-/:-@[-`{-~]|$)/gu, '\\\\')
    .replace(/`/gu, '\\`')
    .replace(/(?<!^|\s)\*|\*(?!\s|$)/gu, '\\*')
    .replace(/(?<![\p{L}\d])_|_(?![\p{L}\d])/gu, '\\_')
    .replace(/~(?=~)|(?<=\S)~/gu, '\\~')
    .replace(/\](?=[([])/gu, '\\]')
    .replace(/<(?=[a-z/!?])/giu, '\\<')
    .replace(/&(?=#?\w+;)/gu, '\\&');
}

// Signs that would open a heading, list, quote, fence, table or reference at the start of a line.
function escapeStart(line: string): string {
  return line
    .replace(/^(?=(?:#{1,6}|[-+*])(?:\s|$)|>|[-=*_]{2,}\s*$|~~~|\||\[[^\]]*\]:)/u, '\\')
    .replace(/^(\d{1,9})(?=[.)](?:\s|$))/u, '$1\\');
}

/**
 * A text on one line that markdown shows as it is written, for a heading or a table cell: only marks
 * that would act are escaped. Parts in single backticks stay code.
 */
export function escapeInline(text: string): string {
  const parts = oneLine(text).split(code);
  return parts.map((part, index) => (index % 2 === 1 ? part : escapePart(part))).join('');
}

/** The same for a text that begins a line or a list item, where a "#" or "1." would act as well. */
export function escapeLine(text: string): string {
  return escapeStart(escapeInline(text));
}
