import { toRadians } from '../../numeric/degrees.ts';
import { speedBoundsDeg } from '../../tables/forceVelocity.ts';
import { measuredMuscles } from '../../tables/measuredMuscles.ts';
import { complete, optional } from '../complete.ts';
import type { Draft } from '../draft.ts';
import type { KneeLimit } from '../range.ts';
import type { Expected, Reading } from '../reading.ts';
import { type KnownLifts, namedLift } from '../readLifts.ts';
import type { Path } from '../scenario.ts';
import { readFinding } from './readFinding.ts';
import { readSpan, readTestPlace } from './readTestPlace.ts';
import type { Observed, Outcome } from './study.ts';
import type { ObservedFile } from './studySchema.ts';

/** What a test of a study is held against. */
export interface Tested {
  readonly lifts: KnownLifts;
  readonly kneeLimit: KneeLimit | undefined;
}

type ObservedDraft = NonNullable<Draft<ObservedFile>>;
type With<Draft, Head extends string> = Draft extends unknown
  ? Head extends keyof Draft
    ? Draft
    : never
  : never;
/** The kind of outcome that has a name. */
type Of<Head extends string> = With<ObservedDraft, Head>;

const place: Expected = {
  dimension: 'share',
  example: '50 %',
  least: 0,
  most: 1,
  bounds: 'a place along a muscle lies between 0 % and 100 % of its length',
};
const speed: Expected = {
  dimension: 'speed',
  example: '60 deg/s',
  least: toRadians(speedBoundsDeg.least),
  most: toRadians(speedBoundsDeg.most),
  bounds: `a machine turns a joint at ${speedBoundsDeg.least} to ${speedBoundsDeg.most} deg/s`,
};
const after: Expected = {
  dimension: 'weeks',
  least: 0,
  most: 104,
  bounds: 'a time lies between 0 and 104 weeks',
};

/**
 * Reads one outcome of a study.
 *
 * @returns the outcome in SI with anatomical angles, or undefined; problems are collected, never thrown
 */
export function readObserved(
  reading: Reading,
  draft: ObservedDraft,
  path: Path,
  around: Tested,
): Observed | undefined {
  const { fit = true } = draft;
  return complete<Observed>({
    outcome: readOutcome(reading, draft, path, around),
    found: readFinding(reading, draft, path, 'optimum' in draft ? 'angle' : 'share'),
    ...optional('afterWeeks', reading.quantity([...path, 'after'], draft.after, after)),
    source: draft.source,
    ...optional('doubt', draft.doubt),
    isForFit: fit === true || fit === 'yes',
    path,
  });
}

function readOutcome(
  reading: Reading,
  draft: ObservedDraft,
  path: Path,
  around: Tested,
): Outcome | undefined {
  if ('single' in draft) return readSingle(reading, draft, path, around);
  if ('repetition maximum' in draft) return readRepetitionMaximum(reading, draft, path, around);
  if ('isokinetic' in draft) return readIsokineticTest(reading, draft, path, around);
  if ('isometric' in draft) {
    const placed = readTestPlace(reading, draft.isometric, draft, [...path, 'isometric'], around);
    if (placed === 'none') return refuseNoAngle(reading, path);
    return placed && { kind: 'isometric', ...placed };
  }
  if ('optimum' in draft) return complete<Outcome>({ kind: 'optimum', of: draft.optimum });
  if ('arm' in draft) return complete<Outcome>({ kind: 'arm', ...muscleOf(draft.arm) });
  return readMuscle(reading, draft, path);
}

function readSingle(
  reading: Reading,
  draft: Of<'single'>,
  path: Path,
  around: Tested,
): Outcome | undefined {
  const lift = namedLift(reading, draft.single, [...path, 'single'], around.lifts);
  const span = lift && readSpan(reading, lift, draft, path, around);
  return span && { kind: 'single', of: lift.name, ...span };
}

function readRepetitionMaximum(
  reading: Reading,
  draft: Of<'repetition maximum'>,
  path: Path,
  around: Tested,
): Outcome | undefined {
  const at: Path = [...path, 'repetition maximum'];
  const lift = namedLift(reading, draft['repetition maximum'], at, around.lifts);
  const span = lift && readSpan(reading, lift, draft, path, around);
  if (!span) return undefined;
  return complete<Outcome>({
    kind: 'repetition maximum',
    of: lift.name,
    reps: draft.reps,
    ...span,
  });
}

function readIsokineticTest(
  reading: Reading,
  draft: Of<'isokinetic'>,
  path: Path,
  around: Tested,
): Outcome | undefined {
  const placed = readTestPlace(reading, draft.isokinetic, draft, [...path, 'isokinetic'], around);
  const isKnown = draft.speed !== undefined && draft.speed.trim() !== 'unknown';
  const at: Path = [...path, 'speed'];
  return complete<Outcome>({
    kind: 'isokinetic',
    of: draft.isokinetic,
    way: draft.way,
    ...(isKnown ? { speed: reading.quantity(at, draft.speed, speed) } : {}),
    ...(placed === 'none' ? {} : { from: placed?.from, to: placed?.to }),
  });
}

function refuseNoAngle(reading: Reading, path: Path): undefined {
  const message =
    'a hold is tested at an angle; write at:, or from: and to: for a mean over angles';
  reading.refuse(path, { code: 'missing', message });
}

function readMuscle(
  reading: Reading,
  draft: Of<'growth'> | Of<'fibres'>,
  path: Path,
): Outcome | undefined {
  const part = {
    ...optional('place', reading.quantity([...path, 'place'], draft.place, place)),
    ...optional('region', draft.region),
  };
  if ('growth' in draft)
    return complete<Outcome>({
      kind: 'growth',
      ...muscleOf(draft.growth),
      measure: draft.measure,
      ...part,
    });
  if (!('fibres' in draft)) return undefined;
  return complete<Outcome>({ kind: 'fibres', ...muscleOf(draft.fibres), ...part });
}

/** A muscle, or several measured together, with their rows of the tables. */
const muscleOf = (of: string | undefined) => ({
  of,
  muscles: of === undefined ? undefined : measuredMuscles.get(of),
});
