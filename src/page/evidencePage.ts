import { evidence } from '../tables/evidence.ts';
import type { EvidenceOutcome, EvidenceResults } from '../tables/evidenceResults.ts';
import { conflictsOfEvidence } from './evidenceConflicts.ts';
import { kindSection } from './evidenceKinds.ts';
import { coverageTable, scoreTables, studyContrastTable } from './evidenceScores.ts';
import {
  directionSection,
  recordSection,
  studySections,
  unpredictedSection,
} from './evidenceStudies.ts';
import { familyWords } from './familyWords.ts';
import type { Block, Report, Section } from './report.ts';
import { scatterText } from './scatter.ts';
import { listInWords, percent } from './words.ts';

/** How far the model can be trusted: every published outcome beside what the model says of it. */
export function evidencePage(results: EvidenceResults = evidence): Report {
  return {
    title: 'The model held against published studies',
    sections: [
      methodSection(results),
      scoreSection(results),
      kindSection(results),
      chartSection(results),
      conflictsOfEvidence(results),
      ...studySections(results),
      directionSection(results),
      unpredictedSection(results),
      recordSection(results),
    ],
  };
}

const text = (words: string): Block => ({ kind: 'text', text: words });

function methodSection(results: EvidenceResults): Section {
  const { studies, amplitudeSpread, discrepancy, gainMiss, contrastMiss } = results;
  const groups = studies.flatMap((study) => study.groups);
  const outcomes = groups.flatMap((group) => group.outcomes);
  const scored = outcomes.filter(isScored);
  const directions = outcomes.filter(({ found, predicted }) => found && predicted !== undefined);
  const held = studies.filter(({ groups: own }) =>
    own.some((group) => group.outcomes.some(isScored)),
  );
  return {
    heading: 'What was done',
    blocks: [
      text(
        `${studies.length} published studies with ${groups.length} training programs and ${outcomes.length} findings were written as scenarios (scenarios/studies/). ${scored.length} findings of ${held.length} studies have a size that the model can predict. ${directions.length} more are told only by their direction; they were fitted with a working value and are not scored. ${outcomes.length - scored.length - directions.length} are for the record only. Each study was predicted from the others: the coefficients were fitted again without it (two steps from the fit to all; \`npm run calibrate\` prints how near a full refit they end), and no factor of its own was allowed. What the model is made of, its priors and its working values were chosen with all studies in view, so the figures flatter it a little.`,
      ),
      {
        kind: 'list',
        items: [
          'Predicted: change in per cent of the value before (points), for the strongest angle in degrees toward longer muscle; the study itself not seen.',
          'Interval: 80 % of observed means should lie in it. It adds up the error of the coefficients, what studies differ in, what the model leaves out and the error of the observed mean.',
          `Between studies gains differ by a factor that no program explains: its spread is ${amplitudeSpread} of the natural logarithm, so that two of three studies lie between ${Math.exp(-amplitudeSpread).toFixed(1)} and ${Math.exp(amplitudeSpread).toFixed(1)} times the middle one. Only the left-out prediction has to do without that factor; the column "fitted" has it.`,
          `Beside that the model misses strength by ${discrepancy.strength} points, growth by ${discrepancy.growth}, fibre length by ${discrepancy.fibres} and the strongest angle by ${discrepancy.optimum}° (one standard deviation, the error of the observed means taken out).`,
          `What reports call "give or take": the strength miss below over the root mean square of the predicted gains, ${percent(gainMiss)}. What they call a tie: differences between groups missed, over the larger predicted gain of each pair, ${percent(contrastMiss)}.`,
          'Findings of one kind in one group share their people: together they count like at most two (a correlation of 0.5 between their errors is taken).',
          'A star at an observed value: the source gives no error and a working value stands in.',
        ],
      },
    ],
  };
}

const isScored = ({ predicted, observed }: EvidenceOutcome) =>
  predicted !== undefined && observed !== undefined;

function scoreSection(results: EvidenceResults): Section {
  return {
    heading: 'How well it does',
    blocks: [
      ...scoreTables(results),
      text('How many observed means lie inside their 80 % intervals:'),
      coverageTable(results),
      text(coverageWords(results)),
      text('Direction of differences of 4 points or more between groups, study by study:'),
      studyContrastTable(results),
    ],
  };
}

/** Which intervals are wider or narrower than they say. */
function coverageWords({ coverage }: EvidenceResults): string {
  const of = (isOff: (share: number) => boolean) =>
    coverage
      .filter(({ inside, count }) => count >= 20 && isOff(inside / count))
      .map(({ family }) => familyWords[family]);
  const [wide, narrow] = [of((share) => share > 0.85), of((share) => share < 0.75)];
  const said = [
    ...(wide.length > 0 ? [`those of ${listInWords(wide)} are wider than they need be`] : []),
    ...(narrow.length > 0 ? [`those of ${listInWords(narrow)} too narrow`] : []),
  ];
  return said.length > 0 ? `So ${listInWords(said)}.` : 'So they are about as wide as they say.';
}

function chartSection({ studies }: EvidenceResults): Section {
  const points = studies.flatMap(({ groups }) =>
    groups.flatMap(({ outcomes }) =>
      outcomes.flatMap(({ family, predicted, observed }) =>
        family === 'strength' && predicted !== undefined && observed !== undefined
          ? [{ x: predicted, y: observed }]
          : [],
      ),
    ),
  );
  const chart = scatterText(points, { least: -15, most: 45 });
  return {
    heading: 'Strength: predicted against observed',
    blocks: [
      text(
        'Observed gain up, left-out prediction across, in per cent; values beyond the frame lie on its edge.',
      ),
      { kind: 'markdown', text: `\`\`\`text\n${chart}\n\`\`\`` },
    ],
  };
}
