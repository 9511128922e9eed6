/** What a text of the notebook must not hold, because it would reach beyond itself. */
export interface TextSlip {
  /** Line of the text, from 0. */
  readonly line: number;
  readonly message: string;
  readonly hint: string;
}

const fence = /^ {0,3}(`{3,}|~{3,})(.*)$/;
/** A tag or comment of HTML: one that is not closed would hide the sections that follow. */
const html = /<(?:[a-z][a-z0-9-]*(?=[\s>/]|$)|[!?/][a-z-]*)/i;

/**
 * Finds the first thing in a markdown text that would break the report around it: a heading of the
 * first level, which is the title's, HTML, or a fence that is not closed.
 *
 * @returns undefined for a text that may be kept as it is; never throws
 */
export function textSlip(text: string): TextSlip | undefined {
  const lines = text.split('\n');
  let open: { readonly line: number; readonly marks: string } | undefined;
  for (const [line, written] of lines.entries()) {
    const [, marks = '', rest = ''] = fence.exec(written) ?? [];
    if (open) {
      if (marks.startsWith(open.marks) && rest.trim() === '') open = undefined;
    } else if (marks !== '' && !(marks.startsWith('`') && rest.includes('`')))
      open = { line, marks };
    else {
      const slip = lineSlip(written, lines[line - 1] ?? '');
      if (slip) return { line, ...slip };
    }
  }
  return (
    open && {
      line: open.line,
      message: 'opens a fence that is not closed',
      hint: `close it with a line of ${open.marks}`,
    }
  );
}

function lineSlip(written: string, above: string): Omit<TextSlip, 'line'> | undefined {
  const heading = /^ {0,3}#(?:\s+(.*?))?\s*$/.exec(written);
  // A line of "=" makes a heading of the line above it.
  const isUnderlined = /^ {0,3}=+\s*$/.test(written) && above.trim() !== '';
  if (heading || isUnderlined) {
    const words = isUnderlined ? above.trim() : (heading?.[1] ?? '');
    return {
      message: 'has a heading of the first level, which is the title of the report',
      hint: `write "## ${words}"`,
    };
  }
  const tag = html.exec(written.replace(/(`+)[^`]+\1/g, ''))?.[0];
  return tag === undefined
    ? undefined
    : {
        message: `has HTML ("${tag}"), which could hide what follows`,
        hint: 'write markdown; after a plain "<" leave a space',
      };
}
