import type { Family } from '../tables/calibrationValues.ts';
import { type ErrorOfKind, errorsByKind, errsOneWay } from '../tables/errorsByKind.ts';
import type { EvidenceResults } from '../tables/evidenceResults.ts';
import { familyWords } from './familyWords.ts';
import type { Section } from './report.ts';
import { plural } from './words.ts';

/** Means of left-out predictions and findings by kind of work: the error that averages hide. */
export function kindSection(results: EvidenceResults): Section {
  const rows = errorsByKind(results);
  return {
    heading: 'Where it errs one way',
    blocks: [
      {
        kind: 'text',
        text: 'The misses above are not chance alone: they follow the kind of work. Means over all findings of a kind, each predicted without its study; a star where at least nine in ten of three or more findings, of two or more studies, lie on one side and the means are a factor of 1.4 apart. Reports of programs with such work say so.',
      },
      {
        kind: 'table',
        columns: [
          { head: 'work', align: 'left' },
          { head: 'what', align: 'left' },
          { head: 'studies', align: 'right' },
          { head: 'predicted', align: 'right' },
          { head: 'observed', align: 'right' },
          { head: 'too high', align: 'right' },
        ],
        rows: rows.map((row) => [
          row.kind.name,
          familyWords[row.family],
          String(row.studies),
          row.predicted.toFixed(1),
          `${row.observed.toFixed(1)}${errsOneWay(row) ? '*' : ''}`,
          `${row.tooHigh} of ${row.count}`,
        ]),
      },
    ],
  };
}

const rose: Readonly<Record<Family, string>> = {
  strength: 'strength rose',
  growth: 'muscles grew',
  fibres: 'fibres grew longer',
  optimum: 'the strongest angle moved',
  arm: 'tendon arms grew',
};

/** "Studies of squats: strength rose by 12 % on average where the model, not having seen them, …" */
export function errorSentence(errors: readonly ErrorOfKind[]): string {
  const said = errors.map(({ family, studies, predicted, observed }) => {
    const [found, given] = [observed, predicted].map((points) => `${points.toFixed(0)} %`);
    return `${rose[family]} by ${found} on average where the model, not having seen them, gave ${given} (${plural(studies, 'study', 'studies')})`;
  });
  return `Studies of ${errors[0]?.kind.name ?? ''}: ${said.join('; ')}.`;
}
