import type { Results } from '../run.ts';
import { actions } from '../tables/actions.ts';
import type { Section } from './report.ts';
import { degrees, kilograms, signedPercent } from './words.ts';

/** Heaviest single of each standing lift's range, before and after each program. */
export function singlesSection({ singlesBefore, ranking, scenario }: Results): Section[] {
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
          text: 'Heaviest single repetition from straight down to the angle named and up again, by the model; change after each program. A lift that is practised gains more in its own range than the torque alone explains. Work that strengthens only the knee moves a single only where the knee is what gives way first.',
        },
        {
          kind: 'table',
          columns: [
            { head: 'lift, to', align: 'left' },
            { head: 'before', align: 'right' },
            { head: 'lost at, by', align: 'left' },
            ...ranking.map(({ program }) => ({ head: program.name, align: 'right' as const })),
          ],
          rows: singlesBefore.map(({ range, load, at }, i) => [
            `${range.lift.name} ${degrees(range.to)}${tested(range.lift.name, range.to) ? ' (tested)' : ''}`,
            kilograms(load),
            `${degrees(at.angle)}, ${actions[at.action].muscles}`,
            ...ranking.map(({ program }) => changeOf(load, program.singlesAfter[i]?.load ?? load)),
          ]),
        },
      ],
    },
  ];
}

/** In per cent; from next to nothing added to the body, in kilograms. */
function changeOf(before: number, after: number): string {
  return before < 1 ? `+${kilograms(after - before)}` : signedPercent(after / before - 1);
}
