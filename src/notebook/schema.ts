import { z } from 'zod';
import { muscledJoints } from '../mechanics/lift.ts';
import { notebook } from './blockSchema.ts';
import { athlete, meanPerson } from './bodySchema.ts';
import { cell } from './cellSchema.ts';
import { group, must, oneOf, quantity, text } from './field.ts';
import { actionNames } from './knownNames.ts';
import { declaredLift } from './liftSchema.ts';
import { exampleProgram, program } from './programSchema.ts';
import { bands, chains } from './rigSchema.ts';
import { study } from './study/studySchema.ts';
import { repeatedTest, retest } from './tests/retestSchema.ts';
import { strengthTest } from './tests/testSchema.ts';

/**
 * The shape of a scenario file, before units are read: quantities are still texts ("168 cm").
 * Messages follow the name of the value, as in `athlete.mass` + `is missing`.
 */

/** A machine's measured resistance. */
const machine = z
  .strictObject(
    {
      joint: oneOf('joint', muscledJoints, 'The joint it turns (default knee)').optional(),
      load: quantity('mass', 'Weight on the machine during the measurement', '40 kg'),
      torque: z
        .record(
          z.string(),
          quantity('torque', 'Torque at this angle', '70 N m'),
          group('a group such as { 10 deg: 70 N m }'),
        )
        .describe('Joint angle (deg or rad) → torque of the machine')
        .meta({ examples: [{ '10 deg': '70 N m', '60 deg': '88 N m' }] }),
    },
    group('a group such as { load: 40 kg, torque: { 10 deg: 70 N m } }'),
  )
  .describe('A machine measured by the coach');

/** The range to make stronger. */
const target = z
  .strictObject(
    {
      action: oneOf('joint action', actionNames, 'The joint action to make stronger'),
      from: quantity('angle', 'Start of the range'),
      to: quantity('angle', 'End of the range', '100 deg'),
      gain: quantity('share', 'Wanted gain inside the range', '10 %').optional(),
      within: quantity('weeks', 'Time for the gain').optional(),
    },
    group('a group such as { action: knee extension, from: 75 deg, to: 100 deg }'),
  )
  .describe('Where the strength is wanted')
  .meta({ examples: [{ action: 'knee extension', from: '75 deg', to: '100 deg' }] });

const byName = <Value extends z.ZodType>(value: Value, what: string) =>
  z.record(z.string(), value, group(`a group of ${what} by name`));

const limits = z
  .strictObject(
    {
      'minutes per week': z
        .number({ error: must('a number of minutes, without a unit') })
        .gt(0, { error: ({ input }) => `is ${input}; training takes longer than 0 minutes` })
        .describe('Training time: minutes, no unit')
        .optional(),
    },
    group('a group such as { minutes per week: 120 }'),
  )
  .describe('What the programs must keep to');

const conventions =
  'is missing; it says how this file writes joint angles: "flexion" (0 = straight, a bent knee is more) or "included" (180 = straight, a bent knee is less)';

/** The file's shape, for checking and for the JSON Schema that editors use. */
export const scenarioSchema = z.strictObject(
  {
    title: text('One line that says what is wanted', 'Stronger in the deep knee range'),
    note: text('Anything worth knowing').optional(),
    // Read and taken out before: one that is still there was not followed.
    include: z.never({ error: 'names files, which cannot be read here' }).optional(),
    angles: z
      .enum(['flexion', 'included'], {
        error: must('flexion (0 = straight) or included (180 = straight)', conventions),
      })
      .describe(
        'How this file writes joint angles: flexion, 0 = straight; included, 180 = straight',
      ),
    athlete: athlete.optional(),
    group: meanPerson.optional(),
    tests: z
      .array(strengthTest, group('a list, each entry after "- "'))
      .describe('What was measured')
      .optional(),
    retests: z
      .array(retest, group('a list, each entry after "- "'))
      .describe('What was measured after training, in order of time')
      .optional(),
    repeatability: z
      .array(repeatedTest, group('a list, each entry after "- "'))
      .describe('How far tests differ between days without training between them')
      .optional(),
    target,
    limits: limits.optional(),
    lifts: byName(declaredLift, 'lifts')
      .describe('Name → a lift that the catalogue does not have')
      .optional(),
    machines: byName(machine, 'machines').describe('Machine name → measured resistance').optional(),
    chains: byName(chains, 'chains')
      .describe('Name → a pair of chains to hang from a bar')
      .optional(),
    bands: byName(bands, 'bands')
      .describe('Name → bands to strap to a bar or beside a cable')
      .optional(),
    programs: byName(program, 'programs')
      .describe('Program name → what is done')
      .meta({ examples: [{ 'deep squat': exampleProgram }] }),
    cells: z
      .record(z.string(), cell, group('a group of cells by name'))
      .describe('Name → a calculation of your own')
      .optional(),
    notebook: notebook.optional(),
    study: study.optional(),
  },
  group('a group of lines such as title: and athlete:'),
);

/** A file of the right shape. */
export type ScenarioFile = z.infer<typeof scenarioSchema>;
/** A target of the right shape, before units are read. */
export type TargetFile = z.infer<typeof target>;
/** A machine of the right shape, before units are read. */
export type MachineFile = z.infer<typeof machine>;
