import { complete, optional } from '../complete.ts';
import { didYouMean } from '../didYouMean.ts';
import type { Draft } from '../draft.ts';
import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { readObserved, type Tested } from './readObserved.ts';
import type { Citation, Study, StudyGroup } from './study.ts';
import type { StudyFile, StudyGroupFile } from './studySchema.ts';

/**
 * Reads a published study.
 *
 * @param reading collects problems: groups without a program, outcomes that no test gives
 * @param around lifts a test may name, and how far the group's knees go
 * @returns the study in SI with anatomical angles, or undefined; never throws
 */
export function readStudy(
  reading: Reading,
  draft: NonNullable<Draft<StudyFile>>,
  around: Tested,
): Study | undefined {
  const path: Path = ['study'];
  refuseOnePerson(reading, path);
  refuseStrangers(reading, path);
  return complete<Study>({
    cited: readCitation(draft.cited),
    known: draft.known,
    groups: Object.entries(draft.groups ?? {}).flatMap(([program, group]) =>
      group ? [readGroup(reading, program, group, [...path, 'groups', program], around)] : [],
    ),
    path,
  });
}

function readCitation(cited: NonNullable<Draft<StudyFile>>['cited']): Citation | undefined {
  if (!cited) return undefined;
  return complete<Citation>({
    authors: cited.authors,
    year: cited.year,
    ...optional('journal', cited.journal),
    ...optional('pages', cited.pages),
    ...optional('doi', cited.doi),
    known: cited.known ?? 'read',
  });
}

function readGroup(
  reading: Reading,
  program: string,
  draft: NonNullable<Draft<StudyGroupFile>>,
  path: Path,
  around: Tested,
): StudyGroup {
  const observed = (draft.observed ?? []).flatMap((entry, index) => {
    const read = entry && readObserved(reading, entry, [...path, 'observed', index], around);
    return read ? [read] : [];
  });
  return {
    program,
    ...optional('people', draft.people),
    assumed: sentences(draft.assumed),
    leftOut: sentences(draft['left out']),
    observed,
    path,
  };
}

const sentences = (texts: readonly (string | undefined)[] | undefined): readonly string[] =>
  (texts ?? []).filter((text) => text !== undefined);

/** What a group gained says nothing about one athlete: the file must be of the mean person. */
function refuseOnePerson(reading: Reading, path: Path): void {
  if (!Object.hasOwn(Object(reading.source.value), 'athlete')) return;
  reading.refuse(path, {
    code: 'study-of-one',
    message: 'study stands beside athlete; a study tells what groups of people gained',
    hint: 'write group: with the mean person of the study instead of athlete:',
    key: true,
  });
}

/** Study groups and programs go by the same names, each once. */
function refuseStrangers(reading: Reading, path: Path): void {
  const names = (at: Path): readonly string[] =>
    Object.keys(Object(valueAt(reading.source.value, at)));
  const programs = names(['programs']);
  const groups = names([...path, 'groups']);
  for (const name of groups.filter((one) => !programs.includes(one))) {
    const meant = didYouMean(name, programs);
    reading.refuse([...path, 'groups', name], {
      code: 'unknown-program',
      message: `study.groups has "${name}", but there is no such program`,
      hint: meant ? `did you mean "${meant}"?` : `programs of this file: ${programs.join(', ')}`,
      key: true,
    });
  }
  for (const name of programs.filter((one) => !groups.includes(one)))
    reading.refuse(['programs', name], {
      code: 'no-group',
      message: `the study says nothing of "${name}"; its programs are what its groups did`,
      hint: `add "${name}" to study.groups, or take the program out`,
      key: true,
    });
}
