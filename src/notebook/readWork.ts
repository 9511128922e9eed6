import type { Lift } from '../mechanics/lift.ts';
import { actionNamed } from '../tables/actions.ts';
import { complete, optional } from './complete.ts';
import { didYouMean } from './didYouMean.ts';
import type { Draft } from './draft.ts';
import { actionNames } from './knownNames.ts';
import type { HoldWorkFile, LiftWorkFile } from './programSchema.ts';
import { checkDepth, checkKneeLimit, checkLiftRange, readRange } from './range.ts';
import type { Expected, Reading } from './reading.ts';
import { type KnownLifts, namedLift } from './readLifts.ts';
import { readLoad } from './readLoad.ts';
import { heightsOf, readPlace, type Standing } from './readPlace.ts';
import type { HoldWork, LiftWork, Path, Second, Work } from './scenario.ts';

type LiftDraft = NonNullable<Draft<LiftWorkFile>>;
type HoldDraft = NonNullable<Draft<HoldWorkFile>>;

/** What work is held against. */
export interface Surroundings extends Standing {
  readonly lifts: KnownLifts;
  /** The joint that each machine of the file turns. */
  readonly machines: ReadonlyMap<string, string>;
}

const rest: Expected = {
  dimension: 'time',
  example: '120 s',
  least: 0,
  most: 3600,
  bounds: 'a rest lies between 0 s and 60 min',
};
const effort: Expected = {
  dimension: 'share',
  example: '90 %',
  least: 1e-6,
  most: 1,
  bounds: 'an effort lies above 0 % and up to 100 %',
};
const defaultRest = '120 s';
const defaultTempo = '2-0-1';
const longestPhase: Second = 60;

/**
 * Reads one entry of a program's work.
 *
 * @param path of the entry
 * @returns the work in SI with anatomical angles, or undefined; problems are collected, never thrown
 */
export function readWork(
  reading: Reading,
  work: LiftDraft | HoldDraft,
  path: Path,
  around: Surroundings,
): Work | undefined {
  return isHold(work)
    ? readHold(reading, work, path, around)
    : readLift(reading, work, path, around);
}

const isHold = (work: LiftDraft | HoldDraft): work is HoldDraft => Object.hasOwn(work, 'hold');

function readLift(
  reading: Reading,
  work: LiftDraft,
  path: Path,
  around: Surroundings,
): LiftWork | undefined {
  const lift = namedLift(reading, work.lift, [...path, 'lift'], around.lifts);
  const joint = lift?.leading ?? 'knee';
  const load = readLoad(reading, work, Object.keys(work), path);
  const mass = load?.kind === 'mass' ? load.mass : undefined;
  const range = readRange(reading, work, path, (raw, at) =>
    readPlace(reading, raw, at, { lift, load: mass, ...around }),
  );
  if (lift && range) checkLiftRange(reading, lift, [range.from, range.to]);
  if (lift) checkDepth(reading, lift, range?.to, 'range');
  if (joint === 'knee') checkKneeLimit(reading, range?.to, around.kneeLimit, work.lift ?? 'work');
  checkMachine(reading, work.machine, lift, path, around);
  return complete<LiftWork>({
    kind: 'lift',
    lift: work.lift,
    from: range?.from.angle,
    to: range?.to.angle,
    load,
    sets: work.sets,
    reps: work.reps,
    tempo: readTempo(reading, work.tempo ?? defaultTempo, [...path, 'tempo']),
    rest: reading.quantity([...path, 'rest'], work.rest ?? defaultRest, rest),
    ...optional('machine', work.machine),
    ...heightsOf([range?.from, range?.to]),
    ...optional('assumed', assumedOf(work, ['tempo', 'rest'])),
    path,
  });
}

function readHold(
  reading: Reading,
  work: HoldDraft,
  path: Path,
  around: Surroundings,
): HoldWork | undefined {
  const lift = namedLift(reading, work.hold, [...path, 'hold'], around.lifts, actionNames);
  const action = work.hold === undefined ? undefined : actionNamed(work.hold);
  const joint = lift?.leading ?? action?.joint ?? 'knee';
  const at = readPlace(reading, work.at, [...path, 'at'], {
    lift,
    joint: action?.joint,
    ...around,
  });
  if (lift && at) checkLiftRange(reading, lift, [at]);
  if (lift) checkDepth(reading, lift, at, 'hold');
  if (joint === 'knee') checkKneeLimit(reading, at, around.kneeLimit, `hold of ${work.hold}`);
  return complete<HoldWork>({
    kind: 'hold',
    of: work.hold,
    at: at?.angle,
    ...heightsOf([at]),
    effort: reading.quantity([...path, 'effort'], work.effort, effort),
    sets: work.sets,
    reps: work.reps,
    seconds: work.seconds,
    rest: reading.quantity([...path, 'rest'], work.rest ?? defaultRest, rest),
    ...optional('assumed', assumedOf(work, ['rest'])),
    path,
  });
}

/** Those of some names that do not stand in the file, if any. */
function assumedOf(
  work: object,
  names: readonly ('tempo' | 'rest')[],
): LiftWork['assumed'] | undefined {
  const missing = names.filter((name) => !Object.hasOwn(work, name));
  return missing.length > 0 ? missing : undefined;
}

function checkMachine(
  reading: Reading,
  machine: string | undefined,
  lift: Lift | undefined,
  path: Path,
  { machines }: Surroundings,
): void {
  if (machine === undefined) return;
  const at = [...path, 'machine'];
  if (lift && lift.resistance.kind !== 'machine torque') {
    const message = `${lift.name} uses no machine`;
    reading.refuse(at, { code: 'no-machine-here', message, hint: 'delete machine', key: true });
  }
  const joint = machines.get(machine);
  if (joint !== undefined) {
    if (lift?.resistance.kind !== 'machine torque' || lift.leading === joint) return;
    const message = `"${machine}" turns the ${joint}, but the ${lift.name} is led by the ${lift.leading}`;
    const hint = `write joint: ${lift.leading} under the machine if it was measured there`;
    reading.refuse(at, { code: 'wrong-machine', message, hint });
    return;
  }
  const machineNames = [...machines.keys()];
  const meant = didYouMean(machine, machineNames);
  const known =
    machineNames.length > 0 ? `known: ${machineNames.join(', ')}` : 'describe it under machines:';
  const hint = meant === undefined ? known : `did you mean "${meant}"?`;
  const message = `there is no machine "${machine}" in this file`;
  reading.refuse(at, { code: 'unknown-machine', message, hint });
}

function readTempo(reading: Reading, raw: string, path: Path): LiftWork['tempo'] | undefined {
  const match = /^(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)$/.exec(raw.trim());
  if (match) {
    const [lowering, bottom, lifting] = [Number(match[1]), Number(match[2]), Number(match[3])];
    const isTimed = lowering + lifting > 0;
    if (isTimed && Math.max(lowering, bottom, lifting) <= longestPhase) {
      return [lowering, bottom, lifting];
    }
  }
  const message = `tempo is "${raw}"; write seconds lowering, held at the bottom and lifting, for example 3-0-1`;
  reading.refuse(path, { code: 'bad-tempo', message });
  return undefined;
}
