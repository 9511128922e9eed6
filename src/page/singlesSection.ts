import type { Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import { angleOf } from './jointAngles.ts';
import type { Section } from './report.ts';
import { kilograms, listInWords, rangeDegrees, signedPercent } from './words.ts';

const kneeOnly =
  ' Work that strengthens only the knee moves a single only where the knee is what gives way first.';

/** Lifts of the file without a row here, and why. */
function leftOut({ singlesBefore, ranking, scenario }: Results): string {
  const worked = ranking.flatMap(({ program }) => program.program.work);
  const shown = new Set(singlesBefore.map(({ range }) => range.lift.name));
  const named = [...scenario.tests, ...worked].flatMap((entry) =>
    entry.kind === 'lift' && !shown.has(entry.lift) ? [entry.lift] : [],
  );
  const missing = [...new Set(named)];
  return missing.length === 0
    ? ''
    : ` Not listed, because they are lowered only or not done on flat feet: ${listInWords(missing)}.`;
}

/** Heaviest single of each range of a lift on flat feet, before and after each program. */
export function singlesSection(results: Results): Section[] {
  const { singlesBefore, ranking, scenario, question } = results;
  if (singlesBefore.length === 0) return [];
  const tested = (lift: string, to: number) =>
    scenario.tests.find(
      (test) => test.kind === 'lift' && test.lift === lift && Math.abs(test.to - to) < 0.02,
    );
  return [
    {
      heading: 'Heaviest singles before and after',
      blocks: [
        {
          kind: 'text',
          text: `Heaviest single repetition over the range named, down and up again, by the model; change after each program. A lift that is practised gains more in its own range than the torque alone explains.${actions[question.action].joint === 'knee' ? kneeOnly : ''}${leftOut(results)}`,
        },
        {
          kind: 'table',
          columns: [
            { head: 'lift', align: 'left' },
            { head: 'before', align: 'right' },
            { head: 'lost at', align: 'left' },
            ...ranking.map(({ program }) => ({ head: program.name, align: 'right' as const })),
          ],
          rows: singlesBefore.map(({ range, load, at }, i) => [
            `${range.lift.name} ${rangeDegrees(range.from, range.to)}${tested(range.lift.name, range.to) ? ' (tested)' : ''}`,
            kilograms(load),
            `${angleOf(range.lift, at.angle)} by the ${actions[at.action].muscles}`,
            ...ranking.map(({ program }) => changeOf(load, program.singlesAfter[i]?.load ?? load)),
          ]),
        },
      ],
    },
  ];
}

/** Change of a single in per cent; from next to nothing added to the body, in kilograms. */
export function changeOf(before: number, after: number): string {
  return before < 1 ? `+${kilograms(after - before)}` : signedPercent(after / before - 1);
}
