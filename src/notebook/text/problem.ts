/** A place in a file; lines and columns count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly col: number;
  /** The column after the last character, on the same line. */
  readonly endCol?: number;
}

/** A coach's mistake, as a value: collected and shown, never thrown. */
export interface Problem {
  /** A word for programs, stable when the message is reworded. */
  readonly code: string;
  readonly message: string;
  readonly at?: Place;
  /** What to type instead. */
  readonly hint?: string;
}

/** Gives the text of a file that problems point into, or undefined if it is not at hand. */
type TextOf = (file: string) => string | undefined;

const mostShown = 20;
const widestLine = 100;
const longestMessage = 500;

/**
 * Puts problems in reading order: by file, line and column, those without a place first.
 *
 * @returns a new list; problems of one place keep their order; never throws
 */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    ({ at: a }, { at: b }) =>
      compareText(a?.file ?? '', b?.file ?? '') ||
      (a?.line ?? 0) - (b?.line ?? 0) ||
      (a?.col ?? 0) - (b?.col ?? 0),
  );
}

// Not localeCompare: the order must not depend on the machine's language.
function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/**
 * Keeps the first problems and counts the rest.
 *
 * @param most how many to keep, 20 unless told otherwise
 * @returns the kept problems and how many more there are; never throws
 */
export function capProblems(
  problems: readonly Problem[],
  most: number = mostShown,
): { readonly shown: readonly Problem[]; readonly more: number } {
  return { shown: problems.slice(0, most), more: Math.max(0, problems.length - most) };
}

/**
 * Writes one problem as `file:line:col: message`, the source line, carets, and a hint.
 *
 * @param textOf where to find the source line; without it the picture is left out
 * @returns lines without a newline at the end; control characters are replaced; never throws
 */
export function formatProblem(problem: Problem, textOf?: TextOf): string {
  const { at, hint } = problem;
  const place = at ? `${at.file}:${at.line}:${at.col}: ` : '';
  const lines = [printable(clipped(place + problem.message))];
  const text = at && textOf?.(at.file);
  if (at && text !== undefined) lines.push(...picture(text, at));
  if (hint !== undefined) lines.push(`  hint: ${printable(clippedList(hint))}`);
  return lines.join('\n');
}

/**
 * Writes a list of problems: sorted, the first of them, and how many more there are.
 *
 * @param textOf where to find the source lines
 * @param most how many to write, 20 unless told otherwise; Infinity for all
 * @returns text without a newline at the end, empty for no problems; never throws
 */
export function formatProblems(
  problems: readonly Problem[],
  textOf?: TextOf,
  most?: number,
): string {
  const { shown, more } = capProblems(sortProblems(problems), most);
  const parts = shown.map((problem) => formatProblem(problem, textOf));
  if (more > 0) parts.push(`and ${more} more problem${more === 1 ? '' : 's'}`);
  return parts.join('\n');
}

function picture(text: string, at: Place): string[] {
  const line = text.split('\n')[at.line - 1]?.replace(/\r$/, '') ?? '';
  if (line.trim() === '') return [];
  // A file may be one endless line: show only the stretch around the place.
  const start = at.col > widestLine ? at.col - 1 - widestLine / 2 : 0;
  const shown = line.slice(start, start + widestLine);
  const before = shown.slice(0, at.col - 1 - start).replace(/[^\t]/g, ' ');
  const room = Math.max(1, shown.length - before.length);
  const carets = Math.min(room, Math.max(1, (at.endCol ?? at.col + 1) - at.col));
  // Tabs stay tabs above and below, so that the caret stands under its place.
  return [printable(shown), before + '^'.repeat(carets)];
}

/** A message may quote a value, and a value may be a whole book. */
function clipped(text: string): string {
  return text.length > longestMessage ? `${text.slice(0, longestMessage)}…` : text;
}

/** A hint may list many names; it ends after a whole one. */
function clippedList(text: string): string {
  if (text.length <= longestMessage || !text.slice(0, longestMessage).includes(', '))
    return clipped(text);
  return `${text.slice(0, text.lastIndexOf(', ', longestMessage))}, …`;
}

/**
 * Control characters from a file could command the terminal, and direction overrides reorder what
 * is read; tabs are harmless.
 *
 * @returns one line with such characters replaced; never throws
 */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  return text.replace(/[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g, '�');
}
