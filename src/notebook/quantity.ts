import { didYouMean } from './didYouMean.ts';
import { oneOfRange, quantitySlip } from './quantitySlips.ts';
import type { Dimension, UnitTable } from './unitTable.ts';

interface Wording {
  /** After "stature is". */
  readonly noun: string;
  /** After "needs". */
  readonly need: string;
  /** Units to suggest; others may be known too. */
  readonly units: string;
  readonly example: string;
}

/** How each kind of quantity is spoken of in messages and in the schema. */
export const wordings: Readonly<Record<Dimension, Wording>> = {
  angle: { noun: 'an angle', need: 'a unit of angle', units: 'deg or rad', example: '75 deg' },
  speed: {
    noun: 'a speed of turning',
    need: 'a unit of speed',
    units: 'deg/s or rad/s',
    example: '60 deg/s',
  },
  length: {
    noun: 'a length',
    need: 'a unit of length',
    units: 'm, cm, in or ft',
    example: '168 cm',
  },
  mass: { noun: 'a mass', need: 'a unit of mass', units: 'kg, lb or g', example: '63.5 kg' },
  torque: {
    noun: 'a torque',
    need: 'a unit of torque',
    units: 'N m, lbf ft or kgf cm',
    example: '163 N m',
  },
  force: { noun: 'a force', need: 'a unit of force', units: 'N, kgf or lbf', example: '100 N' },
  'mass per length': {
    noun: 'a weight a metre',
    need: 'a unit of weight a metre',
    units: 'kg/m or lb/ft',
    example: '2.2 kg/m',
  },
  time: { noun: 'a time', need: 'a unit of time', units: 's or min', example: '90 s' },
  weeks: {
    noun: 'a number of weeks',
    need: 'the word "weeks"',
    units: 'weeks',
    example: '8 weeks',
  },
  years: {
    noun: 'a number of years',
    need: 'the word "years"',
    units: 'years',
    example: '4 years',
  },
  share: { noun: 'a share', need: 'a percent sign', units: '%', example: '80 %' },
};

export type Quantity =
  | { readonly value: number; readonly fault?: undefined }
  | { readonly value?: undefined; readonly fault: Fault };

interface Fault {
  readonly code: 'missing-unit' | 'wrong-unit' | 'bad-number';
  /** Follows the name of the value: `stature` + ` ` + message. */
  readonly message: string;
  readonly hint?: string;
}

const numberThenUnit = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;
const decimalComma = /^([+-]?\d+),(\d+)(?:\s*)(.*)$/;

/**
 * Reads a text such as "168 cm" into SI.
 *
 * @param raw the text, number first
 * @param dimension what it must be; an angle keeps the file's convention
 * @param units the units that are known
 * @param example what to show as right, by default the dimension's own
 * @returns SI value (radians, shares of one, counted weeks and years), or what is wrong with the
 *   text and what to type instead; never throws
 */
export function readQuantity(
  raw: string,
  dimension: Dimension,
  units: UnitTable,
  example: string = wordings[dimension].example,
): Quantity {
  const { noun, need } = wordings[dimension];
  const text = tidy(raw);
  const comma = decimalComma.exec(text);
  if (comma) return { fault: commaFault(comma, dimension, example) };
  const slip = quantitySlip(text, dimension, noun);
  if (slip) return { fault: { code: 'bad-number', ...slip } };
  const match = numberThenUnit.exec(text);
  if (!match) {
    const message = `is "${raw}"; ${noun} is a number with its unit, for example "${example}"`;
    return { fault: { code: 'bad-number', message } };
  }
  const [, digits = '', spelling = ''] = match;
  if (spelling === '') {
    return { fault: { code: 'missing-unit', message: `needs ${need}, for example "${example}"` } };
  }
  const unit = units.get(spelling);
  if (unit?.dimension !== dimension)
    return { fault: unitFault(spelling, dimension, units, example) };
  const value = unit.toSi(Number(digits));
  if (Number.isFinite(value)) return { value };
  return { fault: { code: 'bad-number', message: `is "${raw}", too large to compute with` } };
}

/**
 * Gives the kind of quantity that the unit at the end of a text belongs to; the text may be a range.
 *
 * @returns the dimension, or undefined if there is no unit or none that is known; never throws
 */
export function dimensionOf(raw: string, units: UnitTable): Dimension | undefined {
  const text = tidy(raw);
  const spelling = numberThenUnit.exec(oneOfRange(text) ?? text)?.[2] ?? '';
  return units.get(spelling)?.dimension;
}

/** Word processors put in no-break spaces and long minus signs; they mean the plain ones. */
function tidy(raw: string): string {
  return raw
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/\u2212/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

function commaFault(
  [, whole = '', decimals = '', unit = '']: readonly string[],
  dimension: Dimension,
  example: string,
): Fault {
  const number = `${whole}.${decimals}`;
  if (unit !== '') {
    const hint = `write a decimal point: "${number} ${unit}"`;
    return { code: 'bad-number', message: 'has a decimal comma', hint };
  }
  const usual = numberThenUnit.exec(example)?.[2] ?? '';
  // Nobody is 1.82 cm tall.
  const meant = dimension === 'length' && Number(number) < 3 ? 'm' : usual;
  const hint = `write "${`${number} ${meant}`.trim()}"`;
  return { code: 'bad-number', message: 'has a decimal comma and no unit', hint };
}

function unitFault(
  spelling: string,
  dimension: Dimension,
  units: UnitTable,
  example: string,
): Fault {
  const { noun, units: right } = wordings[dimension];
  const other = units.get(spelling)?.dimension;
  const what = other ? `is ${wordings[other].noun}` : 'is not a unit known here';
  const message = `is ${noun}; "${spelling}" ${what} — write it in ${right}, for example "${example}"`;
  const spellings = [...units].filter(([, unit]) => unit.dimension === dimension);
  const meant = other
    ? undefined
    : didYouMean(
        spelling,
        spellings.map(([known]) => known),
      );
  if (meant === undefined) return { code: 'wrong-unit', message };
  return { code: 'wrong-unit', message, hint: `did you mean "${meant}"?` };
}
