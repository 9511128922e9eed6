import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { checkSingles } from './checkSingles.ts';
import { type Around, type LiftDraft, readLiftTest } from './readLiftTest.ts';
import { readTorqueTests, type TorqueDraft } from './readTorqueTest.ts';
import type { Test } from './strengthTest.ts';

export type TestDraft = TorqueDraft | LiftDraft;

/**
 * Reads the tests, and asks for them where one person is forecast.
 *
 * @param reading collects problems: units, angles given twice, torques no knee makes, no tests
 * @param needed false for a group, whose strength comes from published data
 * @param around lifts a test may name, and whose body ends a range at a height
 * @returns the tests in SI with anatomical angles, those that could be read; never throws
 */
export function readTests(
  reading: Reading,
  tests: readonly (TestDraft | undefined)[] | undefined,
  needed: boolean,
  around: Around,
): readonly Test[] {
  const written: unknown = Object(reading.source.value).tests;
  const isEmpty = Array.isArray(written) && written.length === 0;
  if (needed && (written === undefined || isEmpty)) {
    reading.refuse(isEmpty ? ['tests'] : ['athlete'], {
      code: 'no-tests',
      message: 'this athlete has no tests; a forecast for one person starts from measured strength',
      hint: 'add tests: with torque trials or a best lift, or write group: instead of athlete: for the mean person of a kind',
      key: true,
    });
  }
  const read = readTestList(reading, tests, ['tests'], around);
  checkSingles(reading, read, around.lifts);
  return read;
}

/**
 * Reads a list of tests.
 *
 * @param path of the list
 * @returns those that could be read; problems are collected, never thrown
 */
export function readTestList(
  reading: Reading,
  tests: readonly (TestDraft | undefined)[] | undefined,
  path: Path,
  around: Around,
): readonly Test[] {
  return (tests ?? []).flatMap((test, index): readonly Test[] => {
    if (test === undefined) return [];
    const at = [...path, index];
    if (isTorque(test)) return readTorqueTests(reading, test, at);
    const found = readLiftTest(reading, test, at, around);
    return found ? [found] : [];
  });
}

const isTorque = (test: TestDraft): test is TorqueDraft => Object.hasOwn(test, 'action');
