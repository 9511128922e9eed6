import type { Results } from '../run.ts';
import { adaptation } from '../tables/adaptation.ts';
import type { Block, Section } from './report.ts';
import { kilograms, listInWords, newtonMetres, percent, signedPercent } from './words.ts';

/** What was measured, how the model met it, and everything assumed or borrowed. */
export function athleteSection(results: Results): Section {
  return {
    heading: 'What was measured, assumed and borrowed',
    blocks: [...testBlocks(results), { kind: 'list', items: assumptions(results) }],
  };
}

function testBlocks({ kneeFit, calibrations }: Results): Block[] {
  const blocks: Block[] = [];
  if (kneeFit.measured.length > 0)
    blocks.push(
      { kind: 'text', text: fitSentence(kneeFit) },
      {
        kind: 'table',
        columns: [
          { head: 'knee angle', align: 'left' },
          { head: 'measured', align: 'right' },
          { head: 'fitted curve', align: 'right' },
          { head: 'difference', align: 'right' },
        ],
        rows: kneeFit.measured.map(({ kneeDeg, torque }, i) => {
          const fitted = kneeFit.fitted[i] ?? torque;
          return [
            `${kneeDeg.toFixed(0)}°`,
            newtonMetres(torque),
            newtonMetres(fitted),
            signedPercent(torque / fitted - 1),
          ];
        }),
      },
    );
  if (calibrations.length > 0)
    blocks.push({
      kind: 'list',
      items: calibrations.map(
        ({ single, predicted, factor }) =>
          `Tested ${single.lift} single ${kilograms(single.best)}; the torque curves alone give ${kilograms(predicted)}. Strength in this lift is taken as ${percent(factor)} of the curves.`,
      ),
    });
  return blocks;
}

const ownTable = 'The machine resists as in the coach’s own table, in proportion to the weight.';

function fitSentence({ strength }: Results['kneeFit']): string {
  const shift =
    Math.abs(strength.shiftDeg) < 0.5
      ? 'in the usual place'
      : `${Math.abs(strength.shiftDeg).toFixed(0)}° further ${strength.shiftDeg > 0 ? 'into flexion' : 'toward straight'}`;
  return `The curve of knee extension torque was fitted to the tests: ${percent(strength.scale)} of the mean person of this size, its peak ${shift}. All tests count as one occasion.`;
}

function assumptions({ scenario, athlete, estimatedLengths, kneeFit, ranking }: Results): string[] {
  const { subject } = scenario;
  const used = new Set(
    ranking.flatMap(({ program }) =>
      program.plan.exercises.flatMap(({ exercise }) => {
        if (exercise.kind === 'lift') return [exercise.range];
        return 'range' in exercise.of ? [exercise.of.range] : [];
      }),
    ),
  );
  const items = [
    estimatedLengths.length > 0
      ? `Lengths of ${listInWords(estimatedLengths)} are estimated from stature; segment masses are ${subject.reference === 'pooled' ? 'a table for both sexes together' : `the ${subject.reference} table's`}.`
      : 'All segment lengths are measured; segment masses are from a table.',
    `${athlete.trained ? 'Trained' : 'Untrained'} (${subject.trainingYears} years): trained people are given ${percent(adaptation.trainedShare.value)} of the gains of untrained ones (fitted to studies of both).`,
    'Hip and calf strength are not tested here: they come from tables by body mass, corrected together with the tested lifts. The tables for the hip differ twofold.',
    'Muscle tables alone would make the knee strongest near straight. Tests show the opposite; the difference ("not explained by the muscle tables") is carried unchanged through training.',
    'Everything is held still for the sum: no bounce, no momentum, seen from the side.',
    'A jump or a sprint is not forecast.',
  ];
  if (kneeFit.measured.length === 0)
    items.unshift('No torque test: the strength curve is that of the mean person of this kind.');
  for (const { lift, machine } of used)
    for (const text of machine ? [ownTable] : lift.assumed) items.push(`${lift.name}: ${text}`);
  return items.filter((text, i) => items.indexOf(text) === i);
}
