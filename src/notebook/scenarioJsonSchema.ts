import { z } from 'zod';
import { program } from './programSchema.ts';
import { scenarioSchema } from './schema.ts';

/** A program that is another one with changes, before it is put in full. */
const derived = z
  .looseObject({
    like: z.string().describe('The program to start from'),
    change: z
      .record(z.string(), z.unknown())
      .describe('Place in that program (work.1.to) → new value; empty takes the entry out')
      .optional(),
  })
  .describe('A program that is another one with changes');

/** The same shape for editors: programs may also be `like` one another. */
const forEditors = scenarioSchema.extend({
  programs: z
    .record(z.string(), z.union([program, derived]))
    .describe('Program name → what is done'),
});

/**
 * The JSON Schema of a scenario, by which editors complete and explain fields: the shape only, not
 * units and plain sense.
 */
export function scenarioJsonSchema(): object {
  return z.toJSONSchema(forEditors, { io: 'input' });
}
