import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import type { Phase } from './phase.ts';
import type { PhasedProgramFile, PhaseFile } from './programSchema.ts';
import type { Reading } from './reading.ts';
import { readDeloads, readProgress, readWorkList } from './readRhythm.ts';
import type { Surroundings } from './readWork.ts';
import type { Path, Program, Work } from './scenario.ts';

type PhaseDraft = NonNullable<Draft<PhaseFile>>;

const mostWeeks = 104;

/**
 * Reads a program of phases: its work is that of all phases one after the other, its weeks are
 * their sum.
 *
 * @returns undefined if a phase could not be read; problems are collected, never thrown
 */
export function readPhasedProgram(
  reading: Reading,
  name: string,
  draft: NonNullable<Draft<PhasedProgramFile>>,
  around: Surroundings,
): Program | undefined {
  const path: Path = ['programs', name];
  const work: Work[] = [];
  const phases = (draft.phases ?? []).flatMap((phase, i) => {
    const read = phase && readPhase(reading, phase, [...path, 'phases', i], around);
    if (!read) return [];
    const places = read.work.map((_, place) => work.length + place);
    work.push(...read.work);
    return [{ ...read.phase, places }];
  });
  const weeks = phases.reduce((sum, phase) => sum + phase.weeks, 0);
  if (weeks > mostWeeks) {
    const message = `the phases come to ${weeks} weeks; at most ${mostWeeks} can be read`;
    reading.refuse([...path, 'phases'], { code: 'bad-value', message });
  }
  if (phases.length < (draft.phases ?? []).length || phases.length === 0) return undefined;
  const sessionsPerWeek = Math.max(...phases.map((phase) => phase.sessionsPerWeek));
  return { name, weeks, sessionsPerWeek, work, progress: 0, deloads: [], phases, path };
}

function readPhase(
  reading: Reading,
  draft: PhaseDraft,
  path: Path,
  around: Surroundings,
): { readonly phase: Omit<Phase, 'places'>; readonly work: readonly Work[] } | undefined {
  const name = optional('name', draft.name);
  if (isOff(draft)) {
    const { weeks } = draft;
    const rest = { sessionsPerWeek: 0, progress: 0, deloads: [] };
    return weeks === undefined ? undefined : { phase: { ...name, weeks, ...rest }, work: [] };
  }
  const work = readWorkList(reading, draft, path, around);
  const isEmpty = draft.work?.length === 0;
  const sessions = draft['sessions per week'];
  if (!isEmpty && sessions === undefined && !Object.hasOwn(draft, 'sessions per week'))
    reading.refuse([...path, 'sessions per week'], {
      code: 'missing',
      message: 'sessions per week is missing in a phase with work',
      hint: 'add for example "sessions per week: 2"; weeks without training are off: yes',
    });
  const phase = complete<Omit<Phase, 'places'>>({
    ...name,
    weeks: draft.weeks,
    sessionsPerWeek: isEmpty ? 0 : sessions,
    progress: readProgress(reading, draft.progress, work, path),
    deloads: readDeloads(reading, draft, path, 'phase'),
  });
  return phase && { phase, work };
}

type OffDraft = Extract<PhaseDraft, { readonly off?: unknown }>;

const isOff = (draft: PhaseDraft): draft is OffDraft => Object.hasOwn(draft, 'off');
