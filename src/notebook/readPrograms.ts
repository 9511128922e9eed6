import { complete } from './complete.ts';
import type { Draft } from './draft.ts';
import type { DeloadFile, ProgramFile } from './programSchema.ts';
import type { Expected, Reading } from './reading.ts';
import { readWork, type Surroundings } from './readWork.ts';
import type { Fraction, Path, Program, Work } from './scenario.ts';

type ProgramDraft = NonNullable<Draft<ProgramFile>>;
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

/**
 * Reads the candidate programs.
 *
 * @param around machines and limits that the work is held against
 * @returns the programs that could be read, in the file's order; problems are collected, never thrown
 */
export function readPrograms(
  reading: Reading,
  programs: Readonly<Record<string, Draft<ProgramFile>>> | undefined,
  around: Surroundings,
): readonly Program[] {
  const entries = Object.entries(programs ?? {});
  if (programs && entries.length === 0) {
    const message = 'programs is empty; write one program or more';
    reading.refuse(['programs'], { code: 'no-programs', message, key: true });
  }
  return entries.flatMap(([name, draft]) => {
    const program = draft && readProgram(reading, name, draft, around);
    return program ? [program] : [];
  });
}

function readProgram(
  reading: Reading,
  name: string,
  draft: ProgramDraft,
  around: Surroundings,
): Program | undefined {
  const path: Path = ['programs', name];
  const work = (draft.work ?? []).flatMap((entry, index) => {
    const read = entry && readWork(reading, entry, [...path, 'work', index], around);
    return read ? [read] : [];
  });
  const progress = readProgress(reading, draft.progress, [...path, 'progress']);
  if (progress) remarkOnBodyWeight(reading, work, draft.progress, path);
  return complete<Program>({
    name,
    weeks: draft.weeks,
    sessionsPerWeek: draft['sessions per week'],
    work,
    progress,
    deloads: readDeloads(reading, draft, [...path, 'deload']),
    path,
  });
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

function readProgress(reading: Reading, raw: string | undefined, path: Path): Fraction | undefined {
  if (raw === undefined) return 0;
  const perWeek = /^(.*?)\s*per\s+week\s*$/.exec(raw);
  if (perWeek) return reading.quantity(path, perWeek[1], progress);
  const message = `progress is "${raw}"; write a change per week, for example "2.5 % per week"`;
  reading.refuse(path, { code: 'bad-progress', message });
  return undefined;
}

function readDeloads(reading: Reading, draft: ProgramDraft, path: Path): Program['deloads'] {
  const { deload, weeks } = draft;
  if (deload === undefined) return [];
  const isList = isDeloadList(deload);
  const entries = isList ? deload : [deload];
  const seen = new Set<number>();
  return entries.flatMap((entry, index) => {
    if (entry?.week === undefined) return [];
    const at = isList ? [...path, index] : path;
    checkWeek(reading, entry.week, weeks, seen, [...at, 'week']);
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
  weeks: number | undefined,
  seen: ReadonlySet<number>,
  path: Path,
): void {
  if (weeks !== undefined && week > weeks) {
    const message = `week is ${week}, but the program lasts ${weeks} week${weeks === 1 ? '' : 's'}`;
    reading.refuse(path, { code: 'outside-block', message });
  } else if (seen.has(week)) {
    reading.refuse(path, { code: 'duplicate-week', message: `week ${week} is given twice` });
  }
}

function readSets(reading: Reading, raw: string | undefined, path: Path): Fraction | undefined {
  return raw?.trim() === 'half' ? 0.5 : reading.quantity(path, raw, setsLeft);
}
