import { actionNamed } from '../../tables/actions.ts';
import { complete, optional } from '../complete.ts';
import type { Draft } from '../draft.ts';
import type { Reading } from '../reading.ts';
import { namedLift } from '../readLifts.ts';
import { readPlace } from '../readPlace.ts';
import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { checkTrialSource } from './checkTrialSource.ts';
import type { Around } from './readLiftTest.ts';
import { readMeasure } from './readMeasure.ts';
import { readPoints } from './readPoints.ts';
import { readTrialTable } from './readTrialTable.ts';
import { readTypicalError } from './readTypicalError.ts';
import type { RepeatedLiftFile, RepeatedTorqueFile } from './retestSchema.ts';
import type { RepeatedDays, RepeatedTest } from './strengthTest.ts';
import { type Tested, tablePoints } from './tablePoints.ts';

type TorqueDraft = NonNullable<Draft<RepeatedTorqueFile>>;
type LiftDraft = NonNullable<Draft<RepeatedLiftFile>>;
type DaysDraft = TorqueDraft['days'];

/**
 * Reads how far tests differ between days without training between them: repeated test days, or a
 * typical error that is known. The weight of the limb is the same on every day and is left in.
 *
 * @param around lifts that may be named, and whose body ends a range at a height
 * @returns those that could be read; problems are collected, never thrown
 */
export function readRepeatability(
  reading: Reading,
  entries: readonly (TorqueDraft | LiftDraft | undefined)[] | undefined,
  around: Around,
): readonly RepeatedTest[] {
  return (entries ?? []).flatMap((draft, index): RepeatedTest[] => {
    if (draft === undefined) return [];
    const path: Path = ['repeatability', index];
    const read = isTorque(draft)
      ? readRepeatedTorque(reading, draft, path)
      : readRepeatedLift(reading, draft, path, around);
    return read ? [read] : [];
  });
}

const isTorque = (draft: TorqueDraft | LiftDraft): draft is TorqueDraft =>
  Object.hasOwn(draft, 'action');

function readRepeatedLift(
  reading: Reading,
  draft: LiftDraft,
  path: Path,
  around: Around,
): RepeatedTest | undefined {
  const lift = namedLift(reading, draft.lift, [...path, 'lift'], around.lifts);
  const to = readPlace(reading, draft.to, [...path, 'to'], { lift, load: undefined, ...around });
  const error = readTypicalError(reading, draft, 'mass', path);
  if (!error || !to || draft.lift === undefined) return undefined;
  return { kind: 'typical error', of: { lift: draft.lift, to: to.angle }, ...error, path };
}

function readRepeatedTorque(
  reading: Reading,
  draft: TorqueDraft,
  path: Path,
): RepeatedTest | undefined {
  const { action } = draft;
  if (Object.hasOwn(draft, 'typical error')) {
    const error = readTypicalError(reading, draft, 'torque', path);
    return error && action !== undefined
      ? { kind: 'typical error', of: { action }, ...error, path }
      : undefined;
  }
  checkTrialSource(reading, draft, ['days', 'people'], path);
  if (!Object.hasOwn(draft, 'unit')) refuseNoUnit(reading, path);
  const measured = readMeasure(reading, draft, path);
  const joint = action === undefined ? undefined : actionNamed(action)?.joint;
  const tested = { joint: joint ?? 'knee', measured };
  const people = readPeople(reading, draft, tested, path);
  for (const one of people) checkDays(reading, one, path);
  return complete<RepeatedTest>({
    kind: 'days',
    of: action === undefined ? undefined : { action },
    score: draft.score ?? 'best',
    measure: measured?.measure,
    ...optional('side', draft.side),
    people,
    path,
  });
}

function readPeople(
  reading: Reading,
  draft: TorqueDraft,
  tested: Tested,
  path: Path,
): readonly RepeatedDays[] {
  const days = (list: DaysDraft, at: Path) =>
    (list ?? []).map((trials, day) =>
      readPoints(reading, trials, { ...tested, action: draft.action }, [...at, day]),
    );
  if (Object.hasOwn(draft, 'trials from')) return tablePeople(reading, draft, tested, path);
  if (draft.days) return [{ days: days(draft.days, [...path, 'days']) }];
  return Object.entries(draft.people ?? {}).map(([person, list]) => ({
    person,
    days: days(list, [...path, 'people', person]),
  }));
}

/** A table with a column of days, and one of people if it is a squad's. */
function tablePeople(
  reading: Reading,
  draft: TorqueDraft,
  tested: Tested,
  path: Path,
): readonly RepeatedDays[] {
  if (draft.columns && !Object.hasOwn(draft.columns, 'day')) {
    const message = 'columns names no day; repeated tests are told apart by their day';
    const hint = 'add "day: Date" to columns';
    reading.refuse([...path, 'columns'], { code: 'table-column', message, hint, key: true });
  }
  const found = readTrialTable(reading, draft, tested.joint, path);
  if (!found) return [];
  const people = [...new Set(found.lines.map(({ person }) => person))];
  return people.map((person) => {
    const own = found.lines.filter((line) => line.person === person);
    const days = [...new Set(own.map(({ day }) => day))].map((day) =>
      tablePoints(
        found,
        own.filter((line) => line.day === day),
        tested,
        path,
      ),
    );
    return { ...optional('person', person), days };
  });
}

/** One day tells nothing about how days differ. */
function checkDays(reading: Reading, { person, days }: RepeatedDays, path: Path): void {
  if (days.length > 1) return;
  const who = person === undefined ? 'there is' : `${person} has`;
  const message = `${who} one test day only; how far tests differ between days takes two or more`;
  const hint =
    'add another day without training between, or write the typical error if it is known';
  const below = ['trials from', 'days'].find(
    (name) => valueAt(reading.source.value, [...path, name]) !== undefined,
  );
  const at = below === undefined ? ['people', person ?? ''] : [below];
  reading.refuse([...path, ...at], { code: 'one-day', message, hint, key: true });
}

function refuseNoUnit(reading: Reading, path: Path): void {
  const message = `repeatability.${Number(path[1]) + 1}.unit is missing`;
  reading.refuse([...path, 'unit'], {
    code: 'missing',
    message,
    hint: 'add for example "unit: N m"',
  });
}
