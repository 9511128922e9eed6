import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
} from 'yaml';
import type { Place, Problem } from './problem.ts';
import { longName, oversized } from './tooMuch.ts';

/** Turns a stretch of the text, by offsets, into a place. */
export type Locate = (start: number, end: number) => Place;

/**
 * Finds what YAML allows and a scenario does not: directives, anchors, aliases, tags, names that
 * are no plain words, names written twice, what is too long, and a file with nothing in it.
 *
 * @param locate turns offsets into a place
 * @returns every problem, in the file's order; never throws
 */
export function refusedYaml(document: Document, text: string, locate: Locate): Problem[] {
  if (document.directives?.yaml.explicit) {
    const message = 'the line %YAML changes how values are read';
    return [{ code: 'yaml', message, at: locate(0, 1), hint: 'delete the line' }];
  }
  const isEmpty = isScalar(document.contents) && document.contents.value === null;
  if (document.contents === null || isEmpty) {
    const hint = 'start with title:, angles: and athlete:';
    return [{ code: 'empty-file', message: 'the file is empty', at: locate(0, 0), hint }];
  }
  const found: Problem[] = [];
  refuseWithin(document.contents, text, locate, found);
  return found;
}

function refuseWithin(node: unknown, text: string, locate: Locate, found: Problem[]): void {
  if (!isNode(node)) return;
  const refused = refusedFeature(node);
  if (refused) {
    const [start, end] = node.range ?? [0, 0];
    // A node's range begins after its anchor and tag.
    const mark = text.lastIndexOf(refused.mark, start);
    const { message, hint } = refused;
    found.push({ code: 'yaml', message, at: locate(mark < 0 ? start : mark, end), hint });
  }
  const excess = oversized(node, locate);
  if (excess) {
    found.push(excess);
    return;
  }
  if (isSeq(node)) for (const item of node.items) refuseWithin(item, text, locate, found);
  if (!isMap(node)) return;
  const firstLines = new Map<string, number>();
  for (const { key, value } of node.items) {
    const problem = keyProblem(key, locate, firstLines);
    if (problem) found.push(problem);
    refuseWithin(key, text, locate, found);
    refuseWithin(value, text, locate, found);
  }
}

function refusedFeature(node: Node): { mark: string; message: string; hint: string } | undefined {
  if (isAlias(node)) {
    const message = `"*${node.source}" refers to another value, which is not read here`;
    return { mark: '*', message, hint: 'write the value out, or put it in quotes if it is a text' };
  }
  if ((isScalar(node) || isCollection(node)) && node.anchor !== undefined) {
    const message = `"&${node.anchor}" names a value for later use, which is not read here`;
    return {
      mark: '&',
      message,
      hint: 'delete it, or put the whole value in quotes if it is a text',
    };
  }
  if (node.tag !== undefined) {
    const message = 'a "!" before a value changes its kind, which is not read here';
    return {
      mark: '!',
      message,
      hint: 'delete it, or put the whole value in quotes if it is a text',
    };
  }
  return undefined;
}

function keyProblem(
  key: unknown,
  locate: Locate,
  firstLines: Map<string, number>,
): Problem | undefined {
  const [start, end] = (isNode(key) && key.range) || [0, 0];
  const at = locate(start, end);
  const name = isScalar(key) && key.value !== null ? String(key.value) : undefined;
  // A key __proto__ is dropped silently further down, so it is refused here.
  if (name === undefined || name === '' || name === '__proto__') {
    const hint = 'a line reads "name: value"';
    return { code: 'bad-key', message: 'this cannot be the name of a value', at, hint };
  }
  const long = isNode(key) && longName(key, locate);
  if (long) return long;
  const first = firstLines.get(name);
  if (first === undefined) {
    firstLines.set(name, at.line);
    return undefined;
  }
  const hint = name.startsWith('-') ? 'write a space after the dash' : 'keep one of the two';
  const message = `"${name}" is written twice; the first is on line ${first}`;
  return { code: 'duplicate-key', message, at, hint };
}
