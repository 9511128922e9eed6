import { z } from 'zod';
import { count, group, liftEnd, must, nameOf, oneOf, quantity } from '../field.ts';
import { liftNames } from '../knownNames.ts';
import { postures } from './strengthTest.ts';
import { measureShape, tableShape, testedAction, trialsByAngle } from './torqueSchema.ts';

export const date = z.iso
  .date({
    error: must('a date like 2026-09-14'),
  })
  .describe('Day of the test, year-month-day');

const gravityExample = { relaxed: { '40 deg': '8 N m', '80 deg': '3 N m' } };

const gravity = z
  .union(
    [
      z.enum(['corrected', 'none', 'estimated']),
      z.strictObject({
        relaxed: z
          .record(
            z.string(),
            quantity('torque', 'What the relaxed limb pulls at this angle', '8 N m'),
            group('a group such as { 40 deg: 8 N m }'),
          )
          .describe('Joint angle → pull of the relaxed limb; minus: the other way'),
        pulls: oneOf(
          'direction',
          ['against', 'with'],
          'Whether the relaxed limb pulls against the effort or with it',
        ).optional(),
      }),
      z.strictObject({
        weighed: quantity('torque', 'Pull of the relaxed limb at that angle', '12.5 N m'),
        at: quantity('angle', 'Angle at which it was weighed', '0 deg'),
      }),
    ],
    {
      error: ({ input }) =>
        typeof input === 'string'
          ? `is "${input}"; write corrected (by the device), none, estimated, or a group such as { relaxed: { 40 deg: 8 N m } } or { weighed: 12.5 N m, at: 0 deg }`
          : must('corrected, none, estimated, or a group with relaxed: or weighed:')({ input }),
    },
  )
  .describe('What was done about the weight of the limb (default: the device took it out)')
  .meta({ examples: ['corrected', gravityExample] });

export const neighbours = z
  .strictObject(
    {
      hip: quantity('angle', 'Hip angle', '85 deg').optional(),
      knee: quantity('angle', 'Knee angle').optional(),
      ankle: quantity('angle', 'Ankle angle, 0 = foot square to shank', '10 deg').optional(),
    },
    group('a group such as { hip: 85 deg }'),
  )
  .describe('Angles of the neighbour joints during the test');

const sessions = /^(yes|no|\d{1,3} sessions?)$/;

/** Torque trials at several joint angles. */
export const torqueTest = z.strictObject({
  action: testedAction,
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
  with: neighbours.optional(),
  posture: oneOf('posture', postures, 'How the athlete was placed').optional(),
  'angle taken': oneOf(
    'way to take angles',
    ['at rest', 'during effort'],
    'When the angle was read: the joint moves when the athlete pushes',
  ).optional(),
  familiarised: z
    .string({ error: must('yes, no or a number such as 3 sessions') })
    .regex(sessions, {
      error: ({ input }) => `is "${input}"; write yes, no or a number such as 3 sessions`,
    })
    .describe('Whether the test was practised before: yes, no or a number such as 3 sessions')
    .meta({ examples: ['3 sessions'] })
    .optional(),
  gravity: gravity.optional(),
  trials: trialsByAngle.optional(),
  ...tableShape,
  ...measureShape,
});

/** The heaviest single repetition of a lift, or a set from which it is estimated. */
export const liftTest = z.strictObject({
  lift: nameOf('lift', liftNames, 'The lift tested'),
  from: liftEnd('Start of the range (default: the lift’s first angle)', '0 deg').optional(),
  to: liftEnd('Far end of the range', '110 deg'),
  best: quantity('mass', 'Heaviest single repetition', '85 kg').optional(),
  reps: count(
    'Repetitions to failure, where no single was lifted',
    100,
    'a set has at least 1 repetition',
    5,
  ).optional(),
  load: quantity('mass', 'Load of those repetitions', '75 kg').optional(),
  date: date.optional(),
});

/** One test of either kind. */
export const strengthTest = z.union([torqueTest, liftTest], {
  error: must('a test with "action:" or "lift:"'),
});

/** A torque test of the right shape, before units are read. */
export type TorqueTestFile = z.infer<typeof torqueTest>;
/** A lift test of the right shape, before units are read. */
export type LiftTestFile = z.infer<typeof liftTest>;
