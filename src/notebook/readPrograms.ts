import { complete } from './complete.ts';
import type { Draft } from './draft.ts';
import type { PhasedProgramFile, PlainProgramFile, ProgramFile } from './programSchema.ts';
import type { Reading } from './reading.ts';
import { readPhasedProgram } from './readPhases.ts';
import { readDeloads, readProgress, readWorkList } from './readRhythm.ts';
import type { Surroundings } from './readWork.ts';
import type { Path, Program } from './scenario.ts';

type ProgramDraft = NonNullable<Draft<ProgramFile>>;
type PhasedDraft = NonNullable<Draft<PhasedProgramFile>>;

const isPhased = (draft: ProgramDraft): draft is PhasedDraft => Object.hasOwn(draft, 'phases');

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
    if (!draft) return [];
    const program = isPhased(draft)
      ? readPhasedProgram(reading, name, draft, around)
      : readProgram(reading, name, draft, around);
    return program ? [program] : [];
  });
}

function readProgram(
  reading: Reading,
  name: string,
  draft: NonNullable<Draft<PlainProgramFile>>,
  around: Surroundings,
): Program | undefined {
  const path: Path = ['programs', name];
  const work = readWorkList(reading, draft, path, around);
  return complete<Program>({
    name,
    weeks: draft.weeks,
    sessionsPerWeek: draft['sessions per week'],
    work,
    progress: readProgress(reading, draft.progress, work, path),
    deloads: readDeloads(reading, draft, path, 'program'),
    path,
  });
}
