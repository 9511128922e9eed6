import type { Results } from '../run.ts';
import { athleteSection } from './athleteSection.ts';
import { cautionSection } from './cautions.ts';
import { cellsSection } from './cellsSection.ts';
import { conflictSection, sourceSection, wordSection } from './evidence.ts';
import { gainSections } from './gainSections.ts';
import { programSections } from './programSections.ts';
import type { Report } from './report.ts';
import { singlesSection } from './singlesSection.ts';
import { verdictSection } from './verdict.ts';

/** The standard report of one scenario, top down: who and what, verdict, ranking, reasons, doubts. */
export function fullReport(results: Results): Report {
  return {
    title: results.scenario.title,
    sections: [
      verdictSection(results),
      ...gainSections(results),
      ...programSections(results),
      ...singlesSection(results),
      ...cellsSection(results),
      athleteSection(results),
      conflictSection(results),
      cautionSection(),
      wordSection(),
      sourceSection(results),
    ],
  };
}
