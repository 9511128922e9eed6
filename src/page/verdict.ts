import type { Placed } from '../inference/ranking.ts';
import { toDegrees } from '../numeric/degrees.ts';
import { fallsShort } from '../physiology/shortfall.ts';
import type { ProgramResult, Results } from '../run.ts';
import { actions, jointWords } from '../tables/actions.ts';
import { contrastMiss, gainMiss } from '../tables/adaptation.ts';
import { evidence } from '../tables/evidence.ts';
import { cautionMarks } from './cautions.ts';
import type { Block, Section } from './report.ts';
import { shortfallList } from './shortfallWords.ts';
import { listInWords, percent, plural, rangeDegrees, signedPercent } from './words.ts';

/** Who, joint, target and convention; the verdict in a few sentences; the ranking. */
export function verdictSection(results: Results): Section {
  return {
    heading: 'Which program',
    blocks: [
      { kind: 'text', text: introduction(results) },
      { kind: 'text', text: verdict(results) },
      rankingTable(results),
      { kind: 'text', text: ofWhatKind },
      { kind: 'text', text: howToRead(results) },
    ],
  };
}

function introduction({ scenario, question }: Results): string {
  const { motion, zero } = jointWords[actions[question.action].joint];
  const { subject, target, convention, note } = scenario;
  const who = subject.isGroup ? `the mean person of "${subject.code}"` : subject.code;
  const written =
    convention === 'included'
      ? ' The file writes included angles (180° = straight); this report writes flexion.'
      : '';
  const wish = target.gain === undefined ? '' : `, wanted ${signedPercent(target.gain)}`;
  const within = target.weeks === undefined ? '' : ` within ${plural(target.weeks, 'week')}`;
  const noted = note === undefined ? '' : `${note} `;
  return `${noted}For ${who}: ${target.action}, ${rangeDegrees(target.from, target.to)} of ${motion}${wish}${within}. Angles: 0° = ${zero}, ${motion} positive. Torque is that of one side in a hold.${written}`;
}

/** Below this (share) a gain is not worth a verdict. */
export const noticeable = 0.01;

/** The best program, what it is expected to give, and which others cannot be told from it. */
function verdict(results: Results): string {
  const { ranking, scenario } = results;
  const best = ranking[0];
  if (!best) return 'No program to rank.';
  const { program, margin } = best;
  const { meanGain } = program.landing;
  const range = rangeDegrees(scenario.target.from, scenario.target.to);
  const further = `${untested(results)}${wish(best, ranking.length, scenario.target.gain)}${tooLong(program, scenario.minutesPerWeek)}${notAsWritten(results)}`;
  if (meanGain < noticeable) {
    const none =
      ranking.length === 1
        ? `"${program.name}" is not`
        : `${ranking.length === 2 ? 'Neither' : 'None'} of these programs is`;
    return `${none} expected to change torque inside ${range} noticeably.${notAsWritten(results)}`;
  }
  const gain = `about ${signedPercent(meanGain)} torque`;
  const when = `after ${plural(program.weeks, 'week')}, give or take ${percent(margin)}`;
  return ranking.length === 1
    ? `"${program.name}" is expected to add ${gain} inside ${range} ${when}.${further}`
    : `"${program.name}" is expected to add most inside ${range}: ${gain} ${when}.${others(ranking)}${further}`;
}

/** What is to be said of the programs behind the best, each named where there are few. */
function others(ranking: Results['ranking']): string {
  const behind = ranking.slice(1);
  const rivals = behind.filter(({ tiesWithBest }) => tiesWithBest);
  const named = (placed: typeof behind) =>
    listInWords(placed.map(({ program: { name } }) => `"${name}"`));
  if (rivals.length > 0)
    return ` ${named(rivals)} cannot be told apart from it: choose between them by time, equipment and what the athlete tolerates.`;
  return behind.length === 1
    ? ` ${named(behind)} is expected to give clearly less there.`
    : ' The others are expected to give clearly less there.';
}

/** Programs with sets that cannot be done, and which: told before anything is chosen. */
function notAsWritten({ ranking }: Results): string {
  return ranking
    .filter(({ program }) => fallsShort(program.state))
    .map(
      ({ program }) =>
        ` "${program.name}" cannot be done as written (${shortfallList(program)}); its gain is that of what can be done.`,
    )
    .join('');
}

/** That the athlete was tested elsewhere than where strength is wanted. */
function untested({ fits, question, scenario }: Results): string {
  if (scenario.subject.isGroup) return '';
  const { action, target } = question;
  const fit = fits.find((one) => one.action === action);
  if (!fit) return ` No test of ${action}: the curve is that of the mean person.`;
  const inside = fit.measured.some(
    ({ deg }) => deg >= toDegrees(target.from) - 1e-6 && deg <= toDegrees(target.to) + 1e-6,
  );
  return inside
    ? ''
    : ` No angle inside the target was tested: its torque is read off a curve fitted elsewhere.`;
}

function wish(best: Placed<ProgramResult>, programs: number, wanted: number | undefined): string {
  if (wanted === undefined) return '';
  const { meanGain } = best.program.landing;
  // From what is printed, so that the sum can be done on the page.
  const [gain, margin] = [meanGain, best.margin].map((share) => Math.round(100 * share) / 100) as [
    number,
    number,
  ];
  const between = `${signedPercent(gain - margin)} to ${signedPercent(gain + margin)}`;
  if (meanGain - best.margin >= wanted)
    return ` The wanted ${signedPercent(wanted)} is likely (${between}).`;
  if (meanGain >= wanted)
    return ` The wanted ${signedPercent(wanted)} is more likely than not, but not sure (${between}).`;
  const all = ['', 'it', 'either of them'][programs] ?? 'any of these programs';
  return ` The wanted ${signedPercent(wanted)} is more than ${all} is expected to give.`;
}

function tooLong(best: ProgramResult, limit: number | undefined): string {
  if (limit === undefined || best.minutesPerWeek <= limit) return '';
  return ` It takes ${best.minutesPerWeek.toFixed(0)} minutes a week, more than the limit of ${limit}.`;
}

function rankingTable(results: Results): Block {
  const { ranking, scenario } = results;
  const limit = scenario.minutesPerWeek;
  const ties = ranking.filter(({ tiesWithBest }) => tiesWithBest).length;
  return {
    kind: 'table',
    columns: [
      { head: 'program', align: 'left' },
      { head: 'target gain', align: 'right' },
      { head: 'lands there', align: 'right' },
      { head: 'min/week', align: 'right' },
      { head: 'care', align: 'left' },
    ],
    rows: ranking.map(({ program, place, tiesWithBest }) => {
      const over = limit !== undefined && program.minutesPerWeek > limit ? ' (over limit)' : '';
      return [
        `${place}. ${program.name}${tiesWithBest && ties > 1 ? ' (tie)' : ''}${fallsShort(program.state) ? ' (cannot be done as written)' : ''}`,
        signedPercent(program.landing.meanGain),
        percent(program.landing.hitShare),
        `${program.minutesPerWeek.toFixed(0)}${over}`,
        cautionMarks(program, results).join(' '),
      ];
    }),
  };
}

function howToRead({ ranking, scenario }: Results): string {
  const ties = ranking.filter(({ tiesWithBest }) => tiesWithBest).length;
  const tie =
    ties > 1
      ? ` Tie: not to be told apart from the best, within ${percent(contrastMiss.value)} of its gain.`
      : '';
  const worksOneSide = ranking.some(({ program: { plan } }) =>
    plan.exercises.some(({ oneSided }) => oneSided),
  );
  const sides = worksOneSide
    ? ' and count both sides of one-sided work, one after the other with the rest after each'
    : '';
  const phases = ranking.some(({ program }) => program.program.phases)
    ? '; where a program has phases they are those of the busiest'
    : '';
  const cut = ranking.some(({ program }) => program.weeks < program.program.weeks)
    ? ` Longer programs are judged after the ${plural(scenario.target.weeks ?? 0, 'week')} of the target.`
    : '';
  const lengths = new Set(ranking.map(({ program }) => program.weeks)).size;
  const uneven =
    lengths > 1 ? ' The programs differ in length; each is judged at its own end.' : '';
  const shares = ranking.map(({ program }) => program.landing.hitShare);
  const spread =
    Math.max(...shares) > (shares[0] ?? 0) + 0.1
      ? ' The best program leaves more of its gain outside the target than others do: work at long muscle length spreads widely toward the straighter knee.'
      : '';
  return `Target gain: mean change of maximal torque inside the range. Lands there: the part of all torque the program adds, over all angles, that lies inside the range. Minutes leave out the warm-up${sides}${phases}.${tie}${cut}${uneven}${spread} Numbers under "care" point to the cautions below.`;
}

/** What kind of number the gain is; said where the verdict is read. */
const ofWhatKind = `${howRough()} The gain is that of a maximal hold, which favours programs that train holds.`;

/** How the model did on studies it had not seen; the evidence report has the rest. */
function howRough(): string {
  const model = evidence.scores.find(({ kind }) => kind === 'model');
  const { strength } = model?.families ?? {};
  const told = model?.strengthDirections;
  if (!strength || !told) throw new Error('no left-out score of the model');
  return `Sizes are rough: in published studies that it had not seen, the model missed strength gains by ${strength.miss.toFixed(0)} points (${percent(gainMiss.value)} of what it predicted) and said which of two groups gained more in ${told.right} of ${told.count} clear differences.`;
}
