import type { Scenario } from '../../notebook/scenario.ts';
import type { Block } from '../../physiology/training.ts';
import type { KnownAthlete } from '../knowAthlete.ts';
import type { CaseGroup, StudyCase } from './studyCase.ts';

/**
 * The study of a scenario made ready for the model.
 *
 * @param blocks what was planned of the scenario's programs, in their order
 * @returns undefined for a scenario without a study
 * @throws if a group has no program, which reading rules out
 */
export function caseOf(
  { file, title, study, programs }: Scenario,
  { athlete, catalogue }: Pick<KnownAthlete, 'athlete' | 'catalogue'>,
  blocks: readonly Block[],
): StudyCase | undefined {
  if (!study) return undefined;
  const groups = study.groups.map((group): CaseGroup => {
    const at = programs.findIndex(({ name }) => name === group.program);
    const [program, block] = [programs[at], blocks[at]];
    if (!program || !block) throw new Error(`${file}: no program ${group.program}`);
    return { group, program, block };
  });
  return { name: nameOf(file), title, study, athlete, catalogue, groups };
}

/** A file's name without its folders and its ending. */
const nameOf = (file: string) => file.replace(/^.*[\\/]/, '').replace(/\.ya?ml$/, '');
