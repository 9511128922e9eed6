/** Lines of a fixed width: cleaning, measuring and breaking text, for every renderer. */

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const drawnAsEmoji = /\p{Emoji_Presentation}|\uFE0F|\p{Regional_Indicator}/u;
const takesNoColumn = /^[\p{Mn}\p{Me}\p{Cf}\u1160-\u11FF]$/u;
const takesTwoColumns =
  /^[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1F64F}\u{1F900}-\u{1F9FF}\u{20000}-\u{3FFFD}]$/u;

// Control characters would let a scenario send colour codes to a colleague's terminal; the
// direction overrides would let it reorder what is read.
const unsafe = /[\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]+/gu;

// "12 %" cut after the 12 reads as another number: such pairs stay together.
const numberAndUnit = /(\d) (?=(?:%|kg|cm|mm|m|s|N·m|N m|N|deg|min)(?![\p{L}\d]))/gu;
const glue = '\u00A0';

/** Text on one line: control characters gone, runs of white space made one space, ends trimmed. */
export function oneLine(text: string): string {
  return text.replace(unsafe, ' ').replace(/\s+/gu, ' ').trim();
}

/** The lines of a text that is kept as written: control characters gone, empty ends cut off. */
export function plainLines(text: string): string[] {
  const clean = (part: string) => part.replace(unsafe, ' ');
  return text
    .split(/\r?\n/u)
    .map((line) => line.split('\t').map(clean).join('\t'))
    .join('\n')
    .replace(/^(?:[^\S\n]*\n)+|\s+$/gu, '')
    .split('\n');
}

/** The paragraphs of a text, one line each; an empty line separates them, empty ones are left out. */
export function paragraphs(text: string): string[] {
  return text
    .split(/\n\s*\n/u)
    .map(oneLine)
    .filter((paragraph) => paragraph !== '');
}

function columnsOf(grapheme: string): number {
  if (drawnAsEmoji.test(grapheme)) return 2;
  let columns = 0;
  for (const sign of grapheme)
    if (takesTwoColumns.test(sign)) columns += 2;
    else if (!takesNoColumn.test(sign)) columns += 1;
  return columns;
}

/**
 * How many terminal columns a line takes: wide East Asian signs and emoji take two, combining
 * marks none. Left out: terminals that draw a script's ligatures narrower than its letters.
 */
export function displayWidth(line: string): number {
  if (/^[\x20-\x7E]*$/u.test(line)) return line.length;
  let columns = 0;
  for (const { segment } of graphemes.segment(line)) columns += columnsOf(segment);
  return columns;
}

/** Cuts a word into pieces of at most `width` columns; a sign wider than that stays whole. */
export function pieces(word: string, width: number): string[] {
  if (displayWidth(word) <= width) return [word];
  const cut: string[] = [];
  let piece = '';
  for (const { segment } of graphemes.segment(word)) {
    if (piece !== '' && displayWidth(piece + segment) > width) {
      cut.push(piece);
      piece = '';
    }
    piece += segment;
  }
  return [...cut, piece];
}

/**
 * Breaks a text into lines of at most `width` columns between words, the first line after
 * `first`, the others after `rest` (a hanging indent). A word longer than a line is cut. Left out:
 * hyphenation.
 */
export function wrapWords(text: string, width: number, first = '', rest = first): string[] {
  const widest = Math.max(displayWidth(first), displayWidth(rest));
  const words = oneLine(text)
    .replace(numberAndUnit, `$1${glue}`)
    .split(' ')
    .flatMap((word) => pieces(word, Math.max(2, width - widest)));
  const lines: string[] = [];
  let line = first + (words.shift() ?? '');
  for (const word of words)
    if (displayWidth(`${line} ${word}`) <= width) line += ` ${word}`;
    else {
      lines.push(line);
      line = rest + word;
    }
  return [...lines, line].map((filled) => filled.replaceAll(glue, ' ').trimEnd());
}
