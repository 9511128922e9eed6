import { reserveHint } from '../quantitySlips.ts';

/** A YAML error in the coach's words; `offset` counts characters from the start of the text. */
interface PlainYamlProblem {
  readonly message: string;
  readonly hint?: string;
  readonly offset: number;
  readonly length: number;
}

export interface YamlFault {
  readonly code: string;
  readonly message: string;
  readonly pos: readonly [number, number];
}

/** Whether a fault may come from a line that starts in the wrong column; never throws. */
export function isIndentFault({ code, message }: YamlFault): boolean {
  if (code === 'MISSING_CHAR') return /^(Sequence item|Implicit map keys)/.test(message);
  if (code === 'BAD_INDENT') return !message.startsWith('Flow');
  if (code === 'MULTILINE_IMPLICIT_KEY') return !message.includes('flow');
  return code === 'BLOCK_AS_IMPLICIT_KEY' || code === 'UNEXPECTED_TOKEN';
}

/**
 * Says what a YAML error means and what to type instead.
 *
 * The parser reports where it gave up; this points at the slip itself, such as the bracket that
 * was left open some lines above.
 *
 * @param fault the parser's error or warning
 * @param text the whole file
 * @returns message, hint and place; errors without a better wording keep the parser's; never throws
 */
export function plainYamlProblem(fault: YamlFault, text: string): PlainYamlProblem {
  const offset = Math.min(fault.pos[0], text.length);
  const fixed = fixedWordings[fault.code];
  if (fixed) return { offset, length: 1, ...fixed };
  switch (fault.code) {
    case 'MULTILINE_IMPLICIT_KEY':
      if (fault.message.includes('flow')) return unexpected(text, offset);
      return colonMissing(text, offset);
    case 'BLOCK_AS_IMPLICIT_KEY':
      return secondColon(text, offset);
    case 'BAD_INDENT':
      return fault.message.startsWith('Flow') ? bracketOpen(text, offset) : badIndent(text, offset);
    case 'MISSING_CHAR':
      if (fault.message.startsWith('Missing closing')) return quoteOpen(text, offset);
      if (fault.message.startsWith('Implicit map keys')) return colonMissing(text, offset);
      if (fault.message.startsWith('Sequence item')) return badIndent(text, offset);
      return { offset, length: 1, message: 'a comma is missing here' };
    case 'BAD_SCALAR_START':
      return badStart(text, offset);
    case 'UNEXPECTED_TOKEN':
      return unexpected(text, offset);
    default:
      return { offset, length: 1, message: `YAML: ${fault.message}` };
  }
}

/** Faults whose wording needs no look at the text. */
const fixedWordings: Readonly<Record<string, { message: string; hint?: string }>> = {
  TAB_AS_INDENT: { message: 'the line is indented with a tab', hint: 'use spaces instead' },
  BLOCK_IN_FLOW: { message: 'a comma is missing before or after this entry' },
  BAD_DQ_ESCAPE: {
    message: 'a backslash inside double quotes has a special meaning',
    hint: 'use single quotes',
  },
  MULTIPLE_DOCS: {
    message: 'the file holds more than one document',
    hint: 'keep one scenario a file, without lines of --- or ... between',
  },
  TAG_RESOLVE_FAILED: {
    message: 'a value cannot start with "!"',
    hint: 'put the value in quotes',
  },
};

function lineAround(text: string, offset: number): { line: string; start: number } {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return { line: text.slice(start, end < 0 ? text.length : end).replace(/\r$/, ''), start };
}

function colonMissing(text: string, offset: number): PlainYamlProblem {
  const { line, start } = lineAround(text, offset);
  const words = line.slice(offset - start).trimEnd();
  const place = { offset, length: words.length };
  const parts = /^([^\s:#][^:#]*):(\S.*)$/.exec(words);
  if (parts) {
    const right = `${parts[1]}: ${parts[2]}`;
    return { ...place, message: 'there is no space after the colon', hint: `write "${right}"` };
  }
  const hint = 'a line reads "name: value", or "name:" with an indented group below it';
  return { ...place, message: `there is no colon in "${words}"`, hint };
}

function secondColon(text: string, offset: number): PlainYamlProblem {
  const { line, start } = lineAround(text, offset);
  const value = line.slice(offset - start).trimEnd();
  if (value.includes(': ')) {
    return {
      offset,
      length: value.length,
      message: 'a second ": " in one value',
      hint: quoting(value),
    };
  }
  // The value ended here; the next line is indented under it as if it were a group.
  const next = lineAround(text, start + line.length + 1);
  const indent = next.line.length - next.line.trimStart().length;
  return {
    offset: Math.min(text.length, next.start + indent),
    length: next.line.trim().length,
    message: 'the line is indented under a line that already has a value',
    hint: 'start it in the same column as the line above',
  };
}

/** Shows the value in quotes, if it is short enough to show and has no quotes of its own. */
function quoting(value: string): string {
  const bare = value.replace(/\s#.*$/, '').trimEnd();
  const canShow = bare.length <= 60 && !/["\\]/.test(bare);
  return canShow ? `put the value in quotes: "${bare}"` : 'put the whole value in quotes';
}

function badIndent(text: string, offset: number): PlainYamlProblem {
  const { line, start } = lineAround(text, offset);
  const indent = line.length - line.trimStart().length;
  return {
    offset: start + indent,
    length: line.trim().length,
    message: 'the line does not start in the same column as the other lines of its group',
    hint: 'indent all lines of one group by the same number of spaces',
  };
}

const closers: Readonly<Record<string, string>> = { '[': ']', '{': '}' };

function bracketOpen(text: string, offset: number): PlainYamlProblem {
  const letter = text[offset] ?? '';
  const open = lastOpenBracket(text.slice(0, offset));
  const bracket = text[open] ?? '[';
  const closer = closers[bracket] ?? ']';
  if (letter === ']' || letter === '}') {
    const message = `"${letter}" stands where "${closer}" should close the "${bracket}"`;
    return { offset, length: 1, message };
  }
  return {
    offset: Math.max(0, open),
    length: 1,
    message: `"${bracket}" is never closed`,
    hint: `put "${closer}" after its last entry`,
  };
}

/** Offset of the innermost bracket still open at the end of a text, skipping quotes and comments. */
function lastOpenBracket(text: string): number {
  const open: number[] = [];
  const token = /"(?:[^"\\]|\\.)*"|(?<=[\s[{,])'[^']*'|(?<=\s)#.*|[[\]{}]/g;
  for (const match of text.matchAll(token)) {
    if (match[0] === '[' || match[0] === '{') open.push(match.index);
    else if (match[0] === ']' || match[0] === '}') open.pop();
  }
  return open.at(-1) ?? -1;
}

function quoteOpen(text: string, end: number): PlainYamlProblem {
  const open: number[] = [];
  const token = /(?<=[\s[{,:])"(?:[^"\\]|\\[\s\S])*"?|(?<=[\s[{,:])'[^']*'?/g;
  for (const match of text.slice(0, end).matchAll(token)) open.push(match.index);
  const offset = open.at(-1) ?? Math.max(0, end - 1);
  const quote = text[offset] ?? '"';
  return {
    offset,
    length: 1,
    message: `the quote ${quote} is never closed`,
    hint: `put ${quote} at the end of the value`,
  };
}

function badStart(text: string, offset: number): PlainYamlProblem {
  const { line, start } = lineAround(text, offset);
  const value = line.slice(offset - start).trimEnd();
  const rating = /\bload: *$/.test(line.slice(0, offset - start)) ? /^@[^,}]*/.exec(value) : null;
  const reserve = rating ? reserveHint(rating[0]) : undefined;
  if (rating && reserve !== undefined) {
    const message = 'a load cannot start with "@"';
    return { offset, length: rating[0].trimEnd().length, message, hint: reserve };
  }
  return {
    offset,
    length: value.length,
    message: `a value cannot start with "${text[offset] ?? ''}"`,
    hint: quoting(value),
  };
}

function unexpected(text: string, offset: number): PlainYamlProblem {
  const letter = text[offset] ?? '';
  const before = lineAround(text, offset).line.slice(0, offset - lineAround(text, offset).start);
  const place = { offset, length: 1 };
  if (letter === ']' || letter === '}') {
    return { ...place, message: `"${letter}" closes nothing`, hint: 'delete it' };
  }
  if (/["']\s*$/.test(before)) {
    return { ...place, message: 'text after the closing quote', hint: 'quote the whole value' };
  }
  if (/[|>][+-]?\d*\s*$/.test(before)) {
    const message = 'a value that starts with "|" or ">" is a block of text on the next lines';
    return { ...place, message, hint: 'put the value in quotes' };
  }
  const hint = 'check the indentation, brackets and quotes just before it';
  return { ...place, message: 'this does not fit here', hint };
}
