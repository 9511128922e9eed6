import { z } from 'zod';
import { group, must, oneOf, quantity, text } from '../field.ts';
import { actionNames } from '../knownNames.ts';
import { sides } from './strengthTest.ts';

/** The shape of torque trials, inline or in a table beside the scenario. */

const trials = z
  .array(
    z
      .number({ error: must('a number, without a unit') })
      .gt(0, { error: ({ input }) => `is ${input}; a torque is above 0` }),
    group('a list such as [118, 121, 116]'),
  )
  .min(1, 'is an empty list')
  .describe('The trials at this angle, bare numbers in `unit`');

export const trialsByAngle = z
  .record(z.string(), trials, group('a group such as { 40 deg: [118, 121, 116] }'))
  .describe('Joint angle (deg or rad) → trials')
  .meta({ examples: [{ '40 deg': [118, 121, 116] }] });

/** Where a table beside the scenario keeps what. */
export const tableShape = {
  'trials from': text(
    'A table of trials as a CSV file beside the scenario',
    'tests/sn04.csv',
  ).optional(),
  columns: z
    .strictObject(
      {
        angle: text('Column of joint angles, in degrees', 'Angle'),
        value: text('Column of trials, one a line', 'Torque').optional(),
        values: z
          .array(text('Column of trials'), group('a list such as [Trial 1, Trial 2]'))
          .min(1, 'is an empty list')
          .describe('Columns of trials, several a line')
          .meta({ examples: [['Trial 1', 'Trial 2', 'Trial 3']] })
          .optional(),
        trial: text('Column that numbers the trials', 'Trial').optional(),
        day: text('Column of the test day, dates like 2026-09-14', 'Date').optional(),
        person: text('Column of the person, for repeatability', 'Athlete').optional(),
      },
      group('a group such as { angle: Angle, value: Torque }'),
    )
    .describe('What is in which column, by the names in its first line')
    .meta({ examples: [{ angle: 'Angle', value: 'Torque' }] })
    .optional(),
  where: z
    .record(
      z.string(),
      z.union([z.string(), z.number()], { error: must('a text') }),
      group('a group such as { athlete: SN-04, side: left }'),
    )
    .describe('Column → what it must hold for a line to count')
    .meta({ examples: [{ athlete: 'SN-04', side: 'left' }] })
    .optional(),
  decimal: oneOf('decimal sign', ['point', 'comma'], 'How the table writes decimals').optional(),
  separator: oneOf(
    'separator',
    ['comma', 'semicolon', 'tab'],
    'What parts the columns (default: found from the first line)',
  ).optional(),
  angles: oneOf(
    'way to write angles',
    ['flexion', 'included'],
    'How the table writes angles (default: as the scenario)',
  ).optional(),
};

/** What the numbers are. */
export const measureShape = {
  unit: z
    .string({ error: must('a unit of torque, for example N m') })
    .describe(
      'Unit of all trials: N m, lbf ft, kgf cm; or of a force with its lever arm: N, kg, lbf',
    )
    .meta({ examples: ['N m'] }),
  'lever arm': quantity(
    'length',
    'From the joint to where a force was measured',
    '36 cm',
  ).optional(),
  score: oneOf('score', ['best', 'mean'], 'Which trial counts: best (default) or mean').optional(),
  side: oneOf(
    'side',
    sides,
    'Limb tested; both: pushed together, half is taken for each',
  ).optional(),
};

export const testedAction = oneOf('joint action', actionNames, 'The joint action tested');
