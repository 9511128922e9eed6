import { expect } from 'vitest';
import { isRefusal, type Refusal } from '../../src/inference/reliability/refusal.ts';

/** Right to 1e-6 of the value. */
export const same = (found: number, expected: number) =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-6 * Math.abs(expected));

/** The value, which must not be a refusal. */
export function given<Value extends object>(value: Value | Refusal): Value {
  if (isRefusal(value)) throw new Error(`refused: ${value.reason}`);
  return value;
}

/** The short name of a refusal, which it must be. */
export const refusedAs = (value: object | number): string | undefined =>
  typeof value === 'object' && isRefusal(value) ? value.refused : undefined;
