import type { Judged, NotJudged } from '../inference/retest/verdict.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { JudgedAction } from '../questions/retest/judgeAction.ts';
import type { JudgedRetest, JudgedRetests } from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import { noTarget } from './noTarget.ts';
import { actionName, setUpName } from './setUpName.ts';
import { kilograms, newtonMetres, percent, signedPercent } from './words.ts';
import { wrapWords } from './wrap.ts';

/** A phone shows about so many columns of a fixed-width block. */
const columns = 38;
/** Small enough for one message of most chats. */
const mostCharacters = 1500;

/**
 * The latest retest for a chat thread: fixed-width blocks of ASCII, at most 38 columns and 1,500
 * characters each, numbered if there are several.
 */
export function retestChat(results: Results, { retests }: JudgedRetests): string[] {
  const latest = retests.at(-1);
  if (!latest) return [];
  const parts = [
    headPart(results, latest),
    ...latest.actions.flatMap(actionParts),
    liftPart(latest),
    tail,
  ];
  const wrapped = parts
    .filter((part) => part.length > 0)
    .map((part) => part.flatMap((line) => fitted(ascii(line))).join('\n'));
  return numbered(packed(wrapped));
}

/** Rows of figures keep their columns; only what is too long is wrapped. */
const fitted = (line: string) =>
  line.length <= columns ? [line] : wrapWords(line, columns, '', '  ');

function headPart(results: Results, { done, from, to, actions }: JudgedRetest): string[] {
  const { scenario, question } = results;
  const { target, subject } = scenario;
  const ends = [target.from, target.to].map((angle) => toDegrees(angle).toFixed(0));
  return [
    `${subject.code}: ${question.action}, retest`,
    `${from?.last ?? 'first test'} -> ${to?.first ?? 'retest'}`,
    ...(done.length === 0 ? [] : [`done: ${done.join(', then ')}`]),
    `target ${ends.join('-')} deg (0 = straight)`,
    ...(actions.some(({ isTarget }) => isTarget) ? [] : [noTarget(results)]),
  ];
}

function actionParts(action: JudgedAction): string[][] {
  const { retest, isTarget, predicted, error } = action;
  const setUp = setUpName(action.apart);
  const verdicts = isTarget
    ? [
        ...(setUp === '' ? [] : [setUp.toUpperCase()]),
        `GAINED IN TARGET: ${word(retest.target)}`,
        ...interval(retest.target),
        `MORE THAN ELSEWHERE: ${word(retest.contrast)}`,
        ...interval(retest.contrast),
        ...(predicted?.inTarget === undefined
          ? []
          : [`forecast was ${signedPercent(predicted.inTarget)}`]),
      ]
    : [actionName(action).toUpperCase()];
  const size =
    error.unit === 'share' ? percent(error.amount, 1) : ascii(newtonMetres(error.amount));
  return [verdicts, [...angleLines(action), `test error ${size}, ${error.known}`]];
}

const word = (verdict: Judged | NotJudged) =>
  ({ yes: 'YES', loss: 'NO, A LOSS', 'cannot say': 'CANNOT SAY' })[verdict.says];

function interval(verdict: Judged | NotJudged): string[] {
  if ('refused' in verdict) return [`  ${verdict.reason}`];
  const { value, low, high } = verdict.gain;
  return [`  ${signedPercent(value)} (${signedPercent(low)} to ${signedPercent(high)})`];
}

/** Columns of fixed width: angle, before, after, change, MDC, and what that says. */
function angleLines({ retest, isTarget }: JudgedAction): string[] {
  if (retest.angles.length === 0) return [];
  const right = (text: string, width: number) => text.padStart(width);
  const signed = (x: number) => {
    const whole = Math.round(x);
    return whole > 0 ? `+${whole}` : String(whole === 0 ? 0 : whole);
  };
  const rows = retest.angles.map((one) => {
    const says = { 'gain beyond noise': 'gain', 'loss beyond noise': 'loss', 'cannot say': '.' }[
      one.says
    ];
    return [
      right(`${toDegrees(one.angle).toFixed(0)}${isTarget && one.inTarget ? '*' : ' '}`, 4),
      right(one.before.toFixed(0), 5),
      right(one.after.toFixed(0), 6),
      right(signed(one.change), 6),
      right(one.minimalDetectableChange.toFixed(0), 5),
      ` ${says}`,
    ].join('');
  });
  const marks = `${isTarget ? '* target; ' : ''}MDC: least change beyond noise`;
  return ['deg before after change MDC (N m)', ...rows, marks];
}

function liftPart({ lifts }: JudgedRetest): string[] {
  return lifts.map(
    ({ lift, from, to, before, after, gain, detectable, says }) =>
      `${lift}${from === undefined ? '' : ` from ${toDegrees(from).toFixed(0)}`} to ${toDegrees(to).toFixed(0)} deg: ${kilograms(before)} -> ${kilograms(after)}, ${signedPercent(gain)}, ${says} (MDC ${percent(detectable)})`,
  );
}

const tail = ['Not medical advice; clears nobody to train or play.'];

/** The few signs of the report that ASCII lacks. */
const ascii = (text: string) =>
  text
    .replace(/×/g, 'x')
    .replace(/\u2044/g, '/')
    .replace(/½/g, '1/2')
    .replace(/[łŁ]/g, (letter) => (letter === 'ł' ? 'l' : 'L'))
    .replace(/→/g, '->')
    .replace(/√/g, 'root of ')
    .replace(/[–—−]/g, '-')
    .replace(/[’‘]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/·/g, ' ')
    .replace(/°/g, ' deg')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\n\x20-\x7e]/gu, '?');

/** Whole parts into as few messages as keep to the limit, room left for the number. */
function packed(parts: readonly string[]): string[] {
  const messages: string[] = [];
  for (const part of parts) {
    const longer = messages.length > 0 ? `${messages.at(-1)}\n\n${part}` : part;
    if (messages.length > 0 && longer.length <= mostCharacters - 20)
      messages[messages.length - 1] = longer;
    else messages.push(...inLines(part));
  }
  return messages;
}

/** A part too long for one message, cut between lines. */
function inLines(part: string): string[] {
  const messages: string[] = [''];
  for (const line of part.split('\n')) {
    const longer = messages.at(-1) === '' ? line : `${messages.at(-1)}\n${line}`;
    if (longer.length <= mostCharacters - 20) messages[messages.length - 1] = longer;
    else messages.push(line);
  }
  return messages;
}

const numbered = (messages: readonly string[]) =>
  messages.length < 2
    ? [...messages]
    : messages.map((message, i) => `${message}\n(${i + 1}/${messages.length})`);
