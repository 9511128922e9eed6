import type { Path } from '../../notebook/scenario.ts';
import { valueAt } from '../../notebook/schemaAt.ts';
import { dottedOf } from '../../notebook/text/placeInText.ts';
import type { Source } from '../../notebook/text/source.ts';
import type { TraceNode } from './traceNode.ts';

/**
 * What a file says at a path, as leaves with their lines: a group or list that stands on one line is
 * one leaf, a longer one a leaf for each of its lines.
 *
 * @param formulaParts what the formula of a field rests on
 * @returns nothing for a path that the file does not have
 */
export function inputNodes(
  source: Source,
  path: Path,
  formulaParts: (formula: string) => readonly TraceNode[],
): TraceNode[] {
  const value = valueAt(source.value, path);
  if (value === undefined || value === null) return [];
  const written = valueAt(source.written ?? source.value, path);
  const what = dottedOf(path);
  const at = source.at(path);
  if (typeof value !== 'object') {
    const isFormula = typeof written === 'string' && written.trimStart().startsWith('=');
    return [
      isFormula
        ? { what: `${what}: ${written}`, value: String(value), at, parts: formulaParts(written) }
        : { what, value: String(value), at, parts: [] },
    ];
  }
  const entries = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  const inside = entries.flatMap((key) => inputNodes(source, [...path, key], formulaParts));
  const [first] = inside;
  const isOneLine = inside.every(
    ({ at, parts }) =>
      at?.file === first?.at?.file && at?.line === first?.at?.line && parts.length === 0,
  );
  if (!isOneLine || !first?.at || path.length < 2) return inside;
  const text = inside.map((node) =>
    Array.isArray(value) ? node.value : `${node.what.slice(what.length + 1)} ${node.value ?? ''}`,
  );
  return [{ what, value: text.join(', '), at: first.at, parts: [] }];
}
