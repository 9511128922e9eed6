import { z } from 'zod';
import { group, must, text } from './field.ts';

const formula = text(
  'A formula that begins with "=", or a number with its unit',
  '= best("back squat", 110 deg) / mass',
);

const described = z.strictObject(
  {
    is: formula,
    note: text('What it is for').optional(),
    unit: text('Unit to show it in', 'N m/kg').optional(),
    expect: text(
      'Where it should lie: "0.8 to 1.2", "at least 80 kg" or "at most 3"',
      '0.8 to 1.2',
    ).optional(),
    chart: z
      .enum(['yes', 'no'], { error: must('yes or no') })
      .describe('Whether a list is drawn')
      .optional(),
  },
  group('a formula such as = 2 * mass, or a group such as { is: = 2 * mass, unit: kg }'),
);

/** A calculation of the coach's own: a formula, or one with a note, a unit and an expectation. */
export const cell = z
  .union([formula, described], {
    error: must('a formula such as "= best("back squat", 110 deg) / mass", or a group with is:'),
  })
  .describe('A formula, alone or with note, unit and expectation');

/** A cell of the right shape, before its formula is read. */
export type CellFile = z.infer<typeof cell>;
