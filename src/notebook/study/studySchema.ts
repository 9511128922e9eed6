import { z } from 'zod';
import { measuredMuscles } from '../../tables/measuredMuscles.ts';
import { count, group, must, nameOf, oneOf, quantity, text } from '../field.ts';
import { actionNames, liftNames } from '../knownNames.ts';

/** The shape of a published study, before units are read. Each outcome is known by its first name. */

const actionOrLift = [...actionNames, ...liftNames];
const muscleNames = [...measuredMuscles.keys()];

const from = quantity('angle', 'Start of the range', '60 deg');
const to = quantity('angle', 'End of the range', '90 deg');
/** One angle, or a range over which the mean is taken. */
const place = {
  at: quantity('angle', 'Joint angle of the test').optional(),
  from: from.optional(),
  to: to.optional(),
};
const range = { from, to };

const part = {
  place: quantity('share', 'Place along the muscle from its upper end', '50 %').optional(),
  region: oneOf('region', ['proximal', 'middle', 'distal'], 'Place in words').optional(),
};

const finding = (dimension: 'share' | 'angle', about: string, example: string) => ({
  change: quantity(dimension, about, example).optional(),
  found: oneOf(
    'finding',
    ['clear rise', 'no clear change', 'clear fall'],
    'What was found, where the source gives no size',
  ).optional(),
  sd: quantity(dimension, 'Standard deviation of the change', '9 %').optional(),
  se: quantity(dimension, 'Standard error of the change', '4 %').optional(),
  spread: z
    .literal('unknown', { error: must('unknown, or left out beside sd or se') })
    .describe('unknown: the source gives neither sd nor se')
    .optional(),
  after: quantity('weeks', 'Weeks of training before it was measured', '5 weeks').optional(),
  source: oneOf(
    'source',
    ['abstract', 'table', 'figure', 'meta-analysis'],
    'Where the number was seen',
  ),
  doubt: text('Why it is weak').optional(),
  fit: z
    .literal(['yes', 'no', true, false], { error: must('yes or no') })
    .describe('no: kept for the record, not to be fitted')
    .optional(),
});
const relative = finding('share', 'Change, as a share of the value before', '12 %');
const shifted = finding('angle', 'Change of the angle, positive where muscles are longer', '5 deg');

const isometric = z.strictObject({
  isometric: nameOf('joint action or lift', actionOrLift, 'What was held as hard as possible'),
  ...place,
  ...relative,
});
const single = z.strictObject({
  single: nameOf('lift', liftNames, 'The lift whose heaviest single was tested'),
  ...range,
  ...relative,
});
const repetitionMaximum = z.strictObject({
  'repetition maximum': nameOf('lift', liftNames, 'The lift tested'),
  reps: count('Repetitions', 50, 'a test has at least 1 repetition', 6),
  ...range,
  ...relative,
});
const isokinetic = z.strictObject({
  isokinetic: nameOf('joint action or lift', actionOrLift, 'What was tested at a set speed'),
  speed: quantity('speed', 'Speed of the test, or unknown'),
  way: oneOf('way', ['lifting', 'lowering', 'both'], 'Against or with the muscles’ own motion'),
  ...place,
  ...relative,
});
const growth = z.strictObject({
  growth: oneOf('muscle', muscleNames, 'The muscle measured'),
  measure: oneOf(
    'measure',
    ['volume', 'area', 'physiological area', 'thickness'],
    'What was measured of its size',
  ),
  ...part,
  ...relative,
});
const fibres = z.strictObject({
  fibres: oneOf('muscle', muscleNames, 'The muscle whose fibre length was measured'),
  ...part,
  ...relative,
});
const optimum = z.strictObject({
  optimum: oneOf('joint action', actionNames, 'The action whose strongest angle moved'),
  ...shifted,
});
const arm = z.strictObject({
  arm: oneOf('muscle', muscleNames, 'The muscle whose tendon lever was measured'),
  ...relative,
});

const observed = z.union(
  [isometric, single, repetitionMaximum, isokinetic, growth, fibres, optimum, arm],
  {
    error: must(
      'an outcome with "isometric:", "single:", "repetition maximum:", "isokinetic:", "growth:", "fibres:", "optimum:" or "arm:"',
    ),
  },
);

const sentences = (about: string) =>
  z.array(text('A sentence'), group('a list of sentences, each after "- "')).describe(about);

const studyGroup = z.strictObject(
  {
    people: count('People', 100_000, 'a group has at least 1 person', 12).optional(),
    assumed: sentences('What the source leaves open and what was taken for it').optional(),
    'left out': sentences('What was also found and has no place under observed').optional(),
    observed: z
      .array(observed, group('a list of outcomes, each after "- "'))
      .describe('What was measured before and after')
      .meta({
        examples: [
          [
            {
              isometric: 'knee extension',
              at: '90 deg',
              change: '12 %',
              spread: 'unknown',
              source: 'abstract',
            },
          ],
        ],
      }),
  },
  group('a group such as { people: 12, observed: […] }'),
);

const known = (about: string) => oneOf('kind of knowledge', ['read', 'recalled'], about);

/** A published study: what the programs’ groups gained. */
export const study = z
  .strictObject(
    {
      cited: z
        .strictObject(
          {
            authors: text('Who wrote it', 'Lee K et al.'),
            year: z
              .number({ error: must('a year such as 2013') })
              .int({ error: must('a year such as 2013') })
              .describe('Year of publication')
              .meta({ examples: [2013] }),
            journal: text('Where it was published').optional(),
            pages: text('Volume and pages, such as 113:2133–2142').optional(),
            doi: text('Digital object identifier').optional(),
            known: known('How these details are known (default read)').optional(),
          },
          group('a group such as { authors: Lee K et al., year: 2013 }'),
        )
        .describe('Where the study was published')
        .meta({ examples: [{ authors: 'Lee K et al.', year: 2013 }] }),
      known: known('How the findings are known: read, or recalled'),
      groups: z
        .record(z.string(), studyGroup, group('a group of training groups by name of the program'))
        .describe('Name of a program → the people who did it and what they gained'),
    },
    group('a group of lines such as cited: and groups:'),
  )
  .describe('A published study whose training groups are the programs of this file');

/** A study of the right shape, before units are read. */
export type StudyFile = z.infer<typeof study>;
/** A training group of the right shape, before units are read. */
export type StudyGroupFile = z.infer<typeof studyGroup>;
/** An outcome of the right shape, before units are read. */
export type ObservedFile = z.infer<typeof observed>;
