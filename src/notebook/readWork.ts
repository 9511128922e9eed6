import type { Lift } from '../mechanics/lift.ts';
import { actionNamed } from '../tables/actions.ts';
import { checkActionRange } from './checkActionRange.ts';
import { checkEquipment, type EquipmentNames } from './checkEquipment.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import { actionNames } from './knownNames.ts';
import type { HoldWorkFile, IsokineticWorkFile, LiftWorkFile } from './programSchema.ts';
import { tempoHint } from './quantitySlips.ts';
import { checkDepth, checkKneeLimit, checkLiftRange, readRange } from './range.ts';
import { readIsokinetic } from './readIsokinetic.ts';
import type { Reading } from './reading.ts';
import { type KnownLifts, namedLift } from './readLifts.ts';
import { readLoad } from './readLoad.ts';
import { checkLoweredLoad, isLowerOnly, readBodyWeight, readLoweringLoad } from './readLowering.ts';
import { heightsOf, readPlace, type Standing } from './readPlace.ts';
import type { HoldWork, LiftWork, Load, Path, Second, Work } from './scenario.ts';
import { defaultRest, effort, rest } from './workQuantities.ts';

type LiftDraft = NonNullable<Draft<LiftWorkFile>>;
type HoldDraft = NonNullable<Draft<HoldWorkFile>>;
type IsokineticDraft = NonNullable<Draft<IsokineticWorkFile>>;

/** What work is held against. */
export interface Surroundings extends Standing {
  readonly lifts: KnownLifts;
  readonly equipment: EquipmentNames;
}

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
  work: LiftDraft | HoldDraft | IsokineticDraft,
  path: Path,
  around: Surroundings,
): Work | undefined {
  if (isIsokinetic(work)) return readIsokinetic(reading, work, path, around.kneeLimit);
  return isHold(work)
    ? readHold(reading, work, path, around)
    : readLift(reading, work, path, around);
}

const isHold = (work: LiftDraft | HoldDraft): work is HoldDraft => Object.hasOwn(work, 'hold');
const isIsokinetic = (work: LiftDraft | HoldDraft | IsokineticDraft): work is IsokineticDraft =>
  Object.hasOwn(work, 'isokinetic');

function readLift(
  reading: Reading,
  work: LiftDraft,
  path: Path,
  around: Surroundings,
): LiftWork | undefined {
  const lift = namedLift(reading, work.lift, [...path, 'lift'], around.lifts);
  const load = readLiftLoad(reading, work, lift, path);
  const mass = load?.kind === 'mass' ? load.mass : undefined;
  const range = readRange(reading, work, path, (raw, at) =>
    readPlace(reading, raw, at, { lift, load: mass, ...around }),
  );
  if (lift && range) checkLiftRange(reading, lift, [range.from, range.to]);
  if (lift) checkDepth(reading, lift, range?.to, 'range');
  if (lift?.leading === 'knee') checkKneeLimit(reading, range?.to, around.kneeLimit, lift.name);
  checkEquipment(reading, work, lift, path, around.equipment);
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
    ...optional('lowerOnly', isLowerOnly(work) ? (true as const) : undefined),
    ...optional('loweringLoad', readLoweringLoad(reading, work, path)),
    ...optional('chains', work.chains),
    ...optional('bands', work.bands),
    ...heightsOf([range?.from, range?.to]),
    ...optional('assumed', assumedOf(work, ['tempo', 'rest'])),
    path,
  });
}

function readLiftLoad(
  reading: Reading,
  work: LiftDraft,
  lift: Lift | undefined,
  path: Path,
): Load | undefined {
  const body = readBodyWeight(reading, work, lift, path);
  if (body) return body.read;
  checkLoweredLoad(reading, work, path);
  return readLoad(reading, work, { written: Object.keys(work), lowered: isLowerOnly(work) }, path);
}

function readHold(
  reading: Reading,
  work: HoldDraft,
  path: Path,
  around: Surroundings,
): HoldWork | undefined {
  const lift = namedLift(reading, work.hold, [...path, 'hold'], around.lifts, actionNames);
  const action = work.hold === undefined ? undefined : actionNamed(work.hold);
  const joint = lift?.leading ?? action?.joint;
  const at = readPlace(reading, work.at, [...path, 'at'], {
    lift,
    joint: action?.joint,
    ...around,
  });
  const isKnown = checkActionRange(reading, work.hold, [at]);
  if (lift && at) checkLiftRange(reading, lift, [at]);
  if (lift) checkDepth(reading, lift, at, 'hold');
  if (isKnown && joint === 'knee')
    checkKneeLimit(reading, at, around.kneeLimit, `hold of ${work.hold}`);
  checkAgainst(reading, work, lift, path);
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
    ...optional('against', work.against),
    ...optional('assumed', assumedOf(work, ['rest'])),
    path,
  });
}

/** Pins stop a bar: they mean nothing to a joint action or to a machine. */
function checkAgainst(
  reading: Reading,
  { against, hold }: HoldDraft,
  lift: Lift | undefined,
  path: Path,
): void {
  if (against === undefined || hold === undefined || lift?.resistance.kind === 'mass') return;
  const message = lift
    ? `${hold} moves a machine or a cable, not a bar that pins could stop`
    : `${hold} is a joint action, not a lift with a bar that pins could stop`;
  const hint = 'delete against';
  reading.refuse([...path, 'against'], { code: 'no-pins-here', message, hint, key: true });
}

/** Those of some names that do not stand in the file, if any. */
function assumedOf(
  work: object,
  names: readonly ('tempo' | 'rest')[],
): LiftWork['assumed'] | undefined {
  const missing = names.filter((name) => !Object.hasOwn(work, name));
  return missing.length > 0 ? missing : undefined;
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
  const hint = tempoHint(raw);
  reading.refuse(path, { code: 'bad-tempo', message, ...optional('hint', hint) });
  return undefined;
}
