import type { Draft } from './draft.ts';
import type { DeloadFile, PlainProgramFile } from './programSchema.ts';
import type { Expected, Reading } from './reading.ts';
import { readWork, type Surroundings } from './readWork.ts';
import type { Fraction, Path, Program, Work } from './scenario.ts';

/** What a program and each phase of one say alike: work, change of load, lighter weeks. */
type RhythmDraft = Pick<NonNullable<Draft<PlainProgramFile>>, 'weeks' | 'deload'>;
type WorkDraft = Pick<NonNullable<Draft<PlainProgramFile>>, 'work'>;
type DeloadDraft = NonNullable<Draft<DeloadFile>>;

const progress: Expected = {
  dimension: 'share',
  example: '2.5 % per week',
  least: -0.5,
  most: 0.5,
  bounds: 'a change lies between -50 % and 50 % per week',
};
const setsLeft: Expected = {
  dimension: 'share',
  example: '50 %',
  least: 0.05,
  most: 1,
  bounds: 'the share of sets that stays lies between 5 % and 100 %',
};

/** Reads a list of work; what is wrong with an entry is collected, and the entry left out. */
export function readWorkList(
  reading: Reading,
  { work = [] }: WorkDraft,
  path: Path,
  around: Surroundings,
): readonly Work[] {
  return work.flatMap((entry, index) => {
    const read = entry && readWork(reading, entry, [...path, 'work', index], around);
    return read ? [read] : [];
  });
}

/** Reads the change of load per week, 0 where none is given; problems are collected, never thrown. */
export function readProgress(
  reading: Reading,
  raw: string | undefined,
  work: readonly Work[],
  path: Path,
): Fraction | undefined {
  const read = readChange(reading, raw, [...path, 'progress']);
  if (read) remarkOnBodyWeight(reading, work, raw, path);
  return read;
}

/** A change in per cent leaves nothing added as it is: allowed, but easily overlooked. */
function remarkOnBodyWeight(
  reading: Reading,
  work: readonly Work[],
  raw: string | undefined,
  path: Path,
): void {
  const unchanged = work.find(
    (one) => one.kind === 'lift' && one.load.kind === 'mass' && one.load.mass === 0,
  );
  if (unchanged?.kind !== 'lift') return;
  const message = `progress is ${raw}, which changes nothing in the ${unchanged.lift} with body weight`;
  const hint = 'for a load that rises, write one to begin with, such as load: 2.5 kg';
  reading.remark([...path, 'progress'], { code: 'no-progress', message, hint });
}

function readChange(reading: Reading, raw: string | undefined, path: Path): Fraction | undefined {
  if (raw === undefined) return 0;
  const perWeek = /^(.*?)\s*per\s+week\s*$/.exec(raw);
  if (perWeek) return reading.quantity(path, perWeek[1], progress);
  const message = `progress is "${raw}"; write a change per week, for example "2.5 % per week"`;
  reading.refuse(path, { code: 'bad-progress', message });
  return undefined;
}

/**
 * Reads the weeks with fewer sets.
 *
 * @param whose what the weeks are counted in, for messages; problems are collected, never thrown
 */
export function readDeloads(
  reading: Reading,
  { deload, weeks }: RhythmDraft,
  above: Path,
  whose: 'program' | 'phase',
): Program['deloads'] {
  if (deload === undefined) return [];
  const path = [...above, 'deload'];
  const isList = isDeloadList(deload);
  const entries = isList ? deload : [deload];
  const seen = new Set<number>();
  return entries.flatMap((entry, index) => {
    if (entry?.week === undefined) return [];
    const at = isList ? [...path, index] : path;
    checkWeek(reading, entry.week, [weeks, whose], seen, [...at, 'week']);
    seen.add(entry.week);
    const sets = readSets(reading, entry.sets, [...at, 'sets']);
    return sets === undefined ? [] : [{ week: entry.week, sets }];
  });
}

// Array.isArray does not narrow readonly lists.
const isDeloadList = (
  deload: DeloadDraft | readonly (DeloadDraft | undefined)[],
): deload is readonly (DeloadDraft | undefined)[] => Array.isArray(deload);

function checkWeek(
  reading: Reading,
  week: number,
  [weeks, whose]: readonly [number | undefined, 'program' | 'phase'],
  seen: ReadonlySet<number>,
  path: Path,
): void {
  if (weeks !== undefined && week > weeks) {
    const message = `week is ${week}, but the ${whose} lasts ${weeks} week${weeks === 1 ? '' : 's'}`;
    reading.refuse(path, { code: 'outside-block', message });
  } else if (seen.has(week)) {
    reading.refuse(path, { code: 'duplicate-week', message: `week ${week} is given twice` });
  }
}

function readSets(reading: Reading, raw: string | undefined, path: Path): Fraction | undefined {
  return raw?.trim() === 'half' ? 0.5 : reading.quantity(path, raw, setsLeft);
}
