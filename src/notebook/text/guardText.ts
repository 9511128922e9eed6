import { mostBytes } from './mostBytes.ts';
import type { Place, Problem } from './problem.ts';

const deepest = 60;
/** Some hundred times an ordinary scenario; the parser needs a second for so many. */
const mostEntries = 20_000;

/**
 * Refuses a text that the YAML parser could choke on, before the parser sees it.
 *
 * Two deeply nested files in one process abort Node with nothing to catch, and 10 MB take the
 * parser eight seconds and 2 GB (measured). Brackets inside quotes are counted too: that errs on
 * the safe side.
 *
 * @returns the problem, or undefined for a text that may be parsed; never throws
 */
export function guardText(file: string, text: string): Problem | undefined {
  const bytes = Buffer.byteLength(text);
  if (bytes > mostBytes) {
    const size = (bytes / 1e6).toFixed(1);
    return {
      code: 'file-too-large',
      message: `the file is ${size} MB; a scenario is at most 1 MB`,
      at: { file, line: 1, col: 1 },
      hint: 'split it: one scenario a file',
    };
  }
  const lines = text.split('\n');
  return tooDeep(file, lines) ?? tooMany(file, text) ?? oddIndent(file, lines);
}

/**
 * Refuses texts that together are more than one file may be: a scenario and those it includes.
 *
 * @param at what to point at
 * @returns the problem, or undefined for texts that may be parsed one by one; never throws
 */
export function guardTogether(texts: readonly string[], at: Place): Problem | undefined {
  const bytes = texts.reduce((sum, text) => sum + Buffer.byteLength(text), 0);
  const isLarge = bytes > mostBytes;
  if (!isLarge && texts.reduce((sum, text) => sum + partsOf(text), 0) <= mostEntries)
    return undefined;
  const much = isLarge ? '1 MB' : `${mostEntries} lines and entries`;
  const message = `the scenario and the files it includes hold more than ${much} together`;
  return { code: 'file-too-large', message, at, hint: 'include less: one scenario a file' };
}

/** Lines, names and list entries, by the characters that part them. */
function partsOf(text: string): number {
  let parted = 0;
  for (const letter of text) if (/[\n:,[\]{}]/.test(letter)) parted++;
  return parted;
}

function tooMany(file: string, text: string): Problem | undefined {
  if (partsOf(text) <= mostEntries) return undefined;
  return {
    code: 'file-too-large',
    message: `the file has more than ${mostEntries} lines and entries`,
    at: { file, line: 1, col: 1 },
    hint: 'split it: one scenario a file',
  };
}

function tooDeep(file: string, lines: readonly string[]): Problem | undefined {
  let brackets = 0;
  let indents: number[] = [];
  for (const [index, line] of lines.entries()) {
    const starts = levelStarts(line);
    const first = starts[0];
    if (first !== undefined) {
      indents = [...indents.filter((column) => column < first), ...starts];
    }
    if (indents.length > deepest) return depthProblem(file, index, indents.at(-1) ?? 0);
    for (let column = 0; column < line.length; column++) {
      const letter = line[column];
      if (letter === '[' || letter === '{') brackets++;
      else if ((letter === ']' || letter === '}') && brackets > 0) brackets--;
      if (brackets > deepest) return depthProblem(file, index, column);
    }
  }
  return undefined;
}

/** Columns at which a line opens a level: its indent, and each further "- " on the same line. */
function levelStarts(line: string): number[] {
  if (/^\s*(#.*)?$/.test(line)) return [];
  const starts: number[] = [];
  const marker = /[ \t]*(?:[-?:](?=[ \t]|\r?$)|(?=[^ \t]))/y;
  for (;;) {
    const match = marker.exec(line);
    if (!match) return starts;
    const isMarker = /[-?:]$/.test(match[0]);
    starts.push(isMarker ? marker.lastIndex - 1 : marker.lastIndex);
    if (!isMarker) return starts;
  }
}

const depthProblem = (file: string, index: number, column: number): Problem => ({
  code: 'nested-too-deep',
  message: `nested more than ${deepest} levels deep`,
  at: { file, line: index + 1, col: column + 1 },
  hint: 'a scenario needs about six levels; look for brackets that are never closed',
});

/** No-break spaces come with text copied from a web page, and look like an indent without being one. */
function oddIndent(file: string, lines: readonly string[]): Problem | undefined {
  for (const [index, line] of lines.entries()) {
    const odd = /^[ \t]*([\u00a0\u2000-\u200b\u3000]+)/.exec(line);
    if (!odd) continue;
    const endCol = odd[0].length + 1;
    return {
      code: 'odd-space',
      message: 'the line starts with a no-break or other special space, which indents nothing',
      at: { file, line: index + 1, col: endCol - (odd[1] ?? '').length, endCol },
      hint: 'delete it and type ordinary spaces',
    };
  }
  return undefined;
}
