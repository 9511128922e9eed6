import { z } from 'zod';
import { count, group, liftEnd, must, nameOf, oneOf, quantity, text } from './field.ts';
import { actionNames, liftNames } from './knownNames.ts';
import { usualOptions } from './usualOptions.ts';

const load = z
  .string({
    error: ({ input }) =>
      must('a share ("80 %"), a mass ("70 kg") or a repetition maximum ("8 RM"), with its unit')({
        input,
      }),
  })
  .describe('A share of the best single repetition ("80 %"), a mass ("70 kg"), or "8 RM"');

const tempo = z
  .string({ error: must('a text such as 3-0-1') })
  .describe('Seconds lowering, held at the bottom and lifting, such as 3-0-1 (default 2-0-1)');

const sets = count('Sets', 20, 'work has at least 1 set', 4);
const reps = count('Repetitions a set', 50, 'a set has at least 1 repetition', 6);
const rest = quantity('time', 'Rest between sets (default 120 s)', '120 s').optional();

const liftWork = z.strictObject({
  lift: nameOf('lift', liftNames, 'The lift done'),
  machine: text('Name of an entry of machines').optional(),
  chains: text('Name of an entry of chains').optional(),
  bands: text('Name of an entry of bands').optional(),
  from: liftEnd('Start of the range', '0 deg'),
  to: liftEnd('End of the range', '115 deg'),
  load: load.optional(),
  reserve: z
    .number({ error: must('a number of repetitions left') })
    .int({ error: ({ input }) => `is ${input}; it must be a whole number` })
    .min(0, { error: ({ input }) => `is ${input}; 0 means no repetition is left` })
    .max(20, { error: ({ input }) => `is ${input}; at most 20 can be read` })
    .describe('Repetitions that could still have been done, instead of load: no unit')
    .optional(),
  sets,
  reps,
  tempo: tempo.optional(),
  'lower only': z
    .literal(['yes', 'no', true, false], {
      error: ({ input }) =>
        input === null ? 'is empty' : `is "${input}"; write yes, or leave it out`,
    })
    .describe('yes: it is only lowered; partners bring it up, or it is not brought up')
    .meta({ examples: ['yes'] })
    .optional(),
  'lowering load': z
    .string({ error: must('more than is lifted ("+20 %") or a mass ("100 kg")') })
    .describe('A heavier load on the way down: more than is lifted ("+20 %"), or a mass ("100 kg")')
    .optional(),
  rest,
});

const holdWork = z.strictObject({
  hold: nameOf(
    'joint action or lift',
    [...actionNames, ...liftNames],
    'The joint action or lift held still',
  ),
  at: liftEnd('Joint angle of the hold', '90 deg'),
  effort: quantity('share', 'Share of the strongest hold possible', '90 %'),
  sets,
  reps,
  seconds: z
    .number({ error: must('a number of seconds, without a unit') })
    .gt(0, { error: ({ input }) => `is ${input}; a hold lasts longer than 0 s` })
    .max(120, { error: ({ input }) => `is ${input}; a hold of at most 120 s can be read` })
    .describe('Length of each hold: seconds, no unit')
    .meta({ examples: [5] }),
  against: z
    .literal('pins', {
      error: ({ input }) =>
        input === null
          ? 'is empty'
          : `is "${input}"; write pins (any bar that cannot move) or leave it out`,
    })
    .describe('pins: the lift is pushed against a bar that cannot move; left out, a weight is held')
    .meta({ examples: ['pins'] })
    .optional(),
  rest,
});

const isokineticWork = z.strictObject({
  isokinetic: oneOf('joint action', actionNames, 'The joint action worked at a set speed'),
  from: quantity('angle', 'Start of the range', '10 deg'),
  to: quantity('angle', 'End of the range', '100 deg'),
  speed: quantity('speed', 'Speed at which the machine turns the joint'),
  way: oneOf(
    'way',
    ['both', 'lifting', 'lowering'],
    'Whether the muscles push the machine (lifting), resist it (lowering), or both',
  ),
  effort: quantity('share', 'Share of the strongest push possible', '100 %'),
  sets,
  reps,
  rest,
});

const deload = z.strictObject({
  week: count('Which week of the block', 104, 'weeks count from 1', 4),
  sets: z
    .string({ error: must('half or a share such as 50 %') })
    .describe('The share of sets that stays: half, or in %')
    .meta({ examples: ['half'] }),
});

const exampleWork = {
  lift: 'back squat',
  from: '0 deg',
  to: '115 deg',
  load: '80 %',
  sets: 4,
  reps: 6,
};

/** A whole program, to show what one looks like. */
export const exampleProgram = { weeks: 8, 'sessions per week': 2, work: [exampleWork] };

const workList = z.array(
  z.union([liftWork, holdWork, isokineticWork], {
    error: must('work with "lift:", "hold:" or "isokinetic:"'),
  }),
  group('a list, each entry after "- "'),
);

const sessions = count('Sessions', 14, 'a week has at least 1 session', 2);

const rhythm = {
  progress: z
    .string({ error: must('a change such as 2.5 % per week') })
    .describe('Change of load from week to week, in % per week (default 0)')
    .optional(),
  deload: z
    .union([deload, z.array(deload)], { error: must('such as { week: 4, sets: half }') })
    .describe('Weeks with fewer sets')
    .optional(),
};

/** A block whose weeks are alike. */
const plainProgram = z.strictObject(
  {
    weeks: count('Length of the block', 104, 'a program lasts at least 1 week', 8),
    'sessions per week': sessions,
    work: workList
      .min(1, 'is an empty list; a program has at least one entry')
      .meta({ examples: [[exampleWork]] }),
    ...rhythm,
  },
  group('a group of lines such as weeks: 8'),
);
usualOptions.add(plainProgram);

const phaseWeeks = count('Length of the phase', 104, 'a phase lasts at least 1 week', 4);
const phaseName = text('What the phase is called, such as off-season').optional();

const weeksOff = z.strictObject({
  off: z
    .literal(['yes', true], { error: must('yes; leave it out of weeks with training') })
    .describe('yes: weeks without training')
    .meta({ examples: ['yes'] }),
  name: phaseName,
  weeks: phaseWeeks,
});

const trainedPhase = z.strictObject(
  {
    name: phaseName,
    weeks: phaseWeeks,
    'sessions per week': sessions.optional(),
    work: workList
      .describe('As in a program; empty for weeks off')
      .meta({ examples: [[exampleWork]] }),
    ...rhythm,
  },
  group('a group such as { weeks: 4, sessions per week: 2, work: [ … ] }'),
);
usualOptions.add(trainedPhase);

const examplePhases = [exampleProgram, { weeks: 1, off: 'yes' }];

/** Parts of a season one after the other, each with its own work. */
const phasedProgram = z.strictObject({
  phases: z
    .array(
      z.union([weeksOff, trainedPhase], { error: must('a phase such as { weeks: 1, off: yes }') }),
      group('a list of phases, each after "- "'),
    )
    .min(1, 'is an empty list; a program has at least one phase')
    .describe('Parts one after the other; gains and losses carry over from each to the next')
    .meta({ examples: [examplePhases] }),
});

/** A program of training: alike from week to week, or in phases. */
export const program = z.union([phasedProgram, plainProgram], {
  error: must('a group of lines such as weeks: 8'),
});

/** Work with a moving load, before units are read. */
export type LiftWorkFile = z.infer<typeof liftWork>;
/** Work at a set speed, before units are read. */
export type IsokineticWorkFile = z.infer<typeof isokineticWork>;
/** A hold, before units are read. */
export type HoldWorkFile = z.infer<typeof holdWork>;
/** A lighter week, before units are read. */
export type DeloadFile = z.infer<typeof deload>;
/** A program of alike weeks, before units are read. */
export type PlainProgramFile = z.infer<typeof plainProgram>;
/** A phase, before units are read. */
export type PhaseFile = z.infer<typeof weeksOff> | z.infer<typeof trainedPhase>;
/** A program of phases, before units are read. */
export type PhasedProgramFile = z.infer<typeof phasedProgram>;
/** A program of the right shape, before units are read. */
export type ProgramFile = z.infer<typeof program>;
