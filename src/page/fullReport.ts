import type { Results } from '../run.ts';
import { athleteSection } from './athleteSection.ts';
import { calendarWherePhased } from './calendarSection.ts';
import { cautionSection, trippedCautions } from './cautions.ts';
import { cellsSection } from './cellsSection.ts';
import { conflictSection, sourceSection, wordSection } from './evidence.ts';
import { gainSections } from './gainSections.ts';
import { notebookSections } from './notebookSections.ts';
import { programSections } from './programSections.ts';
import type { Report, Section } from './report.ts';
import { singlesSection } from './singlesSection.ts';
import { studySection } from './studySection.ts';
import { verdictSection } from './verdict.ts';

/** The whole report of one scenario: the coach's notebook or the standard order, then the doubts. */
export function fullReport(results: Results): Report {
  const { title, notebook } = results.scenario;
  return {
    title,
    sections: [
      ...(notebook
        ? [...notebookSections(notebook, results), ...studySection(results)]
        : standardSections(results)),
      // No notebook can leave these out, nor a study.
      cautionSection(),
      wordSection(),
      sourceSection(results),
    ],
  };
}

/** The verdict, wherever it stands in the whole report, and the cautions its programs touch. */
export function shortReport(results: Results): Report {
  const sections = [verdictSection(results), ...studySection(results), ...trippedCautions(results)];
  return { title: results.scenario.title, sections };
}

/** Top down: verdict, ranking, reasons, the coach's cells, what was measured. */
function standardSections(results: Results): Section[] {
  return [
    verdictSection(results),
    ...studySection(results),
    ...gainSections(results),
    ...calendarWherePhased(results),
    ...programSections(results),
    ...singlesSection(results),
    ...cellsSection(results),
    athleteSection(results),
    conflictSection(results),
  ];
}
