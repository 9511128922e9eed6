import { optional } from '../complete.ts';
import { didYouMean } from '../didYouMean.ts';
import type { Draft } from '../draft.ts';
import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { checkRetest } from './checkRetest.ts';
import type { Around } from './readLiftTest.ts';
import { readTestList } from './readTests.ts';
import type { RetestFile } from './retestSchema.ts';
import type { Retest, Test } from './strengthTest.ts';

type RetestDraft = Draft<RetestFile>;

/**
 * Reads what was measured after training: each test dated, in order of time, and comparable with
 * the first tests.
 *
 * @param before the tests that the forecast starts from
 * @param programs names of the file's programs
 * @returns the retests that could be read; problems are collected, never thrown
 */
export function readRetests(
  reading: Reading,
  retests: readonly RetestDraft[] | undefined,
  before: readonly Test[],
  around: Around & { readonly programs: readonly string[] },
): readonly Retest[] {
  const read = (retests ?? []).flatMap((draft, index): Retest[] => {
    if (draft === undefined) return [];
    const path: Path = ['retests', index];
    if (draft.after !== undefined) checkProgram(reading, draft.after, around.programs, path);
    const tests = readTestList(reading, draft.tests, [...path, 'tests'], around);
    for (const test of tests) checkRetest(reading, test, before, around.lifts);
    return [{ ...optional('after', draft.after), tests, path }];
  });
  checkOrder(reading, read, before);
  return read;
}

function checkProgram(
  reading: Reading,
  name: string,
  programs: readonly string[],
  path: Path,
): void {
  if (programs.includes(name)) return;
  const meant = didYouMean(name, programs);
  const hint =
    meant === undefined ? `programs: ${programs.join(', ')}` : `did you mean "${meant}"?`;
  const message = `after is "${name}"; the file has no such program`;
  reading.refuse([...path, 'after'], { code: 'unknown-program', message, hint });
}

/** Every retest has its dates, none before the tests or the retest above it. */
function checkOrder(reading: Reading, retests: readonly Retest[], before: readonly Test[]): void {
  const latest = (tests: readonly Test[], least: string) =>
    tests.reduce((last, { date }) => (date !== undefined && date > last ? date : last), least);
  let last = latest(before, '');
  let what = 'the tests';
  for (const [index, { tests }] of retests.entries()) {
    for (const { date, path } of tests) {
      if (date === undefined) refuseNoDate(reading, path);
      else if (date <= last) {
        const message = `this retest is of ${date}, not after ${what} of ${last}`;
        const hint = 'retests stand in order of time, each after training; check the dates';
        reading.refuse([...path, 'date'], { code: 'retest-order', message, hint });
      }
    }
    last = latest(tests, last);
    what = `retest ${index + 1}`;
  }
}

function refuseNoDate(reading: Reading, path: Path): void {
  const message = 'date is missing; a retest has the day it was done';
  const hint = 'add for example "date: 2026-11-20"';
  reading.refuse([...path, 'date'], { code: 'missing', message, hint });
}
