import type { Between } from '../inference/reliability/between.ts';
import type { RepeatedAction, RepeatedScore } from '../questions/retest/judgeRepeats.ts';
import type { Results } from '../run.ts';
import type { Block, Report, Section } from './report.ts';
import { capital, degrees, newtonMetres, percent, plural, signedPercent } from './words.ts';

/** How repeatable a scenario's tests are, from repeated days. */
export function repeatsPage({ scenario }: Results, judged: readonly RepeatedAction[]): Report {
  return {
    title: `${scenario.title}: repeatability`,
    sections: [...judged.map(actionSection), words],
  };
}

function actionSection({ action, of, people, days, scores }: RepeatedAction): Section {
  const [first] = scores;
  const who = people === 1 ? 'one person' : plural(people, 'person', 'people');
  return {
    heading: `${capital(action)}${ofWhat[of]}`,
    blocks: [
      {
        kind: 'text',
        text: `${capital(who)} on ${plural(days, 'day')} without training between. ${people === 1 ? 'Of one person a rise from day to day cannot be told from error.' : 'A shift of all people between days is told apart from error.'}`,
      },
      errorTable(scores),
      ...(first
        ? [{ kind: 'list', items: [...daysItems(first), ...peopleItems(first)] } as const]
        : []),
      ...(first?.people?.correlations ? [correlationTable(first)] : []),
    ],
  };
}

const ofWhat = { stated: '', tests: ', days of the tests', retest: ', days of a retest' } as const;

const nameOf = ({ angle }: RepeatedScore) =>
  angle === undefined ? 'mean of the angles' : degrees(angle);

const interval = ({ low, high }: Between, text: (x: number) => string) =>
  `${text(low)} to ${text(high)}`;

function errorTable(scores: readonly RepeatedScore[]): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'at', align: 'left' },
      { head: 'mean', align: 'right' },
      { head: 'typical error', align: 'right' },
      { head: 'between', align: 'right' },
      { head: 'CV', align: 'right' },
      { head: 'MDC', align: 'right' },
    ],
    rows: scores.map((score) => [
      nameOf(score),
      newtonMetres(score.mean),
      newtonMetres(score.error.amount.value),
      interval(score.error.amount, newtonMetres),
      score.error.shareByLogs ? percent(score.error.shareByLogs.value, 1) : '',
      newtonMetres(score.detectable),
    ]),
  };
}

/** Days needed on each side for the wanted gain. */
function daysItems({ wanted, mean, angle, daysNeeded }: RepeatedScore): string[] {
  return [
    `To see a gain of ${signedPercent(wanted)} (${newtonMetres(wanted * mean)}) in the ${angle === undefined ? 'mean of the angles' : `torque at ${degrees(angle)}`}: ${plural(daysNeeded, 'test day')} before and after.`,
  ];
}

function peopleItems({ people, limits, angle, ...score }: RepeatedScore): string[] {
  if (!people) return [];
  const where = angle === undefined ? 'Mean of the angles' : `At ${degrees(angle)}`;
  return [
    `${where}: standard error of measurement ${newtonMetres(people.consistency)} (consistency: √ of the rest, a shift between days is no error) or ${newtonMetres(people.agreement)} (agreement: such a shift counts).`,
    ...(people.worthwhile === undefined
      ? ['People differ no more than the tests do: no worthwhile change can be told.']
      : [
          `Smallest worthwhile change ${newtonMetres(people.worthwhile)} (a fifth of how far people differ, test noise taken out; a convention)${people.worthwhile < score.error.amount.value ? ': a single test cannot see it' : ''}.`,
        ]),
    ...(limits
      ? [
          `Second day less first: ${newtonMetres(limits.bias.value)} (${interval(limits.bias, newtonMetres)}), ${isShift(limits.chance) ? 'a shift beyond chance: learning or fatigue' : 'no shift beyond chance'}; limits of agreement ${newtonMetres(limits.lower.value)} to ${newtonMetres(limits.upper.value)}.`,
        ]
      : []),
  ];
}

const isShift = (chance: number) => chance < 0.05;

function correlationTable(score: RepeatedScore): Block {
  const { correlations } = score.people ?? {};
  const row = (name: string, of: Between) => [
    name,
    of.value.toFixed(2),
    interval(of, (x) => x.toFixed(2)),
  ];
  return {
    kind: 'table',
    columns: [
      { head: `ICC, ${nameOf(score)}`, align: 'left' },
      { head: 'value', align: 'right' },
      { head: 'between', align: 'right' },
    ],
    rows: correlations
      ? [
          row('ICC (1,1) one day, any days', correlations.oneWay.single),
          row('ICC (2,1) one day, agreement', correlations.agreement.single),
          row('ICC (3,1) one day, consistency', correlations.consistency.single),
          row('ICC (1,k) mean of the days, any days', correlations.oneWay.mean),
          row('ICC (2,k) mean, agreement', correlations.agreement.mean),
          row('ICC (3,k) mean, consistency', correlations.consistency.mean),
        ]
      : [],
  };
}

const words: Section = {
  heading: 'Words',
  blocks: [
    {
      kind: 'list',
      items: [
        'Typical error: how far one day’s score falls from a person’s mean by chance (one standard deviation); the range beside it holds the true one in 19 of 20 cases. CV: the same as a share.',
        'MDC: minimal detectable change of one person between one day before and one after: test noise passes it once in 20 cases. Few days make it larger.',
        'ICC: intraclass correlation, 1 where people keep their places exactly. It rises when people differ much, so a high one hides a large error; the six forms are those of Shrout and Fleiss 1979.',
      ],
    },
  ],
};
