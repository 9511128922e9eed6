import type { Results } from '../run.ts';
import { adaptation, contrastMiss, gainMiss } from '../tables/adaptation.ts';
import type { Block, Section } from './report.ts';
import { degrees, kilograms, listInWords, newtonMetres, percent, signedPercent } from './words.ts';

/** What was measured, how the model met it, and everything assumed or borrowed. */
export function athleteSection(results: Results): Section {
  return {
    heading: 'What was measured, assumed and borrowed',
    blocks: [...testBlocks(results), { kind: 'list', items: assumptions(results) }],
  };
}

function testBlocks({ kneeFit, calibrations, ranking }: Results): Block[] {
  const blocks: Block[] = [];
  if (kneeFit.measured.length > 0)
    blocks.push(
      {
        kind: 'text',
        text: fitSentence(kneeFit, ranking[0]?.program.landing.peakBefore ?? Number.NaN),
      },
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
          `Tested ${single.lift} single ${kilograms(single.best)}; the torque curves alone give ${kilograms(predicted)}. The knees and hips then give ${percent(factor)} of the torque of the curves (body weight counts too), and that share is used for this lift.`,
      ),
    });
  return blocks;
}

/** The residual of the muscle tables at two angles. */
function unexplained({ athlete, tablesAlone, anglesDeg }: Results): string {
  const at = (deg: number) => {
    const i = anglesDeg.indexOf(deg);
    return `${newtonMetres(tablesAlone[i] ?? 0)} at ${deg}° (this athlete ${newtonMetres(athlete.groups.knee.torque[i] ?? 0)})`;
  };
  return `Muscle tables alone (areas, lengths, levers, drive) would give ${at(20)} and ${at(80)}. What they do not explain is carried unchanged through training.`;
}

function assumedLimits({ scenario, athlete }: Results): string[] {
  const { limits } = scenario.subject;
  const assumed = [
    ...(limits['ankle dorsiflexion'] === undefined
      ? [`ankle ${degrees(athlete.body.limits.ankle)}`]
      : []),
    ...(limits['knee flexion'] === undefined ? [`knee ${degrees(athlete.body.limits.knee)}`] : []),
  ];
  return assumed.length > 0
    ? [`Joint limits not given, usual ones taken: ${listInWords(assumed)}.`]
    : [];
}

const ownTable = 'The machine resists as in the coach’s own table, in proportion to the weight.';

function fitSentence({ strength, isShaped }: Results['kneeFit'], peak: number): string {
  const size = `${percent(strength.scale)} of the mean person of this size`;
  const shape = isShaped
    ? `strongest at ${degrees(peak)}`
    : 'its shape not determined (fewer than three angles): that of the mean person';
  return `The curve of knee extension torque was fitted to the tests: ${size}, ${shape}. All tests count as one occasion.`;
}

function assumptions(results: Results): string[] {
  const { scenario, athlete, estimatedLengths, kneeFit, ranking } = results;
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
    unexplained(results),
    `The "give or take" is the model’s typical miss on the groups it was fitted to (${percent(gainMiss.value)} of the gain), not an interval for this athlete; differences under ${percent(contrastMiss.value)} of the better gain count as ties.`,
    ...assumedLimits(results),
    'Everything is held still for the sum: no bounce, no momentum, seen from the side.',
    'A jump or a sprint is not forecast.',
  ];
  if (kneeFit.measured.length === 0)
    items.unshift('No torque test: the strength curve is that of the mean person of this kind.');
  for (const { lift, machine } of used)
    for (const text of machine ? [ownTable] : lift.assumed) items.push(`${lift.name}: ${text}`);
  return items.filter((text, i) => items.indexOf(text) === i);
}
