import { z } from 'zod';
import { group, liftEnd, must, nameOf, text } from '../field.ts';
import { liftNames } from '../knownNames.ts';
import { neighbours, strengthTest } from './testSchema.ts';
import { measureShape, tableShape, testedAction, trialsByAngle } from './torqueSchema.ts';

/** Tests after training. */
export const retest = z
  .strictObject(
    {
      after: text('Name of the program done since the tests before', 'deep squat').optional(),
      tests: z
        .array(strengthTest, group('a list, each entry after "- "'))
        .min(1, 'is an empty list')
        .describe('The same tests again, each with its date'),
    },
    group('a group with tests:'),
  )
  .describe('Tests after training');

const ownError = {
  'typical error': z
    .string({ error: must('a text such as 4 % or 9 N m') })
    .describe('Typical error between days: a share or in the unit of the test, 4 % or 9 N m')
    .meta({ examples: ['4 %'] })
    .optional(),
  from: text('Where the typical error comes from: people × days', '10 people × 2 days').optional(),
};

const days = z
  .array(trialsByAngle, group('a list of days, such as [{ 40 deg: [118, 121] }, …]'))
  .describe('Trials of each day, without training between the days');

/** A torque test repeated on several days without training between them, or its known error. */
const repeatedTorque = z.strictObject({
  action: testedAction,
  with: neighbours.optional(),
  days: days.optional(),
  people: z
    .record(z.string(), days, group('a group such as { A: [{ 40 deg: [118] }, …] }'))
    .describe('Name → days of that person')
    .optional(),
  ...tableShape,
  ...measureShape,
  unit: measureShape.unit.optional(),
  ...ownError,
});

/** The known error of a lift's heaviest single. */
const repeatedLift = z.strictObject({
  lift: nameOf('lift', liftNames, 'The lift tested'),
  to: liftEnd('Far end of the range', '110 deg'),
  ...ownError,
});

export const repeatedTest = z.union([repeatedTorque, repeatedLift], {
  error: must('a group with "action:" or "lift:"'),
});

/** Retests of the right shape, before units are read. */
export type RetestFile = z.infer<typeof retest>;
/** A repeated torque test of the right shape, before units are read. */
export type RepeatedTorqueFile = z.infer<typeof repeatedTorque>;
/** A lift's known error of the right shape, before units are read. */
export type RepeatedLiftFile = z.infer<typeof repeatedLift>;
