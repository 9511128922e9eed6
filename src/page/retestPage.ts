import type { Judged, NotJudged } from '../inference/retest/verdict.ts';
import type { JudgedLift } from '../questions/retest/judgeLift.ts';
import type {
  JudgedAction,
  JudgedRetest,
  JudgedRetests,
} from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import { actions, jointWords } from '../tables/actions.ts';
import { responseBounds } from '../tables/testError.ts';
import { testCautions } from './cautions.ts';
import type { Block, Report, Section } from './report.ts';
import { historyBlocks } from './retestHistory.ts';
import { retestNotes } from './retestNotes.ts';
import {
  capital,
  degrees,
  kilograms,
  newtonMetres,
  percent,
  plural,
  rangeDegrees,
  signedPercent,
} from './words.ts';

/** What every retest of a scenario says, the latest first. */
export function retestPage(results: Results, { retests, history }: JudgedRetests): Report {
  const [latest, ...earlier] = [...retests].reverse();
  const { title } = results.scenario;
  if (!latest) return { title: `${title}: no retest`, sections: [] };
  return {
    title: `${title}: retest`,
    sections: [
      ...retestSections(results, latest, ''),
      ...historyBlocks(history),
      ...earlier.flatMap((one) => retestSections(results, one, ` (retest ${one.place})`)),
      testCautions(),
    ],
  };
}

function retestSections(results: Results, judged: JudgedRetest, which: string): Section[] {
  const target = judged.actions.filter(({ isTarget }) => isTarget);
  const verdicts: Block[] =
    target.length > 0
      ? target.flatMap((action) => verdictBlocks(results, action))
      : [{ kind: 'text', text: noTarget(results) }];
  const sections: Section[] = [
    {
      heading: `What the retest says${which}`,
      blocks: [{ kind: 'text', text: occasionText(results, judged) }, ...verdicts],
    },
    ...forecastSection(judged, which),
  ];
  if (judged.actions.length > 0)
    sections.push({
      heading: `Angle by angle${which}`,
      blocks: [...judged.actions.flatMap(angleBlocks), { kind: 'text', text: howToRead }],
    });
  sections.push(...liftSection(judged.lifts, which));
  const items = judged.actions.flatMap(retestNotes);
  if (items.length > 0)
    sections.push({
      heading: `What the verdict rests on${which}`,
      blocks: [{ kind: 'list', items }],
    });
  return sections;
}

const noTarget = ({ question }: Results) =>
  `The target’s own action, ${question.action}, was not tested both times: nothing can be said of the target.`;

function occasionText({ scenario, question }: Results, { after, from, to }: JudgedRetest): string {
  const { motion, zero } = jointWords[actions[question.action].joint];
  const { target, subject } = scenario;
  const day = (days: JudgedRetest['from']) =>
    !days
      ? 'on an unknown day'
      : days.first === days.last
        ? days.first
        : `${days.first} to ${days.last}`;
  const done = after === undefined ? '' : `, with "${after}" between`;
  const written =
    scenario.convention === 'included'
      ? ' The file writes included angles (180° = straight); this report writes flexion.'
      : '';
  return `For ${subject.code}: ${question.action}, target ${rangeDegrees(target.from, target.to)} of ${motion} (0° = ${zero}). Tested ${day(from)}, retested ${day(to)}${done}. Torque is that of one side in a hold.${written}`;
}

/** The two verdicts, apart, each with its interval, and what to do next. */
function verdictBlocks({ scenario }: Results, action: JudgedAction): Block[] {
  const { target, contrast, level, chances, chanceOfWanted } = action.retest;
  const items = [
    `Gained in the target: ${verdictText(target, level)}`,
    `Gained more in the target than elsewhere: ${verdictText(contrast, level)}`,
  ];
  const wanted = scenario.target.gain;
  if (wanted !== undefined && chanceOfWanted !== undefined)
    items.push(
      `Chance that the true gain of the target is the wanted ${signedPercent(wanted)} or more: ${chance(chanceOfWanted)}.`,
    );
  const more = wanted === undefined ? undefined : daysToSee(action, wanted);
  if (more !== undefined)
    items.push(
      `To see ${signedPercent(wanted ?? 0)} in the target with this test error: ${plural(more, 'test day')} before and after.`,
    );
  if (chances)
    items.push(
      `Chance that it is worthwhile (a fifth of how far people differ): ${chance(chances.up)}; too small to matter: ${chance(chances.trivial)}; a loss that matters: ${chance(chances.down)}. These take every change for equally likely beforehand.`,
    );
  return [{ kind: 'list', items }];
}

function verdictText(verdict: Judged | NotJudged, level: number): string {
  if ('refused' in verdict) return `cannot say: ${verdict.reason}.`;
  const { says, gain, detectableGain } = verdict;
  const word = { yes: 'yes', loss: 'no, a loss', 'cannot say': 'cannot say' }[says];
  const between = `${signedPercent(gain.value)} (between ${signedPercent(gain.low)} and ${signedPercent(gain.high)} in ${Math.round(100 * level)} of 100 such cases)`;
  const need =
    says === 'cannot say'
      ? `; with this test error only ${signedPercent(detectableGain)} or more would stand out`
      : '';
  return `${word}, ${between}${need}.`;
}

/** Days on each side at which the wanted gain would stand out; undefined where it does already. */
function daysToSee(
  { retest: { target, angles } }: JudgedAction,
  wanted: number,
): number | undefined {
  if ('refused' in target || target.detectableGain <= wanted) return undefined;
  const days = angles.filter(({ inTarget }) => inTarget).map((one) => one.days);
  const each = Math.min(...days.map(({ before, after }) => 2 / (1 / before + 1 / after)));
  // A change of means has an error that falls with the root of the days.
  const times = (Math.log1p(target.detectableGain) / Math.log1p(wanted)) ** 2;
  return Math.ceil(each * times - 1e-9);
}

/** To five points: such chances are no sharper. */
function chance(p: number): string {
  const rounded = Math.round(20 * p) / 20;
  if (rounded <= 0) return 'under 5 %';
  return rounded >= 1 ? 'over 95 %' : `about ${percent(rounded)}`;
}

function angleBlocks({ action, retest, predicted }: JudgedAction): Block[] {
  if (retest.angles.length === 0) {
    const why = 'refused' in retest.target ? retest.target.reason : '';
    return [{ kind: 'text', text: `${capital(action)}: cannot say: ${why}.` }];
  }
  return [
    {
      kind: 'table',
      columns: [
        { head: action, align: 'left' },
        { head: 'before', align: 'right' },
        { head: 'after', align: 'right' },
        { head: 'change', align: 'right' },
        { head: 'MDC', align: 'right' },
        { head: 'says', align: 'left' },
        ...(predicted ? [{ head: 'forecast', align: 'right' } as const] : []),
      ],
      rows: retest.angles.map((one, i) => [
        `${degrees(one.angle)}${one.inTarget ? ' target' : ''}`,
        newtonMetres(one.before),
        newtonMetres(one.after),
        `${one.change > 0 ? '+' : ''}${newtonMetres(one.change)}`,
        newtonMetres(one.minimalDetectableChange),
        one.says,
        ...(predicted ? [signedPercent(predicted.byAngle[i] ?? 0)] : []),
      ]),
    },
  ];
}

const howToRead =
  'MDC: minimal detectable change, the smallest change that test noise alone passes only once in 20 cases. "Cannot say" means a change within that noise, up or down.';

function forecastSection({ forecast, actions: judged }: JudgedRetest, which: string): Section[] {
  const target = judged.find(({ isTarget }) => isTarget);
  const expected = target?.predicted?.inTarget;
  if (!forecast || expected === undefined || !target || 'refused' in target.retest.target)
    return [];
  const { gain } = target.retest.target;
  const seen = `${signedPercent(gain.value)} (${signedPercent(gain.low)} to ${signedPercent(gain.high)})`;
  const band = percent(forecast.miss * expected);
  return [
    {
      heading: `Forecast and retest${which}`,
      blocks: [
        {
          kind: 'text',
          text: `"${forecast.program}" was expected to add ${signedPercent(expected)} over the target’s tested angles in ${plural(forecast.weeks, 'week')}, give or take ${band}; the retest has ${seen}.${amplitudeText(target)}`,
        },
      ],
    },
  ];
}

function amplitudeText({ amplitude }: JudgedAction): string {
  if (!amplitude) return '';
  const { low, high, weight } = amplitude;
  const { least, most } = responseBounds;
  const ratio = Math.min(Math.max(amplitude.ratio, least), most);
  return ` For the next plan, write response: ${percent(ratio)} under athlete: so much of the forecast gains this athlete may make, anything from ${percent(Math.max(low, 0))} to ${percent(high)}. That is weak evidence: this retest counts for ${percent(weight)}, what was believed before for the rest, and people do not reliably stay strong or weak responders.`;
}

function liftSection(lifts: readonly JudgedLift[], which: string): Section[] {
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
            `${one.lift} to ${degrees(one.to)}`,
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
        {
          kind: 'text',
          text: `Test error of a single: ${lifts
            .map(({ error }) => `${percent(error.share)} (${error.known})`)
            .filter((text, i, all) => all.indexOf(text) === i)
            .join(', ')}.`,
        },
      ],
    },
  ];
}
