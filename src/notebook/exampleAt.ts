import { z } from 'zod';
import { angleExample } from './angleWords.ts';
import type { Path, Scenario } from './scenario.ts';
import { schemaAt, valueAt } from './schemaAt.ts';

/**
 * Gives the schema's example for the value at a path.
 *
 * @param file the whole file as plain data
 * @param convention how angles are to be written; by default as the file says
 * @returns plain data with angles in that convention (limits and ankles never follow it), or
 *   undefined if the schema has none; never throws
 */
export function exampleAt(
  schema: z.core.$ZodType,
  path: Path,
  file: unknown,
  convention: Scenario['convention'] = valueAt(file, ['angles']) === 'included'
    ? 'included'
    : 'flexion',
): unknown {
  const found = schemaAt(schema, path, file);
  const examples = found instanceof z.ZodType ? found.meta()?.examples : undefined;
  const example: unknown = Array.isArray(examples) ? examples[0] : undefined;
  const isNeutral = path.includes('limits') || path.at(-1) === 'ankle';
  return isNeutral ? example : inConvention(example, convention);
}

function inConvention(example: unknown, convention: Scenario['convention']): unknown {
  if (typeof example === 'string') return angleExample(example, convention);
  if (Array.isArray(example)) return example.map((item) => inConvention(item, convention));
  if (typeof example !== 'object' || example === null) return example;
  const entries = Object.entries(example).map(([name, value]) => [
    angleExample(name, convention),
    inConvention(value, convention),
  ]);
  return Object.fromEntries(entries);
}

/** Writes an example as a coach would on one line; never throws. */
export function exampleText(example: unknown): string {
  if (Array.isArray(example)) return `[${example.map(exampleText).join(', ')}]`;
  if (typeof example !== 'object' || example === null) return String(example);
  const entries = Object.entries(example).map(([name, value]) => `${name}: ${exampleText(value)}`);
  return `{ ${entries.join(', ')} }`;
}
