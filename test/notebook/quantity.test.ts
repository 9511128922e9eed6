import { describe, expect, test } from 'vitest';
import { dimensionOf, readQuantity } from '../../src/notebook/quantity.ts';
import { type Dimension, unitTable } from '../../src/notebook/unitTable.ts';

// By definition: pound x standard gravity x foot.
const poundFoot = 0.45359237 * 9.80665 * 0.3048;
const units = unitTable;

describe('quantities in SI', () => {
  // By definition of the units; 1 kgf cm = 9.80665 N x 0.01 m.
  test.each<[string, Dimension, number]>([
    ['168 cm', 'length', 1.68],
    ['57cm', 'length', 0.57],
    ['10 in', 'length', 0.254],
    ['1 ft', 'length', 0.3048],
    ['410 mm', 'length', 0.41],
    ['180 deg', 'angle', Math.PI],
    ['180°', 'angle', Math.PI],
    ['1.5 rad', 'angle', 1.5],
    ['60 deg/s', 'speed', Math.PI / 3],
    ['60°/s', 'speed', Math.PI / 3],
    ['2 rad/s', 'speed', 2],
    ['\u221210 deg', 'angle', -Math.PI / 18],
    ['1 lb', 'mass', 0.45359237],
    ['500 g', 'mass', 0.5],
    ['163 N m', 'torque', 163],
    ['163 N*m', 'torque', 163],
    ['163 Nm', 'torque', 163],
    ['163\u00a0N\u00a0m', 'torque', 163],
    ['1 lbf ft', 'torque', poundFoot],
    ['1 ft lbf', 'torque', poundFoot],
    ['1 kgf cm', 'torque', 0.0980665],
    ['200 lbs', 'mass', 90.718474],
    ...(
      [
        'ft lb',
        'ft lbs',
        'ft-lb',
        'ft-lbs',
        'ft·lbf',
        'foot pounds',
        'foot-pounds',
        'lb ft',
      ] as const
    ).map((unit): [string, Dimension, number] => [`1 ${unit}`, 'torque', poundFoot]),
    ['90 s', 'time', 90],
    ['3 min', 'time', 180],
    ['8 weeks', 'weeks', 8],
    ['1 year', 'years', 1],
    ['7 %', 'share', 0.07],
    ['+2.5%', 'share', 0.025],
    ['1e1 s', 'time', 10],
  ])('%s', (raw, dimension, expected) => {
    expect(readQuantity(raw, dimension, units).value).toBeCloseTo(expected, 14);
  });
});

describe('what is wrong with a quantity', () => {
  test.each<[string, Dimension, string, string | undefined]>([
    ['168', 'length', 'needs a unit of length, for example "168 cm"', undefined],
    ['8', 'weeks', 'needs the word "weeks", for example "8 weeks"', undefined],
    ['63,5 kg', 'mass', 'has a decimal comma', 'write a decimal point: "63.5 kg"'],
    [
      '40 Deg',
      'angle',
      'is an angle; "Deg" is not a unit known here — write it in deg or rad, for example "75 deg"',
      'did you mean "deg"?',
    ],
    [
      '60 deg',
      'speed',
      'is a speed of turning; "deg" is an angle — write it in deg/s or rad/s, for example "60 deg/s"',
      undefined,
    ],
    ['60', 'speed', 'needs a unit of speed, for example "60 deg/s"', undefined],
    [
      '90 s',
      'weeks',
      'is a number of weeks; "s" is a time — write it in weeks, for example "8 weeks"',
      undefined,
    ],
    ['', 'mass', 'is ""; a mass is a number with its unit, for example "63.5 kg"', undefined],
    ['1e999 kg', 'mass', 'is "1e999 kg", too large to compute with', undefined],
    [
      '2 * 3 kg',
      'mass',
      'is a mass; "* 3 kg" is not a unit known here — write it in kg, lb or g, for example "63.5 kg"',
      undefined,
    ],
  ])('%j as %s', (raw, dimension, message, hint) => {
    const { fault } = readQuantity(raw, dimension, units);
    expect([fault?.message, fault?.hint]).toEqual([message, hint]);
  });
});

test('the kind of a quantity is known by its unit', () => {
  expect(dimensionOf('80 %', units)).toBe('share');
  expect(dimensionOf('70 kg', units)).toBe('mass');
  expect(dimensionOf('80', units)).toBeUndefined();
});
