import type { Results } from '../run.ts';
import type { FoundGroup, FoundOutcome, StudyFound } from '../stages/study/studyFound.ts';
import { evidence } from '../tables/evidence.ts';
import type { Block, Section } from './report.ts';
import { degrees, listInWords, plural, signedPercent } from './words.ts';

/** What the file's study found beside what the model says of it; nothing for a file without one. */
export function studySection({ study }: Results): Section[] {
  if (!study) return [];
  return [
    {
      heading: 'What the study found',
      blocks: [
        ...study.groups.flatMap(groupBlocks),
        { kind: 'text', text: `${howToRead} ${whatIsPredicted(study)}` },
        { kind: 'text', text: citation(study) },
        { kind: 'list', items: remarks(study.groups) },
      ],
    },
  ];
}

/** One table a group: its name in every row would leave narrow terminals no room. */
function groupBlocks({ group, outcomes }: FoundGroup): Block[] {
  const people =
    group.people === undefined
      ? 'number of people not given'
      : plural(group.people, 'person', 'people');
  const head = `"${group.program}" (${people})`;
  if (outcomes.length === 0)
    return [{ kind: 'text', text: `${head}: no finding that can be set beside a prediction.` }];
  return [
    { kind: 'text', text: `${head}:` },
    {
      kind: 'table',
      columns: [
        { head: 'what', align: 'left' },
        { head: 'predicted', align: 'right' },
        { head: 'observed', align: 'right' },
        { head: 'spread', align: 'left' },
      ],
      rows: outcomes.map((outcome) => [
        outcome.what,
        predictedWords(outcome),
        ...observedWords(outcome),
      ]),
    },
  ];
}

function predictedWords({ prediction, observed }: FoundOutcome): string {
  return prediction.change === undefined ? 'none' : changeWords(prediction.change, observed);
}

/** What was found and its spread as given; without a size only which way it went. */
function observedWords({ observed }: FoundOutcome): readonly [string, string] {
  const { found } = observed;
  if (found.kind === 'direction') return [found.direction, 'not given'];
  const { spread } = found;
  const size = changeWords(found.change, observed);
  if (spread.kind === 'unknown') return [size, 'unknown'];
  return [size, `${spread.kind} ${changeWords(spread.value, observed).replace('+', '')}`];
}

/** "+12.3 %", of a strongest angle "+4.1°"; what rounds to zero has no sign. */
function changeWords(change: number, { outcome }: FoundOutcome['observed']): string {
  if (outcome.kind !== 'optimum') return signedPercent(change, 1);
  const text = degrees(change, 1);
  return Number.parseFloat(text) > 0 ? `+${text}` : text;
}

const howToRead =
  'Changes are in per cent of the value before; of a strongest angle in degrees, positive toward longer muscle. Spread as the file gives it: sd between people, se of the mean change.';

/** By what the predictions are made, and whether these numbers had a part in it. */
function whatIsPredicted({ name, calibration }: StudyFound): string {
  const factor = Math.exp(evidence.amplitudeSpread).toFixed(1);
  const seen = {
    'predicted without it': `A study named ${name} is among them, so this is no test: \`torqueleaf evidence\` shows what was predicted without it. Changed numbers, like a new file, are`,
    'not predicted': `A study named ${name} is held too, but nothing of it could be predicted: \`torqueleaf evidence\` says why. Changed numbers, like a new file, are`,
    'not held': `No study named ${name} is among them. A new file is`,
  }[calibration];
  return `Predicted: what the model says of the file’s programs by its present coefficients, which are fitted to the studies that this project holds. ${seen} taken into the fit only by \`npm run calibrate\` in the source tree. All gains of a study may be larger or smaller than predicted by a factor of about ${factor} that no program explains: look first at which group and which angle gained more.`;
}

function citation({ cited, known, groups }: StudyFound): string {
  const { authors, year, journal, pages, doi } = cited;
  const where = [authors, year, journal, pages, doi && `doi ${doi}`].filter(Boolean).join(', ');
  const details = cited.known === 'recalled' ? ' These details are recalled, not looked up.' : '';
  const sources = new Set(
    groups.flatMap(({ outcomes }) => outcomes.map(({ observed }) => observed.source)),
  );
  const seen = sources.size === 0 ? '' : ` (${listInWords([...sources])})`;
  const findings = known === 'read' ? 'read' : 'recalled, not looked up';
  return `Study: ${where}${where.endsWith('.') ? '' : '.'}${details} The findings are ${findings}${seen}.`;
}

/** Why there is no prediction, then what the file itself says of its groups. */
function remarks(groups: readonly FoundGroup[]): string[] {
  const outcomesWith =
    (words: (outcome: FoundOutcome) => string | undefined) => (one: FoundGroup) =>
      one.outcomes.flatMap((outcome) => {
        const text = words(outcome);
        return text === undefined ? [] : [`${outcome.what}${text}`];
      });
  return [
    ...said(
      'No prediction',
      groups,
      outcomesWith(({ prediction: { because } }) => because && `: ${because}.`),
    ),
    ...said('Assumed', groups, ({ group }) => group.assumed),
    ...said('Found too', groups, ({ group }) => group.leftOut),
    ...said(
      'Doubt',
      groups,
      outcomesWith(({ observed: { doubt } }) => doubt && `: ${doubt}`),
    ),
    ...said(
      'Not for the fit',
      groups,
      outcomesWith(({ observed }) => (observed.isForFit ? undefined : '.')),
    ),
  ];
}

/** Each sentence once, with the groups it is said of unless it is said of all. */
function said(
  head: string,
  groups: readonly FoundGroup[],
  sentencesOf: (group: FoundGroup) => readonly string[],
): string[] {
  return [...new Set(groups.flatMap(sentencesOf))].map((sentence) => {
    const meant = groups.filter((one) => sentencesOf(one).includes(sentence));
    const names = meant.map(({ group }) => `"${group.program}"`);
    return `${head}${meant.length === groups.length ? '' : ` (${listInWords(names)})`}: ${sentence}`;
  });
}
