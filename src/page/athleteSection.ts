import type { Lift } from '../mechanics/lift.ts';
import type { Range } from '../physiology/heaviestLoad.ts';
import type { Results } from '../run.ts';
import { type Action, actions } from '../tables/actions.ts';
import { adaptation, contrastMiss, gainMiss } from '../tables/adaptation.ts';
import { notModelled } from '../tables/partlyModelled.ts';
import { heightAssumptions } from './heightWords.ts';
import type { Block, Section } from './report.ts';
import { rigAssumptions } from './rigWords.ts';
import { singleWords, testAssumptions } from './testAssumptions.ts';
import { testedStrength } from './testedStrength.ts';
import { degrees, kilograms, listInWords, newtonMetres, percent, plural } from './words.ts';
import { workAssumptions } from './workAssumptions.ts';

/** What was measured, how the model met it, and everything assumed or borrowed. */
export function athleteSection(results: Results): Section {
  return {
    heading: 'What was measured, assumed and borrowed',
    blocks: [...testBlocks(results), { kind: 'list', items: assumptions(results) }],
  };
}

function testBlocks(results: Results): Block[] {
  const { calibrations } = results;
  const singles: Block = {
    kind: 'list',
    items: calibrations.map((calibration, i) =>
      calibrationSentence(calibration, results.singles[i]),
    ),
  };
  return [...testedStrength(results), ...(calibrations.length > 0 ? [singles] : [])];
}

function calibrationSentence(
  { single, predicted, factor }: Results['calibrations'][number],
  test: Results['singles'][number] | undefined,
) {
  const tested = test ? singleWords(test) : `Tested ${single.lift} single`;
  const missing = notModelled(single.lift);
  return missing === undefined
    ? `${tested}; the torque curves alone give ${kilograms(predicted)}. The muscles then give ${percent(factor)} of the torque of the curves (body weight counts too), and that share is used for this lift and others of its kind.`
    : `${tested}: the model cannot judge it, because ${missing} are not in the tables. The muscles that are would have to give ${percent(factor)} of their curves, and the lift is scaled so.`;
}

/** The residual of the muscle tables at two angles. */
function unexplained({ athlete, tablesAlone, anglesDeg }: Results): string {
  const at = (deg: number) => {
    const i = anglesDeg.indexOf(deg);
    return `${newtonMetres(tablesAlone[i] ?? 0)} at ${deg}° (this athlete ${newtonMetres(athlete.groups['knee extension'].torque[i] ?? 0)})`;
  };
  return `Muscle tables alone (areas, lengths, levers, drive of the men they were measured on, not of this athlete) would give ${at(20)} and ${at(80)}. What they do not explain is carried unchanged through training.`;
}

/** What stands on weak ground when the target is not the knee extensors. */
function borrowed({ question }: Results): string[] {
  const { weak }: Action = actions[question.action];
  const fitted = `Most studies behind the coefficients trained the knee extensors: ${question.action} is taken to gain by the same ones, on a scale from short to long muscle.`;
  return weak === undefined ? [fitted] : [fitted, `Weak ground: ${weak}.`];
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

function assumptions(results: Results): string[] {
  const { scenario, athlete, estimatedLengths, ranking } = results;
  const { subject } = scenario;
  const used = new Set(
    ranking.flatMap(({ program }) =>
      program.plan.exercises.flatMap(({ exercise }) => {
        if (exercise.kind === 'lift') return [exercise.range];
        if (exercise.kind === 'isokinetic') return [];
        return 'range' in exercise.of ? [exercise.of.range] : [];
      }),
    ),
  );
  const items = [
    estimatedLengths.length > 0
      ? `Lengths of ${listInWords(estimatedLengths)} are estimated from stature; segment masses are ${subject.reference === 'pooled' ? 'a table for both sexes together' : `the ${subject.reference} table's`}.`
      : 'All segment lengths are measured; segment masses are from a table.',
    ...(scenario.retests.length > 0
      ? [
          'The forecast starts from the tests before training; what the retests of the file show stands in the report of the retest.',
        ]
      : []),
    trainingSentence(athlete.trained, subject.trainingYears),
    ...(subject.response === undefined
      ? []
      : [
          `This athlete is given ${percent(subject.response)} of those gains, as earlier retests showed (weak evidence: the same person may respond otherwise next time).`,
        ]),
    'Strength of muscles that were not tested comes from tables by body mass, corrected together with the tested lifts; for the hip extensors the tables differ twofold.',
    ...(results.question.action === 'knee extension' ? [unexplained(results)] : borrowed(results)),
    `The "give or take" is the model’s typical miss on groups of studies it had not seen (${percent(gainMiss.value)} of the predicted gain), not an interval for this athlete; differences under ${percent(contrastMiss.value)} of the better gain count as ties.`,
    ...testAssumptions(results),
    ...assumedLimits(results),
    ...workAssumptions(results),
    ...heightAssumptions(results),
    'Everything is held still for the sum: no bounce, no momentum, seen from the side.',
    'A jump or a sprint is not forecast.',
  ];
  if (results.fits.length === 0)
    items.unshift('No torque test: the strength curve is that of the mean person of this kind.');
  return [...items, ...rigAssumptions(results), ...liftAssumptions([...used], scenario.lifts)];
}

/** What share of the gains is given for the years of training, and from where that share comes. */
function trainingSentence(trained: boolean, years: number): string {
  const share = percent(adaptation.trainedShare.value);
  const time = years === 0 ? 'no training yet' : `${plural(years, 'year')} of training`;
  return trained
    ? `Trained (${time}): given ${share} of the gains of untrained people (fitted to studies of both).`
    : `Untrained (${time}): given the whole gains of untrained people; trained ones get ${share} of them (fitted to studies of both).`;
}

/** Assumptions of the lifts used, each once, with the lifts it holds for, and sources of the coach's own. */
function liftAssumptions(ranges: readonly Range[], declared: readonly Lift[]): string[] {
  const lifts = new Map<string, Set<string>>();
  for (const { lift, rig = [] } of ranges) {
    const own = rig.some(({ kind }) => kind === 'machine') ? [ownTable] : lift.assumed;
    for (const text of [...own, ...sourceOf(lift, declared)])
      lifts.set(text, (lifts.get(text) ?? new Set()).add(lift.name));
  }
  return [...lifts].map(([text, names]) => `${listInWords([...names])}: ${text}`);
}

/** The catalogue's sources stand on the page of each lift; a declared lift has its page here. */
function sourceOf(lift: Lift, declared: readonly Lift[]): string[] {
  return declared.includes(lift) ? [`Source: ${lift.source.replace(/\.$/, '')}.`] : [];
}
