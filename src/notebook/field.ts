import { z } from 'zod';
import { wordings } from './quantity.ts';
import type { Dimension } from './unitTable.ts';

/** The kinds of value that a scenario's shape is made of. Messages follow the value's name. */

interface Input {
  readonly input?: unknown;
}

/**
 * Words what a value of the wrong kind should have been.
 *
 * @param kind after "must be"
 * @returns a message for zod that follows the value's name; never throws
 */
export const must =
  (kind: string, missing = 'is missing') =>
  ({ input }: Input): string => {
    if (input === undefined) return missing;
    return input === null ? 'is empty' : `must be ${kind}`;
  };

/**
 * A text that is not empty.
 *
 * @param about what it says, for the JSON Schema
 * @param example what to type if it is missing; never throws
 */
export const text = (about: string, example?: string) =>
  z
    .string({
      error: ({ input }) =>
        typeof input === 'number' || typeof input === 'boolean'
          ? 'must be a text; put it in quotes'
          : must('a text')({ input }),
    })
    .min(1, 'is empty')
    .describe(about)
    .meta(example === undefined ? {} : { examples: [example] });

/**
 * A number with its unit, as a text; the unit itself is read later, by `readQuantity`.
 *
 * @param about what it measures, for the JSON Schema
 * @param example what to show as right; never throws
 */
export const quantity = (
  dimension: Dimension,
  about: string,
  example: string = wordings[dimension].example,
) => {
  const { noun, need, units } = wordings[dimension];
  return z
    .string({
      error: ({ input }) =>
        typeof input === 'number'
          ? `needs ${need}, for example "${example}"`
          : must(`${noun}, for example "${example}"`)({ input }),
    })
    .describe(`${about}: ${noun}, in ${units}`)
    .meta({ examples: [example] });
};

/**
 * An end of a lift's range: an angle, or a height where the lift stands on the floor.
 *
 * @param about what it ends, for the JSON Schema; never throws
 */
export const liftEnd = (about: string, example: string) =>
  quantity('angle', `${about}; standing also thigh level, box 42 cm, pins 95 cm`, example);

/**
 * A whole number from 1 to `most`.
 *
 * @param least why it cannot be less than 1
 * @param example what to type if it is missing; never throws
 */
export const count = (about: string, most: number, least: string, example: number) =>
  z
    .number({ error: must('a whole number') })
    .int({ error: ({ input }) => `is ${input}; it must be a whole number` })
    .min(1, { error: ({ input }) => `is ${input}; ${least}` })
    .max(most, { error: ({ input }) => `is ${input}; at most ${most} can be read` })
    .describe(`${about}: a whole number, no unit`)
    .meta({ examples: [example] });

/**
 * One of a list of names; the first is the example.
 *
 * @param kind what the names name, for messages; never throws
 */
export const oneOf = <const Name extends string>(
  kind: string,
  names: readonly Name[],
  about: string,
) =>
  z
    .enum(names, {
      error: ({ input }) =>
        typeof input === 'string'
          ? `is "${input}"; there is no such ${kind}`
          : must(`the name of a ${kind}`)({ input }),
    })
    .describe(about)
    .meta({ examples: names.slice(0, 1) });

/**
 * The name of something that the file itself may declare: looked up when the file is read.
 *
 * @param kind what the names name, for messages
 * @param names those that are always known; the first is the example; never throws
 */
export const nameOf = (kind: string, names: readonly string[], about: string) =>
  z
    .string({ error: must(`the name of a ${kind}`) })
    .describe(about)
    .meta({ examples: [...names] });

/**
 * The message for a value that should have been a group or list; never throws.
 *
 * @param kind after "must be"
 */
export const group = (kind: string) => ({ error: must(kind) });
