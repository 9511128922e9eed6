import type { Judged, NotJudged } from '../inference/retest/verdict.ts';
import type { JudgedAction } from '../questions/retest/judgeAction.ts';
import type { JudgedRetest, JudgedRetests } from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import { actions, jointWords } from '../tables/actions.ts';
import { testCautions } from './cautions.ts';
import { noTarget } from './noTarget.ts';
import type { Block, Report, Section } from './report.ts';
import { forecastSection } from './retestForecast.ts';
import { historyBlocks } from './retestHistory.ts';
import { liftSection } from './retestLifts.ts';
import { retestNotes } from './retestNotes.ts';
import { actionName, setUpName } from './setUpName.ts';
import {
  capital,
  degrees,
  newtonMetres,
  percent,
  plural,
  rangeDegrees,
  signedPercent,
} from './words.ts';

/** What every retest of a scenario says, the latest first. */
export function retestPage(results: Results, { retests, histories }: JudgedRetests): Report {
  const [latest, ...earlier] = [...retests].reverse();
  const { title } = results.scenario;
  if (!latest) return { title: `${title}: no retest`, sections: [] };
  return {
    title: `${title}: retest`,
    sections: [
      ...retestSections(results, latest, ''),
      ...histories.flatMap(historyBlocks),
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

function occasionText({ scenario, question }: Results, { done, from, to }: JudgedRetest): string {
  const { motion, zero } = jointWords[actions[question.action].joint];
  const { target, subject } = scenario;
  const day = (days: JudgedRetest['from']) =>
    !days
      ? 'on an unknown day'
      : days.first === days.last
        ? days.first
        : `${days.first} to ${days.last}`;
  const names = done.map((name) => `"${name}"`).join(', then ');
  const between = done.length === 0 ? '' : `, with ${names} between`;
  const written =
    scenario.convention === 'included'
      ? ' The file writes included angles (180° = straight); this report writes flexion.'
      : '';
  return `For ${subject.code}: ${question.action}, target ${rangeDegrees(target.from, target.to)} of ${motion} (0° = ${zero}). Tested ${day(from)}, retested ${day(to)}${between}. Torque is that of one side in a hold.${written}`;
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
  const { daysToSee: more } = action;
  if (more !== undefined)
    items.push(
      `To see ${signedPercent(wanted ?? 0)} in the target with this test error: ${plural(more, 'test day')} before and after.`,
    );
  if (chances)
    items.push(
      `Chance that it is worthwhile (a fifth of how far people differ): ${chance(chances.up)}; too small to matter: ${chance(chances.trivial)}; a loss that matters: ${chance(chances.down)}. These take every change for equally likely beforehand.`,
    );
  const name = setUpName(action.apart);
  const head: Block[] = name === '' ? [] : [{ kind: 'text', text: `${capital(name)}:` }];
  return [...head, { kind: 'list', items }];
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

/** To five points: such chances are no sharper. */
function chance(p: number): string {
  const rounded = Math.round(20 * p) / 20;
  if (rounded <= 0) return 'under 5 %';
  return rounded >= 1 ? 'over 95 %' : `about ${percent(rounded)}`;
}

function angleBlocks(judged: JudgedAction): Block[] {
  const { isTarget, retest, predicted } = judged;
  const name = actionName(judged);
  if (retest.angles.length === 0) {
    const why = 'refused' in retest.target ? retest.target.reason : '';
    return [{ kind: 'text', text: `${capital(name)}: cannot say: ${why}.` }];
  }
  return [
    ...skippedText(judged),
    // In a narrow terminal a table loses its heads.
    ...(name === judged.action && isTarget
      ? []
      : [{ kind: 'text', text: `${capital(name)}:` } as const]),
    {
      kind: 'table',
      columns: [
        { head: name, align: 'left' },
        { head: 'before', align: 'right' },
        { head: 'after', align: 'right' },
        { head: 'change', align: 'right' },
        { head: 'MDC', align: 'right' },
        { head: 'says', align: 'left' },
        ...(predicted ? [{ head: 'forecast', align: 'right' } as const] : []),
      ],
      rows: retest.angles.map((one, i) => [
        `${degrees(one.angle)}${isTarget && one.inTarget ? ' target' : ''}`,
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

/** What is held against an older test, and why no forecast stands beside it. */
function skippedText(judged: JudgedAction): Block[] {
  if (judged.isDirect) return [];
  const day = judged.from?.first ?? 'an earlier test';
  const text = `${capital(actionName(judged))} is held against ${day}, for the tests in between lack it; the forecast of the last program alone does not stand beside it.`;
  return [{ kind: 'text', text }];
}

const howToRead =
  'MDC: minimal detectable change, the smallest change that test noise alone passes only once in 20 cases. "Cannot say" means a change within that noise, up or down.';
