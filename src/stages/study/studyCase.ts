import type { Lift } from '../../mechanics/lift.ts';
import { measuredOf, readScenario } from '../../notebook/readScenario.ts';
import type { Program } from '../../notebook/scenario.ts';
import type { Study, StudyGroup } from '../../notebook/study/study.ts';
import { formatProblems } from '../../notebook/text/problem.ts';
import type { Athlete } from '../../physiology/athlete.ts';
import { planProgram } from '../../physiology/planProgram.ts';
import type { Block } from '../../physiology/training.ts';
import { coefficients } from '../../tables/adaptation.ts';
import { angleAt } from '../angleAt.ts';
import { knowAthlete } from '../knowAthlete.ts';
import { caseOf } from './caseOf.ts';

/** A published study made ready for the model: its mean person and what each group did. */
export interface StudyCase {
  /** The file's name without its ending. */
  readonly name: string;
  readonly title: string;
  readonly study: Study;
  readonly athlete: Athlete;
  readonly catalogue: readonly Lift[];
  readonly groups: readonly CaseGroup[];
}

export interface CaseGroup {
  readonly group: StudyGroup;
  readonly program: Program;
  readonly block: Block;
}

/**
 * Reads a study file and plans its programs; loads are shares of what the model lets the mean person
 * lift before training, so no coefficient of adaptation enters.
 *
 * @throws if the file has problems or holds no study
 */
export async function studyCase(name: string, text: string): Promise<StudyCase> {
  const { scenario, problems } = await readScenario(name, text, angleAt);
  if (!scenario) throw new Error(`${name}\n${formatProblems(problems ?? [], () => text)}`);
  const known = knowAthlete(measuredOf(scenario));
  const { athlete, singles, catalogue } = known;
  const blocks = scenario.programs.map(
    (program) => planProgram(program, athlete, scenario, singles, coefficients, catalogue).block,
  );
  const made = caseOf(scenario, known, blocks);
  if (!made) throw new Error(`${name} holds no study`);
  return made;
}
