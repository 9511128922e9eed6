import {
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Pair,
  parseDocument,
  type YAMLMap,
} from 'yaml';
import type { Path } from '../scenario.ts';
import { guardText } from './guardText.ts';
import { type IndentSlip, indentSlips } from './indentSlips.ts';
import { isIndentFault, plainYamlProblem, type YamlFault } from './plainYamlProblem.ts';
import type { Place, Problem } from './problem.ts';
import { type Locate, refusedYaml } from './refusedYaml.ts';

/** Reads a file that a scenario names, by its path from the scenario's folder. */
export type Beside = (path: string) => { readonly text: string } | { readonly fault: string };

/** A parsed file that still knows where each value stands. */
export interface Source {
  readonly file: string;
  readonly text: string;
  /** The texts that places point into, by their `file`: its own, and those of included files. */
  readonly texts: ReadonlyMap<string, string>;
  /** The file as plain objects, lists, texts and numbers. */
  readonly value: unknown;
  /**
   * Place of the value at a path, or of its key. What is missing is placed at the nearest key
   * above it that is there.
   */
  readonly at: (path: Path, options?: { readonly key?: boolean }) => Place;
  /** The values as written, where formulas have been computed since. */
  readonly written?: unknown;
  /** Left out where the file stands alone and may name no other. */
  readonly beside?: Beside | undefined;
}

type SourceResult =
  | { readonly source: Source; readonly problems?: undefined }
  | { readonly source?: undefined; readonly problems: readonly Problem[] };

/**
 * Parses one YAML document and keeps the places of its values.
 *
 * Plain YAML only: anchors, aliases, tags and directives are refused, because each of them can
 * change a value without a trace in what the coach sees.
 *
 * @param file the name to show in problems
 * @param text what the file holds
 * @param beside reads files that it names
 * @returns the source, or every problem that the text has as YAML; never throws
 */
export function readSource(file: string, text: string, beside?: Beside): SourceResult {
  const bare = text.replace(/^\ufeff/, '');
  const guarded = guardText(file, bare);
  if (guarded) return { problems: [guarded] };
  const lines = new LineCounter();
  // The parser compares every key with every other: 20,000 keys take it ten seconds. The walk
  // below finds duplicates in one pass.
  const options = { lineCounter: lines, prettyErrors: false, uniqueKeys: false } as const;
  const document = parseDocument(bare, options);
  const locate = locator(file, bare, lines);
  const faults = [...document.errors, ...document.warnings];
  const problems =
    faults.length > 0 ? yamlProblems(faults, bare, locate) : refusedYaml(document, bare, locate);
  if (problems.length > 0) return { problems };
  const value: unknown = document.toJS({ maxAliasCount: 0 });
  const at: Source['at'] = (path, { key = false } = {}) => locate(...rangeAt(document, path, key));
  return { source: { file, text: bare, texts: new Map([[file, bare]]), value, at, beside } };
}

function locator(file: string, text: string, lines: LineCounter): Locate {
  return (start, end) => {
    const { line, col } = lines.linePos(start);
    const newline = text.indexOf('\n', start);
    const stop = Math.min(end, newline < 0 ? text.length : newline);
    const length = text.slice(start, stop).trimEnd().length;
    const place = { file, line: Math.max(1, line), col: Math.max(1, col) };
    return length > 0 ? { ...place, endCol: place.col + length } : place;
  };
}

/** A line beside its neighbours is told as such, whatever the parser makes of it. */
function yamlProblems(faults: readonly YamlFault[], text: string, locate: Locate): Problem[] {
  const hasTabs = faults.some(({ code }) => code === 'TAB_AS_INDENT');
  const slips = !hasTabs && faults.some(isIndentFault) ? indentSlips(text) : [];
  const starts = lineStarts(text);
  const problems = slips.map((slip) => indentProblem(slip, starts, text, locate));
  const isSlip = (fault: YamlFault): boolean => {
    const line = locate(fault.pos[0], fault.pos[1]).line - 1;
    return isIndentFault(fault) && slips.some((s) => line >= s.first - 1 && line <= s.last + 1);
  };
  const others = faults.filter((fault) => !isSlip(fault));
  return [...problems, ...otherProblems(others, text, locate)];
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (const { index } of text.matchAll(/\n/g)) starts.push(index + 1);
  return starts;
}

function indentProblem(
  { line, indent, neighbours }: IndentSlip,
  starts: readonly number[],
  text: string,
  locate: Locate,
): Problem {
  const spaces = `${indent} space${indent === 1 ? '' : 's'}`;
  const message = `this line is indented by ${spaces}, its neighbours by ${neighbours.join(' or ')}; lines of one group start in the same column`;
  const start = (starts[line] ?? 0) + indent;
  return { code: 'yaml', message, at: locate(start, text.length) };
}

/** One slip often makes the parser stumble several times: only the first of a run is shown. */
function otherProblems(faults: readonly YamlFault[], text: string, locate: Locate): Problem[] {
  const problems: Problem[] = [];
  let before: YamlFault | undefined;
  for (const fault of faults) {
    const isSameSlip = fault.pos[0] === before?.pos[0];
    before = fault;
    if (isSameSlip) continue;
    const { message, hint, offset, length } = plainYamlProblem(fault, text);
    const at = locate(offset, offset + length);
    const last = problems.at(-1);
    const follows = last && (last.at?.line === at.line || fault.code === 'UNEXPECTED_TOKEN');
    if (follows) continue;
    problems.push({ code: 'yaml', message, at, ...(hint === undefined ? {} : { hint }) });
  }
  return problems;
}

/** Start and end of what stands at a path; of the last key that exists if it is not there. */
function rangeAt(document: Document, path: Path, wantKey: boolean): [number, number] {
  let node: unknown = document.contents;
  let range = startOf(node);
  for (const [index, step] of path.entries()) {
    const isLast = index === path.length - 1;
    if (isMap(node)) {
      const pair = pairsByName(node).get(String(step));
      if (!pair) return range;
      range = isLast && !wantKey ? rangeOfValue(pair) : rangeOf(pair.key);
      node = pair.value;
    } else {
      const item: unknown = isSeq(node) ? node.items[Number(step)] : undefined;
      if (!isNode(item)) return range;
      range = isLast ? rangeOf(item) : startOf(item);
      node = item;
    }
  }
  return range;
}

/** Looked up once a map: a file of a hundred thousand unknown keys is placed key by key. */
const indexes = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();

function pairsByName(map: YAMLMap): ReadonlyMap<string, Pair> {
  const known = indexes.get(map);
  if (known) return known;
  const index = new Map<string, Pair>();
  for (const pair of map.items) if (isScalar(pair.key)) index.set(String(pair.key.value), pair);
  indexes.set(map, index);
  return index;
}

/** An empty value has no width of its own: its key is shown. */
function rangeOfValue(pair: Pair): [number, number] {
  const [start, end] = rangeOf(pair.value);
  return end > start ? [start, end] : rangeOf(pair.key);
}

function rangeOf(node: unknown): [number, number] {
  const range = isNode(node) ? node.range : undefined;
  return range ? [range[0], range[1]] : [0, 0];
}

function startOf(node: unknown): [number, number] {
  const [start] = rangeOf(node);
  return [start, start + 1];
}
