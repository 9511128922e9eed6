import { isMap, isScalar, isSeq, parseDocument, type Scalar, type YAMLMap } from 'yaml';
import type { Path } from '../scenario.ts';

/** A parsed text; asked for the nodes behind its values. */
export type Nodes = ReturnType<typeof nodesOf>;

/** Parses a text that `readSource` has taken; its nodes know where they stand. */
export const nodesOf = (text: string) => parseDocument(text, { uniqueKeys: false });

/** The single value at a path, with its quotes and its place in the text. */
export function scalarAt(nodes: Nodes, path: Path): Scalar | undefined {
  const node = nodeAt(nodes, path);
  return isScalar(node) ? node : undefined;
}

/** The group at a path. */
export function mapAt(nodes: Nodes, path: Path): YAMLMap | undefined {
  const node = nodeAt(nodes, path);
  return isMap(node) ? node : undefined;
}

/** Names are compared as texts: 40 is a number to YAML and a name to a scenario. */
export const entryOf = (map: YAMLMap, name: string) =>
  map.items.find(({ key }) => isScalar(key) && String(key.value) === name);

function nodeAt({ contents }: Nodes, path: Path): unknown {
  let node: unknown = contents;
  for (const step of path) {
    if (isMap(node)) node = entryOf(node, String(step))?.value;
    else node = isSeq(node) ? node.items[Number(step)] : undefined;
  }
  return node;
}
