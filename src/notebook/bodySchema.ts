import { z } from 'zod';
import { group, oneOf, quantity, text } from './field.ts';

const lengths = z
  .strictObject(
    {
      thigh: quantity('length', 'Hip to knee', '41 cm').optional(),
      shank: quantity('length', 'Knee to ankle', '41 cm').optional(),
      trunk: quantity('length', 'Hip to shoulder', '50 cm').optional(),
      foot: quantity('length', 'Heel to toe', '25 cm').optional(),
    },
    group('a group such as { thigh: 41 cm }'),
  )
  .describe('Measured body lengths; the others are estimated from stature');

const bodyLimits = z
  .strictObject(
    {
      'ankle dorsiflexion': quantity(
        'angle',
        'Farthest, 0 = foot square to shank',
        '30 deg',
      ).optional(),
      'knee flexion': quantity('angle', 'Farthest, 0 = straight', '125 deg').optional(),
    },
    group('a group such as { knee flexion: 125 deg }'),
  )
  .describe('How far the joints go; always counted from the neutral posture');

const body = {
  reference: oneOf(
    'reference',
    ['female', 'male', 'pooled'],
    'Which body tables: female, male or pooled',
  ),
  stature: quantity('length', 'Standing height'),
  mass: quantity('mass', 'Body mass'),
  lengths: lengths.optional(),
  training: quantity('years', 'Years of regular strength training'),
  limits: bodyLimits.optional(),
};

/** One athlete, under a pseudonym. */
export const athlete = z
  .strictObject(
    {
      code: text('A pseudonym', 'SN-04'),
      ...body,
      response: quantity(
        'share',
        'Share of the forecast gains that this athlete made so far, as a retest gives it',
        '110 %',
      ).optional(),
    },
    group('a group of lines such as code: SN-04'),
  )
  .describe('One athlete');
/** The mean person of a kind. */
export const meanPerson = z
  .strictObject(
    { name: text('What the group is called', 'club women'), ...body },
    group('a group of lines'),
  )
  .describe('The mean person of a kind, who needs no tests');

/** An athlete of the right shape, before units are read. */
export type AthleteFile = z.infer<typeof athlete>;
/** A group of the right shape, before units are read. */
export type GroupFile = z.infer<typeof meanPerson>;
