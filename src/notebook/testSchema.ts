import { z } from 'zod';
import { group, liftEnd, must, nameOf, oneOf, quantity } from './field.ts';
import { actionNames, liftNames } from './knownNames.ts';

const date = z.iso
  .date({
    error: must('a date like 2026-09-14'),
  })
  .describe('Day of the test, year-month-day');

const trials = z
  .array(
    z
      .number({ error: must('a number, without a unit') })
      .gt(0, { error: ({ input }) => `is ${input}; a torque is above 0` }),
    group('a list such as [118, 121, 116]'),
  )
  .min(1, 'is an empty list')
  .describe('The trials at this angle, bare numbers in `unit`');

/** Torque trials at several joint angles. */
export const torqueTest = z.strictObject({
  action: oneOf('joint action', actionNames, 'The joint action tested'),
  contraction: z
    .literal('isometric', {
      error: ({ input }) =>
        typeof input === 'string'
          ? `is "${input}"; only isometric tests are read`
          : must('isometric')({ input }),
    })
    .describe('How the muscle worked: isometric')
    .meta({ examples: ['isometric'] }),
  date: date.optional(),
  with: z
    .strictObject(
      {
        hip: quantity('angle', 'Hip angle', '85 deg').optional(),
        knee: quantity('angle', 'Knee angle').optional(),
        ankle: quantity('angle', 'Ankle angle, 0 = foot square to shank', '10 deg').optional(),
      },
      group('a group such as { hip: 85 deg }'),
    )
    .describe('Angles of the neighbour joints during the test')
    .optional(),
  trials: z
    .record(z.string(), trials, group('a group such as { 40 deg: [118, 121, 116] }'))
    .describe('Joint angle (deg or rad) → trials')
    .meta({ examples: [{ '40 deg': [118, 121, 116] }] }),
  unit: z
    .string({ error: must('a unit of torque, for example N m') })
    .describe('Unit of all trials: N m, lbf ft or kgf cm')
    .meta({ examples: ['N m'] }),
  score: oneOf('score', ['best', 'mean'], 'Which trial counts: best (default) or mean').optional(),
});

/** The heaviest single repetition of a lift. */
export const liftTest = z.strictObject({
  lift: nameOf('lift', liftNames, 'The lift tested'),
  from: liftEnd('Start of the range (default: the lift’s first angle)', '0 deg').optional(),
  to: liftEnd('Far end of the range', '110 deg'),
  best: quantity('mass', 'Heaviest single repetition', '85 kg'),
  date: date.optional(),
});

/** A torque test of the right shape, before units are read. */
export type TorqueTestFile = z.infer<typeof torqueTest>;
/** A lift test of the right shape, before units are read. */
export type LiftTestFile = z.infer<typeof liftTest>;
