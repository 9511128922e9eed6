import { actionNamed } from '../../tables/actions.ts';
import { complete, optional } from '../complete.ts';
import type { Draft } from '../draft.ts';
import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { checkTrialSource } from './checkTrialSource.ts';
import { checkTrials } from './checkTrials.ts';
import { readGravity } from './readGravity.ts';
import { readMeasure } from './readMeasure.ts';
import { readNeighbours } from './readNeighbours.ts';
import { readPoints } from './readPoints.ts';
import { readTrialTable, type TrialLine, type TrialLines } from './readTrialTable.ts';
import type { TorquePoint, TorqueTest } from './strengthTest.ts';
import { type Tested, tablePoints } from './tablePoints.ts';
import type { TorqueTestFile } from './testSchema.ts';

export type TorqueDraft = NonNullable<Draft<TorqueTestFile>>;

/**
 * Reads a torque test: one for each day of its table, else one.
 *
 * @param path of the test
 * @returns the tests in SI with anatomical angles; problems are collected, never thrown
 */
export function readTorqueTests(
  reading: Reading,
  test: TorqueDraft,
  path: Path,
): readonly TorqueTest[] {
  const joint = test.action === undefined ? undefined : actionNamed(test.action)?.joint;
  const measured = readMeasure(reading, test, path);
  const neighbours = readNeighbours(reading, test.with, joint, [...path, 'with']);
  checkTrialSource(reading, test, ['trials'], path);
  const days = readDays(reading, test, { measured, joint: joint ?? 'knee' }, path);
  const gravity = measured && {
    action: test.action ?? '',
    posture: test.posture,
    measure: measured.measure,
    points: days.flatMap(({ points }) => points),
  };
  const limb = gravity && readGravity(reading, test.gravity, gravity, [...path, 'gravity']);
  const practised = test.familiarised;
  return days.flatMap(({ date, points }) => {
    const read = complete<TorqueTest>({
      kind: 'torque',
      action: test.action,
      ...optional('date', date),
      ...optional('side', test.side),
      ...optional('posture', test.posture),
      neighbours,
      ...optional('angleTaken', test['angle taken']),
      ...optional('familiarised', practised === undefined ? undefined : sessionsOf(practised)),
      score: test.score ?? 'best',
      measure: measured?.measure,
      ...optional('gravity', limb),
      ...optional('table', test['trials from']),
      points,
      path,
    });
    if (!read || !joint) return [];
    checkTrials(reading, read);
    return [read];
  });
}

/** `yes`, `no`, or the number of sessions. */
function sessionsOf(text: string): 'yes' | 'no' | number {
  if (text === 'yes' || text === 'no') return text;
  return Number.parseInt(text, 10);
}

interface Day {
  readonly date: string | undefined;
  readonly points: readonly TorquePoint[];
}

function readDays(reading: Reading, test: TorqueDraft, tested: Tested, path: Path): readonly Day[] {
  if (!Object.hasOwn(test, 'trials from')) {
    const points = readPoints(reading, test.trials, { ...tested, action: test.action }, [
      ...path,
      'trials',
    ]);
    return [{ date: test.date, points }];
  }
  if (test.date !== undefined && test.columns?.day !== undefined) {
    const message = 'date stands beside a column of days; the table dates its trials';
    const hint = 'delete date';
    reading.refuse([...path, 'date'], { code: 'two-dates', message, hint, key: true });
  }
  const found = readTrialTable(reading, test, tested.joint, path);
  if (!found) return [];
  const days = [...new Set(found.lines.map(({ day }) => day))];
  return days.map((day) => {
    const lines = found.lines.filter((line) => line.day === day);
    if (day !== undefined) checkDate(found, lines, day);
    return { date: day ?? test.date, points: tablePoints(found, lines, tested, path) };
  });
}

function checkDate({ table }: TrialLines, lines: readonly TrialLine[], day: string): void {
  if (/^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day))) return;
  const [line] = lines;
  const message = `the day is "${day}"; days are written year-month-day`;
  const hint = 'write it as in 2026-09-14';
  table.refuse(line?.dayPath ?? [], { code: 'bad-date', message, hint });
}
