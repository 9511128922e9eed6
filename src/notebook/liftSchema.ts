import { z } from 'zod';
import { muscledJoints, segmentNames } from '../mechanics/lift.ts';
import { group, must, oneOf, quantity, text } from './field.ts';
import { liftNames } from './knownNames.ts';

/** The shape of a lift that a coach declares, in the words of the catalogue. */

const joints = [...muscledJoints, 'hinge'] as const;
const number = (about: string, example: number) =>
  z
    .number({ error: must('a number, without a unit') })
    .describe(about)
    .meta({ examples: [example] });
const direction = quantity(
  'angle',
  'Direction in space, 0 = straight up, forward positive',
  '0 deg',
);

const attachment = {
  on: oneOf('segment', segmentNames, 'The segment it acts on'),
  along: number('Share of the segment’s length from its end nearer the support, 0 to 1', 1)
    .min(0, { error: ({ input }) => `is ${input}; it lies between 0 and 1` })
    .max(1, { error: ({ input }) => `is ${input}; it lies between 0 and 1` }),
  across: quantity('length', 'Beside the segment, forward positive when it stands upright', '0 cm'),
};

const link = z.strictObject(
  {
    segment: oneOf('segment', segmentNames, 'The segment'),
    joint: oneOf('joint', joints, 'The joint at its end nearer the support'),
    near: oneOf('end', ['proximal', 'distal'], 'Which end that is: proximal (upper) or distal'),
    turn: z
      .literal([1, -1], { error: must('1 or -1') })
      .describe('1 where bending turns the segment forward and down, -1 where backward')
      .meta({ examples: [1] }),
    offset: quantity('angle', 'Turn of the straight joint against the segment before').optional(),
  },
  group('a group such as { segment: thigh, joint: hip, near: proximal, turn: -1 }'),
);

const follow = z.strictObject(
  {
    joint: oneOf('joint', joints, 'The joint that follows'),
    rule: oneOf(
      'rule',
      ['leveling off', 'linear', 'balance', 'direction', 'end on line'],
      'How it follows the leading joint',
    ),
    from: quantity('angle', 'Angle while the leading joint is straight', '20 deg').optional(),
    'per leading': number('Degrees for each degree of the leading joint', 0.35).optional(),
    most: quantity('angle', 'Angle toward which it levels off', '44 deg').optional(),
    direction: direction.optional(),
    across: quantity('length', 'How far the line runs beside the joint', '8 cm').optional(),
  },
  group('a group such as { joint: hip, rule: balance }'),
);

const resistance = z
  .strictObject(
    {
      kind: oneOf('kind', ['mass', 'machine torque', 'force', 'cable'], 'What resists'),
      on: attachment.on.optional(),
      along: attachment.along.optional(),
      across: attachment.across.optional(),
      below: quantity('length', 'How far the mass hangs below that point', '69 cm').optional(),
      arm: quantity('length', 'Lever of the machine, negative if pulled', '20 cm').optional(),
      direction: direction.optional(),
      gain: number('Share of the load’s weight that pulls', 1).optional(),
      'pulley forward': quantity('length', 'From the chain’s first joint', '-1 m').optional(),
      'pulley up': quantity('length', 'From the chain’s first joint', '-85 cm').optional(),
    },
    group('a group such as { kind: mass, on: thigh, along: 1, across: 0 cm }'),
  )
  .describe('Where the load acts')
  .meta({ examples: [{ kind: 'mass', on: 'trunk, head and arms', along: 1, across: '-5 cm' }] });

const contact = z
  .strictObject({ ...attachment, direction }, group('a group such as { on: shank, along: 1 }'))
  .describe('A second support that pushes in one direction');

const aboveFloor = z
  .strictObject(
    {
      height: text(
        'Height of the chain’s first joint above the floor, or standing shoulder',
        '54 cm',
      ),
      assumed: text('What that takes for granted'),
    },
    group('a group such as { height: 54 cm, assumed: the bench is 45 cm high }'),
  )
  .describe('Where the floor is, for chains and bands; flat feet stand on it');

/** A lift of the coach’s own; what is left out comes from the lift named by `like`. */
export const declaredLift = z
  .strictObject(
    {
      like: text('A lift of the catalogue to start from', liftNames[0]).optional(),
      chain: z
        .array(link, group('a list of segments, each after "- "'))
        .min(1, 'is an empty list; a lift moves at least one segment')
        .describe('Segments outward from the support')
        .optional(),
      support: oneOf(
        'support',
        ['feet', 'ball of foot', 'bar', 'seat'],
        'What holds the chain’s first joint',
      ).optional(),
      'support direction': direction.optional(),
      sides: z
        .literal([1, 2], { error: must('1 or 2') })
        .describe('Limbs that share the load: 1 or 2')
        .optional(),
      'working share': quantity('share', 'Part of trunk and load on the working side').optional(),
      'free leg': z
        .boolean({ error: must('true or false') })
        .describe('Whether the other leg hangs from the hip')
        .optional(),
      leads: oneOf('joint', muscledJoints, 'The joint that leads').optional(),
      range: z
        .array(quantity('angle', 'An end of the range'), group('a list of two angles'))
        .length(2, 'must be two angles, such as [0 deg, 120 deg]')
        .describe('First and last angle of the leading joint')
        .optional(),
      follow: z
        .array(follow, group('a list of rules, each after "- "'))
        .describe('How the other joints follow, in order; joints without a rule stay straight')
        .optional(),
      resistance: resistance.optional(),
      contact: contact.optional(),
      'above floor': aboveFloor.optional(),
      assumed: z
        .array(text('A sentence'), group('a list of sentences, each after "- "'))
        .describe('What is a guess or a simplification')
        .optional(),
      source: text('Where the numbers come from').optional(),
    },
    group('a group of lines such as like: back squat'),
  )
  .describe('A lift that the catalogue does not have');

/** A declared lift of the right shape, before units are read. */
export type DeclaredLiftFile = z.infer<typeof declaredLift>;
