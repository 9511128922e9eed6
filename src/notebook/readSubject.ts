import { toRadians } from '../numeric/degrees.ts';
import { responseBounds } from '../tables/testError.ts';
import type { AthleteFile, GroupFile } from './bodySchema.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import type { Expected, Reading } from './reading.ts';
import type { BodyLength, LimitName, Path, Radian, Subject } from './scenario.ts';

// Bounds are wide on purpose: they catch slips of the pen ("168 m"), not unusual people.
const stature: Expected = {
  dimension: 'length',
  least: 1,
  most: 2.6,
  bounds: 'a person stands between 1 m and 2.6 m tall',
};
const mass: Expected = {
  dimension: 'mass',
  least: 20,
  most: 250,
  bounds: 'a person weighs between 20 kg and 250 kg',
};
/** Hardly any adult weighs less (common knowledge); tables of the body are of adults. */
const lightAdult = 35;
const training: Expected = {
  dimension: 'years',
  least: 0,
  most: 60,
  bounds: 'it lies between 0 and 60 years',
};
const response: Expected = {
  dimension: 'share',
  example: '110 %',
  ...responseBounds,
  bounds: 'a share of the forecast gains lies between 20 % and 250 %',
};
const bodyLength: Expected = {
  dimension: 'length',
  example: '41 cm',
  least: 0.1,
  most: 1,
  bounds: 'a body length lies between 10 cm and 1 m',
};

const limitBoundsDeg: Readonly<Record<LimitName, readonly [number, number]>> = {
  'ankle dorsiflexion': [0, 60],
  'knee flexion': [30, 160],
};

type AthleteDraft = Draft<AthleteFile>;
type GroupDraft = Draft<GroupFile>;

/**
 * Reads the athlete, or the mean person of a kind.
 *
 * @param reading collects problems: units, values no person has, both or neither subject
 * @returns the subject in SI, or undefined if part of it is missing or wrong; never throws
 */
export function readSubject(
  reading: Reading,
  draft: { readonly athlete?: AthleteDraft | undefined; readonly group?: GroupDraft | undefined },
): Subject | undefined {
  const file = Object(reading.source.value);
  const [hasAthlete, hasGroup] = [Object.hasOwn(file, 'athlete'), Object.hasOwn(file, 'group')];
  if (hasAthlete && hasGroup) {
    const message = 'the file has both an athlete and a group; a forecast is for one of them';
    const hint = 'delete one of the two';
    reading.refuse(['group'], { code: 'two-subjects', message, hint, key: true });
  }
  if (!hasAthlete && !hasGroup) {
    const message = 'the file has neither an athlete nor a group';
    const hint = 'write athlete: for one person, or group: for the mean person of a kind';
    reading.refuse([], { code: 'no-subject', message, hint });
  }
  const { athlete, group } = draft;
  if (hasGroup && !hasAthlete) return group && readBody(reading, group, group.name, true);
  return athlete && readBody(reading, athlete, athlete.code, false);
}

function readBody(
  reading: Reading,
  body: NonNullable<AthleteDraft> | NonNullable<GroupDraft>,
  code: string | undefined,
  isGroup: boolean,
): Subject | undefined {
  const path: Path = [isGroup ? 'group' : 'athlete'];
  const kilograms = reading.quantity([...path, 'mass'], body.mass, mass);
  if (kilograms !== undefined && kilograms < lightAdult) remarkOnLight(reading, body.mass, path);
  return complete<Subject>({
    isGroup,
    code,
    reference: body.reference,
    stature: reading.quantity([...path, 'stature'], body.stature, stature),
    mass: kilograms,
    lengths: readLengths(reading, body.lengths, [...path, 'lengths']),
    trainingYears: reading.quantity([...path, 'training'], body.training, training),
    limits: readLimits(reading, body.limits, [...path, 'limits']),
    ...optional(
      'response',
      'response' in body
        ? reading.quantity([...path, 'response'], body.response, response)
        : undefined,
    ),
    path,
  });
}

function remarkOnLight(reading: Reading, raw: string | undefined, path: Path): void {
  const message = `mass is ${raw}; body and strength tables are of adults, and so light an athlete may be a child`;
  const hint = 'check the unit; train minors only under qualified supervision';
  reading.remark([...path, 'mass'], { code: 'light-athlete', message, hint });
}

function readLengths(
  reading: Reading,
  lengths: NonNullable<AthleteDraft>['lengths'],
  path: Path,
): Subject['lengths'] {
  const read = (name: BodyLength) =>
    optional(name, reading.quantity([...path, name], lengths?.[name], bodyLength));
  return { ...read('thigh'), ...read('shank'), ...read('trunk'), ...read('foot') };
}

/** Limits name their direction ("knee flexion"), so they never follow the file's convention. */
function readLimits(
  reading: Reading,
  limits: NonNullable<AthleteDraft>['limits'],
  path: Path,
): Readonly<Partial<Record<LimitName, Radian>>> {
  const read = (name: LimitName) => {
    const [least, most] = limitBoundsDeg[name];
    const expected: Expected = {
      dimension: 'angle',
      example: name === 'knee flexion' ? '125 deg' : '30 deg',
      least: toRadians(least),
      most: toRadians(most),
      bounds: `this limit lies between ${least} and ${most} deg, counted from ${name === 'knee flexion' ? 'a straight knee' : 'the foot square to the shank'}`,
    };
    return optional(name, reading.quantity([...path, name], limits?.[name], expected));
  };
  return { ...read('ankle dorsiflexion'), ...read('knee flexion') };
}
