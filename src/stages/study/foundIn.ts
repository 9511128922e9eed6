import { measuredOf } from '../../notebook/readScenario.ts';
import type { Scenario } from '../../notebook/scenario.ts';
import type { Plan } from '../../physiology/planProgram.ts';
import type { KnownAthlete } from '../knowAthlete.ts';
import type { Memory } from '../memory.ts';
import { caseOf } from './caseOf.ts';
import { type StudyFound, studyFound } from './studyFound.ts';

/**
 * The study of a scenario beside its predictions.
 *
 * @param plans of the scenario's programs, in their order
 * @returns nothing for a scenario without a study
 */
export function foundIn(
  scenario: Scenario,
  known: KnownAthlete,
  plans: readonly Plan[],
  memory: Memory,
): { readonly study?: StudyFound } {
  const blocks = plans.map(({ block }) => block);
  const study = caseOf(scenario, known, blocks);
  if (!study) return {};
  const { machines, chains, bands, programs } = scenario;
  const given = [measuredOf(scenario), machines, chains, bands, programs, study.name, study.study];
  return { study: memory.studies.of(given, () => studyFound(study)) };
}
