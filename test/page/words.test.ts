import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/numeric/degrees.ts';
import {
  degrees,
  kilograms,
  listInWords,
  newtonMetres,
  percent,
  plural,
  rangeDegrees,
  rangeText,
  signedPercent,
  signedPoints,
} from '../../src/page/words.ts';

// Every expected text is the input converted and rounded by hand; 1° = π/180 rad by definition.

describe('numbers with their units', () => {
  it.each([
    [degrees(toRadians(75)), '75°'],
    [degrees(toRadians(-0.4)), '0°'],
    [degrees(toRadians(74.96), 1), '75.0°'],
    [degrees(Number.NaN), 'not determined'],
    [rangeDegrees(toRadians(75), toRadians(100)), '75–100°'],
    [rangeDegrees(toRadians(-5), toRadians(10)), '-5 to 10°'],
    [rangeDegrees(toRadians(90), toRadians(90)), '90°'],
    [rangeDegrees(Number.NaN, 1), 'not determined'],
    [rangeText(75, 100), '75-100'],
    [rangeText(-0.01, 12.5), '0-12.5'],
    [percent(0.123), '12 %'],
    [percent(0.145, 1), '14.5 %'],
    [percent(0.145), '15 %'],
    [percent(-0.001), '0 %'],
    [percent(Number.POSITIVE_INFINITY), 'not determined'],
    [signedPercent(0.123), '+12 %'],
    [signedPercent(-0.03), '-3 %'],
    [signedPercent(-0.001), '0 %'],
    [signedPercent(0.001), '0 %'],
    [signedPercent(0.001, 1), '+0.1 %'],
    [signedPercent(Number.NaN), 'not determined'],
    [signedPoints(0.0123), '+1.2'],
    [signedPoints(-0.03), '-3.0'],
    [signedPoints(-0.0004), '0'],
    [signedPoints(Number.NaN), 'not determined'],
    [newtonMetres(183.2), '183 N·m'],
    [newtonMetres(4.25), '4.3 N·m'],
    [newtonMetres(9.96), '10 N·m'],
    [newtonMetres(-0.01), '0.0 N·m'],
    [kilograms(85.2), '85 kg'],
    [kilograms(63.5), '63.5 kg'],
    [kilograms(102.4), '102.5 kg'],
    [kilograms(-0.1), '0 kg'],
  ])('%s', (written, expected) => {
    expect(written).toBe(expected);
  });
});

describe('lists and counts', () => {
  it.each([
    [listInWords([]), ''],
    [listInWords(['a']), 'a'],
    [listInWords(['a', 'b']), 'a and b'],
    [listInWords(['a', 'b', 'c']), 'a, b and c'],
    [plural(1, 'week'), '1 week'],
    [plural(8, 'week'), '8 weeks'],
    [plural(0, 'week'), '0 weeks'],
    [plural(2, 'study', 'studies'), '2 studies'],
  ])('%s', (written, expected) => {
    expect(written).toBe(expected);
  });
});
