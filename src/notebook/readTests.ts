import type { Lift } from '../mechanics/lift.ts';
import { toRadians } from '../numeric/degrees.ts';
import { actionNamed } from '../tables/actions.ts';
import { checkActionRange } from './checkActionRange.ts';
import { checkSingles } from './checkSingles.ts';
import { complete, optional } from './complete.ts';
import { distinctAngles } from './distinctAngles.ts';
import type { Draft } from './draft.ts';
import { checkDepth, checkKneeLimit, checkLiftRange, type End, readRange } from './range.ts';
import { type Expected, isAbove, type Reading } from './reading.ts';
import { type KnownLifts, namedLift } from './readLifts.ts';
import { isBodyWeight, refuseNoBody } from './readLowering.ts';
import { heightsOf, readPlace, type Standing } from './readPlace.ts';
import type {
  Kilogram,
  LiftTest,
  NewtonMetre,
  Path,
  Radian,
  Test,
  TorqueTest,
} from './scenario.ts';
import type { LiftTestFile, TorqueTestFile } from './testSchema.ts';

type TorqueDraft = NonNullable<Draft<TorqueTestFile>>;
type LiftDraft = NonNullable<Draft<LiftTestFile>>;
type TestDraft = TorqueDraft | LiftDraft;

const best: Expected = {
  dimension: 'mass',
  example: '85 kg',
  least: 0.1,
  most: 600,
  bounds: 'a best lift lies above 0 kg and below 600 kg',
};
/** No knee makes more torque; a larger number is in another unit or mistyped. */
const mostTorque = 1000;

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
  around: Standing & { readonly lifts: KnownLifts },
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
  const read = (tests ?? []).flatMap((test, index) => {
    if (test === undefined) return [];
    const path: Path = ['tests', index];
    const found = isTorque(test)
      ? torqueTest(reading, test, path)
      : liftTest(reading, test, path, around);
    return found ? [found] : [];
  });
  checkSingles(reading, read, around.lifts);
  return read;
}

const isTorque = (test: TestDraft): test is TorqueDraft => Object.hasOwn(test, 'action');

function torqueTest(reading: Reading, test: TorqueDraft, path: Path): TorqueTest | undefined {
  const joint = jointOf(test.action);
  const points = readPoints(reading, test, [...path, 'trials']);
  if (!joint) return undefined;
  return complete<TorqueTest>({
    kind: 'torque',
    action: test.action,
    ...optional('date', test.date),
    neighbours: readNeighbours(reading, test.with, joint, [...path, 'with']),
    score: test.score ?? 'best',
    points,
    path,
  });
}

function readPoints(reading: Reading, test: TorqueDraft, path: Path): TorqueTest['points'] {
  const joint = jointOf(test.action) ?? 'knee';
  const unit = torqueUnit(reading, test.unit, [...path.slice(0, -1), 'unit']);
  const trials = Object.entries(test.trials ?? {});
  if (test.trials && trials.length === 0) {
    const message = 'trials is empty; a test has trials at one angle or more';
    reading.refuse(path, { code: 'no-trials', message });
  }
  const points = trials.flatMap(([name, values]) => {
    const at = [...path, name];
    const angle = reading.angle(at, name, joint, { key: true });
    const torques = (values ?? []).flatMap((value, index) =>
      value === undefined || !unit ? [] : readTrial(reading, unit(value), [...at, index]),
    );
    if (angle === undefined) return [];
    checkActionRange(reading, test.action, [{ angle, path: at }], { key: true });
    return [{ angle, trials: torques, path: at }];
  });
  return distinctAngles(reading, points, path);
}

function readTrial(reading: Reading, torque: NewtonMetre, path: Path): NewtonMetre[] {
  if (!isAbove(torque, mostTorque)) return [torque];
  const message = `${Math.round(torque)} N m is more than a joint makes; is the unit right?`;
  reading.refuse(path, { code: 'out-of-bounds', message });
  return [];
}

function torqueUnit(
  reading: Reading,
  unit: string | undefined,
  path: Path,
): ((value: number) => NewtonMetre) | undefined {
  if (unit === undefined) return undefined;
  const known = reading.quantity(path, `1 ${unit}`, { dimension: 'torque', example: 'N m' });
  return known === undefined ? undefined : (value) => value * known;
}

function readNeighbours(
  reading: Reading,
  angles: TorqueDraft['with'],
  tested: string,
  path: Path,
): Readonly<Record<string, Radian>> {
  const neighbours: Record<string, Radian> = {};
  for (const [joint, raw] of Object.entries(angles ?? {})) {
    const at = [...path, joint];
    if (joint === tested) {
      const message = `with gives the ${joint}, which is the joint tested; its angles stand under trials`;
      reading.refuse(at, { code: 'not-a-neighbour', message, key: true });
      continue;
    }
    const angle = reading.angle(at, raw, joint);
    if (angle === undefined) continue;
    if (isAbove(Math.abs(angle), toRadians(150))) {
      const message = `${joint} is ${raw}; no ${joint} goes that far`;
      reading.refuse(at, { code: 'out-of-bounds', message });
    } else neighbours[joint] = angle;
  }
  return neighbours;
}

function liftTest(
  reading: Reading,
  test: LiftDraft,
  path: Path,
  around: Standing & { readonly lifts: KnownLifts },
): LiftTest | undefined {
  const lift = namedLift(reading, test.lift, [...path, 'lift'], around.lifts);
  const load = readBest(reading, test.best, lift, [...path, 'best']);
  const read = (raw: string | undefined, at: Path) =>
    readPlace(reading, raw, at, { lift, load, ...around });
  const hasFrom = Object.hasOwn(test, 'from');
  const range = hasFrom ? readRange(reading, test, path, read) : undefined;
  const to = hasFrom ? range?.to : read(test.to, [...path, 'to']);
  const ends: readonly End[] = [range?.from, to].filter((end) => end !== undefined);
  if (lift) checkLiftRange(reading, lift, ends);
  if (lift) checkDepth(reading, lift, to, 'range');
  if (lift?.leading === 'knee') checkKneeLimit(reading, to, around.kneeLimit, lift.name);
  return complete<LiftTest>({
    kind: 'lift',
    lift: test.lift,
    ...optional('date', test.date),
    ...optional('from', range?.from.angle),
    to: to?.angle,
    best: load,
    ...heightsOf(ends),
    path,
  });
}

/** The heaviest single, kg; 0 where it is the body itself. */
function readBest(
  reading: Reading,
  raw: string | undefined,
  lift: Lift | undefined,
  path: Path,
): Kilogram | undefined {
  if (raw === undefined || !isBodyWeight(raw)) return reading.quantity(path, raw, best);
  return lift && refuseNoBody(reading, lift, raw, path) ? undefined : 0;
}

function jointOf(action: string | undefined): string | undefined {
  return action === undefined ? undefined : actionNamed(action)?.joint;
}
