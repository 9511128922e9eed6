import type { JudgedLift } from '../questions/retest/judgeLift.ts';
import type { Block, Section } from './report.ts';
import { capital, degrees, kilograms, percent, signedPercent } from './words.ts';

/** Heaviest singles before and after; nothing where no single was tested twice. */
export function liftSection(lifts: readonly JudgedLift[], which: string): Section[] {
  if (lifts.length === 0) return [];
  const hasForecast = lifts.some(({ predicted }) => predicted !== undefined);
  return [
    {
      heading: `Heaviest singles${which}`,
      blocks: [
        {
          kind: 'table',
          columns: [
            { head: 'lift', align: 'left' },
            { head: 'before', align: 'right' },
            { head: 'after', align: 'right' },
            { head: 'change', align: 'right' },
            { head: 'MDC', align: 'right' },
            { head: 'says', align: 'left' },
            ...(hasForecast ? [{ head: 'forecast', align: 'right' } as const] : []),
          ],
          rows: lifts.map((one) => [
            liftName(one),
            kilograms(one.before),
            kilograms(one.after),
            signedPercent(one.gain),
            percent(one.detectable),
            one.says,
            ...(hasForecast
              ? [one.predicted === undefined ? '' : signedPercent(one.predicted)]
              : []),
          ]),
        },
        { kind: 'text', text: errorText(lifts) },
        ...lifts.flatMap(skippedText),
      ],
    },
  ];
}

const liftName = ({ lift, from, to }: JudgedLift) =>
  `${lift}${from === undefined ? '' : ` from ${degrees(from)}`} to ${degrees(to)}`;

function errorText(lifts: readonly JudgedLift[]): string {
  const errors = lifts.map(({ error: { share, known, formulas } }) => {
    const own = `${percent(share)} (${known})`;
    return formulas > 0
      ? `${own}, and ${percent(formulas)} by which the formulas for estimated singles differ`
      : own;
  });
  return `Test error of a single: ${[...new Set(errors)].join(', ')}.`;
}

function skippedText(one: JudgedLift): Block[] {
  if (one.skippedFrom === undefined) return [];
  const day = one.skippedFrom === 'undated' ? 'an earlier test' : one.skippedFrom.first;
  const text = `${capital(liftName(one))} is held against ${day}, for the tests in between lack it; the forecast of the last program alone does not stand beside it.`;
  return [{ kind: 'text', text }];
}
