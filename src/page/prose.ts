/** Markdown of the coach's own for a terminal. */

import { displayWidth, oneLine, pieces, plainLines, wrapWords } from './wrap.ts';

/** What is read so far and not yet broken into lines: words after a mark. */
interface Run {
  readonly mark: string;
  readonly words: string;
}

const fence = /^ {0,3}(`{3,}(?!.*`)|~{3,})/;

/**
 * Markdown as lines of at most `width` columns: paragraphs wrapped, list items hanging, headings
 * underlined; fenced lines and rows of tables keep their blanks and are cut only where they are
 * too long. Left out: marks within a line, such as those of emphasis, stay as written.
 */
export function proseLines(markdown: string, width: number): string[] {
  const lines: string[] = [];
  let run: Run | undefined;
  let open: string | undefined;
  const flush = () => {
    if (run) lines.push(...wrapped(run, width));
    run = undefined;
  };
  for (const line of plainLines(markdown.replaceAll('\t', '    '))) {
    const marks = fence.exec(line)?.[1];
    const isKept = open !== undefined || marks !== undefined || /^\s*\|/.test(line);
    if (open === undefined) open = marks;
    else if (marks?.startsWith(open) && line.trim() === marks) open = undefined;
    if (isKept || line.trim() === '' || /^ {0,3}#{1,6}\s/.test(line)) {
      flush();
      lines.push(...(isKept ? pieces(line, width) : headingLines(line, width)));
      continue;
    }
    const [, indent = '', sign = '', words = ''] =
      /^( {0,8}) *((?:[-*+>]|\d{1,9}[.)]) )\s*(.*)$/.exec(line) ?? [];
    if (sign === '') run = { mark: run?.mark ?? '', words: `${run?.words ?? ''} ${line}` };
    else {
      flush();
      run = { mark: indent + sign, words };
    }
  }
  flush();
  return lines.filter((line, i) => line !== '' || (i > 0 && lines[i - 1] !== ''));
}

/** A heading without its marks, underlined; an empty line stays one. */
function headingLines(line: string, width: number): string[] {
  const words = oneLine(line.replace(/^\s*#+\s/, '').replace(/\s#+\s*$/, ''));
  if (words === '') return [''];
  const lines = wrapWords(words, width);
  return [...lines, '-'.repeat(Math.max(...lines.map(displayWidth)))];
}

function wrapped({ mark, words }: Run, width: number): string[] {
  return wrapWords(words, width, mark, ' '.repeat(mark.length));
}
