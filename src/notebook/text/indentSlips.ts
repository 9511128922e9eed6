/** A line that starts in another column than the lines of its group; lines count from 0. */
export interface IndentSlip {
  readonly line: number;
  readonly indent: number;
  /** Columns in which its neighbours start: one, or two if it may belong to either group. */
  readonly neighbours: readonly number[];
  /** The lines in which a parser stumbles over this slip. */
  readonly first: number;
  readonly last: number;
}

interface Entry {
  readonly line: number;
  readonly column: number;
  /** A word is a line without a colon: a value that goes on, or a name that lacks its colon. */
  readonly kind: 'name' | 'dash' | 'word';
  /** Nothing stands behind it on its line, or a group of its own begins there. */
  readonly open: boolean;
}

interface Group {
  column: number;
  readonly kind: Entry['kind'];
  readonly lines: number[];
  /** Whether its last entry may have a group below it. */
  open: boolean;
  /** Its first line is that of a dash, which is not to be moved. */
  readonly afterDash: boolean;
  /** Wrong columns already told of. */
  readonly told: Set<number>;
}

const mostSlips = 50;

/**
 * Finds the lines of block mappings and lists that start a little beside their neighbours.
 *
 * @param text the whole file
 * @returns the slips by the order in which they were met, at most 50; none in a text that is well
 *   indented, or whose odd lines are no names and no dashes; never throws
 */
export function indentSlips(text: string): readonly IndentSlip[] {
  const rows = entriesByLine(text);
  const slips: IndentSlip[] = [];
  const stack: Group[] = [];
  for (const [index, [head, ...inner]] of rows.entries()) {
    if (!head) continue;
    if (head.kind === 'word') {
      openAt(stack, head);
      continue;
    }
    const slip = place(stack, head, rows, index);
    if (slip) slips.push(slip);
    // What stands behind a dash moves with it.
    const moved = stack.at(-1)?.kind === 'dash' ? (stack.at(-1)?.column ?? 0) - head.column : 0;
    for (const entry of inner) {
      const group = newGroup(entry, true);
      group.told.add(entry.column);
      group.column += moved;
      stack.push(group);
    }
    if (slips.length >= mostSlips) break;
  }
  return slips;
}

const newGroup = ({ line, column, kind, open }: Entry, afterDash = false): Group => ({
  column,
  kind,
  lines: [line],
  open,
  afterDash,
  told: new Set(),
});

function join(group: Group, entry: Entry): void {
  group.lines.push(entry.line);
  group.open = entry.open;
}

/** What follows a name that lacks its colon is indented below it, not beside its neighbours. */
function openAt(stack: readonly Group[], word: Entry): void {
  const group = stack.find(({ column }) => column === word.column);
  if (group) group.open = true;
}

/** Adds an entry to the groups that are open where it stands. */
function place(
  stack: Group[],
  entry: Entry,
  rows: readonly (readonly Entry[])[],
  index: number,
): IndentSlip | undefined {
  const left: Group[] = [];
  while ((stack.at(-1)?.column ?? -1) > entry.column) left.unshift(...stack.splice(-1));
  // A list may start in the column of its own key.
  if (entry.kind === 'name' && stack.at(-1)?.kind === 'dash' && isAt(stack.at(-2), entry)) {
    stack.pop();
  }
  const top = stack.at(-1);
  if (top && isAt(top, entry)) {
    if (top.kind === entry.kind) join(top, entry);
    else if (entry.kind === 'dash' && top.open) stack.push(newGroup(entry));
    return undefined;
  }
  if (left.length === 0 && (!top || top.open)) {
    stack.push(newGroup(entry));
    return undefined;
  }
  const homes = nearest([...(top ? [top] : []), ...left], entry, rows[index + 1]?.[0]);
  const home = homes.at(-1);
  if (!home) return undefined;
  const list = home.afterDash ? (home === top ? stack.at(-2) : top) : undefined;
  if (home !== top) stack.push(...left.slice(0, left.indexOf(home) + 1));
  const slip = home.told.has(entry.column)
    ? undefined
    : slipOf(home, homes, list, entry, rows, index);
  join(home, entry);
  return slip;
}

const isAt = (group: Group | undefined, entry: Entry): boolean => group?.column === entry.column;

/** The group whose column is nearest; two if they are equally near and the next line fits both. */
function nearest(groups: readonly Group[], entry: Entry, next: Entry | undefined): Group[] {
  const same = groups.filter(({ kind }) => kind === entry.kind);
  const told = same.find((group) => group.told.has(entry.column));
  if (told) return [told];
  const away = ({ column }: Group) => Math.abs(column - entry.column);
  const least = Math.min(...same.map(away));
  const found = same.filter((group) => away(group) === least);
  const deeper = found.at(-1);
  const goesOn = !entry.open && deeper && next?.column === deeper.column;
  return goesOn ? [deeper] : found;
}

/** The line itself is the odd one, unless most of its group agrees with it. */
function slipOf(
  home: Group,
  homes: readonly Group[],
  list: Group | undefined,
  entry: Entry,
  rows: readonly (readonly Entry[])[],
  index: number,
): IndentSlip {
  const { column, line } = entry;
  home.told.add(column);
  const rest = rows.slice(index + 1);
  const end = rest.findIndex(([head]) => head && head.column < Math.min(column, home.column));
  const within = (end < 0 ? rest : rest.slice(0, end)).flatMap(([head]) => head ?? []);
  const last = within.at(-1)?.line ?? line;
  const after = (at: number) =>
    within.filter((other) => other.column === at && other.kind === entry.kind).length;
  const [start = line] = home.lines;
  const isFirstOdd = home.lines.length === 1 && !home.afterDash && homes.length === 1;
  if (isFirstOdd && 1 + after(column) > 1 + after(home.column)) {
    const slip = { line: start, indent: home.column, neighbours: [column], first: start, last };
    home.told.add(home.column);
    home.column = column;
    return slip;
  }
  const dashes = (list?.column ?? 0) + column - home.column;
  if (list?.lines.length === 1 && home.lines.length === 1 && goesOnAt(rest, dashes)) {
    const slip = { line: start, indent: list.column, neighbours: [dashes], first: start, last };
    home.column = column;
    list.column = dashes;
    return slip;
  }
  const neighbours = homes.map((group) => group.column);
  return { line, indent: column, neighbours, first: line, last };
}

/** Whether the first line that stands no deeper than a column is a dash in this column. */
function goesOnAt(rows: readonly (readonly Entry[])[], column: number): boolean {
  const next = rows.find(([head]) => head && head.column <= column)?.[0];
  return next?.column === column && next.kind === 'dash';
}

/** Names and dashes of each line that has any, without what stands in brackets, quotes and texts. */
function entriesByLine(text: string): readonly (readonly Entry[])[] {
  const rows: Entry[][] = [];
  let brackets = 0;
  let textColumn: number | undefined;
  for (const [line, whole] of text.split('\n').entries()) {
    const written = whole.replace(/\r$/, '');
    const indent = /^ */.exec(written)?.[0].length ?? 0;
    if (/^\s*(#.*)?$/.test(written) || written[indent] === '\t') continue;
    if (textColumn !== undefined && indent > textColumn) continue;
    textColumn = undefined;
    const { entries, value } =
      brackets > 0 ? { entries: [], value: written } : lineEntries(written, line);
    if (entries.length > 0) rows.push(entries);
    if (/^[|>][-+\d]*\s*(#.*)?$/.test(value)) textColumn = entries.at(-1)?.column ?? indent;
    if (isQuoteOpen(value)) break;
    brackets = Math.max(0, brackets + bracketsLeft(value));
  }
  return rows;
}

function lineEntries(written: string, line: number): { entries: Entry[]; value: string } {
  const entries: Entry[] = [];
  let column = written.length - written.trimStart().length;
  for (;;) {
    const dash = /^-(?: +|$)/.exec(written.slice(column));
    if (!dash) break;
    const behind = written.slice(column + dash[0].length);
    const opensGroup = /^(#.*)?$/.test(behind) || /^- /.test(behind) || named.test(behind);
    entries.push({ line, column, kind: 'dash', open: opensGroup });
    column += dash[0].length;
  }
  const name = named.exec(written.slice(column));
  if (!name) {
    if (entries.length === 0) entries.push({ line, column, kind: 'word', open: true });
    return { entries, value: written.slice(column) };
  }
  const value = written.slice(column + name[0].length).trim();
  entries.push({ line, column, kind: 'name', open: /^(#.*)?$/.test(value) });
  return { entries, value };
}

const named = /^(?:"[^"]*"|'[^']*'|[^\s#[\]{}&*!|>'"%@`,][^#]*?) *:(?= |$)/;

const isQuoteOpen = (value: string): boolean =>
  /^"(?:[^"\\]|\\.)*$/.test(value) || /^'(?:[^']|'')*$/.test(value);

function bracketsLeft(value: string): number {
  let open = 0;
  const token = /"(?:[^"\\]|\\.)*"|(?<=[\s[{,])'[^']*'|(?<=\s)#.*|[[\]{}]/g;
  for (const [mark] of value.matchAll(token)) {
    if (mark === '[' || mark === '{') open++;
    else if (mark === ']' || mark === '}') open--;
  }
  return open;
}
