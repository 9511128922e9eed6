import type { DirectionLine, EvidenceResults, ScoreLine } from '../tables/evidenceResults.ts';
import { familyWords } from './familyWords.ts';
import type { Block, Column } from './report.ts';
import { listInWords, percent } from './words.ts';

const left = (head: string): Column => ({ head, align: 'left' });
const right = (head: string): Column => ({ head, align: 'right' });

/** The model beside plain rules, by miss and by direction; then without each mechanism. */
export function scoreTables({ scores }: EvidenceResults): Block[] {
  const isShown = ({ kind }: ScoreLine) => kind !== 'without';
  return [
    missTable(scores.filter(isShown)),
    {
      kind: 'text',
      text: 'Misses are root mean squares: points, degrees for the strongest angle. "Of the gain" is the strength miss over the root mean square of the observed gains; "by group" counts a group’s angles as what they are together worth; "shape" is the miss when predictions and observations are each taken from their mean in the study, so that only differences between angles and groups remain.',
    },
    directionTable(scores.filter(isShown)),
    {
      kind: 'text',
      text: '"Weighed" gives each difference the weight 1/error²; "mean of studies" counts every study once. The interval takes all differences as independent, which angles of one study are not: it is too narrow. A rule without a row tells no groups apart.',
    },
    {
      kind: 'text',
      text: `Each mechanism taken away and the rest fitted again. Where a row misses less than the whole model, findings of that kind alone do not need the mechanism${needless(scores)}. Without regional growth, size still changes by what longer fibres add.`,
    },
    missTable(scores.filter((line) => line.kind === 'without' || line.kind === 'model')),
    directionTable(scores.filter((line) => line.kind === 'without' || line.kind === 'model')),
  ];
}

/** Which mechanisms the strength findings alone could do without. */
function needless(scores: readonly ScoreLine[]): string {
  const whole = scores.find(({ kind }) => kind === 'model')?.families.strength.miss ?? 0;
  const names = scores
    .filter(({ kind, families: { strength } }) => kind === 'without' && strength.miss < whole)
    .map(({ name }) => name.replace('without ', ''));
  return names.length > 0 ? ` (strength alone: ${listInWords(names)})` : '';
}

function missTable(lines: readonly ScoreLine[]): Block {
  return {
    kind: 'table',
    columns: [
      left('predicted by'),
      right('strength'),
      right('of the gain'),
      right('by group'),
      right('shape'),
      right('growth'),
      right('fibre length'),
      right('strongest angle'),
    ],
    rows: lines.map(({ name, families: { strength, growth, fibres, optimum } }) => [
      name,
      strength.miss.toFixed(1),
      strength.relative.toFixed(2),
      strength.weightedMiss.toFixed(1),
      strength.shapeMiss.toFixed(1),
      growth.miss.toFixed(1),
      fibres.miss.toFixed(1),
      `${optimum.miss.toFixed(1)}°`,
    ]),
  };
}

function directionTable(lines: readonly ScoreLine[]): Block {
  const share = (line: DirectionLine) =>
    `${line.right} of ${line.count} (${percent(line.right / line.count)})`;
  return {
    kind: 'table',
    columns: [
      left('predicted by'),
      right('direction right'),
      right('95 % interval'),
      right('weighed'),
      right('mean of studies'),
      right('strength alone'),
      right('weighed'),
    ],
    rows: lines.flatMap(({ name, directions, strengthDirections }) =>
      directions && strengthDirections
        ? [
            [
              name,
              share(directions),
              `${percent(directions.low)} to ${percent(directions.high)}`,
              percent(directions.weighted),
              `${percent(directions.meanOfStudies)} of ${directions.studies}`,
              share(strengthDirections),
              percent(strengthDirections.weighted),
            ],
          ]
        : [],
    ),
  };
}

/** Observations inside their intervals, by kind and together. */
export function coverageTable({ coverage }: EvidenceResults): Block {
  const sum = (key: 'inside' | 'count') => coverage.reduce((total, one) => total + one[key], 0);
  const all = { family: 'all' as const, inside: sum('inside'), count: sum('count') };
  return {
    kind: 'table',
    columns: [left('kind'), right('inside'), right('share')],
    rows: [...coverage, all].map(({ family, inside, count }) => [
      family === 'all' ? family : familyWords[family],
      `${inside} of ${count}`,
      percent(inside / count),
    ]),
  };
}

/** Right directions by study and kind. */
export function studyContrastTable({ contrasts }: EvidenceResults): Block {
  return {
    kind: 'table',
    columns: [left('study'), left('kind'), right('direction right'), right('weighed')],
    rows: contrasts.map(({ study, family, right: correct, count, weighted }) => [
      study,
      familyWords[family],
      `${correct} of ${count}`,
      percent(weighted),
    ]),
  };
}
