import { z } from 'zod';
import { program } from './programSchema.ts';
import { scenarioSchema } from './schema.ts';
import { mostIncluded } from './text/includedNames.ts';

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

/** Files joined with this one before its shape is looked at. */
const include = z
  .union([z.string(), z.array(z.string()).max(mostIncluded)])
  .describe('Files of this folder to put together with this one, such as athletes/SN-04.yaml')
  .meta({ examples: [['athletes/SN-04.yaml', 'equipment.yaml']] });

/** The same shape for editors: other files, and programs that are `like` one another. */
const forEditors = scenarioSchema.extend({
  include: include.optional(),
  programs: z
    .record(z.string(), z.union([program, derived]))
    .describe('Program name → what is done'),
});

/**
 * The JSON Schema of a scenario, by which editors complete and explain fields: the shape only, not
 * units and plain sense.
 */
export function scenarioJsonSchema(): object {
  const { required, ...schema } = z.toJSONSchema(forEditors, { io: 'input' });
  // What a scenario must have may stand in a file it includes, but for the convention of angles.
  return { ...schema, required: ['angles'], anyOf: [{ required: ['include'] }, { required }] };
}
