import type { vocabulary } from '../questions/ask.ts';
import type { Report } from './report.ts';

/** What formulas may name and call, as one table a kind, made from the functions themselves. */
export function vocabularyPage({
  names,
  functions,
}: Awaited<ReturnType<typeof vocabulary>>): Report {
  return {
    title: 'What formulas may use',
    sections: [
      {
        heading: 'Names',
        blocks: [
          {
            kind: 'list',
            items: names.map(({ name, gives, type }) => `${name}: ${gives}, ${type}`),
          },
        ],
      },
      {
        heading: 'Functions',
        blocks: [
          {
            kind: 'list',
            items: functions.map(
              ({ name, takes, gives, example: { formula, gives: value }, type }) =>
                `${name}(${takes}): ${gives}. ${formula} = ${value ?? type}`,
            ),
          },
          {
            kind: 'text',
            text: 'Values in [ ] may be left out; if(comparison, one, other) chooses. Operators: + - * / ^, comparisons, and, or, not. Units follow numbers: 60 deg, 80 kg, 120 N m. A list: [1, 2, 3]; a range: 40 deg : 80 deg, or with a step 40 deg : 5 deg : 80 deg.',
          },
        ],
      },
    ],
  };
}
