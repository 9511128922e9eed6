import type { Lift } from '../../mechanics/lift.ts';
import { isBodyLift } from '../../tables/bodyLifts.ts';
import { mostFormulaReps, singleFromReps } from '../../tables/repetitionFormulas.ts';
import { complete, optional } from '../complete.ts';
import type { Draft } from '../draft.ts';
import { checkDepth, checkKneeLimit, checkLiftRange, type End, readRange } from '../range.ts';
import type { Expected, Reading } from '../reading.ts';
import { type KnownLifts, namedLift } from '../readLifts.ts';
import { isBodyWeight, refuseNoBody } from '../readLowering.ts';
import { heightsOf, readPlace, type Standing } from '../readPlace.ts';
import type { Kilogram, Path } from '../scenario.ts';
import { pathName } from '../valueName.ts';
import type { EstimatedSingle, LiftTest } from './strengthTest.ts';
import type { LiftTestFile } from './testSchema.ts';

export type LiftDraft = NonNullable<Draft<LiftTestFile>>;

/** The lifts a test may name, and the body that ends a range at a height. */
export type Around = Standing & { readonly lifts: KnownLifts };

const best: Expected = {
  dimension: 'mass',
  example: '85 kg',
  least: 0.1,
  most: 600,
  bounds: 'a best lift lies above 0 kg and below 600 kg',
};

/**
 * Reads the heaviest single of a lift, lifted or estimated from a set to failure.
 *
 * @param path of the test
 * @returns undefined if it cannot be used; problems are collected, never thrown
 */
export function readLiftTest(
  reading: Reading,
  test: LiftDraft,
  path: Path,
  around: Around,
): LiftTest | undefined {
  const lift = namedLift(reading, test.lift, [...path, 'lift'], around.lifts);
  const single = readSingle(reading, test, lift, path);
  const load = single?.best;
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
    ...optional('estimated', single?.estimated),
    ...heightsOf(ends),
    path,
  });
}

interface Single {
  readonly best: Kilogram;
  readonly estimated?: EstimatedSingle;
}

/** The single as lifted, or by the published formulas from load and repetitions. */
function readSingle(
  reading: Reading,
  test: LiftDraft,
  lift: Lift | undefined,
  path: Path,
): Single | undefined {
  const set = (['reps', 'load'] as const).filter((name) => Object.hasOwn(test, name));
  if (Object.hasOwn(test, 'best')) {
    for (const name of set) refuseBoth(reading, name, path);
    const load = readBest(reading, test.best, lift, [...path, 'best']);
    return load === undefined ? undefined : { best: load };
  }
  if (set.length === 2) return estimate(reading, test, lift, path);
  const [given] = set;
  const missing = given === undefined ? 'best' : given === 'reps' ? 'load' : 'reps';
  const example = { best: 'best: 85 kg', load: 'load: 75 kg', reps: 'reps: 5' }[missing];
  const message = `${pathName([...path, missing])} is missing`;
  reading.refuse([...path, missing], {
    code: 'missing',
    message,
    hint: `add for example "${example}"`,
  });
  return undefined;
}

function refuseBoth(reading: Reading, name: 'reps' | 'load', path: Path): void {
  const message = `${name} stands beside best; a heaviest single is lifted or estimated, not both`;
  const hint = 'keep best if the single was lifted, else reps and load';
  reading.refuse([...path, name], { code: 'two-singles', message, hint, key: true });
}

function estimate(
  reading: Reading,
  test: LiftDraft,
  lift: Lift | undefined,
  path: Path,
): Single | undefined {
  const at = [...path, 'load'];
  const { reps, load: raw } = test;
  if (reps === 1) {
    const load = readBest(reading, raw, lift, at);
    return load === undefined ? undefined : { best: load };
  }
  if (lift && isBodyLift(lift)) return refuseBodyLift(reading, lift, path);
  const load = reading.quantity(at, raw, best);
  if (reps === undefined || load === undefined) return undefined;
  if (reps > mostFormulaReps) return refuseMany(reading, reps, load, path);
  const { single, least, most } = singleFromReps(load, reps);
  return { best: single, estimated: { reps, load, least, most } };
}

/** The formulas count the bar alone; where the body is lifted too, its share is no bar's. */
function refuseBodyLift(reading: Reading, lift: Lift, path: Path): undefined {
  const message = `reps of ${lift.name} carry the body too; the formulas for a heaviest single are made for a bar alone`;
  const hint = 'test a single and write it as best: 20 kg (what hangs on) or best: body weight';
  reading.refuse([...path, 'reps'], { code: 'no-estimate', message, hint, key: true });
  return undefined;
}

function refuseMany(reading: Reading, reps: number, load: Kilogram, path: Path): undefined {
  const message = `reps is ${reps}; above ${mostFormulaReps} repetitions endurance decides more than strength, and no formula tells the heaviest single`;
  const hint = `test with more than ${Number(load.toFixed(1))} kg, best for 2 to 6 repetitions`;
  reading.refuse([...path, 'reps'], { code: 'no-estimate', message, hint });
  return undefined;
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
