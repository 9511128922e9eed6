import { z } from 'zod';
import { sectionNames } from './blocks.ts';
import { group, must, oneOf, text } from './field.ts';

const cellName = text('The name of a cell', 'bar to body');

const names = (about: string) =>
  z
    .array(cellName, group('a list of cells such as [bar to body]'))
    .min(1, 'is empty')
    .describe(about);

/**
 * A block: one of these names. Not a union of groups, so that a misspelt name is told beside all
 * the right ones; that there is exactly one is seen when the block is read.
 */
export const block = z
  .strictObject(
    {
      text: text('Markdown, kept as written; headings from "##"', 'Notes for Monday.').optional(),
      cells: z
        .union([z.enum(['all']), names('Names of cells')], {
          error: must('all, or a list of cells such as [bar to body]'),
        })
        .describe('Cells as a table with their notes: a list of names, or all')
        .optional(),
      chart: text('A cell to draw: a list over angles', 'gains').optional(),
      table: names('Cells side by side by angle: lists over angles').optional(),
      section: oneOf('section', sectionNames, 'A section of the standard report').optional(),
    },
    group('a block such as "section: why" or "cells: all"'),
  )
  .describe('One of text, cells, chart, table and section')
  .meta({ minProperties: 1, maxProperties: 1 });

/** The blocks of a notebook. */
export const notebook = z
  .array(block, group('a list of blocks, each after "- "'))
  .min(1, 'is empty')
  .describe(
    'Blocks in your order, in place of the standard middle of the report; cautions, words and sources always close it',
  );

/** A block of the right shape. */
export type BlockFile = z.infer<typeof block>;
